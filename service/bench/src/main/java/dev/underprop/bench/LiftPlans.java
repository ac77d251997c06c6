package dev.underprop.bench;

import java.nio.charset.StandardCharsets;

/** Floors whose sill is out, on one shore of posts of whose stiffness nothing is stated: rigid, soft and stiff are solved. */
final class LiftPlans {

    private LiftPlans() {}

    static byte[] text(int posts) {
        StringBuilder heads = new StringBuilder();
        for (int p = 0; p < posts; p++) {
            heads.append("      - { name: A").append(p + 1).append(", at: ").append(4 * p);
            heads.append(" ft, type: screw, height: 6 ft 9 in, pad: cast }\n");
        }
        String text = """
            basis: us-asd
            floor:
              joists: { size: 2x10, species: hem-fir, grade: No.2, moisture: dry, count: %d, spacing: 24 in, start: 0 ft, length: 16 ft }
              bearings:
                - { name: sill, at: 2 in, length: 3.5 in, kind: rigid }
                - { name: far wall, at: 15 ft 9 in, length: 3.5 in, kind: rigid }
              loads:
                - { name: floor, kind: area, dead: 15 psf, live: 20 psf }
                - { name: wall, kind: line, along: x, at: 2 in, dead: 100 plf }
            shores:
              - name: A
                at: 2 ft
                beam: { size: 2x10, plies: 3, species: hem-fir, grade: No.2, moisture: dry, start: -6 in, length: %d ft }
                posts:
            %s
            situations:
              - { name: sill out, removed: [sill] }
            postTypes:
              - name: screw
                rating: { kind: allowable, source: invented, rows: [{ height: 7 ft, load: 12 kip }] }
                headPlate: { along: 7 in, across: 5 in }
                basePlate: { along: 6 in, across: 6 in }
            ground: { table: ibc-1806.2, class: silty sand, foundingDepth: 12 in, condition: undisturbed }
            pads:
              - { name: cast, kind: concrete, along: 24 in, across: 24 in, thickness: 10 in, strength: 2500 psi, unitWeight: 150 pcf }
            """;
        return text.formatted(
                        2 * (posts - 1) + 1,
                        4 * (posts - 1) + 1,
                        heads.toString().stripTrailing())
                .getBytes(StandardCharsets.UTF_8);
    }
}
