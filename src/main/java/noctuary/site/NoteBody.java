package noctuary.site;

import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import noctuary.site.page.Markup;

/**
 * The keeper's own text set under a heading of the page: its headings move down, their order stays; HTML, not XHTML.
 */
final class NoteBody {
    private static final Pattern HEADING = Pattern.compile("(</?h)([1-6])(?=[ >])");

    private static final Pattern CLOSED_VOID = Pattern.compile("<(br|hr|img|input)\\b([^<>]*)/>");

    private static final Pattern PICTURE = Pattern.compile("<img\\b[^<>]*\\bsrc=\"([^\"]*)\"[^<>]*>");

    private static final Pattern LINK = Pattern.compile("<a\\b[^<>]*\\bhref=\"([^\"]*)\"[^<>]*>");

    private static final Pattern ALTERNATIVE = Pattern.compile("\\balt=\"([^\"]*)\"");

    private NoteBody() {}

    /** @param unshown why pictures cannot be shown, which is said in their place, by their reference */
    static Markup under(int level, String html, Map<String, String> unshown) {
        Markup whole = under(level, html);
        if (unshown.isEmpty()) {
            return whole;
        }
        String shown = PICTURE.matcher(whole.html())
                .replaceAll(img -> Matcher.quoteReplacement(picture(img, unshown.get(img.group(1)))));
        return new Markup(LINK.matcher(shown).replaceAll(link -> {
            String why = unshown.get(link.group(1));
            return Matcher.quoteReplacement(why == null ? link.group() : "<a title=\"" + escaped(why) + "\">");
        }));
    }

    private static String picture(MatchResult img, String why) {
        if (why == null) {
            return img.group();
        }
        Matcher told = ALTERNATIVE.matcher(img.group());
        String name = told.find() && !told.group(1).isEmpty() ? "The picture “" + told.group(1) + "”" : "A picture";
        return "<span class=\"why\">" + name + " cannot be shown: " + escaped(why) + ".</span>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** @param level of the heading above */
    static Markup under(int level, String html) {
        int top = HEADING.matcher(html)
                .results()
                .mapToInt(heading -> Integer.parseInt(heading.group(2)))
                .min()
                .orElse(1);
        String moved = HEADING.matcher(html).replaceAll(heading -> moved(heading, level + 1 - top));
        return new Markup(CLOSED_VOID.matcher(moved).replaceAll(NoteBody::opened));
    }

    private static String opened(MatchResult element) {
        return Matcher.quoteReplacement(
                "<" + element.group(1) + element.group(2).stripTrailing() + ">");
    }

    private static String moved(MatchResult heading, int by) {
        return heading.group(1) + Math.min(6, Integer.parseInt(heading.group(2)) + by);
    }
}
