package noctuary.site;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Whether every internal link, anchor, picture, style sheet and script of a site leads somewhere. */
public final class SiteLinks {
    private final Path site;
    private final Map<Path, Set<String>> anchors = new HashMap<>();
    private final List<String> broken = new ArrayList<>();

    private SiteLinks(Path site) {
        this.site = site.toAbsolutePath().normalize();
    }

    /** Every reference that leads nowhere or out of the folder, as {@code page -> reference}; links to http(s) pass. */
    public static List<String> broken(Path site) throws IOException {
        SiteLinks links = new SiteLinks(site);
        for (Path page : HtmlValidity.pages(links.site)) {
            links.check(page);
        }
        return links.broken;
    }

    private void check(Path page) throws IOException {
        Document document = Jsoup.parse(Files.readString(page));
        for (Element element : document.select("[href], [src], [srcset]")) {
            for (String reference : references(element)) {
                if (!resolves(page, reference)) {
                    broken.add(site.relativize(page) + " -> " + reference);
                }
            }
        }
    }

    private static List<String> references(Element element) {
        List<String> all = new ArrayList<>();
        if (element.hasAttr("href")) {
            all.add(element.attr("href"));
        }
        if (element.hasAttr("src")) {
            all.add(element.attr("src"));
        }
        for (String candidate : element.attr("srcset").split(",")) {
            if (!candidate.isBlank()) {
                all.add(candidate.strip().split("\\s+")[0]);
            }
        }
        return all;
    }

    private boolean resolves(Path page, String reference) throws IOException {
        if (reference.startsWith("https://") || reference.startsWith("http://") || reference.equals("data:,")) {
            return true;
        }
        if (reference.matches("^[a-zA-Z][a-zA-Z+.-]*:.*") || reference.startsWith("/")) {
            return reference.startsWith("mailto:");
        }
        int hash = reference.indexOf('#');
        String path = hash < 0 ? reference : reference.substring(0, hash);
        Path file =
                path.isEmpty() ? page : page.getParent().resolve(decoded(path)).normalize();
        if (!file.startsWith(site) || !Files.isRegularFile(file)) {
            return false;
        }
        return hash < 0 || anchorsOf(file).contains(decoded(reference.substring(hash + 1)));
    }

    private Set<String> anchorsOf(Path file) throws IOException {
        if (!anchors.containsKey(file)) {
            Set<String> ids = new HashSet<>();
            Jsoup.parse(Files.readString(file)).select("[id]").forEach(e -> ids.add(e.id()));
            anchors.put(file, ids);
        }
        return anchors.get(file);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text.replace("+", "%2B"), StandardCharsets.UTF_8);
    }
}
