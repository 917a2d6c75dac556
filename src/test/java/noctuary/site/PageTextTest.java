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
                String expected = isForbidden(c) ? "\uFFFD".repeat(3) : text;
                assertThat(page(text)).as("character %x", c).isEqualTo(expected.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    /** Controls and noncharacters, as the HTML standard lists them in section 13.2.3.5; no white space is asked for here. */
    private static boolean isForbidden(int c) {
        return c >= 0x7f && c <= 0x9f || c >= 0xfdd0 && c <= 0xfdef || (c & 0xffff) >= 0xfffe;
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
