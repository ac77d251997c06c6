package dev.underprop.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.StressBelow;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class SizingTextTest {

    private static PadSizing wanted() throws IOException {
        byte[] request = Files.readAllBytes(Path.of("requests/pads-wanted.yaml"));
        Answer<PadSizing> answer = new PlanDoor().sizePads(request, Format.YAML, AnswerOptions.USUAL);
        return ((Answer.Judged<PadSizing>) answer).model();
    }

    private static String text(PadSizing result) {
        return new SizingText(new Paint(false)).of("pads.yaml", result);
    }

    /** As many lines as posts with neighbours, each under its post, with the words of the answer. */
    @Test
    void whatNeighboursAddBelowAPadIsTold() throws IOException {
        PadSizing result = wanted();
        String flowing = text(result).replaceAll("\\s+", " ");

        assertThat(result.getPosts()).hasSizeGreaterThan(1).allSatisfy(post -> {
            StressBelow below = post.getBelow();
            assertThat(below).isNotNull();
            assertThat(flowing).contains("Below: " + (below == null ? "" : below.getMessage()));
        });
        assertThat(flowing.split("Below: ", -1)).hasSize(result.getPosts().size() + 1);
    }

    @Test
    void aPostWithoutNeighboursHasNothingBelow() throws IOException {
        PadSizing result = wanted();
        result.getPosts().forEach(post -> post.setBelow(null));

        assertThat(text(result)).contains("Take: ").doesNotContain("Below: ");
    }
}
