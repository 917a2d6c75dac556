package noctuary.entry;

import com.vladsch.flexmark.ext.footnotes.FootnoteExtension;
import com.vladsch.flexmark.ext.gfm.strikethrough.StrikethroughExtension;
import com.vladsch.flexmark.ext.gfm.tasklist.TaskListExtension;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.util.List;

/**
 * A note's body from markdown to HTML: CommonMark with tables, task lists, footnotes and strikethrough. Raw HTML is
 * shown as text.
 */
final class NoteHtml {
    /** @param html headings begin at h2 */
    record Page(String html, List<Attachment> attachments) {}

    private static final int LARGEST = 262_144;
    private static final DataHolder OPTIONS = new MutableDataSet()
            .set(
                    Parser.EXTENSIONS,
                    List.of(
                            TablesExtension.create(),
                            TaskListExtension.create(),
                            FootnoteExtension.create(),
                            StrikethroughExtension.create()))
            .set(TaskListExtension.ITEM_DONE_MARKER, "<input type=\"checkbox\" disabled checked aria-label=\"done\"> ")
            .set(TaskListExtension.ITEM_NOT_DONE_MARKER, "<input type=\"checkbox\" disabled aria-label=\"to do\"> ")
            .set(TablesExtension.DISCARD_EXTRA_COLUMNS, true)
            .set(TablesExtension.APPEND_MISSING_COLUMNS, true)
            .set(TablesExtension.COLUMN_SPANS, false)
            .set(HtmlRenderer.GENERATE_HEADER_ID, false)
            .set(HtmlRenderer.ESCAPE_HTML, true)
            .set(HtmlRenderer.ESCAPE_HTML_COMMENT_BLOCKS, false)
            .set(HtmlRenderer.ESCAPE_INLINE_HTML_COMMENTS, false)
            .set(HtmlRenderer.SUPPRESS_HTML_COMMENT_BLOCKS, true)
            .set(HtmlRenderer.SUPPRESS_INLINE_HTML_COMMENTS, true)
            .toImmutable();
    private static final Parser PARSER = Parser.builder(OPTIONS).build();

    private NoteHtml() {}

    static Page of(Note note, NoteLinks links, Margin margin) {
        String body = note.body();
        if (body.length() > LARGEST) {
            margin.fault(
                    note.bodyLine(),
                    "",
                    "the text is longer than " + LARGEST / 1024 + " kB and is left out",
                    "split it into several notes");
            return new Page("", List.of());
        }
        if (Tangle.isTangled(body)) {
            return plain(note, margin);
        }
        try {
            return new Page(render(note, links), links.attachments());
        } catch (StackOverflowError e) {
            return plain(note, margin);
        }
    }

    private static String render(Note note, NoteLinks links) {
        Document document = PARSER.parse(note.body());
        Headings headings = Headings.fit(document);
        var lines = new BodyLines(note.body(), note.bodyLine());
        return HtmlRenderer.builder(OPTIONS)
                .attributeProviderFactory(new AlignmentClass())
                .attributeProviderFactory(headings)
                .nodeRendererFactory(options -> new LinkRenderer(links, headings, lines, options))
                .build()
                .render(document);
    }

    private static Page plain(Note note, Margin margin) {
        margin.fault(
                note.bodyLine(),
                "",
                "nested too deep, or a paragraph too long, for markdown; the text is shown as it stands",
                "nest less, and put blank lines between paragraphs");
        String escaped = note.body().replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        return new Page("<pre>" + escaped + "</pre>\n", List.of());
    }
}
