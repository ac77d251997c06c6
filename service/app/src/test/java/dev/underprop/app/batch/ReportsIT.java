package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import dev.underprop.app.Demos;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Every kind of report over the demos and a plan whose words try to be markup. */
class ReportsIT {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String NASTY = "<script>alert(1)</script> | `x` ]]> =1+1";

    @TempDir
    private static Path folder = Path.of("");

    private static Run one = new Run(0, "", "");

    @BeforeAll
    static void runs() throws IOException {
        Path plans = Files.createDirectory(folder.resolve("plans"));
        for (String demo : Demos.valid()) {
            Files.copy(Demos.FOLDER.resolve(demo), plans.resolve(demo));
        }
        for (String demo : Demos.invalid()) {
            Files.copy(Demos.FOLDER.resolve(demo), plans.resolve(demo));
        }
        Files.writeString(
                plans.resolve("nasty, name & <b>.yaml"),
                "id: \"" + NASTY + "\"\ntitle: \"<img src=x>\"\n" + Demos.text("bare.yaml"));
        one = run("one", "1");
        run("eight", "8");
    }

    private static Run run(String name, String workers) throws IOException {
        Path out = Files.createDirectory(folder.resolve(name));
        List<String> arguments = new ArrayList<>(List.of("check", "plans", "--workers", workers, "--text", "lines"));
        for (String kind : List.of("text", "json", "ndjson", "csv", "junit", "sarif", "markdown", "html")) {
            arguments.addAll(List.of("--report", kind + ":" + out.resolve(kind)));
        }
        return Run.in(folder, arguments.toArray(new String[0]));
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "ndjson", "csv", "junit", "sarif", "markdown", "html"})
    void isTheSameForOneWorkerAndEight(String kind) {
        assertThat(folder.resolve("eight").resolve(kind))
                .isNotEmptyFile()
                .hasSameBinaryContentAs(folder.resolve("one").resolve(kind));
    }

    @Test
    void peopleReadTheSumAndStatusIsTwo() {
        assertThat(one.status()).isEqualTo(2);
        assertThat(one.err()).isEmpty();
        assertThat(one.out()).contains("21 plans: 2 unstable, 13 inadequate, 3 incomplete, 1 adequate, 2 not judged.");
    }

    @Test
    void sarifIsValidAndKnowsItsRules() throws IOException {
        JsonNode sarif = JSON.readTree(report("sarif").toFile());
        var schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                .getSchema(ReportsIT.class.getResourceAsStream("/schemas/sarif-schema-2.1.0.json"));

        assertThat(schema.validate(sarif)).isEmpty();
        JsonNode rules = sarif.at("/runs/0/tool/driver/rules");
        Set<String> fingerprints = new HashSet<>();
        JsonNode results = sarif.at("/runs/0/results");
        assertThat(results.size()).isGreaterThan(200);
        for (JsonNode result : results) {
            JsonNode rule = rules.get(result.get("ruleIndex").asInt());
            assertThat(rule.get("id")).isEqualTo(result.get("ruleId"));
            assertThat(rule.at("/help/text").asText()).isNotBlank();
            assertThat(fingerprints.add(
                            result.at("/partialFingerprints/planCheckPlace~1v1").asText()))
                    .as("known by nothing else: %s", result)
                    .isTrue();
        }
    }

    @Test
    void sarifPointsAtTheLineOfThePost() throws IOException {
        List<String> text = Files.readAllLines(Demos.FOLDER.resolve("reference.yaml"));
        int seen = 0;
        for (JsonNode result : JSON.readTree(report("sarif").toFile()).at("/runs/0/results")) {
            JsonNode location = result.get("locations").get(0);
            String place = location.at("/logicalLocations/0/fullyQualifiedName").asText();
            if (location.at("/physicalLocation/artifactLocation/uri").asText().endsWith("/reference.yaml")
                    && place.matches("A[1-4]")) {
                int line = location.at("/physicalLocation/region/startLine").asInt();
                assertThat(text.get(line - 1)).contains("name: " + place + ",");
                seen++;
            }
        }
        assertThat(seen).as("findings at posts").isGreaterThanOrEqualTo(5);
    }

    @Test
    void sarifListsUpToANumberAndCountsTheRest() throws IOException {
        Path file = folder.resolve("few.sarif");

        Run.in(folder, "check", "plans", "--report", "sarif:" + file, "--sarif-most", "7");

        JsonNode run = JSON.readTree(file.toFile()).at("/runs/0");
        int all = JSON.readTree(report("sarif").toFile()).at("/runs/0/results").size();
        assertThat(run.get("results")).hasSize(7);
        assertThat(run.at("/properties/notListed").asInt()).isEqualTo(all - 7);
        assertThat(run.at("/invocations/0/toolExecutionNotifications/0/message/text")
                        .asText())
                .isEqualTo(all - 7 + " more findings are not listed.");
    }

    @Test
    void junitIsValidAndItsCountsAreRight() throws Exception {
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(ReportsIT.class.getResource("/schemas/junit-10.xsd"))
                .newValidator()
                .validate(new StreamSource(report("junit").toFile()));
        Document xml = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(report("junit").toFile());

        NodeList suites = xml.getElementsByTagName("testsuite");
        assertThat(suites.getLength()).isEqualTo(21);
        for (int i = 0; i < suites.getLength(); i++) {
            Element suite = (Element) suites.item(i);
            assertCount(suite, "tests", "testcase");
            assertCount(suite, "failures", "failure");
            assertCount(suite, "errors", "error");
            assertCount(suite, "skipped", "skipped");
        }
        assertCount(xml.getDocumentElement(), "tests", "testcase");
        assertCount(xml.getDocumentElement(), "failures", "failure");
        assertCount(xml.getDocumentElement(), "errors", "error");
        assertThat(suite(xml, "pantry-middle").getAttribute("failures")).isEqualTo("0");
        assertThat(suite(xml, "two-spans").getAttribute("failures"))
                .as("not checked, incomplete")
                .isEqualTo("19");
        assertThat(suite(xml, "reference").getAttribute("failures"))
                .as("fails, inadequate")
                .isEqualTo("6");
        assertThat(suite(xml, "barn-names").getAttribute("errors")).as("faulty").isEqualTo("1");
    }

    private static Element suite(Document xml, String name) {
        NodeList suites = xml.getElementsByTagName("testsuite");
        for (int i = 0; i < suites.getLength(); i++) {
            Element suite = (Element) suites.item(i);
            if (suite.getAttribute("name").equals(name)) {
                return suite;
            }
        }
        throw new AssertionError("no suite " + name);
    }

    private static void assertCount(Element suite, String attribute, String element) {
        assertThat(suite.getAttribute(attribute))
                .as("%s of %s", attribute, suite.getAttribute("name"))
                .isEqualTo(Integer.toString(suite.getElementsByTagName(element).getLength()));
    }

    @Test
    void htmlAsksForNothingFromOutsideAndTakesNoWordForMarkup() throws IOException {
        String html = Files.readString(report("html"));

        assertThat(html)
                .contains("default-src 'none'")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                .contains("&lt;img src=x&gt;")
                .contains("nasty, name &amp; &lt;b&gt;.yaml")
                .doesNotContain("<script", "<img", "http:", "https:", "url(");
    }

    @Test
    void markdownKeepsCellsWhole() throws IOException {
        List<String> rows = Files.readAllLines(report("markdown")).stream()
                .filter(line -> line.contains("alert(1)"))
                .toList();

        assertThat(rows)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row)
                        .startsWith("| &lt;script&gt;")
                        .contains("\\| \\`x\\`")
                        .endsWith(" |"));
    }

    @Test
    void csvHasARowACheckAndNoFormula() throws IOException {
        String csv = Files.readString(report("csv"));
        List<String> rows = csv.lines().toList();

        assertThat(csv)
                .startsWith("path,line,id,plan_verdict,check,place,verdict,")
                .endsWith("\r\n");
        assertThat(rows.stream().filter(row -> row.contains(",two-spans,"))).hasSize(39);
        assertThat(rows.stream().filter(row -> row.contains(",barn-names,NOT_JUDGED,")))
                .hasSize(7);
        assertThat(csv).contains("\"plans/nasty, name & <b>.yaml\"");
        assertThat(rows).allSatisfy(row -> assertThat(row).doesNotContain(",=", ",+", ",@"));
    }

    @Test
    void linesEndWithTheSum() throws IOException {
        List<String> lines = Files.readAllLines(report("ndjson"));

        assertThat(lines).hasSize(22);
        JsonNode last = JSON.readTree(lines.get(21));
        assertThat(last.get("complete").asBoolean()).isTrue();
        assertThat(last.at("/summary/plans").asInt()).isEqualTo(21);
        assertThat(last.at("/summary/notJudged").asInt()).isEqualTo(2);
    }

    private static Path report(String kind) {
        return folder.resolve("one").resolve(kind);
    }
}
