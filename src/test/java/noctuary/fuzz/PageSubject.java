package noctuary.fuzz;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import noctuary.site.PageFilling;
import noctuary.site.SiteHarm;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Element;

/**
 * Every template filled with models full of {@link Nasties}: the page has the very elements and attributes that the same
 * model has with harmless words, so no word became anything but text.
 */
final class PageSubject implements Subject {
    private static final int CHECKED_ONE_IN = 400;

    private final PageFilling templates = new PageFilling();
    private final List<String> names = List.copyOf(PageFilling.PAGES.keySet());
    private final Path folder;

    PageSubject(Path folder) throws java.io.IOException {
        this.folder = Files.createDirectories(folder.resolve("page"));
    }

    @Override
    public String name() {
        return "pages";
    }

    @Override
    public int attack(long seed) throws Throwable {
        String template = names.get((int) (seed % names.size()));
        Nasties nasties = new Nasties(new Random(seed));
        String harmless = filled(template, seed, () -> "plain");
        String page = filled(template, seed, nasties::words);
        if (!skeleton(page).equals(skeleton(harmless))) {
            throw new IllegalStateException(template + " has other elements with other words: "
                    + difference(skeleton(harmless), skeleton(page)));
        }
        if (!page.codePoints().allMatch(PageSubject::isLegible)) {
            throw new IllegalStateException(template + " holds what no page may hold");
        }
        if (seed % CHECKED_ONE_IN < names.size()) {
            Files.writeString(folder.resolve("index.html"), page);
            require(SiteHarm.found(folder), template + " could run: ");
        }
        return 1;
    }

    /** By the HTML standard, section 13.2.3.5: neither control characters nor noncharacters nor halves of pairs. */
    private static boolean isLegible(int c) {
        boolean white = c == '\n' || c == '\t' || c == '\r' || c == '\f';
        return white
                || !Character.isISOControl(c)
                        && (c & 0xfffe) != 0xfffe
                        && (c < 0xfdd0 || c > 0xfdef)
                        && Character.getType(c) != Character.SURROGATE;
    }

    private String filled(String template, long seed, Supplier<String> words) throws java.io.IOException {
        return templates.fill(template, new PageModels(new Random(seed), words).of(PageFilling.PAGES.get(template)));
    }

    private static void require(List<String> none, String what) {
        if (!none.isEmpty()) {
            throw new IllegalStateException(what + none.size() + ", first " + none.get(0));
        }
    }

    private static List<String> skeleton(String page) {
        List<String> parts = new ArrayList<>();
        for (Element element : Jsoup.parse(page).getAllElements()) {
            StringBuilder part = new StringBuilder(element.tagName());
            for (Attribute attribute : element.attributes()) {
                part.append(' ').append(attribute.getKey());
            }
            parts.add(part.toString());
        }
        return parts;
    }

    private static String difference(List<String> one, List<String> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            if (!one.get(i).equals(other.get(i))) {
                return "element " + i + " after " + one.get(Math.max(0, i - 1)) + ": " + one.get(i) + " against "
                        + other.get(i);
            }
        }
        return one.size() + " against " + other.size();
    }
}
