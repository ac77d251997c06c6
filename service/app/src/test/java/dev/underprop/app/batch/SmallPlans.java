package dev.underprop.app.batch;

import java.util.ArrayList;
import java.util.List;

/** Plans of two joists and two posts, quickly judged. */
final class SmallPlans {
    private SmallPlans() {}

    static String json(String id) {
        return json(id, 20);
    }

    /**
     * A plan as JSON on one line.
     *
     * @param dead dead load of the floor (psf)
     */
    static String json(String id, int dead) {
        return """
                {"id": "%s", "basis": "us-asd", "floor": {"joists": {"size": "2x8", "species": "hem-fir", "grade": "No.2",\
                 "count": 2, "spacing": "16 in", "start": "0 in", "length": "12 ft"}, "bearings": [\
                {"name": "front", "at": "2 in", "length": "4 in", "kind": "rigid"},\
                 {"name": "rear", "at": "11 ft 10 in", "length": "4 in", "kind": "rigid"}],\
                 "loads": [{"name": "floor", "kind": "area", "dead": "%d psf"}]}, "shores": [{"name": "M", "at": "6 ft",\
                 "beam": {"size": "2x8", "plies": 3, "species": "hem-fir", "grade": "No.2", "start": "-1 ft", "length": "4 ft"},\
                 "posts": [{"name": "M1", "at": "0 in", "height": "3 ft 2 in", "rigid": true},\
                 {"name": "M2", "at": "16 in", "height": "3 ft 2 in", "rigid": true}]}],\
                 "situations": [{"name": "shored"}]}""".formatted(id, dead);
    }

    /** Plans as lines: every seventh is faulty, every eleventh no JSON at all. */
    static List<String> lines(int count) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String plan = json("p" + i, 10 + i % 90);
            lines.add(i % 7 == 6 ? plan.replace("12 ft", "12 kip") : i % 11 == 10 ? plan.substring(9) : plan);
        }
        return lines;
    }
}
