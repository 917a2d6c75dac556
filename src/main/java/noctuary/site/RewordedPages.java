package noctuary.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.keep.Drawer;
import noctuary.keep.Memo;
import noctuary.site.page.EntryPage;
import noctuary.site.page.Link;

/** The files of a site in which the words of notes stand, for notes of which nothing else has changed. */
public final class RewordedPages {
    private final List<DrawnEntry> entries;
    private final Drawer<EntryPage> drawn;
    private final Path ownTemplates;
    private final Path site;

    /**
     * @param entries of the whole journal, in their order
     * @param site as it stands
     */
    public RewordedPages(List<DrawnEntry> entries, Memo memo, Path ownTemplates, Path site) {
        this.entries = List.copyOf(entries);
        this.drawn = SiteWriter.drawer(memo);
        this.ownTemplates = ownTemplates;
        this.site = site;
    }

    /**
     * Bytes by path from the top folder, in the order in which they are to be put there; empty when something that is
     * needed was not kept.
     *
     * @param words as HTML, by slug
     * @throws TemplateFault when a template is wrong
     */
    public Optional<Map<String, byte[]>> of(Map<String, String> words) throws IOException {
        Optional<FindWords> find = FindWords.read(Files.readAllBytes(site.resolve(FindWords.PATH)));
        Map<String, EntryPage> pages = new LinkedHashMap<>();
        for (int at = 0; at < entries.size(); at++) {
            DrawnEntry entry = entries.get(at);
            String html = words.get(entry.slug());
            if (html == null) {
                continue;
            }
            Optional<EntryPage> page = drawn.find(entry.slug(), entry.key());
            String way = Address.FIND.to(Address.entry(entry.slug()));
            if (page.isEmpty() || find.isEmpty() || !find.get().reword(at, way, html)) {
                return Optional.empty();
            }
            Address here = Address.entry(entry.slug());
            pages.put(here.path(), page.get().telling(NoteBody.under(2, html), way(here, at + 1), way(here, at - 1)));
        }
        return pages.size() == words.size() ? Optional.of(filled(find.get(), pages)) : Optional.empty();
    }

    private Map<String, byte[]> filled(FindWords find, Map<String, EntryPage> pages) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(FindWords.PATH, find.script());
        Templates templates = new Templates(ownTemplates);
        for (Map.Entry<String, EntryPage> page : pages.entrySet()) {
            files.put(
                    page.getKey(),
                    templates.fill(SiteWriter.ENTRY, page.getValue()).getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    /** To another entry; null where there is none. */
    private Link way(Address here, int at) {
        return at < 0 || at >= entries.size()
                ? null
                : Link.of(
                        entries.get(at).title(),
                        here.to(Address.entry(entries.get(at).slug())));
    }
}
