package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Which characters are errors: HTML Living Standard, section 13.2.3.5, preprocessing the input stream. */
class LegibleTest {
    @Test
    void charactersThatHtmlForbidsAreMarked() {
        assertThat(text("<p title=\"a\u0007\">b\u0085\tc\n</p>")).isEqualTo("<p title=\"a\uFFFD\">b\uFFFD\tc\n</p>");
        assertThat(text("a\uFFFEb\uD800c")).isEqualTo("a\uFFFDb\uFFFDc");
    }

    @Test
    void allOtherTextStaysAsItIs() {
        assertThat(text("Größe λ 🜨, 5 µm\r\n")).isEqualTo("Größe λ 🜨, 5 µm\r\n");
    }

    private static String text(String before) {
        char[] text = before.toCharArray();
        return StandardCharsets.UTF_8.decode(Legible.utf8(text, text.length)).toString();
    }
}
