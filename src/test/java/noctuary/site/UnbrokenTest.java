package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** That unit and number part with a space which does not break: the SI brochure, 9th edition, section 5.4.3. */
class UnbrokenTest {
    @Test
    void aNumberStaysWithItsUnitAndAValueWithItsError() {
        assertThat(joined("<p>5 % of 1.2 mm, 0.68 ± 0.03 px; 2 h 5 min (18 EUR).</p>"))
                .isEqualTo(
                        "<p>5\u00a0% of 1.2\u00a0mm, 0.68\u00a0±\u00a00.03\u00a0px; 2\u00a0h 5\u00a0min (18\u00a0EUR).</p>");
    }

    @Test
    void otherWordsBreakAsBefore() {
        assertThat(joined("<p>7 nights, 4 minor changes, M 31 early</p>"))
                .isEqualTo("<p>7 nights, 4 minor changes, M 31 early</p>");
    }

    @Test
    void tagsQuotationsAndChoicesStayAsTheyAre() {
        String html = "<td data-rig=\"150 mm tube\"><code>EXPTIME = 5 s</code><option>150 mm tube</option></td>";
        assertThat(joined(html)).isEqualTo(html);
    }

    @Test
    void unfinishedTagsComeOutAsTheyWentIn() {
        assertThat(joined("a < b 5 %")).isEqualTo("a < b 5 %");
        assertThat(joined("<code>5 %")).isEqualTo("<code>5 %");
    }

    private static String joined(String html) {
        char[] text = html.toCharArray();
        Unbroken.join(text, text.length);
        return new String(text);
    }
}
