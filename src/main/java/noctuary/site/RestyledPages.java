package noctuary.site;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
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
        AtomicBoolean missing = new AtomicBoolean();
        List<Abreast.Job> jobs = new ArrayList<>();
        pages.forEach(page -> jobs.add(() -> write(draft, page, () -> models.find(page), missing)));
        entries.forEach(entry -> jobs.add(() -> write(draft, page(entry), () -> model(entry), missing)));
        jobs.add(() -> assets.put(draft));
        Abreast.run(jobs);
        return !missing.get();
    }

    private static MadePage page(ToldEntry entry) {
        return new MadePage(Address.entry(entry.slug()).path(), PageKind.ENTRY, entry.shown());
    }

    private Optional<EntryPage> model(ToldEntry entry) {
        return drawn.find(entry.slug(), entry.key()).map(entry::on);
    }

    /** Nothing more once something was found missing. */
    private void write(Draft draft, MadePage page, Supplier<Optional<? extends Record>> kept, AtomicBoolean missing)
            throws IOException {
        if (missing.get()) {
            return;
        }
        Optional<? extends Record> model = kept.get();
        if (model.isPresent()) {
            draft.write(page.path(), page.shown(), templates.fill(page.kind().template(), model.get()));
        } else {
            missing.set(true);
        }
    }

    private Set<String> paths() {
        Set<String> paths = new HashSet<>(Assets.ALL);
        pages.forEach(page -> paths.add(page.path()));
        entries.forEach(entry -> paths.add(page(entry).path()));
        return paths;
    }
}
