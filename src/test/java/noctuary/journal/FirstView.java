package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** What a browser loads of a page before anything is scrolled. */
final class FirstView {
    private FirstView() {}

    static long bytes(Path page) throws IOException {
        Document document = Jsoup.parse(Files.readString(page));
        Set<Path> files = new HashSet<>();
        files.add(page);
        for (Element element : document.select("link[rel=stylesheet], script[src], img:not([loading=lazy])")) {
            files.add(largest(page, element));
        }
        long sum = 0;
        for (Path file : files) {
            sum += Files.size(file);
        }
        return sum;
    }

    private static Path largest(Path page, Element element) throws IOException {
        List<String> references = new ArrayList<>();
        references.add(element.hasAttr("href") ? element.attr("href") : element.attr("src"));
        for (String candidate : element.attr("srcset").split(",")) {
            if (!candidate.isBlank()) {
                references.add(candidate.strip().split(" ")[0]);
            }
        }
        Path largest = page.getParent().resolve(references.get(0));
        for (String reference : references) {
            Path file = page.getParent().resolve(reference);
            largest = Files.size(file) > Files.size(largest) ? file : largest;
        }
        return largest.normalize();
    }
}
