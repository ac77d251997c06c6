package dev.underprop.spark;

/** The job cannot be done as it was asked for; nothing was written. */
final class JobRefused extends RuntimeException {
    JobRefused(String why) {
        super(why);
    }
}
