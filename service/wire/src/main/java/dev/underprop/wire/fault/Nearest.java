package dev.underprop.wire.fault;

import java.util.Collection;
import java.util.Locale;

/** The known name that a wrong one was probably meant to be. */
public final class Nearest {
    private static final int LONGEST = 64;

    private Nearest() {}

    /**
     * The known name nearest to a wrong one by number of letters changed, left out, added or swapped with their
     * neighbour; case does not count. Empty when none is near enough: one change for up to five letters, else two.
     * Of equally near names the first in the given order.
     *
     * @param wrong the name as written
     * @param known names to choose from, in a fixed order
     */
    public static String to(String wrong, Collection<String> known) {
        if (wrong.isEmpty() || wrong.length() > LONGEST) {
            return "";
        }
        String best = "";
        int least = wrong.length() <= 5 ? 2 : 3;
        for (String name : known) {
            int distance = distance(wrong.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
            if (distance < least && distance < name.length()) {
                least = distance;
                best = name;
            }
        }
        return best;
    }

    /** Optimal string alignment distance, row by row. */
    private static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(last[j] + 1, row[j - 1] + 1), last[j - 1] + change);
                if (swapped(a, i, b, j)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            before = last;
            last = row;
        }
        return last[b.length()];
    }

    private static boolean swapped(String a, int i, String b, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }
}
