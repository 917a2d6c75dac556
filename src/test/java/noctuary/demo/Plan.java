package noctuary.demo;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** Reads {@code plan.yaml}. */
final class Plan {
    private Plan() {}

    static List<PlannedEntry> read() {
        ObjectMapper mapper = new ObjectMapper(new YAMLFactory()).registerModule(new JavaTimeModule());
        try (InputStream in = Plan.class.getResourceAsStream("plan.yaml")) {
            return List.of(mapper.readValue(in, PlannedEntry[].class));
        } catch (IOException e) {
            throw new IllegalStateException("plan.yaml", e);
        }
    }
}
