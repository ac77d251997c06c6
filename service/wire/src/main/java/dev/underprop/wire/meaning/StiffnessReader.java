package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Post;
import dev.underprop.wire.fault.Messages;
import java.util.Optional;

/** Reads how stiff a post is: rigid, about a value, or between two. */
final class StiffnessReader {

    /**
     * What is said of it.
     *
     * @param rigid a truth
     * @param about one value
     * @param soft least
     * @param stiff greatest
     */
    record Said(Text rigid, Text about, Text soft, Text stiff) {
        boolean range() {
            return soft.given() || stiff.given();
        }
    }

    private StiffnessReader() {}

    /** What is said, or nothing where nothing is said or a fault was reported. */
    static Optional<Post.Stiffness> read(Said said) {
        double about = said.about().quantityOr(Range.STIFFNESS, Double.NaN);
        if (said.rigid().yes() && said.about().given()) {
            said.about()
                    .spot()
                    .report(Messages.STIFFNESS_WITH_RIGID, said.about().value());
        }
        if (said.range()) {
            return range(said);
        }
        if (said.rigid().yes()) {
            return Optional.of(new Post.Rigid());
        }
        return Double.isNaN(about) ? Optional.empty() : Optional.of(new Post.About(about));
    }

    private static Optional<Post.Stiffness> range(Said said) {
        double soft = said.soft().quantityOr(Range.STIFFNESS, Double.NaN);
        double stiff = said.stiff().quantityOr(Range.STIFFNESS, Double.NaN);
        Text first = said.soft().given() ? said.soft() : said.stiff();
        if (said.rigid().yes() || said.about().given()) {
            first.spot().report(Messages.STIFFNESS_TWO_WAYS, first.value());
        }
        Text missing = said.soft().given() ? said.stiff() : said.soft();
        if (!missing.given()) {
            missing.spot().report(Messages.STIFFNESS_RANGE_INCOMPLETE, "", missing.name());
        }
        if (stiff < soft) {
            said.stiff()
                    .spot()
                    .report(Messages.STIFFNESS_RANGE_TURNED
                            .fault(said.stiff().value())
                            .withLimit("at least " + said.soft().value()));
        }
        return stiff >= soft ? Optional.of(new Post.Between(soft, stiff)) : Optional.empty();
    }
}
