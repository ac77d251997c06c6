package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;

/**
 * The list of components that is shipped names everything that is in the jar, by the hash of what was packed. A jar without the list
 * is only ever built offline, where the list cannot be made.
 */
class ComponentsIT {
    private static final String LIST = "META-INF/sbom/underprop.cdx.json";
    private static final String LICENCES = "META-INF/licences.txt";
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void everyClassOfOthersIsOfAComponentThatIsListed() throws IOException {
        Set<String> listed = hashes();
        if (listed.isEmpty()) {
            return;
        }
        Set<String> unlisted = new TreeSet<>();
        Set<String> known = new HashSet<>();
        for (Path jar : classPath()) {
            List<String> classes = classes(jar);
            known.addAll(classes);
            if (!listed.contains(sha256(jar))) {
                unlisted.addAll(classes);
            }
        }
        Set<String> shipped = new TreeSet<>(classes(Run.JAR));
        shipped.removeIf(name -> name.startsWith("dev/underprop/"));

        assertThat(shipped).hasSizeGreaterThan(2000).isSubsetOf(known);
        shipped.retainAll(unlisted);
        assertThat(shipped).as("classes of components that are not listed").isEmpty();
    }

    @Test
    void everyComponentHasItsLicenceAndStandsInTheListOfLicences() throws IOException {
        String licences = new String(shipped(LICENCES), StandardCharsets.UTF_8);
        Map<String, String> without = new HashMap<>();
        for (JsonNode component : list().path("components")) {
            String name = component.get("group").textValue() + ":"
                    + component.get("name").textValue() + ":"
                    + component.get("version").textValue();
            if (!name.startsWith("dev.underprop:") && !licences.contains("\n" + name + ": ")) {
                without.put(name, "not among the licences");
            }
            if (component.path("licenses").isEmpty()) {
                without.put(name, "no licence");
            }
        }
        assertThat(without).isEmpty();
        assertThat(licences)
                .contains("org.webjars:swagger-ui:")
                .contains("Apache-2.0")
                .doesNotContain("nknown");
    }

    @Test
    void theListTellsNoTime() throws IOException {
        JsonNode list = list();
        if (list.isEmpty()) {
            return;
        }
        assertThat(list.at("/bomFormat").textValue()).isEqualTo("CycloneDX");
        assertThat(list.at("/metadata/component/name").textValue()).isEqualTo("underprop-app");
        assertThat(list.at("/metadata/timestamp").isMissingNode()).isTrue();
        assertThat(shipped(LIST)).isEqualTo(Files.readAllBytes(Run.JAR.resolveSibling("underprop.cdx.json")));
    }

    /** The list, or one without components if the build was offline and made none. */
    private static JsonNode list() throws IOException {
        try (JarFile jar = new JarFile(Run.JAR.toFile())) {
            if (jar.getJarEntry(LIST) == null) {
                assertThat(System.getProperty("underprop.build"))
                        .as("a jar without the list")
                        .isEqualTo("offline: true");
                return JSON.createObjectNode();
            }
        }
        return JSON.readTree(shipped(LIST));
    }

    private static Set<String> hashes() throws IOException {
        Set<String> hashes = new HashSet<>();
        for (JsonNode component : list().path("components")) {
            for (JsonNode hash : component.path("hashes")) {
                if (hash.get("alg").textValue().equals("SHA-256")) {
                    hashes.add(hash.get("content").textValue());
                }
            }
        }
        return hashes;
    }

    /** The jars that the tests run with; among them are all that were packed. */
    private static List<Path> classPath() {
        List<Path> jars = new ArrayList<>();
        for (String element : System.getProperty("java.class.path").split(File.pathSeparator)) {
            if (element.endsWith(".jar")) {
                jars.add(Path.of(element));
            }
        }
        return jars;
    }

    private static List<String> classes(Path jar) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            return file.stream()
                    .map(JarEntry::getName)
                    .filter(name -> name.endsWith(".class") && !name.endsWith("module-info.class"))
                    .toList();
        }
    }

    private static byte[] shipped(String name) throws IOException {
        try (JarFile jar = new JarFile(Run.JAR.toFile());
                InputStream in = jar.getInputStream(jar.getJarEntry(name))) {
            return in.readAllBytes();
        }
    }

    private static String sha256(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
