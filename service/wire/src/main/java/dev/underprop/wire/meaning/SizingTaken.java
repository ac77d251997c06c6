package dev.underprop.wire.meaning;

import dev.underprop.api.model.PadSizingRequest;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import java.util.ArrayList;
import java.util.List;

/** What sizing pads took because the request does not say it, in words. */
final class SizingTaken {

    /** Of the loads of a plan. */
    static final String TURNED =
            "The loads are those of the plan's situations. While a screw is turned a post may carry more: plan the lift with these"
                    + " pads (lift), which judges the pressure under every pad turn by turn.";

    private SizingTaken() {}

    /** @param beside whether the ground stands beside the plan, or there is none */
    static List<String> of(Ground ground, boolean beside) {
        List<String> list = new ArrayList<>();
        if (beside && ground.top() instanceof Ground.Given given) {
            list.add("The allowable bearing pressure holds for the ground and the founding depth as they are on site ("
                    + given.source() + ").");
        }
        if (!(ground instanceof Ground.Layered)) {
            list.add(
                    "The ground gets no weaker below the pads, since no weaker layer is named; look for one to a depth of twice"
                            + " the breadth of the largest pad.");
        }
        return list;
    }

    static List<String> ofLoads(PadSizingRequest model, Limits limits) {
        List<String> list = new ArrayList<>();
        list.add("Posts push sideways with 2.5 percent of their load, or as they lean"
                + (limits.plumb().stated()
                        ? ", if that is more."
                        : " by 1.5 degrees, if that is more (BS 5975 practice for props; from memory)."));
        if (model.getBasePlate() == null && model.getLoads().stream().anyMatch(post -> post.getBasePlate() == null)) {
            list.add(
                    "No base plate is given for some post (basePlate), so that what bends or presses under one is not checked"
                            + " there.");
        }
        if (model.getEccentricity() == null
                && model.getLoads().stream().anyMatch(post -> post.getEccentricity() == null)) {
            list.add(
                    "The load of a post whose eccentricity is not stated acts 25 mm off the middle of its foot, as of tubes"
                            + " (BS 5975 practice for props; from memory).");
        }
        boolean apart = model.getLoads().stream().anyMatch(post -> post.getService() == null);
        if (apart) {
            list.add(
                    "Loads given apart are combined by ASCE 7-16, 2.3.1 and 2.4.1, live load in full; a post carries no less than"
                            + " its dead load.");
        }
        if (model.getLoads().stream().anyMatch(post -> post.getService() != null)) {
            list.add("A post whose load is given as a sum may carry nothing at times.");
        }
        if (model.getLoads().size() > 1 && model.getLoads().stream().allMatch(post -> post.getY() == null)) {
            list.add("All posts stand on one line, since no y is given.");
        }
        return list;
    }
}
