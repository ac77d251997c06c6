package dev.underprop.spark;

import dev.underprop.spark.Pieces.Piece;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.record.Entry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.apache.hadoop.conf.Configuration;

/** The plans of pieces, each judged when it is asked for, so that a task holds one at a time. */
final class Judging implements Iterator<Told> {
    private final Iterator<Piece> pieces;
    private final AnswerOptions options;
    private final JobSettings settings;
    private final Configuration cluster;
    private final Deque<Slice> left = new ArrayDeque<>();
    private Optional<Slices.Plans> open = Optional.empty();
    private Optional<Entry> ahead = Optional.empty();

    Judging(Iterator<Piece> pieces, JobSettings settings, Configuration cluster) {
        this.pieces = pieces;
        this.options = settings.answers();
        this.settings = settings;
        this.cluster = cluster;
    }

    @Override
    public boolean hasNext() {
        try {
            while (ahead.isEmpty() && reach()) {
                ahead = open.orElseThrow().next();
                if (ahead.isEmpty()) {
                    open.orElseThrow().close();
                    open = Optional.empty();
                }
            }
            return ahead.isPresent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** True when a slice is open, maybe the next. */
    private boolean reach() throws IOException {
        while (left.isEmpty() && open.isEmpty() && pieces.hasNext()) {
            left.addAll(pieces.next().slices());
        }
        if (open.isEmpty() && !left.isEmpty()) {
            open = Optional.of(Slices.plans(left.remove(), cluster));
        }
        return open.isPresent();
    }

    @Override
    public Told next() {
        if (!hasNext()) {
            throw new NoSuchElementException("no further plan");
        }
        Entry entry = ahead.orElseThrow();
        ahead = Optional.empty();
        return Told.of(Engine.judge(entry, options), settings.extent());
    }
}
