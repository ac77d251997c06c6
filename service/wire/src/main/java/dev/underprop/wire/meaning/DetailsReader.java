package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Member;
import dev.underprop.wire.fault.Messages;
import java.util.List;

/** Reads where a grade comes from and how the wood was treated. After a fault was reported, what is not said. */
final class DetailsReader {

    private static final String NONE = "none";
    private static final String PRESERVED = "preserved";
    private static final String FIRE = "fire retardant";

    private DetailsReader() {}

    static Member.Origin origin(Text assumedBy) {
        return assumedBy.said() ? new Member.Assumed(assumedBy.value()) : new Member.Stamped();
    }

    static Member.Treated treated(Text treatment, Text incised) {
        String said = treatment.given()
                ? treatment.choice(List.of(NONE, PRESERVED, FIRE)).orElse("")
                : "";
        boolean faulty = treatment.given() && said.isEmpty();
        if (incised.given() && !said.equals(PRESERVED) && !faulty) {
            incised.spot().report(Messages.INCISED_WITHOUT_PRESERVED, incised.value());
        }
        return switch (said) {
            case NONE -> Member.Treated.UNTREATED;
            case PRESERVED -> preserved(incised);
            case FIRE -> Member.Treated.FIRE_RETARDANT;
            default -> Member.Treated.UNSTATED;
        };
    }

    private static Member.Treated preserved(Text incised) {
        if (!incised.given()) {
            return Member.Treated.INCISING_UNSTATED;
        }
        return Boolean.parseBoolean(incised.value()) ? Member.Treated.INCISED : Member.Treated.NOT_INCISED;
    }
}
