package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MarkupTest {
    @Test
    void escapesWhatMarkupMeans() {
        assertThat(Markup.text("<a href=\"x\">Tom & 'Ann'</a>"))
                .isEqualTo("&lt;a href=&quot;x&quot;&gt;Tom &amp; &#39;Ann&#39;&lt;/a&gt;");
    }

    /** Characters outside production 2 of XML 1.0 (fifth edition) cannot even be written as references. */
    @Test
    void leavesOutWhatXmlForbids() {
        assertThat(Markup.text("a\u0000b\u0008c\ufffed\ud800e\u0085f")).isEqualTo("abcdef");
        assertThat(Markup.text("µ′ 星 \ud83c\udf19\tx\n")).isEqualTo("µ′ 星 \ud83c\udf19\tx\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"entries/a/index.html", "../rigs/heron.html#train", "#top", "a/b:c.html", "./x:y"})
    void letsLinksStayInside(String href) {
        assertThat(Markup.staysInside(href)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "javascript:alert(1)",
                "JaVaScRiPt:alert(1)",
                "\tjavascript:alert(1)",
                "java\nscript:alert(1)",
                "data:text/html,x",
                "http://example.org/",
                "//example.org/",
                "/\\example.org",
                " "
            })
    void dropsLinksThatLeadOut(String href) {
        assertThat(Markup.staysInside(href)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"trend-w, trend-w", "a b, a_20b", "a_20b, a_5f20b", "né, n_e9", "x), x_29"})
    void makesIdsThatStayApart(String raw, String id) {
        assertThat(Markup.id(raw)).isEqualTo(id);
    }
}
