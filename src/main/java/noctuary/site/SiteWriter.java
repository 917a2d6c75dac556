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
import noctuary.measure.RigSheet;
import noctuary.measure.TargetSheet;
import noctuary.review.Review;
import noctuary.site.page.EntryPage;
import noctuary.site.page.Head;
import noctuary.site.page.MethodPage;

/** Writes every page, asset and download into a draft. Files that would not change are not touched. */
public final class SiteWriter {
    private final SiteContent content;
    private final PageMaker pages;
    private final Assets assets;
    private final Draft draft;
    private final Memo memo;
    private final Drawer<EntryPage> drawn;
    private final DrawnEntry[] drawnEntries;
    private final ToldEntry[] toldEntries;
    private final List<Abreast.Job> jobs = new ArrayList<>();

    private SiteWriter(SiteContent content, Path ownTemplates, Draft draft, Memo memo) throws IOException {
        this.content = content;
        this.pages = new PageMaker(new Templates(ownTemplates), draft, new PageModels(memo));
        this.assets = new Assets(ownTemplates);
        this.draft = draft;
        this.memo = memo;
        this.drawn = PageModels.entries(memo);
        this.drawnEntries = new DrawnEntry[content.entries().size()];
        this.toldEntries = new ToldEntry[content.entries().size()];
    }

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
     * @param memo keeps what pages show, so that a changed template does not mean to work it out again
     */
    public static MadeSite write(SiteContent content, Path ownTemplates, Draft draft, Memo memo) throws IOException {
        SiteWriter writer = new SiteWriter(content, ownTemplates, draft, memo);
        writer.writeAll();
        return new MadeSite(List.of(writer.drawnEntries), List.of(writer.toldEntries), writer.pages.made());
    }

    private void writeAll() throws IOException {
        Ledger ledger = new Ledger(content, memo);
        Heads heads = new Heads(ledger, Assets.STYLESHEETS);
        Charts charts = new Charts(ledger);
        jobs.add(() -> downloads(new Downloads(ledger), heads));
        page(Address.JOURNAL, PageKind.JOURNAL, () -> new JournalPages(ledger, heads, charts).page());
        page(Address.NIGHTS, PageKind.NIGHTS, () -> new NightPages(ledger, heads, charts).page());
        jobs.add(() -> find(new FindPages(ledger), heads));
        page(Address.CHOICES, PageKind.CHOICES, () -> new ChoicePages(ledger, heads).page());
        page(Address.METHOD, PageKind.METHOD, () -> method(heads));
        if (FeedPages.exists(ledger)) {
            page(new Address(FeedPages.PATH), PageKind.FEED, () -> new FeedPages(ledger).page());
        }
        lessons(new LessonPages(ledger, heads), new SheetPages(ledger, heads));
        targets(new TargetPages(ledger, heads, charts));
        rigs(new RigPages(ledger, heads, charts));
        changes(new ChangePages(ledger, heads), heads);
        entries(ledger, new EntryPages(ledger, heads, charts));
        jobs.add(() -> assets.put(draft));
        Abreast.run(jobs);
    }

    private void downloads(Downloads downloads, Heads heads) throws IOException {
        Map<String, Long> sizes = new HashMap<>();
        for (Downloads.Download file : downloads.files()) {
            if (file.shown().isEmpty()) {
                draft.put(file.path(), file.content().bytes());
            } else if (!draft.take(file.path(), file.shown())) {
                draft.write(
                        file.path(),
                        file.shown(),
                        ByteBuffer.wrap(file.content().bytes()));
            }
            sizes.put(file.path(), Files.size(draft.folder().resolve(file.path())));
        }
        pages.make(Address.DOWNLOADS, PageKind.DOWNLOADS, "", () -> downloads.page(heads, sizes));
    }

    private void find(FindPages find, Heads heads) throws IOException {
        draft.put(FindWords.PATH, find.words().script());
        pages.make(Address.FIND, PageKind.FIND, "", () -> find.page(heads));
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
        ToldEntry told = entries.telling(self, shown.between(self, at), at);
        drawnEntries[at] = new DrawnEntry(slug, entry.title().value(), plain ? self : "");
        toldEntries[at] = told;
        pages.entry(here, told.shown(), () -> told.on(drawn.recall(slug, self, () -> entries.page(at))));
    }

    private void lessons(LessonPages lessons, SheetPages sheets) {
        page(Address.LESSONS, PageKind.LESSONS, lessons::page);
        page(Address.SHEET, PageKind.SHEET, () -> sheets.page(Address.SHEET, sheets.newest()));
        for (TargetSheet target : content.targets()) {
            Address here = Address.sheet(target.id());
            page(here, PageKind.SHEET, () -> sheets.page(here, Optional.of(target)));
        }
    }

    private void targets(TargetPages targets) {
        page(Address.TARGETS, PageKind.TARGETS, targets::index);
        for (TargetSheet target : content.targets()) {
            page(Address.target(target.id()), PageKind.TARGET, () -> targets.page(target));
        }
    }

    private void rigs(RigPages rigs) {
        page(Address.RIGS, PageKind.RIGS, rigs::index);
        for (RigSheet rig : content.rigs().values()) {
            page(Address.rig(rig.note().id()), PageKind.RIG, () -> rigs.page(rig));
        }
    }

    private void changes(ChangePages changes, Heads heads) {
        page(Address.CHANGES, PageKind.CHANGES, changes::index);
        for (Review review : content.reviews()) {
            Address here = Address.change(review.change().id());
            jobs.add(() -> pages.make(
                    here, PageKind.CHANGE, shown(review, heads.of(here, "", "")), () -> changes.page(review)));
        }
    }

    /** All that a change's page is made from: what else happened and what is left out depend on other entries too. */
    private String shown(Review review, Head head) {
        return review.key().isEmpty()
                ? ""
                : new Digest()
                        .text(review.key())
                        .text(review.leftOut().toString())
                        .text(review.coincidences().toString())
                        .text(content.journal().settings().toString())
                        .text(head.toString())
                        .hex();
    }

    private static MethodPage method(Heads heads) {
        String description = "Every definition, formula and source behind the numbers of this journal.";
        return new MethodPage(heads.of(Address.METHOD, "Method", description), Methods.contents());
    }

    private void page(Address address, PageKind kind, Supplier<Record> model) {
        jobs.add(() -> pages.make(address, kind, "", model));
    }
}
