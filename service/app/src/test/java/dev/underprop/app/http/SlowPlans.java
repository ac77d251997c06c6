package dev.underprop.app.http;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Plans that keep to every limit of the contract and are built to be slow. */
final class SlowPlans {
    private SlowPlans() {}

    /** Joists over many shores with many posts each, in as many situations: some thousand contacts. */
    static String plan(int joists, int shores, int posts) {
        double width = joists * 16 / 12.0;
        double length = 4 * shores + 4;
        return """
                basis: us-asd
                floor:
                  joists: { size: 2x12, species: hem-fir, grade: No.2, moisture: dry, count: %d, spacing: 16 in, start: 0 ft, length: %.1f ft }
                  bearings:
                    - { name: near, at: 2 in, length: 3.5 in, kind: rigid }
                    - { name: far, at: %.1f ft, length: 3.5 in, kind: rigid }
                  loads:
                    - { name: floor, kind: area, dead: 12 psf, live: 40 psf }
                shores:
                %s
                situations:
                  - { name: first }
                  - { name: second }
                """.formatted(
                joists,
                length,
                length - 0.2,
                IntStream.range(0, shores).mapToObj(s -> shore(s, posts, width)).collect(Collectors.joining("\n")));
    }

    private static String shore(int shore, int posts, double width) {
        String heads = IntStream.range(0, posts)
                .mapToObj(p -> String.format(
                        Locale.ROOT,
                        "      - { name: S%dP%d, at: %.3f ft, height: 6 ft 9 in }",
                        shore,
                        p,
                        width * p / (posts - 1)))
                .collect(Collectors.joining("\n"));
        return String.format(Locale.ROOT, """
                  - name: S%d
                    at: %d ft
                    beam: { size: 2x12, plies: 3, species: hem-fir, grade: No.2, moisture: dry, start: -1 ft, length: %.2f ft }
                    posts:
                %s""", shore, 4 * shore + 3, width + 1, heads);
    }
}
