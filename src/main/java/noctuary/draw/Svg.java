package noctuary.draw;

import java.util.ArrayDeque;
import java.util.Deque;

/** SVG text built element by element; whatever comes from outside is escaped here and nowhere else. */
final class Svg {
    private final StringBuilder out = new StringBuilder(4096);
    private final Deque<String> open = new ArrayDeque<>();
    private final String id;

    private final double width;
    private final double fontSize;

    private Svg(String id, double width, double fontSize) {
        this.id = id;
        this.width = width;
        this.fontSize = fontSize;
    }

    /** A picture that assistive technology reads as its title and description. */
    static Svg picture(Alternative words, String kind, Form form, double height) {
        return start(words, "img", kind, form, height);
    }

    /** As {@link #picture}, but with links inside, which the role of a picture would hide. */
    static Svg linked(Alternative words, String kind, Form form, double height) {
        return start(words, "group", kind, form, height);
    }

    /** A picture of any size in user units, such as one that lies over another picture. */
    static Svg sheet(Alternative words, String classes, double width, double height, double fontSize) {
        return start(words, "img", classes, width, height, fontSize);
    }

    private static Svg start(Alternative words, String role, String kind, Form form, double height) {
        String classes = "chart " + kind + (form == Form.WIDE ? " wide" : " narrow");
        return start(words, role, classes, form.width(), height, form.fontSize());
    }

    private static Svg start(
            Alternative words, String role, String classes, double width, double height, double fontSize) {
        Svg svg = new Svg(Markup.id(words.id()), width, fontSize);
        String box = "0 0 " + Digits.coordinate(width) + " " + Digits.coordinate(height);
        String labels = svg.id + "-t " + svg.id + "-d";
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                classes,
                "role",
                role,
                "aria-labelledby",
                labels,
                "viewBox",
                box,
                "font-size",
                fontSize);
        svg.words("title", words.title(), "id", svg.id + "-t");
        svg.words("desc", words.description(), "id", svg.id + "-d");
        return svg;
    }

    /** An id inside this drawing. */
    String idOf(String part) {
        return id + "-" + part;
    }

    /** Opens an element; attributes are name, value, name, value; a null value leaves its attribute out. */
    Svg open(String element, Object... attributes) {
        tag(element, attributes);
        out.append('>');
        open.push(element);
        return this;
    }

    Svg close() {
        out.append("</").append(open.pop()).append(">\n");
        return this;
    }

    Svg leaf(String element, Object... attributes) {
        tag(element, attributes);
        out.append("/>\n");
        return this;
    }

    /** An element that holds only text. */
    Svg words(String element, String text, Object... attributes) {
        open(element, attributes);
        out.append(Markup.text(text));
        return close();
    }

    /** One line of text, shortened where it would leave the drawing. */
    Svg text(String classes, Anchor anchor, double x, double y, String words) {
        Object side = anchor == Anchor.START ? null : anchor.attribute();
        String fitting = Words.within(words, anchor.room(x, width) + 0.5, fontSize);
        return words("text", fitting, "class", classes, "x", x, "y", y, "text-anchor", side);
    }

    /** Text on a plate of the ground's colour, for where a line would run through it. */
    Svg plated(String classes, Anchor anchor, double x, double y, String words) {
        double length = Words.width(words, fontSize);
        rect("plate", anchor.from(x, length) - 4, y - fontSize, length + 8, fontSize * 1.3);
        return text(classes, anchor, x, y, words);
    }

    Svg line(String classes, double x1, double y1, double x2, double y2) {
        return leaf("line", "class", classes, "x1", x1, "y1", y1, "x2", x2, "y2", y2);
    }

    Svg rect(String classes, double x, double y, double width, double height) {
        return leaf("rect", "class", classes, "x", x, "y", y, "width", width, "height", height);
    }

    /** A rectangle filled with a pattern of this drawing. */
    Svg patterned(String classes, String pattern, double x, double y, double width, double height) {
        String fill = "url(#" + idOf(pattern) + ")";
        return leaf("rect", "class", classes, "x", x, "y", y, "width", width, "height", height, "fill", fill);
    }

    Svg circle(String classes, double x, double y, double radius) {
        return leaf("circle", "class", classes, "cx", x, "cy", y, "r", radius);
    }

    Svg path(String classes, Trace trace) {
        return leaf("path", "class", classes, "d", trace.toString());
    }

    /** What the pointer shows over the element just opened. */
    Svg tip(String words) {
        return words("title", words);
    }

    /** Opens a link, or a plain group where the address is absent or leads out of the site. */
    Svg openLink(String href, String classes) {
        boolean leads = href != null && Markup.staysInside(href);
        return leads ? open("a", "href", href, "class", classes) : open("g", "class", classes);
    }

    String end() {
        while (!open.isEmpty()) {
            close();
        }
        return out.toString();
    }

    private void tag(String element, Object... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            Object value = attributes[i + 1];
            if (value != null) {
                String text = value instanceof Number n ? Digits.coordinate(n.doubleValue()) : value.toString();
                out.append(' ').append(attributes[i]).append("=\"");
                out.append(Markup.text(text)).append('"');
            }
        }
    }
}
