package dev.underprop.app.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A plan with a lift, drawn by seed; every second one carries live load. Posts are rigid and fit exactly. */
final class DrawnLift {
    private final Random random;
    private final boolean live;
    private final List<String> posts = new ArrayList<>();
    private final double rating;

    DrawnLift(long seed) {
        this.random = new Random(seed);
        this.live = seed % 2 == 0;
        this.rating = between(2500, 9000);
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    /** What a post is rated for (lb). */
    double rating() {
        return rating;
    }

    boolean live() {
        return live;
    }

    /** The plan with these situations, the first of which is the one of the lift. */
    String text() {
        int joists = 4 + random.nextInt(4);
        int heads = 2 + random.nextInt(3);
        double width = 2.0 * (joists - 1);
        StringBuilder levels = new StringBuilder();
        StringBuilder shore = new StringBuilder();
        double raise = between(0.1, 0.6);
        for (int p = 0; p < heads; p++) {
            String name = "A" + (p + 1);
            posts.add(name);
            double at = width * (p + between(0.35, 0.65)) / heads;
            shore.append(format(
                    "      - { name: %s, at: %.3f ft, type: screw, height: 81 in, pad: cast, rigid: true }%n",
                    name, at));
            levels.append(format("    - { name: over %s, post: %s, level: -%.4f in }%n", name, name, raise));
        }
        return format(
                """
                basis: us-asd
                limits: { fitUp: 0 in }
                floor:
                  joists: { size: 2x10, species: hem-fir, grade: No.2, moisture: dry, selfWeight: added, count: %d, spacing: 24 in, start: 0 ft, length: 15 ft }
                  bearings:
                    - { name: sill, at: 2 in, length: 3.5 in, kind: rigid }
                    - { name: far wall, at: 14 ft 9 in, length: 3.5 in, kind: rigid }
                  loads:
                    - { name: floor, kind: area, dead: %.2f psf, live: %.2f psf }
                    - { name: wall, kind: line, along: x, at: 2 in, dead: %.1f plf }
                shores:
                  - name: A
                    at: %.3f ft
                    beam: { size: 2x10, plies: 3, species: hem-fir, grade: No.2, moisture: dry, start: -6 in, length: %.2f ft }
                    posts:
                %s
                situations:
                  - { name: snug }
                  - { name: sill out, removed: [sill] }
                postTypes:
                  - name: screw
                    rating: { kind: allowable, source: invented, rows: [{ height: 8 ft, load: %.1f lb }] }
                    headPlate: { along: 7 in, across: 5 in }
                    basePlate: { along: 6 in, across: 6 in }
                    head: { by: "two lag screws, listed", sideways: 400 lb }
                    foot: { by: "two wedge anchors, listed", sideways: 400 lb }
                ground: { table: ibc-1806.2, class: silty sand, foundingDepth: 12 in, condition: undisturbed }
                pads:
                  - { name: cast, kind: concrete, along: 30 in, across: 30 in, thickness: 12 in, strength: 2500 psi, unitWeight: 150 pcf }
                lift:
                  method: turned under load
                  during: sill out
                  tolerance: 1/32 in
                  hold: 24 h
                  levels:
                %s
                  target: { level: 0 in }
                  limits: { perStage: 1/8 in, total: 2 in, slope: 0.02, slopeCriterion: invented }
                  screws:
                    - { pitch: 1/4 in, starts: 1, smallestTurn: 0.125, travel: 6 in }
                """,
                joists,
                between(8, 18),
                live ? between(5, 25) : 0.0,
                between(20, 150),
                between(1.5, 2.5),
                width + 1,
                shore.toString().stripTrailing(),
                rating,
                levels.toString().stripTrailing());
    }

    List<String> posts() {
        return posts;
    }

    private static String format(String template, Object... values) {
        return String.format(Locale.ROOT, template, values);
    }
}
