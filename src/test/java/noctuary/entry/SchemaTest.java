package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The JSON Schemas for editors against the examples that the reader itself is held to. */
class SchemaTest {
    private static final Pattern FRONT = Pattern.compile("\\A---\\n(.*?\\n)---\\n", Pattern.DOTALL);
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
}
