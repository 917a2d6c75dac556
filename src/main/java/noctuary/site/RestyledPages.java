package noctuary.site;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import noctuary.keep.Drawer;
import noctuary.keep.Memo;
import noctuary.site.page.EntryPage;

/** Every page of a site under other templates, from what pages were kept to show. */
public final class RestyledPages {
    private final List<ToldEntry> entries;
    private final List<MadePage> pages;
    private final Drawer<EntryPage> drawn;
    private final PageModels models;
    private final Templates templates;
    private final Assets assets;

    /**
     * @param pages all but those of entries
     * @throws IOException when the templates cannot be read
     */
    public RestyledPages(List<ToldEntry> entries, List<MadePage> pages, Memo memo, Path ownTemplates)
            throws IOException {
        this.entries = List.copyOf(entries);
        this.pages = List.copyOf(pages);
        this.drawn = PageModels.entries(memo);
        this.models = new PageModels(memo);
        this.templates = new Templates(ownTemplates);
        this.assets = new Assets(ownTemplates);
    }

    /**
     * Writes all of them into a draft, which takes over all else of the site that stands.
     *
     * @return whether all that this needs was kept; if not, the draft is of no use
     * @throws TemplateFault when a template is wrong, naming template and line
     */
    public boolean write(Draft draft) throws IOException {
        if (!draft.carry(paths())) {
            return false;
        }
        AtomicBoolean whole = new AtomicBoolean(true);
        List<Abreast.Job> jobs = new ArrayList<>();
        pages.forEach(page -> jobs.add(() -> whole.compareAndSet(!wrote(draft, page, models.find(page)), false)));
        entries.forEach(entry -> jobs.add(() -> whole.compareAndSet(!wrote(draft, entry), false)));
        jobs.add(() -> assets.put(draft));
        Abreast.run(jobs);
        return whole.get();
    }

    private boolean wrote(Draft draft, ToldEntry entry) throws IOException {
        String path = Address.entry(entry.slug()).path();
        return wrote(
                draft,
                new MadePage(path, PageKind.ENTRY, entry.shown()),
                drawn.find(entry.slug(), entry.key()).map(entry::on));
    }

    private boolean wrote(Draft draft, MadePage page, Optional<? extends Record> model) throws IOException {
        if (model.isPresent()) {
            draft.write(page.path(), page.shown(), templates.fill(page.kind().template(), model.get()));
        }
        return model.isPresent();
    }

    private Set<String> paths() {
        Set<String> paths = new HashSet<>(Assets.ALL);
        pages.forEach(page -> paths.add(page.path()));
        entries.forEach(entry -> paths.add(Address.entry(entry.slug()).path()));
        return paths;
    }
}
