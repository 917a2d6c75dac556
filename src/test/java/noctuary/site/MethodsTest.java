package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import noctuary.fact.Origin;
import org.junit.jupiter.api.Test;

class MethodsTest {
    @Test
    void theMethodPageHasEverySectionWithItsSource() throws IOException {
        String template = template();
        for (String id : Methods.ids()) {
            int from = template.indexOf("<@section \"" + id + "\">");
            assertThat(from).as(id).isPositive();
            assertThat(template.substring(from, template.indexOf("</@section>", from)))
                    .as(id)
                    .contains("class=\"source\"");
        }
        List<String> sections = Pattern.compile("<@section \"([^\"]+)\">")
                .matcher(template)
                .results()
                .map(match -> match.group(1))
                .toList();
        assertThat(sections).containsExactlyElementsOf(Methods.ids());
    }

    @Test
    void anOriginLinksToItsSectionAndAnUnknownOneToTheTop() {
        Origins origins = new Origins(
                Address.entry("a"), new Discretion(Fixture.content(true).journal()));
        assertThat(origins.note(new Origin.Measured("f", "fwhm")).method().href())
                .isEqualTo("../../method/index.html#fwhm");
        assertThat(origins.note(new Origin.Measured("f", "unheard-of")).method().href())
                .isEqualTo("../../method/index.html");
    }

    private static String template() throws IOException {
        try (var in = MethodsTest.class.getResourceAsStream("/site-templates/method.ftlh")) {
            return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }
}
