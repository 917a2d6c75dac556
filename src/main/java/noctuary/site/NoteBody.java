package noctuary.site;

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

    private NoteBody() {}

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
