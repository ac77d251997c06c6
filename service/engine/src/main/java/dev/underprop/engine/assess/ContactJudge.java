package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.nds2018.Section3_10;
import dev.underprop.engine.pad.BasePlateJudge;
import dev.underprop.engine.pad.PadEccentricity;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.pad.PadOverlap;
import dev.underprop.engine.pad.PadPressure;
import dev.underprop.engine.pad.PadSettlement;
import dev.underprop.engine.pad.PadStrength;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.List;

/** Judges the contacts of a situation: bearing stresses, uplift, posts and pads. */
final class ContactJudge {

    private static final Citation BEARING = Citation.read("NDS", "2018", "3.10.2");
    private static final Citation STATICS = Citation.remembered("common practice, no source", "", "contacts only push");

    /** A joist that rises by less than this is still where it was (m). */
    private static final double RISE = 1e-5;

    /** Plates that miss by less than this fit (m). */
    private static final double FIT = 1e-4;

    private final SituationRun run;
    private final List<CheckResult> results = new ArrayList<>();

    ContactJudge(SituationRun run) {
        this.run = run;
    }

    List<CheckResult> judge() {
        for (int c = 0; c < run.frame().places().size(); c++) {
            ContactPlace place = run.frame().places().get(c);
            if (run.frame().taken(c, run.situation())) {
                continue;
            }
            if (place instanceof ContactPlace.OnBearing seat) {
                judgeBearing(c, seat);
            } else if (place instanceof ContactPlace.OnShore seat) {
                judgeCrossing(c, seat);
            } else if (place instanceof ContactPlace.OnPost head) {
                judgePost(c, head);
            } else if (place instanceof ContactPlace.OnPier head) {
                judgePier(c, head);
            }
        }
        return results;
    }

    private void judgeBearing(int c, ContactPlace.OnBearing seat) {
        Joist joist = run.plan().floor().joists().get(seat.joist());
        Bearing bearing = run.plan().floor().bearings().get(seat.bearing());
        double length = overlap(bearing.y(), bearing.length(), joist.start(), joist.end());
        double area = length * overlap(joist.x(), joist.member().breadth(), bearing.from(), bearing.to());
        double weaker = bearing.body() instanceof Girder girder
                ? Math.min(bearing(joist.member()), bearing(girder.member()))
                : bearing(joist.member());
        add(
                CheckId.JOIST_BEARING,
                c,
                stress(c, area, weaker),
                BEARING,
                run.met().greatest());
        double load = Math.max(0, run.met().greatest().value(c));
        seat(c, SeatJudge.strength(bearing, load, area), SeatJudge.length(bearing, length));
        if (NotchedEnds.at(run.frame(), seat)) {
            notch(c, joist, load);
        }
        // What is tied down is not raised clear: it pulls on its ties, and that is judged.
        boolean clear =
                run.situation().clear().contains(seat.bearing()) && bearing.fastening() instanceof Fastening.Loose;
        Finding uplift = clear
                ? new CheckResult.NotApplicable(
                        "the plan says that the floor is raised clear of this bearing on purpose")
                : uplift(c, bearing, seat.joist());
        add(CheckId.BEARING_UPLIFT, c, uplift, STATICS, run.met().lift());
    }

    private void notch(int c, Joist joist, double load) {
        Intake.Answer decay = run.plan().circumstances().intake().to(Intake.Question.DECAY);
        Finding notch = NotchJudge.judge(joist, decay.reply(), load);
        add(CheckId.JOIST_NOTCH, c, notch, NotchJudge.RULE, run.met().greatest());
    }

    private void judgePier(int c, ContactPlace.OnPier head) {
        Girder girder =
                (Girder) run.plan().floor().bearings().get(head.bearing()).body();
        Girder.Pier pier = girder.piers().get(head.pier());
        double along = overlap(pier.x(), pier.length(), girder.start(), girder.end());
        double toEnd = Math.min(pier.x() - along / 2 - girder.start(), girder.end() - pier.x() - along / 2);
        double factor = Section3_10.areaFactor(along, Math.max(0, toEnd)).value();
        double area = along * girder.member().breadth();
        Finding pressed = stress(c, area, bearing(girder.member()) * factor);
        add(CheckId.GIRDER_BEARING_AT_PIER, c, pressed, BEARING, run.met().greatest());
        double load = Math.max(0, run.met().greatest().value(c));
        seat(c, SeatJudge.strength(pier.seat(), load, area), SeatJudge.length(pier.seat(), along));
        add(CheckId.BEARING_UPLIFT, c, pierUplift(c, pier), STATICS, run.met().lift());
    }

    private void seat(int c, Finding strength, Finding length) {
        add(CheckId.SEAT_STRENGTH, c, strength, SeatJudge.STRENGTH, run.met().greatest());
        String place = run.names().contact(run.frame().places().get(c));
        results.add(new CheckResult(CheckId.SEAT_LENGTH, place, length, new CheckResult.NoCase(), SeatJudge.LENGTH));
    }

    private Finding pierUplift(int c, Girder.Pier pier) {
        double pull = run.met().lift().value(c);
        if (pier.fastening() instanceof Fastening.Held held) {
            return new CheckResult.Judged(Measure.FORCE, Math.max(0, pull), held.uplift());
        }
        if (pier.fastening() instanceof Fastening.Undescribed && pull > 0) {
            return new CheckResult.NotChecked("the girder pulls on its pier; what holds it down is not described");
        }
        return run.met().everOpen(c)
                ? new CheckResult.Condition(
                        false, Measure.FORCE, 0, "the girder lifts off its pier and nothing holds it down")
                : new CheckResult.Condition(true, Measure.FORCE, -pull, "the girder presses on its pier in every case");
    }

    private Finding uplift(int c, Bearing bearing, int joist) {
        double pull = run.met().lift().value(c);
        if (bearing.fastening() instanceof Fastening.Held held) {
            return new CheckResult.Judged(Measure.FORCE, Math.max(0, pull), held.uplift());
        }
        if (bearing.fastening() instanceof Fastening.Undescribed && pull > 0) {
            return new CheckResult.NotChecked("the joist pulls on its bearing; what holds it down is not described");
        }
        if (!run.met().everOpen(c)) {
            return new CheckResult.Condition(
                    true, Measure.FORCE, -pull, "the joist presses on its bearing in every case");
        }
        if (bearing.gapUnder(joist) > 0 && !run.met().everClosed(c) && !rises(c, bearing.gapUnder(joist))) {
            return new CheckResult.NotApplicable("the joist stands clear of this bearing as the plan says");
        }
        return new CheckResult.Condition(
                false, Measure.FORCE, 0, "the joist lifts off its bearing and nothing holds it down");
    }

    /** Whether a joist that stands clear of a seat ever rises further from it. */
    private boolean rises(int c, double gap) {
        return run.met().greatestOpening(c) > gap + RISE;
    }

    private void judgeCrossing(int c, ContactPlace.OnShore seat) {
        Joist joist = run.plan().floor().joists().get(seat.joist());
        Shore shore = run.plan().shores().get(seat.shore());
        double weaker = Math.min(bearing(joist.member()), bearing(shore.beam()));
        double along = overlap(joist.x(), joist.member().breadth(), shore.start(), shore.end());
        double across = overlap(shore.y(), shore.beam().breadth(), joist.start(), joist.end());
        Finding finding = stress(c, along * across, weaker);
        add(CheckId.BEAM_BEARING_AT_JOIST, c, finding, BEARING, run.met().greatest());
        if (NotchedEnds.at(run.frame(), seat)) {
            notch(c, joist, Math.max(0, run.met().greatest().value(c)));
        }
    }

    private void judgePost(int c, ContactPlace.OnPost head) {
        Shore shore = run.plan().shores().get(head.shore());
        Post post = shore.posts().get(head.post());
        double load = Math.max(0, run.met().greatest().value(c));
        double lift = run.situation().liftOf(head.shore(), head.post(), post);
        double plumb = run.plan().circumstances().limits().plumb().lean();
        PostMethods.Ruling strength =
                PostJudge.judge(post, load, lift, plumb, shore.beam().breadth());
        add(
                CheckId.POST_RATING,
                c,
                strength.finding(),
                strength.rule(),
                run.met().greatest());
        add(
                CheckId.PAD_SOIL_BEARING,
                c,
                PadPressure.judge(post, run.plan().ground(), load),
                padCitation(),
                run.met().greatest());
        add(CheckId.POST_CONTACT, c, contact(c, post), STATICS, run.met().least());
        add(
                CheckId.PAD_OVERLAP,
                c,
                PadsPlaced.judge(run.plan(), head),
                PadOverlap.citation(),
                run.met().greatest());
        add(
                CheckId.BEAM_BEARING_AT_POST,
                c,
                headStress(c, shore, post),
                BEARING,
                run.met().greatest());
        add(
                CheckId.POST_PLATES,
                c,
                PlateJudge.judge(shore, post, load),
                PlateJudge.RULE,
                run.met().greatest());
        Finding roll = RollJudge.judge(shore, load);
        add(CheckId.BEAM_ROLL_RESTRAINT, c, roll, RollJudge.RULE, run.met().greatest());
        add(
                CheckId.POST_SIDEWAYS,
                c,
                SidewaysJudge.judge(shore, post, sideways(c, load)),
                SidewaysJudge.RULE,
                run.met().greatest());
        add(
                CheckId.BASE_PLATE_BEARING,
                c,
                pressed(c, post, load),
                BasePlateJudge.rule(post),
                BasePlateJudge.factored(post) ? run.met().factored() : run.met().greatest());
        judgePad(c, head, load);
    }

    private SidewaysJudge.Demand sideways(int c, double load) {
        double least =
                run.met().everOpen(c) ? 0 : Math.max(0, -run.met().least().value(c));
        return new SidewaysJudge.Demand(
                load,
                least,
                share(),
                run.plan().circumstances().limits().plumb().lean());
    }

    /** Given sideways loads go into what holds the floor. Where nothing does they would go into the posts. */
    private double share() {
        Restraint.Sides floor = run.plan().circumstances().floorRestraint();
        boolean held = floor.along() instanceof Restraint.Held && floor.across() instanceof Restraint.Held;
        boolean given = run.plan().circumstances().lateral() instanceof Lateral.Given;
        return given && !held ? Double.NaN : 0;
    }

    private Finding pressed(int c, Post post, double load) {
        return BasePlateJudge.judge(post, BasePlateJudge.material(post), load, factored(c));
    }

    private Citation padCitation() {
        return PadPressure.citation(run.plan().ground());
    }

    private void judgePad(int c, ContactPlace.OnPost head, double load) {
        Post post = run.plan().shores().get(head.shore()).posts().get(head.post());
        Ground ground = run.plan().ground();
        PadLoad demand = new PadLoad(
                load,
                factored(c),
                PadLoad.lean(run.plan().circumstances().limits().plumb()));
        add(
                CheckId.PAD_STRENGTH,
                c,
                PadStrength.judge(post, ground, demand, SlabNeighbours.nearest(run.frame(), head)),
                PadStrength.citation(post),
                PadStrength.factored(post) ? run.met().factored() : run.met().greatest());
        add(
                CheckId.PAD_ECCENTRICITY,
                c,
                PadEccentricity.judge(post, ground, demand),
                PadEccentricity.citation(),
                run.met().greatest());
        add(
                CheckId.PAD_SETTLEMENT,
                c,
                settlement(c, head),
                PadSettlement.citation(ground),
                run.met().greatest());
    }

    private Finding settlement(int c, ContactPlace.OnPost head) {
        List<PadSettlement.Loaded> others = new ArrayList<>();
        for (int other = 0; other < run.frame().places().size(); other++) {
            if (other != c
                    && run.frame().places().get(other) instanceof ContactPlace.OnPost near
                    && near.shore() == head.shore()) {
                others.add(loaded(other, near));
            }
        }
        return PadSettlement.judge(
                loaded(c, head),
                others,
                run.plan().ground(),
                run.plan().circumstances().limits().settlement());
    }

    private PadSettlement.Loaded loaded(int c, ContactPlace.OnPost head) {
        Post post = run.plan().shores().get(head.shore()).posts().get(head.post());
        double least =
                run.met().everOpen(c) ? 0 : Math.max(0, -run.met().least().value(c));
        return new PadSettlement.Loaded(
                post, least, Math.max(0, run.met().greatest().value(c)));
    }

    /** Greatest load of the strength combinations (N), NaN where they were not solved. */
    private double factored(int c) {
        Peaks factored = run.met().factored();
        return factored.met(c) ? Math.max(0, factored.value(c)) : Double.NaN;
    }

    private Finding contact(int c, Post post) {
        if (!run.met().everOpen(c)) {
            return new CheckResult.Condition(
                    true, Measure.FORCE, -run.met().least().value(c), "the post carries load in every case");
        }
        return post.ends().fastened()
                ? new CheckResult.Condition(
                        true, Measure.FORCE, 0, "the post goes slack in some case, and is fastened at head and foot")
                : new CheckResult.Condition(
                        false,
                        Measure.FORCE,
                        0,
                        "the post goes slack: in some case it carries nothing, and it is not fastened at head and foot");
    }

    private Finding headStress(int c, Shore shore, Post post) {
        if (!(post.type() instanceof PostType type)) {
            return new CheckResult.NotChecked("no post type is named, so the head plate is not known (declare: type)");
        }
        Member beam = shore.beam();
        double along = overlap(post.x(), type.head().along(), shore.start(), shore.end());
        if (along < type.head().along() - FIT) {
            return new CheckResult.NotChecked("the head plate lies partly or wholly beyond the beam's end, so that the"
                    + " pressure under it is not even");
        }
        if (type.head().across() < beam.breadth() - FIT) {
            return new CheckResult.NotChecked(
                    "the head plate is narrower than the beam, so that not every ply stands on" + " it");
        }
        double across = beam.breadth();
        double toEnd = Math.min(post.x() - along / 2 - shore.start(), shore.end() - post.x() - along / 2);
        double factor = Section3_10.areaFactor(along, toEnd).value();
        return stress(c, along * across, bearing(beam) * factor);
    }

    private Finding stress(int c, double area, double allowed) {
        return new CheckResult.Judged(
                Measure.STRESS, Math.max(0, run.met().greatest().value(c)) / area, allowed);
    }

    private static double bearing(Member member) {
        return new TimberCapacity(member, 1).bearing();
    }

    private static double overlap(double centre, double size, double start, double end) {
        return Math.min(centre + size / 2, end) - Math.max(centre - size / 2, start);
    }

    private void add(CheckId id, int contact, Finding finding, Citation citation, Peaks peaks) {
        boolean compared = finding instanceof CheckResult.Judged
                || finding instanceof CheckResult.Refused
                || finding instanceof CheckResult.Condition;
        boolean opens = finding instanceof CheckResult.Condition && run.met().everOpen(contact);
        CheckResult.Where where = compared && peaks.met(contact)
                ? run.occurrences().where(opens ? run.met().openIn(contact) : peaks.caseOf(contact), Double.NaN)
                : new CheckResult.NoCase();
        String place = run.names().contact(run.frame().places().get(contact));
        results.add(new CheckResult(id, place, finding, where, citation));
    }
}
