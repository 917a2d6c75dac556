package noctuary.site;

import java.io.IOException;
import java.nio.ByteBuffer;
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

/** The files of a site in which the words of a note stand, for a note of which nothing else has changed. */
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
        this.drawn = PageModels.entries(memo);
        this.ownTemplates = ownTemplates;
        this.site = site;
    }

    /**
     * Bytes by path from the top folder, in the order in which they are to be put there; empty when something that is
     * needed was not kept.
     *
     * @throws TemplateFault when a template is wrong
     */
    public Optional<Map<String, byte[]>> of(String slug, String html) throws IOException {
        int at = entries.stream().map(DrawnEntry::slug).toList().indexOf(slug);
        Optional<EntryPage> page =
                at < 0 ? Optional.empty() : drawn.find(slug, entries.get(at).key());
        Optional<FindWords> find = FindWords.read(Files.readAllBytes(site.resolve(FindWords.PATH)));
        Address here = Address.entry(slug);
        if (page.isEmpty() || find.isEmpty() || !find.get().reword(at, Address.FIND.to(here), html)) {
            return Optional.empty();
        }
        EntryPage told = page.get().telling(NoteBody.under(2, html), way(here, at + 1), way(here, at - 1));
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(FindWords.PATH, find.get().script());
        ByteBuffer text = new Templates(ownTemplates).fill(PageKind.ENTRY.template(), told);
        byte[] bytes = new byte[text.remaining()];
        text.get(bytes);
        files.put(here.path(), bytes);
        return Optional.of(files);
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
