package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PageTextTest {
    /** Against the library's own encoder, over every character there is. */
    @Test
    void isUtf8() throws Exception {
        for (int c = ' '; c <= Character.MAX_CODE_POINT; c += 1 + c / 40) {
            String text = Character.toString(c).repeat(3);
            if (c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE) {
                char[] legible = text.toCharArray();
                String expected = new String(legible, 0, Legible.mend(legible, legible.length));
                assertThat(page(text)).as("character %x", c).isEqualTo(expected.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    @Test
    void growsWithWhatIsWritten() throws Exception {
        String text = "a <b>µ–🜨</b>\n".repeat(20_000);
        assertThat(page(text)).isEqualTo(text.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] page(String text) throws Exception {
        PageText page = new PageText();
        page.write(text);
        ByteBuffer made = page.page();
        byte[] bytes = new byte[made.remaining()];
        made.get(bytes);
        return bytes;
    }
}
