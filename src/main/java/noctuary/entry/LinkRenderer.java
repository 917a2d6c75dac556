package noctuary.entry;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkNodeBase;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.RefNode;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.util.ReferenceRepository;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRenderer;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.html.Attribute;
import com.vladsch.flexmark.util.sequence.Escaping;
import java.util.Optional;
import java.util.Set;

/** Writes links and pictures of a note; those that lead nowhere become their text. */
final class LinkRenderer implements NodeRenderer {
    private final NoteLinks links;
    private final Headings headings;
    private final BodyLines lines;
    private final ReferenceRepository references;

    LinkRenderer(NoteLinks links, Headings headings, BodyLines lines, DataHolder options) {
        this.links = links;
        this.headings = headings;
        this.lines = lines;
        this.references = Parser.REFERENCES.get(options);
    }

    @Override
    public Set<NodeRenderingHandler<?>> getNodeRenderingHandlers() {
        return Set.of(
                new NodeRenderingHandler<>(Link.class, this::link),
                new NodeRenderingHandler<>(LinkRef.class, this::linkRef),
                new NodeRenderingHandler<>(Image.class, this::image),
                new NodeRenderingHandler<>(ImageRef.class, this::imageRef),
                new NodeRenderingHandler<>(AutoLink.class, this::autoLink),
                new NodeRenderingHandler<>(MailLink.class, this::mailLink));
    }

    private void link(Link node, NodeRendererContext context, HtmlWriter html) {
        link(node, node, context, html);
    }

    private void linkRef(LinkRef node, NodeRendererContext context, HtmlWriter html) {
        reference(node)
                .ifPresentOrElse(target -> link(node, target, context, html), () -> unresolved(node, context, html));
    }

    private void link(Node node, LinkNodeBase target, NodeRendererContext context, HtmlWriter html) {
        String typed = target.getUrl().unescape();
        Optional<String> href = typed.startsWith("#")
                ? headings.href(typed).or(() -> links.nowhere(typed, line(node)))
                : links.link(typed, line(node));
        href.ifPresent(url -> open(url, target.getTitle().unescape(), html));
        context.renderChildren(node);
        href.ifPresent(url -> html.tag("/a"));
    }

    private void image(Image node, NodeRendererContext context, HtmlWriter html) {
        image(node, node, html);
    }

    private void imageRef(ImageRef node, NodeRendererContext context, HtmlWriter html) {
        reference(node).ifPresentOrElse(target -> image(node, target, html), () -> unresolved(node, context, html));
    }

    private void image(Node node, LinkNodeBase target, HtmlWriter html) {
        String url = target.getUrl().unescape();
        String text = new TextCollectingVisitor().collectAndGetText(node).strip();
        if (NoteLinks.isRemote(url)) {
            remote(node, url, text, html);
            return;
        }
        Optional<Attachment> picture = links.picture(url, line(node));
        if (picture.isEmpty()) {
            html.text(text);
            return;
        }
        Attachment file = picture.get();
        html.attr("src", file.href()).attr("alt", text.isEmpty() ? "Picture without a description" : text);
        PictureSize.of(file.file())
                .ifPresent(size ->
                        html.attr("width", String.valueOf(size.width())).attr("height", String.valueOf(size.height())));
        title(target.getTitle().unescape(), html);
        html.attr("loading", "lazy").withAttr().tagVoid("img");
    }

    /** Pictures of the web are linked, not loaded: the journal works without network. */
    private static void remote(Node node, String url, String text, HtmlWriter html) {
        boolean inLink = node.getAncestorOfType(Link.class, LinkRef.class) != null;
        if (!inLink) {
            open(url, "", html);
        }
        html.text(text.isEmpty() ? url : text);
        if (!inLink) {
            html.tag("/a");
        }
    }

    private void autoLink(AutoLink node, NodeRendererContext context, HtmlWriter html) {
        String url = node.getText().unescape();
        boolean remote = NoteLinks.isRemote(url);
        if (remote) {
            open(url, "", html);
        }
        html.text(url);
        if (remote) {
            html.tag("/a");
        }
    }

    private void mailLink(MailLink node, NodeRendererContext context, HtmlWriter html) {
        String address = node.getText().unescape();
        open("mailto:" + address, "", html);
        html.text(address);
        html.tag("/a");
    }

    private static void open(String url, String title, HtmlWriter html) {
        html.attr("href", Escaping.percentEncodeUrl(url));
        if (NoteLinks.isRemote(url)) {
            html.attr("rel", "noopener noreferrer");
        }
        title(title, html);
        html.withAttr().tag("a");
    }

    private static void title(String title, HtmlWriter html) {
        if (!title.isEmpty()) {
            html.attr(Attribute.TITLE_ATTR, title);
        }
    }

    private Optional<Reference> reference(RefNode node) {
        return Optional.ofNullable(node.getReferenceNode(references));
    }

    private static void unresolved(Node node, NodeRendererContext context, HtmlWriter html) {
        if (!node.hasChildren()) {
            html.text(node.getChars().unescape());
            return;
        }
        html.text(node.getChars().prefixOf(node.getChildChars()).unescape());
        context.renderChildren(node);
        html.text(node.getChars().suffixOf(node.getChildChars()).unescape());
    }

    private int line(Node node) {
        return lines.at(node.getStartOffset());
    }
}
