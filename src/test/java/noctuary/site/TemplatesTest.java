package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import noctuary.site.page.Drawing;
import noctuary.site.page.Markup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplatesTest {
    private static final Drawing MODEL = new Drawing("a < b & \"c\"", new Markup("<svg></svg>"));

    @TempDir
    Path own;

    @Test
    void textIsEscapedAndMarkupIsNot() throws IOException {
        assertThat(fill("x.ftlh", "<p title=\"${page.caption}\">${page.svg}</p>"))
                .isEqualTo("<p title=\"a &lt; b &amp; &quot;c&quot;\"><svg></svg></p>");
    }

    @Test
    void anOwnTemplateReplacesOurs(@TempDir Path output) throws IOException {
        Files.writeString(own.resolve("targets.ftlh"), "own ${page.head.title}");
        Files.createDirectories(own.resolve("assets"));
        Files.writeString(own.resolve("assets/site.css"), "/* own */");
        SiteWriter.write(Fixture.content(true), own, output);
        assertThat(output.resolve("targets/index.html")).hasContent("own Targets");
        assertThat(output.resolve("assets/site.css")).hasContent("/* own */");
        assertThat(Files.readString(output.resolve("rigs/index.html"))).contains("<!doctype html>");
    }

    @Test
    void aSyntaxErrorNamesTemplateAndLine() {
        assertThatThrownBy(() -> fill("x.ftlh", "one\ntwo <#if >\nthree"))
                .isInstanceOf(TemplateFault.class)
                .hasMessageStartingWith("template x.ftlh, line 2: ");
    }

    @Test
    void aMissingValueNamesTemplateAndLine() {
        assertThatThrownBy(() -> fill("x.ftlh", "one\ntwo\n${page.capshun}"))
                .isInstanceOfSatisfying(TemplateFault.class, fault -> {
                    assertThat(fault.template()).isEqualTo("x.ftlh");
                    assertThat(fault.line()).isEqualTo(3);
                    assertThat(fault.what()).contains("page.capshun");
                });
    }

    @Test
    void aTemplateCannotStartAnything() {
        assertThatThrownBy(() -> fill("x.ftlh", "${\"freemarker.template.utility.Execute\"?new()(\"id\")}"))
                .isInstanceOf(TemplateFault.class)
                .hasMessageContaining("not allowed");
        assertThatThrownBy(() -> fill("x.ftlh", "${page?api.getClass().getName()}"))
                .isInstanceOf(TemplateFault.class);
        assertThatThrownBy(() -> fill("x.ftlh", "${page.class.name}")).isInstanceOf(TemplateFault.class);
        assertThatThrownBy(() -> fill("x.ftlh", "<#include \"../../../../../etc/passwd\">"))
                .isInstanceOf(IOException.class);
    }

    @Test
    void theSiteIsWrittenWithoutAnOwnFolder(@TempDir Path output) throws IOException {
        SiteWriter.write(Fixture.content(true), own.resolve("missing"), output);
        assertThat(output.resolve("index.html")).exists();
    }

    @Test
    void anUnchangedPageIsNotTouched(@TempDir Path output) throws IOException {
        SiteWriter.write(Fixture.content(true), null, output);
        Path page = output.resolve("rigs/index.html");
        var longAgo = java.nio.file.attribute.FileTime.fromMillis(1_000_000);
        Files.setLastModifiedTime(page, longAgo);
        SiteWriter.write(Fixture.content(true), null, output);
        assertThat(Files.getLastModifiedTime(page)).isEqualTo(longAgo);
    }

    private String fill(String name, String template) throws IOException {
        Files.writeString(own.resolve(name), template);
        return StandardCharsets.UTF_8
                .decode(new Templates(own).fill(name, MODEL))
                .toString();
    }
}
