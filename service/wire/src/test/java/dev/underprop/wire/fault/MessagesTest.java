package dev.underprop.wire.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MessagesTest {
    @ParameterizedTest
    @EnumSource(Messages.class)
    void sayWhatIsWrongAndWhatToDo(Messages message) {
        Fault fault = message.fault("got", "<one>.", "<two>.", "<three>.");
        assertThat(fault.code()).matches("[a-z0-9]+(-[a-z0-9]+)*");
        assertThat(fault.detail()).endsWith(".").doesNotContain("{").doesNotContain("}");
        assertThat(fault.remedy()).matches(".+[.?]").doesNotContain("{").doesNotContain("}");
        assertThat(fault.got()).isEqualTo("got");
        assertThat(fault.placed()).isFalse();
    }

    @Test
    void haveCodesOfTheirOwnButForRemediesThatKnowMore() {
        var byCode = Arrays.stream(Messages.values()).collect(Collectors.groupingBy(Messages::code));
        assertThat(byCode.values())
                .allSatisfy(sharing -> assertThat(
                                sharing.stream().filter(one -> !one.name().endsWith("_NEAR")))
                        .hasSize(1));
    }
}
