package noctuary.entry;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.html.AttributeProvider;
import com.vladsch.flexmark.html.IndependentAttributeProviderFactory;
import com.vladsch.flexmark.html.renderer.AttributablePart;
import com.vladsch.flexmark.html.renderer.LinkResolverContext;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The headings of one note: fitted below the page's one h1, and named so that links can lead to them. */
final class Headings extends IndependentAttributeProviderFactory {
    private static final int HIGHEST = 2;
    private static final int LOWEST = 6;
    private static final String PREFIX = "note-";

    private final Map<Node, String> ids = new LinkedHashMap<>();

    /** Shifts levels so that the note's highest heading is h2. */
    static Headings fit(Document document) {
        var headings = new Headings();
        var names = new UniqueNames();
        int highest = LOWEST;
        for (Node node : document.getDescendants()) {
            if (node instanceof Heading heading) {
                headings.ids.put(heading, names.next(PREFIX + anchor(heading)));
                highest = Math.min(highest, heading.getLevel());
            }
        }
        for (Node node : headings.ids.keySet()) {
            Heading heading = (Heading) node;
            heading.setLevel(Math.min(LOWEST, heading.getLevel() - highest + HIGHEST));
        }
        return headings;
    }

    /** The address of the heading that a link such as {@code #second-try} means. */
    Optional<String> href(String fragment) {
        String id = PREFIX + fragment.substring(1).toLowerCase(Locale.ROOT);
        return ids.containsValue(id) ? Optional.of("#" + id) : Optional.empty();
    }

    private static String anchor(Heading heading) {
        String text = new TextCollectingVisitor().collectAndGetText(heading);
        return Slug.of(text.strip().toLowerCase(Locale.ROOT).replace('.', '-'));
    }

    @Override
    public AttributeProvider apply(LinkResolverContext context) {
        return (node, part, attributes) -> {
            if (part == AttributablePart.NODE && ids.containsKey(node)) {
                attributes.replaceValue("id", ids.get(node));
            }
        };
    }
}
