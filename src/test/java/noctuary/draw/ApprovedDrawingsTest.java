package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One small chart of each kind against the drawing that was looked at and approved. Run with {@code -Dapprove=true} to
 * write them anew, then read the diff.
 */
class ApprovedDrawingsTest {
    private static final Path APPROVED = Path.of("src/test/resources/noctuary/draw/approved");

    static Stream<String> names() {
        return SmallCharts.all().keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("names")
    void isAsApproved(String name) throws IOException {
        Chart chart = SmallCharts.all().get(name);
        String drawn = "<div>\n" + chart.both(name) + "</div>\n";
        if (Boolean.getBoolean("approve")) {
            Files.createDirectories(APPROVED);
            Files.writeString(APPROVED.resolve(name + ".svg.xml"), drawn, StandardCharsets.UTF_8);
        }
        assertThat(drawn).isEqualTo(approved(name));
    }

    private static String approved(String name) {
        try (InputStream in = Boolean.getBoolean("approve")
                ? Files.newInputStream(APPROVED.resolve(name + ".svg.xml"))
                : ApprovedDrawingsTest.class.getResourceAsStream("approved/" + name + ".svg.xml")) {
            assertThat(in).as("an approved drawing of %s", name).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
