package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
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
import dev.underprop.engine.standard.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Judges the contacts of a situation: bearing stresses, uplift, posts and pads. */
final class ContactJudge {

    private static final Citation BEARING = AcrossGrain.RULE;
    private static final Citation STATICS = Citation.remembered("common practice, no source", "", "contacts only push");

    /** A joist that rises by less than this is still where it was (m). */
    private static final double RISE = 1e-5;

    /** Plates that miss by less than this fit (m). */
    private static final double FIT = 1e-4;

    private final SituationRun run;
    private final boolean wanted;
    private final List<CheckResult> results = new ArrayList<>();

    /** @param working whether calculation records are wanted */
    ContactJudge(SituationRun run, boolean working) {
        this.run = run;
        this.wanted = working;
    }

    private Working working() {
        return Working.when(wanted);
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
        double width = overlap(joist.x(), joist.member().breadth(), bearing.from(), bearing.to());
        AcrossGrain pressed = new AcrossGrain(greatest(c), length, width);
        Working working = working();
        Finding stress = bearing.body() instanceof Girder girder
                ? pressed.between(joist.member(), girder.member(), working)
                : pressed.on(joist.member(), working);
        add(CheckId.JOIST_BEARING, c, stress, BEARING, run.met().greatest(), working);
        double load = greatest(c);
        seat(c, w -> SeatJudge.strength(bearing, pressed, w), w -> SeatJudge.length(bearing, length, w));
        if (NotchedEnds.at(run.frame(), seat)) {
            notch(c, joist, load);
        }
        // What is tied down is not raised clear: it pulls on its ties, and that is judged.
        boolean clear =
                run.situation().clear().contains(seat.bearing()) && bearing.fastening() instanceof Fastening.Loose;
        Working tied = working();
        Finding uplift = clear
                ? new CheckResult.NotApplicable(
                        "the plan says that the floor is raised clear of this bearing on purpose")
                : uplift(c, bearing, seat.joist(), tied);
        add(CheckId.BEARING_UPLIFT, c, uplift, STATICS, run.met().lift(), tied);
    }

    private void notch(int c, Joist joist, double load) {
        Intake.Answer decay = run.plan().circumstances().intake().to(Intake.Question.DECAY);
        Working working = working();
        Finding notch = NotchJudge.judge(joist, decay.reply(), load, working);
        add(CheckId.JOIST_NOTCH, c, notch, NotchJudge.RULE, run.met().greatest(), working);
    }

    private void judgePier(int c, ContactPlace.OnPier head) {
        Girder girder =
                (Girder) run.plan().floor().bearings().get(head.bearing()).body();
        Girder.Pier pier = girder.piers().get(head.pier());
        double along = overlap(pier.x(), pier.length(), girder.start(), girder.end());
        double toEnd = Math.min(pier.x() - along / 2 - girder.start(), girder.end() - pier.x() - along / 2);
        AcrossGrain pressed =
                new AcrossGrain(greatest(c), along, girder.member().breadth());
        Working working = working();
        Finding stress = pressed.within(girder.member(), Math.max(0, toEnd), working);
        add(CheckId.GIRDER_BEARING_AT_PIER, c, stress, BEARING, run.met().greatest(), working);
        seat(c, w -> SeatJudge.strength(pier.seat(), pressed, w), w -> SeatJudge.length(pier.seat(), along, w));
        Working tied = working();
        add(
                CheckId.BEARING_UPLIFT,
                c,
                pierUplift(c, pier, tied),
                STATICS,
                run.met().lift(),
                tied);
    }

    private void seat(int c, Function<Working, Finding> strength, Function<Working, Finding> length) {
        Working strong = working();
        add(
                CheckId.SEAT_STRENGTH,
                c,
                strength.apply(strong),
                SeatJudge.STRENGTH,
                run.met().greatest(),
                strong);
        Working enough = working();
        Finding seated = length.apply(enough);
        String place = run.names().contact(run.frame().places().get(c));
        results.add(new CheckResult(
                CheckId.SEAT_LENGTH, place, seated, new CheckResult.NoCase(), SeatJudge.LENGTH, enough.steps(seated)));
    }

    /** Greatest load at a contact (N), not negative. */
    private double greatest(int c) {
        return Math.max(0, run.met().greatest().value(c));
    }

    /** What holds down against the greatest pull. */
    private Finding tied(int c, Fastening.Held held, Working working) {
        double pull = working.analysis(
                "T",
                "greatest pull, cases of stability among them",
                Dimension.FORCE,
                Math.max(0, run.met().lift().value(c)));
        double holds = working.plan("Tf", "what the fastening is said to hold", Dimension.FORCE, held.uplift());
        return working.compared("T", "Tf", new CheckResult.Judged(Measure.FORCE, pull, holds));
    }

    private Finding pierUplift(int c, Girder.Pier pier, Working working) {
        double pull = run.met().lift().value(c);
        if (pier.fastening() instanceof Fastening.Held held) {
            return tied(c, held, working);
        }
        if (pier.fastening() instanceof Fastening.Undescribed && pull > 0) {
            return new CheckResult.NotChecked("the girder pulls on its pier; what holds it down is not described");
        }
        return run.met().everOpen(c)
                ? new CheckResult.Condition(
                        false, Measure.FORCE, 0, "the girder lifts off its pier and nothing holds it down")
                : new CheckResult.Condition(true, Measure.FORCE, -pull, "the girder presses on its pier in every case");
    }

    private Finding uplift(int c, Bearing bearing, int joist, Working working) {
        double pull = run.met().lift().value(c);
        if (bearing.fastening() instanceof Fastening.Held held) {
            return tied(c, held, working);
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
        double along = overlap(joist.x(), joist.member().breadth(), shore.start(), shore.end());
        double across = overlap(shore.y(), shore.beam().breadth(), joist.start(), joist.end());
        Working working = working();
        Finding finding = new AcrossGrain(greatest(c), along, across).between(joist.member(), shore.beam(), working);
        add(CheckId.BEAM_BEARING_AT_JOIST, c, finding, BEARING, run.met().greatest(), working);
        if (NotchedEnds.at(run.frame(), seat)) {
            notch(c, joist, Math.max(0, run.met().greatest().value(c)));
        }
    }

    private void judgePost(int c, ContactPlace.OnPost head) {
        Shore shore = run.plan().shores().get(head.shore());
        Post post = shore.posts().get(head.post());
        double load = greatest(c);
        judgeShaft(c, head, load);
        judgeGround(c, post, demand(c, post, load));
        add(
                CheckId.POST_CONTACT,
                c,
                SlackJudge.judge(
                        post.ends(), run.met().everOpen(c), -run.met().least().value(c)),
                STATICS,
                run.met().least());
        add(
                CheckId.PAD_OVERLAP,
                c,
                PadOverlap.judge(placed(c, head), near(c), run.plan().ground()),
                PadOverlap.citation(),
                run.met().greatest());
        judgeHead(c, shore, post, load);
        Working sideways = working();
        Finding held = SidewaysJudge.judge(shore, post, sideways(c, load), sideways);
        add(CheckId.POST_SIDEWAYS, c, held, SidewaysJudge.RULE, run.met().greatest(), sideways);
        Working base = working();
        add(
                CheckId.BASE_PLATE_BEARING,
                c,
                BasePlateJudge.judge(post, BasePlateJudge.material(post), load, factored(c), base),
                BasePlateJudge.rule(post),
                BasePlateJudge.factored(post) ? run.met().factored() : run.met().greatest(),
                base);
        judgePad(c, head, load);
    }

    private void judgeShaft(int c, ContactPlace.OnPost head, double load) {
        Shore shore = run.plan().shores().get(head.shore());
        Post post = shore.posts().get(head.post());
        double lift = run.situation().liftOf(head.shore(), head.post(), post);
        double plumb = run.plan().circumstances().limits().plumb().lean();
        Working working = working();
        PostMethods.Ruling strength =
                PostJudge.judge(post, load, lift, plumb, shore.beam().breadth(), working);
        add(
                CheckId.POST_RATING,
                c,
                strength.finding(),
                strength.rule(),
                run.met().greatest(),
                working);
    }

    /** What the post of a contact brings on its pad. */
    private PadLoad demand(int c, Post post, double load) {
        return PadLoad.on(
                post.type(),
                load,
                factored(c),
                run.plan().circumstances().limits().plumb());
    }

    private PadOverlap.Placed placed(int c, ContactPlace.OnPost head) {
        Shore shore = run.plan().shores().get(head.shore());
        return new PadOverlap.Placed(shore.posts().get(head.post()), shore.y(), greatest(c));
    }

    /** All other posts of the plan. */
    private List<PadOverlap.Placed> near(int c) {
        List<PadOverlap.Placed> near = new ArrayList<>();
        for (int other = 0; other < run.frame().places().size(); other++) {
            if (other != c && run.frame().places().get(other) instanceof ContactPlace.OnPost head) {
                near.add(placed(other, head));
            }
        }
        return near;
    }

    private void judgeGround(int c, Post post, PadLoad load) {
        Working working = working();
        Finding finding = PadPressure.judge(post, run.plan().ground(), load, working);
        add(CheckId.PAD_SOIL_BEARING, c, finding, padCitation(), run.met().greatest(), working);
    }

    private void judgeHead(int c, Shore shore, Post post, double load) {
        Working pressed = working();
        Finding stress = headStress(c, shore, post, pressed);
        add(CheckId.BEAM_BEARING_AT_POST, c, stress, BEARING, run.met().greatest(), pressed);
        Working bent = working();
        Finding plates = PlateJudge.judge(shore, post, load, bent);
        add(CheckId.POST_PLATES, c, plates, PlateJudge.RULE, run.met().greatest(), bent);
        Working upright = working();
        Finding roll = RollJudge.judge(shore, load, upright);
        add(CheckId.BEAM_ROLL_RESTRAINT, c, roll, RollJudge.RULE, run.met().greatest(), upright);
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

    private Citation padCitation() {
        return PadPressure.citation(run.plan().ground());
    }

    private void judgePad(int c, ContactPlace.OnPost head, double load) {
        Post post = run.plan().shores().get(head.shore()).posts().get(head.post());
        Ground ground = run.plan().ground();
        PadLoad demand = demand(c, post, load);
        Working strong = working();
        add(
                CheckId.PAD_STRENGTH,
                c,
                PadStrength.judge(post, ground, demand, SlabNeighbours.nearest(run.frame(), head), strong),
                PadStrength.citation(post),
                PadStrength.factored(post) ? run.met().factored() : run.met().greatest(),
                strong);
        Working uneven = working();
        Finding worst = PadEccentricity.judge(post, ground, demand, uneven);
        add(
                CheckId.PAD_ECCENTRICITY,
                c,
                worst,
                PadEccentricity.citation(),
                run.met().greatest(),
                uneven);
        Working settles = working();
        Finding settled = settlement(c, head, settles);
        add(
                CheckId.PAD_SETTLEMENT,
                c,
                settled,
                PadSettlement.citation(ground),
                run.met().greatest(),
                settles);
    }

    private Finding settlement(int c, ContactPlace.OnPost head, Working working) {
        List<PadSettlement.Loaded> shore = new ArrayList<>();
        List<PadSettlement.Loaded> beyond = new ArrayList<>();
        for (int other = 0; other < run.frame().places().size(); other++) {
            if (other != c && run.frame().places().get(other) instanceof ContactPlace.OnPost near) {
                (near.shore() == head.shore() ? shore : beyond).add(loaded(other, near));
            }
        }
        return PadSettlement.judge(
                loaded(c, head),
                shore,
                beyond,
                run.plan().ground(),
                run.plan().circumstances().limits().settlement(),
                working);
    }

    private PadSettlement.Loaded loaded(int c, ContactPlace.OnPost head) {
        Shore shore = run.plan().shores().get(head.shore());
        double least =
                run.met().everOpen(c) ? 0 : Math.max(0, -run.met().least().value(c));
        return new PadSettlement.Loaded(shore.posts().get(head.post()), shore.y(), least, greatest(c));
    }

    /** Greatest load of the strength combinations (N), NaN where they were not solved. */
    private double factored(int c) {
        Peaks factored = run.met().factored();
        return factored.met(c) ? Math.max(0, factored.value(c)) : Double.NaN;
    }

    private Finding headStress(int c, Shore shore, Post post, Working working) {
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
        double toEnd = Math.min(post.x() - along / 2 - shore.start(), shore.end() - post.x() - along / 2);
        return new AcrossGrain(greatest(c), along, beam.breadth()).within(beam, toEnd, working);
    }

    private static double overlap(double centre, double size, double start, double end) {
        return Math.min(centre + size / 2, end) - Math.max(centre - size / 2, start);
    }

    private void add(CheckId id, int contact, Finding finding, Citation citation, Peaks peaks) {
        add(id, contact, finding, citation, peaks, Working.OFF);
    }

    private void add(CheckId id, int contact, Finding finding, Citation citation, Peaks peaks, Working working) {
        boolean compared = finding instanceof CheckResult.Judged
                || finding instanceof CheckResult.Refused
                || finding instanceof CheckResult.Condition;
        boolean opens = finding instanceof CheckResult.Condition && run.met().everOpen(contact);
        CheckResult.Where where = compared && peaks.met(contact)
                ? run.occurrences().where(opens ? run.met().openIn(contact) : peaks.caseOf(contact), Double.NaN)
                : new CheckResult.NoCase();
        String place = run.names().contact(run.frame().places().get(contact));
        results.add(new CheckResult(id, place, finding, where, citation, working.steps(finding)));
    }
}
