package noctuary.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;

/** What the packed jar says it is made of (CycloneDX 1.6), and under which licences. */
class BillOfMaterialsIT {
    /** Those that ask for no more than their text and names beside the program; by SPDX's names where it has one. */
    private static final Set<String> ALLOWED =
            Set.of("Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "MIT", "Public Domain");

    @Test
    void everyLibraryHasAnAllowedLicenceAndStandsInTheList() throws IOException {
        List<String> components = components();
        assertThat(components).hasSizeGreaterThan(20);
        assertThat(components).allMatch(line -> ALLOWED.contains(line.substring(line.lastIndexOf('|') + 1)));
        List<String> listed = Files.readAllLines(Path.of("src/main/resources/META-INF/LICENCES.md")).stream()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.replaceAll("[`\\s]*\\|[`\\s]*", "|").replaceAll("^\\||\\|$", ""))
                .toList();
        assertThat(listed).containsExactlyInAnyOrderElementsOf(components);
    }

    /** As {@code group:name|licence}, sorted. */
    private static List<String> components() throws IOException {
        List<String> lines = new ArrayList<>();
        for (JsonNode component : bill().get("components")) {
            assertThat(component.get("licenses"))
                    .as(component.get("name").asText())
                    .hasSize(1);
            JsonNode licence = component.get("licenses").get(0).get("license");
            String name = licence.has("id")
                    ? licence.get("id").asText()
                    : licence.get("name").asText();
            lines.add(component.get("group").asText() + ":"
                    + component.get("name").asText() + "|" + name);
        }
        return lines.stream().sorted().toList();
    }

    private static JsonNode bill() throws IOException {
        try (JarFile jar = new JarFile(Path.of("target", "noctuary.jar").toFile())) {
            var entry = jar.getJarEntry("META-INF/sbom/noctuary.cdx.json");
            assumeTrue(entry != null, "packed with mvn -o, which leaves the bill of materials out");
            return new ObjectMapper().readTree(jar.getInputStream(entry));
        }
    }
}
