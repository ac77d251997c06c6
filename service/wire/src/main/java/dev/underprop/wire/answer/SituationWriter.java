package dev.underprop.wire.answer;

import dev.underprop.api.model.BearingLoad;
import dev.underprop.api.model.BearingTransfer;
import dev.underprop.api.model.ContactKind;
import dev.underprop.api.model.ContactResult;
import dev.underprop.api.model.ContactState;
import dev.underprop.api.model.HandCheck;
import dev.underprop.api.model.LoadCase;
import dev.underprop.api.model.LoadCaseContact;
import dev.underprop.api.model.MemberKind;
import dev.underprop.api.model.MemberResult;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.PostResult;
import dev.underprop.api.model.SidewaysForce;
import dev.underprop.api.model.SituationState;
import dev.underprop.api.model.TippingFactor;
import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.SituationResult;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.wire.quantity.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes what became of a situation. */
final class SituationWriter {

    /** Below this a load by hand is rounding, and nothing is divided by it (N). */
    private static final double SOME_LOAD = 1e-3;

    private final JobPlan plan;
    private final List<String> order;
    private final Figures figures;

    /**
     * @param order names of the posts in the order of the plan; the engine has them in order of x
     */
    SituationWriter(JobPlan plan, List<String> order, Figures figures) {
        this.plan = plan;
        this.order = List.copyOf(order);
        this.figures = figures;
    }

    /** What both questions answer: posts and hand checks. */
    dev.underprop.api.model.SituationResult brief(SituationResult result) {
        dev.underprop.api.model.SituationResult model = new dev.underprop.api.model.SituationResult()
                .name(result.name())
                .state(result.stands() ? SituationState.STABLE : SituationState.UNSTABLE)
                .removed(result.removed())
                .verdict(PlanVerdict.fromValue(result.verdict().name()))
                .posts(result.posts().stream()
                        .sorted(Comparator.comparingInt(post -> order.indexOf(post.name())))
                        .map(this::post)
                        .toList())
                .handChecks(result.handChecks().stream().map(this::handCheck).toList())
                .bearings(result.whatIf().bearings().stream().map(this::bearing).toList())
                .transfers(
                        result.whatIf().transfers().stream().map(this::transfer).toList())
                .tipping(result.whatIf().tipping().stream().map(this::tipping).toList())
                .sideways(
                        result.whatIf().sideways().stream().map(this::sideways).toList())
                .standsOnlyByFastenings(result.whatIf().hangsOnTies());
        if (result.stability() instanceof SituationResult.Moves moves) {
            return model.reason(reason(moves));
        }
        return model.equilibriumResidual(
                        figures.quantity(Kind.FORCE, result.quality().residual()))
                .penetration(figures.quantity(Kind.DEFLECTION, result.quality().penetration()));
    }

    private static String reason(SituationResult.Moves moves) {
        String text = moves.reason();
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + " (under " + moves.combination()
                + ", live load: " + moves.pattern() + "; " + Wording.words(moves.bound()) + ").";
    }

    private BearingLoad bearing(SituationResult.BearingLoad load) {
        BearingLoad model = new BearingLoad()
                .bearing(load.name())
                .dead(figures.quantity(Kind.FORCE, load.dead()))
                .greatest(figures.extreme(Kind.FORCE, load.greatest()));
        return Double.isNaN(load.asFound()) ? model : model.asFound(figures.quantity(Kind.FORCE, load.asFound()));
    }

    private BearingTransfer transfer(SituationResult.Transfer transfer) {
        BearingTransfer model = new BearingTransfer()
                .bearing(transfer.name())
                .load(figures.quantity(Kind.FORCE, transfer.load()))
                .seat(figures.quantity(Kind.FORCE, transfer.seat()))
                .movement(figures.quantity(Kind.DEFLECTION, transfer.movement()))
                .place(transfer.place())
                .allowed(figures.quantity(Kind.DEFLECTION, transfer.allowed()));
        return Double.isNaN(transfer.lift())
                ? model
                : model.preloadLift(figures.quantity(Kind.DEFLECTION, transfer.lift()));
    }

    private TippingFactor tipping(SituationResult.Tipping tipping) {
        return new TippingFactor()
                .member(tipping.member())
                .over(tipping.over())
                .holding(figures.quantity(Kind.MOMENT, tipping.holding()))
                .tipping(figures.quantity(Kind.MOMENT, tipping.tipping()))
                .factor(tipping.factor())
                .combination(tipping.combination());
    }

    private SidewaysForce sideways(SituationResult.Sideways sideways) {
        SidewaysForce model = new SidewaysForce()
                .place(sideways.place())
                .direction(sideways.direction())
                .force(figures.quantity(Kind.FORCE, sideways.force()))
                .notional(figures.quantity(Kind.FORCE, sideways.notional()));
        return sideways.declared().isEmpty() ? model : model.declared(sideways.declared());
    }

    /** What a layout analysis adds: contacts and members, and with {@code full} the load cases. */
    dev.underprop.api.model.SituationResult whole(SituationResult result, boolean full) {
        dev.underprop.api.model.SituationResult model = brief(result)
                .contacts(result.contacts().stream().map(this::contact).toList())
                .members(result.members().stream().map(this::member).toList());
        return full
                ? model.loadCases(result.plainCases().stream()
                        .map(one -> loadCase(result, one))
                        .toList())
                : model;
    }

    private PostResult post(SituationResult.PostResult post) {
        PostResult model = new PostResult()
                .post(post.name())
                .shore(plan.shores().get(post.place().shore()).name())
                .greatest(figures.extreme(Kind.FORCE, post.greatest()))
                .least(figures.extreme(Kind.FORCE, post.least()))
                .handCheck(figures.quantity(Kind.FORCE, post.byHand()))
                .movement(figures.quantity(Kind.DEFLECTION, post.movement()))
                .factored(figures.extreme(Kind.FORCE, post.factored()))
                .wishedInPlace(figures.quantity(Kind.FORCE, post.wished()));
        if (!Double.isNaN(post.asFound())) {
            model.asFound(figures.quantity(Kind.FORCE, post.asFound()));
        }
        return post.byHand() > SOME_LOAD ? model.ratioToHand(post.greatest().value() / post.byHand()) : model;
    }

    private HandCheck handCheck(SituationResult.HandCheck check) {
        return new HandCheck()
                .place(check.place())
                .load(figures.quantity(Kind.FORCE, check.load()))
                .rule("lever rule on each joist and beam, cut into simple spans at its supports, under "
                        + check.combination());
    }

    private ContactResult contact(SituationResult.ContactResult contact) {
        return new ContactResult()
                .place(contact.name())
                .kind(kind(contact.place()))
                .state(ContactState.fromValue(contact.state().name()))
                .greatest(figures.extreme(Kind.FORCE, contact.greatest()))
                .least(figures.extreme(Kind.FORCE, contact.least()));
    }

    private static ContactKind kind(ContactPlace place) {
        if (place instanceof ContactPlace.OnBearing) {
            return ContactKind.JOIST_ON_BEARING;
        }
        if (place instanceof ContactPlace.OnPier) {
            return ContactKind.GIRDER_ON_PIER;
        }
        return place instanceof ContactPlace.OnShore ? ContactKind.JOIST_ON_SHORE : ContactKind.BEAM_ON_POST;
    }

    private MemberResult member(SituationResult.MemberResult member) {
        return new MemberResult()
                .member(member.name())
                .kind(
                        switch (member.kind()) {
                            case JOIST -> MemberKind.JOIST;
                            case BEAM -> MemberKind.SHORE_BEAM;
                            case GIRDER -> MemberKind.GIRDER;
                        })
                .sagging(figures.extreme(Kind.MOMENT, member.sagging()))
                .hogging(figures.extreme(Kind.MOMENT, member.hogging()))
                .shear(figures.extreme(Kind.FORCE, member.shear()))
                .deflection(figures.extreme(Kind.DEFLECTION, member.deflection()));
    }

    private LoadCase loadCase(SituationResult result, SituationResult.PlainCase one) {
        List<LoadCaseContact> contacts = new ArrayList<>();
        for (int c = 0; c < result.contacts().size(); c++) {
            contacts.add(new LoadCaseContact()
                    .place(result.contacts().get(c).name())
                    .force(figures.quantity(Kind.FORCE, one.forces().get(c)))
                    .opening(figures.quantity(Kind.DEFLECTION, one.openings().get(c)))
                    .movement(figures.quantity(Kind.DEFLECTION, one.movements().get(c))));
        }
        return new LoadCase()
                .combination(one.combination())
                .pattern(one.pattern())
                .bound(Figures.bound(one.bound()))
                .contacts(contacts);
    }
}
