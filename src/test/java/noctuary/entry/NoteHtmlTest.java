package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import noctuary.keep.Branches;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoteHtmlTest {
    private static final Set<String> ELEMENTS = Set.of(
            "html",
            "head",
            "body",
            "p",
            "em",
            "strong",
            "del",
            "code",
            "pre",
            "a",
            "img",
            "ul",
            "ol",
            "li",
            "input",
            "blockquote",
            "hr",
            "br",
            "h2",
            "h3",
            "h4",
            "h5",
            "h6",
            "table",
            "thead",
            "tbody",
            "tr",
            "th",
            "td",
            "sup",
            "div");
    private static final Set<String> ATTRIBUTES = Set.of(
            "href",
            "rel",
            "title",
            "src",
            "alt",
            "width",
            "height",
            "loading",
            "id",
            "class",
            "type",
            "disabled",
            "checked",
            "aria-label",
            "start");

    @TempDir
    Path root;

    private String html(String body) {
        try {
            Path real = root.toRealPath();
            var margin = new Margin("entries/n.md", new Ledger());
            var note = new Note(new Node.Mapping(List.of(), 1, true), body, 1);
            return NoteHtml.of(
                            note,
                            new NoteLinks(
                                    real,
                                    real,
                                    new Trail(Branches.unknown(real.resolve("entries"))),
                                    new Pages(Map.of()),
                                    margin),
                            margin)
                    .html();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void assertHarmless(String html) {
        Document page = Jsoup.parse(html);
        for (Element element : page.getAllElements()) {
            if (!element.tagName().equals("#root")) {
                assertThat(ELEMENTS).contains(element.tagName());
                element.attributes().forEach(attribute -> assertThat(ATTRIBUTES).contains(attribute.getKey()));
            }
            if (element.hasAttr("href")) {
                assertThat(element.attr("href"))
                        .matches("(https?:|mailto:|#|files/|\\.\\./\\.\\./(entries|rigs)/)\\S+");
            }
            if (element.hasAttr("src")) {
                assertThat(element.attr("src")).matches("files/[A-Za-z0-9._-]+");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "<img src=x onerror=alert(1)>",
                "[a](javascript:alert(1))",
                "[a](<java\tscript:alert(1)>)",
                "[a](JAVASCRIPT:alert(1))",
                "[a](&#x6A;avascript&colon;alert(1))",
                "[a](\\javascript:alert(1))",
                "[a](javascript&#58;alert(1))",
                "[a](%6Aavascript:alert(1))",
                "[a](\u0001javascript:alert(1))",
                "[a](data:text/html;base64,PHNjcmlwdD4=)",
                "[a](vbscript:x) [b](//host/x) [c](/\\host) [d](file:///etc/passwd) [e](\\\\host\\x)",
                "<javascript:alert(1)> <data:x> <vbscript:x>",
                "[a]\n\n[a]: javascript:alert(1)",
                "![a](javascript:x) ![b](data:image/svg+xml,x) ![c](//host/x.png) ![d][e]\n\n[e]: javascript:x",
                "![\"onerror=\"alert(1)](https://example.org/x.png \"t\\\" onload=\\\"x\")",
                "[a](https://example.org/\" onclick=\"x 't')",
                "[![a](https://example.org/x.png)](https://example.org)",
                "`<script>` and\n\n    <script>\n\n```\"><script>\n</script>\n```",
                "|<b>|[x](javascript:x)|\n|-|-|\n|<i>|\"|",
                "- [x] <input onfocus=x autofocus>\n\nx[^1]\n\n[^1]: <svg onload=x> [y](javascript:x)",
                "# <h1 onclick=x>\n\n&lt;script&gt; &#60;script&#62;",
                "<!-- --><script>x</script> <!--> <script>y</script> -->",
                "a\n<!--\n--><script>x</script>\n\n<?php x ?> <![CDATA[<script>x</script>]]> <!DOCTYPE x>"
            })
    void cannotRunAnything(String body) {
        assertHarmless(html(body));
    }

    @Test
    void noMixtureOfNastyPiecesRunsAnything() {
        String[] pieces = {
            "<script>",
            "](",
            "[a",
            "javascript:",
            "![",
            "<!--",
            "-->",
            "\"",
            "'",
            ")",
            "\n\n",
            "`",
            "onclick=x",
            "<a ",
            ">",
            "&#106;",
            "[^1]",
            "[^1]: ",
            "|",
            "|-|",
            "- [ ] ",
            "# ",
            "https://x.example/",
            "<https://x.example/",
            "\\",
            "*",
            "~~"
        };
        var random = new Random(20260102);
        for (int i = 0; i < 1500; i++) {
            StringBuilder body = new StringBuilder();
            for (int n = random.nextInt(14); n >= 0; n--) {
                body.append(pieces[random.nextInt(pieces.length)]);
            }
            assertHarmless(html(body.toString()));
        }
    }

    @Test
    void idsAreUnique() {
        Document page = Jsoup.parse(html("# A\n\n# A\n\n## fn-1\n\nx[^1] y[^1] z[^2]\n\n[^1]: a\n[^2]: b\n"));
        assertThat(page.getElementsByAttribute("id").eachAttr("id")).hasSize(8).doesNotHaveDuplicates();
        assertThat(page.select("a[href^=#]").eachAttr("href"))
                .allMatch(href -> page.getElementById(href.substring(1)) != null);
    }

    @Test
    void headingsBeginBelowThePagesOwn() {
        assertThat(Jsoup.parse(html("### Deep\n\n#### Deeper\n")).select("h2").text())
                .isEqualTo("Deep");
        assertThat(Jsoup.parse(html("# A\n\n## B\n\n###### F\n")).select("h1")).isEmpty();
    }

    @Test
    void picturesKeepTheirPlaceAndNeverTwoOneName() throws IOException {
        Files.createDirectories(root.resolve("a"));
        Files.write(root.resolve("p.gif"), new byte[] {'G', 'I', 'F', '8', '9', 'a', 3, 0, 2, 1});
        Files.write(root.resolve("a/p.gif"), new byte[] {'G', 'I', 'F'});
        Document page = Jsoup.parse(html("![dew](p.gif) ![](a/p.gif) ![again](p.gif)"));
        assertThat(page.select("img").eachAttr("src"))
                .containsExactly("files/picture.gif", "files/picture-2.gif", "files/picture.gif");
        assertThat(page.select("img").eachAttr("alt")).containsExactly("dew", "Picture without a description", "again");
        assertThat(page.select("img").first().attr("width")).isEqualTo("3");
        assertThat(page.select("img").first().attr("height")).isEqualTo("258");
    }
}
