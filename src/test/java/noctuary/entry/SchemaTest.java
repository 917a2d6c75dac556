package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The JSON Schemas for editors against the examples that the reader itself is held to. */
class SchemaTest {
    private static final Pattern FRONT = Pattern.compile("\\A---\\n(.*?\\n)---\\n", Pattern.DOTALL);
    private static final Pattern ASKED =
            Pattern.compile("\\.(?:one|needed|list|items|groups|group)\\(\\s*\"([^\"]+)\"");
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

    private static JsonSchema schema(String kind) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(SchemaTest.class.getResourceAsStream("/noctuary/begin/schemas/" + kind + ".schema.json"));
    }

    private static String kind(String file) {
        return file.endsWith("journal.yaml")
                ? "journal"
                : file.contains("/rigs/") ? "rig" : file.contains("/sites/") ? "site" : "entry";
    }

    private static List<String> complaints(String file, String text) throws IOException {
        Matcher front = FRONT.matcher(text);
        JsonNode keys = YAML.readTree(file.endsWith(".yaml") ? text : front.find() ? front.group(1) : "{}");
        return schema(kind(file)).validate(keys).stream()
                .map(m -> file + ": " + m.getMessage())
                .toList();
    }

    private static List<Map.Entry<String, String>> notes(NoteSpec spec) {
        return spec.files().entrySet().stream()
                .filter(f -> f.getKey().matches("entries/.*\\.(md|yaml)"))
                .filter(f -> !f.getValue().matches("(?s).*[→␍⟨].*"))
                .toList();
    }

    /** Notes of examples without problems. */
    @Test
    void everyNoteThatReadsWithoutAFaultFitsItsSchema() throws IOException {
        List<String> complaints = new ArrayList<>();
        int looked = 0;
        for (NoteSpec spec : NoteSpec.all()) {
            if (spec.problems().isEmpty()) {
                for (Map.Entry<String, String> note : notes(spec)) {
                    complaints(note.getKey(), note.getValue()).forEach(c -> complaints.add(spec.claim() + ": " + c));
                    looked++;
                }
            }
        }
        assertThat(complaints).isEmpty();
        assertThat(looked).isGreaterThanOrEqualTo(15);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "entries/a.md|titel: A",
                "entries/a.md|exposure: [{count: 4}]",
                "entries/a.md|guiding: {rms: 0.62}",
                "entries/a.md|night: 14.6.2025",
                "entries/rigs/a.md|optics: {aperture: 150 mm}",
                "entries/rigs/a.md|'name: A\ncamera: {pixel: 3.3}'",
                "entries/rigs/a.md|'name: A\ncost: [{part: tube, price: 640}]'",
                "entries/sites/a.md|'name: A\nlatitude: 44.3'",
                "entries/journal.yaml|publish: {coordinate: no}"
            })
    void whatTheReaderRefusesTheSchemaRefuses(String file, String keys) throws IOException {
        assertThat(complaints(file, file.endsWith(".yaml") ? keys : "---\n" + keys + "\n---\n"))
                .isNotEmpty();
    }

    /** By what the reader's sources ask for, each key a literal there, and what the schemas name. */
    @Test
    void readerAndSchemasKnowTheSameKeys() throws IOException {
        StringBuilder sources = new StringBuilder();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/noctuary/entry"))) {
            for (Path file : files.sorted().toList()) {
                sources.append(Files.readString(file));
            }
        }
        Set<String> named = new TreeSet<>();
        for (String kind : List.of("entry", "rig", "site", "journal")) {
            properties(
                    YAML.readTree(
                            SchemaTest.class.getResourceAsStream("/noctuary/begin/schemas/" + kind + ".schema.json")),
                    named);
        }
        assertThat(named).hasSizeGreaterThan(40).allMatch(key -> sources.indexOf('"' + key + '"') >= 0);
        List<String> asked =
                ASKED.matcher(sources).results().map(m -> m.group(1)).toList();
        assertThat(asked).hasSizeGreaterThan(30).allMatch(named::contains);
    }

    private static void properties(JsonNode schema, Set<String> into) {
        schema.path("properties").fieldNames().forEachRemaining(into::add);
        schema.forEach(inner -> properties(inner, into));
    }
}
