package noctuary.site;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import noctuary.entry.Entry;
import noctuary.keep.Digest;
import noctuary.keep.Drawer;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.measure.RigSheet;
import noctuary.measure.TargetSheet;
import noctuary.review.Review;
import noctuary.site.page.EntryPage;
import noctuary.site.page.MethodPage;

/** Writes every page, asset and download into a draft. Files that would not change are not touched. */
public final class SiteWriter {
    static final String ENTRY = "entry.ftlh";

    private final SiteContent content;
    private final Templates templates;
    private final Assets assets;
    private final Draft draft;
    private final Memo memo;
    private final Drawer<EntryPage> drawn;
    private final DrawnEntry[] drawnEntries;
    private final Models models = new Models();
    private final List<Abreast.Job> jobs = new ArrayList<>();

    private SiteWriter(SiteContent content, Path ownTemplates, Draft draft, Memo memo) throws IOException {
        this.content = content;
        this.templates = new Templates(ownTemplates);
        this.assets = new Assets(ownTemplates);
        this.draft = draft;
        this.memo = memo;
        this.drawn = drawer(memo);
        this.drawnEntries = new DrawnEntry[content.entries().size()];
    }

    /**
     * A page to be made.
     *
     * @param shown stands for all that it shows, where that can be told before it is made; else empty
     */
    private record Page(Address address, String template, Supplier<Record> model, Supplier<String> shown) {}

    /**
     * @param ownTemplates the keeper's template folder, which may be missing; a file there replaces ours
     * @throws TemplateFault when a template is wrong, naming template and line
     * @throws IOException when the folder cannot be written
     */
    public static void write(SiteContent content, Path ownTemplates, Path output) throws IOException {
        write(content, ownTemplates, Draft.in(output), Memo.NONE);
    }

    /**
     * As {@link #write(SiteContent, Path, Path)}, with pages of earlier sites where nothing they show has changed.
     *
     * @param memo keeps what pages of entries show, so that a changed template does not mean to work it out again
     * @return the entries in their order
     */
    public static List<DrawnEntry> write(SiteContent content, Path ownTemplates, Draft draft, Memo memo)
            throws IOException {
        SiteWriter writer = new SiteWriter(content, ownTemplates, draft, memo);
        writer.writeAll();
        return List.of(writer.drawnEntries);
    }

    /** Pages of entries, without words and ways. */
    static Drawer<EntryPage> drawer(Memo memo) {
        return memo.drawer("entry-pages", Packing.withGaps(EntryPage.class));
    }

    private void writeAll() throws IOException {
        Ledger ledger = new Ledger(content, memo);
        Heads heads = new Heads(ledger, Assets.STYLESHEETS);
        Charts charts = new Charts(ledger);
        jobs.add(() -> downloads(new Downloads(ledger), heads));
        page(Address.JOURNAL, "journal.ftlh", () -> new JournalPages(ledger, heads, charts).page());
        page(Address.NIGHTS, "nights.ftlh", () -> new NightPages(ledger, heads, charts).page());
        jobs.add(() -> find(new FindPages(ledger), heads));
        page(Address.CHOICES, "choices.ftlh", () -> new ChoicePages(ledger, heads).page());
        page(Address.METHOD, "method.ftlh", () -> method(heads));
        if (FeedPages.exists(ledger)) {
            page(new Address(FeedPages.PATH), "feed.ftlx", () -> new FeedPages(ledger).page());
        }
        lessons(new LessonPages(ledger, heads), new SheetPages(ledger, heads));
        targets(new TargetPages(ledger, heads, charts));
        rigs(new RigPages(ledger, heads, charts));
        changes(new ChangePages(ledger, heads));
        entries(ledger, new EntryPages(ledger, heads, charts));
        assets(Assets.STYLESHEETS);
        assets(Assets.SCRIPTS);
        Abreast.run(jobs);
    }

    private void assets(List<String> names) {
        names.forEach(name -> jobs.add(() -> put(name, assets.read(name))));
    }

    private void downloads(Downloads downloads, Heads heads) throws IOException {
        Map<String, Long> sizes = new HashMap<>();
        for (Downloads.Download file : downloads.files()) {
            if (file.shown().isEmpty()) {
                put(file.path(), file.content().bytes());
            } else if (!draft.take(file.path(), file.shown())) {
                draft.write(
                        file.path(),
                        file.shown(),
                        ByteBuffer.wrap(file.content().bytes()));
            }
            sizes.put(file.path(), Files.size(draft.folder().resolve(file.path())));
        }
        make(new Page(Address.DOWNLOADS, "data.ftlh", () -> downloads.page(heads, sizes), () -> ""));
    }

    private void find(FindPages find, Heads heads) throws IOException {
        put(FindWords.PATH, find.words().script());
        make(new Page(Address.FIND, "find.ftlh", () -> find.page(heads), () -> ""));
    }

    private void entries(Ledger ledger, EntryPages entries) {
        EntryShown shown = new EntryShown(ledger);
        for (int i = 0; i < content.entries().size(); i++) {
            int at = i;
            jobs.add(() -> entry(ledger, shown, entries, at));
        }
    }

    private void entry(Ledger ledger, EntryShown shown, EntryPages entries, int at) throws IOException {
        Entry entry = content.entries().get(at).entry();
        String slug = entry.slug();
        Address here = Address.entry(slug);
        String self = shown.of(at, entries.changes(at));
        boolean plain = ledger.unshown(here).isEmpty();
        drawnEntries[at] = new DrawnEntry(slug, entry.title().value(), plain ? self : "");
        make(new Page(
                here,
                ENTRY,
                () -> entries.telling(drawn.recall(slug, self, () -> entries.page(at)), at),
                () -> shown.between(self, at)));
    }

    private void lessons(LessonPages lessons, SheetPages sheets) {
        page(Address.LESSONS, "lessons.ftlh", lessons::page);
        page(Address.SHEET, "sheet.ftlh", () -> sheets.page(Address.SHEET, sheets.newest()));
        for (TargetSheet target : content.targets()) {
            Address here = Address.sheet(target.id());
            page(here, "sheet.ftlh", () -> sheets.page(here, Optional.of(target)));
        }
    }

    private void targets(TargetPages pages) {
        page(Address.TARGETS, "targets.ftlh", pages::index);
        for (TargetSheet target : content.targets()) {
            page(Address.target(target.id()), "target.ftlh", () -> pages.page(target));
        }
    }

    private void rigs(RigPages pages) {
        page(Address.RIGS, "rigs.ftlh", pages::index);
        for (RigSheet rig : content.rigs().values()) {
            page(Address.rig(rig.note().id()), "rig.ftlh", () -> pages.page(rig));
        }
    }

    private void changes(ChangePages pages) {
        page(Address.CHANGES, "changes.ftlh", pages::index);
        for (Review review : content.reviews()) {
            Address here = Address.change(review.change().id());
            page(here, "change.ftlh", () -> pages.page(review), () -> shown(review));
        }
    }

    /** All that a change's page is made from: what else happened and what is left out depend on other entries too. */
    private String shown(Review review) {
        return review.key().isEmpty()
                ? ""
                : new Digest()
                        .text(review.key())
                        .text(review.leftOut().toString())
                        .text(review.coincidences().toString())
                        .text(content.journal().settings().toString())
                        .hex();
    }

    private static MethodPage method(Heads heads) {
        String description = "Every definition, formula and source behind the numbers of this journal.";
        return new MethodPage(heads.of(Address.METHOD, "Method", description), Methods.contents());
    }

    private void page(Address address, String template, Supplier<Record> model) {
        page(address, template, model, () -> "");
    }

    private void page(Address address, String template, Supplier<Record> model, Supplier<String> shown) {
        Page page = new Page(address, template, model, shown);
        jobs.add(() -> make(page));
    }

    private void make(Page page) throws IOException {
        String path = page.address().path();
        String told = page.shown().get();
        if (draft.take(path, told)) {
            return;
        }
        Record model = page.model().get();
        String shown = told.isEmpty() ? models.digest(model) : told;
        if (!told.isEmpty() || !draft.take(path, shown)) {
            draft.write(path, shown, templates.fill(page.template(), model));
        }
    }

    private void put(String path, byte[] bytes) throws IOException {
        String shown = new Digest().bytes(bytes).hex();
        if (!draft.take(path, shown)) {
            draft.write(path, shown, ByteBuffer.wrap(bytes));
        }
    }
}
