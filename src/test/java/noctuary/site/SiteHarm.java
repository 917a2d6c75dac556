package noctuary.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Whether a site could run anything but its own script, load anything from elsewhere, or break its own policy. */
public final class SiteHarm {
    private SiteHarm() {}

    /** Every element that could, as {@code page: element}. */
    public static List<String> found(Path site) throws IOException {
        List<String> found = new ArrayList<>();
        for (Path page : HtmlValidity.pages(site)) {
            Document document = Jsoup.parse(Files.readString(page));
            String name = site.relativize(page).toString();
            if (document.select("meta[http-equiv=Content-Security-Policy]").size() != 1) {
                found.add(name + ": no policy");
            }
            document.select("script").stream()
                    .filter(script -> !ours(script))
                    .forEach(script -> found.add(name + ": " + script.outerHtml()));
            document.select("style, iframe, object, embed, base, form, link[rel=import], meta[http-equiv=refresh]")
                    .forEach(element -> found.add(name + ": " + element.outerHtml()));
            document.getAllElements().forEach(element -> attributes(name, element, found));
        }
        return found;
    }

    private static boolean ours(Element script) {
        return script.attr("src").matches("(\\.\\./)*assets/(site|zoom|sky|stars|find)\\.js")
                && script.data().isEmpty();
    }

    private static void attributes(String page, Element element, List<String> found) {
        for (Attribute attribute : element.attributes()) {
            String key = attribute.getKey().toLowerCase(java.util.Locale.ROOT);
            String value =
                    attribute.getValue().replaceAll("[\\s\\p{Cntrl}]", "").toLowerCase(java.util.Locale.ROOT);
            boolean runs = key.startsWith("on") || key.equals("style") || key.equals("srcdoc");
            boolean leads = (key.equals("href") || key.equals("src") || key.equals("action"))
                    && value.matches("(javascript|vbscript|data|file):.*")
                    && !value.equals("data:,");
            if (runs || leads) {
                found.add(page + ": " + element.tagName() + " " + attribute);
            }
        }
    }
}
