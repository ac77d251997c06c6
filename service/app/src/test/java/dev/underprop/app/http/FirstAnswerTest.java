package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The example of the README is short, compiles and gets its answer. */
@ExtendWith(RunningService.class)
class FirstAnswerTest {
    private static final Path ROOT = Path.of("..", "..");
    private static final Path EXAMPLE = ROOT.resolve("client/src/consumer/src/main/java/FirstAnswer.java");

    @Test
    void readmeShowsIt() throws IOException {
        String example = Files.readString(EXAMPLE);

        assertThat(Files.readString(ROOT.resolve("README.md"))).contains("```java\n" + example + "```");
        assertThat(example.lines().filter(line -> !line.isBlank()).count())
                .as("lines of Java")
                .isLessThan(30);
    }

    @Test
    void getsItsAnswer(@TempDir Path classes) throws Exception {
        int outcome = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-proc:none", "-d", classes.toString(), EXAMPLE.toString());
        assertThat(outcome).isZero();

        assertThat(run(classes)).startsWith("INADEQUATE: ").contains("lifting off");
    }

    private static String run(Path classes) throws Exception {
        PrintStream usual = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (URLClassLoader loader = new URLClassLoader(
                        new URL[] {classes.toUri().toURL()}, FirstAnswerTest.class.getClassLoader());
                PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8)) {
            System.setOut(out);
            Method main = loader.loadClass("FirstAnswer").getDeclaredMethod("main", String[].class);
            main.setAccessible(true);
            main.invoke(null, (Object) new String[] {RunningService.address()});
        } finally {
            System.setOut(usual);
        }
        return printed.toString(StandardCharsets.UTF_8);
    }
}
