package noctuary.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import noctuary.keep.Digest;
import noctuary.keep.Drawer;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.measure.RigSheet;
import noctuary.measure.TargetSheet;
import noctuary.review.Review;
import noctuary.site.page.EntryPage;
import noctuary.site.page.MethodPage;

/** Writes every page, asset and download into a folder. Files that would not change are not touched. */
public final class SiteWriter {
    static final String ENTRY = "entry.ftlh";

    private final SiteContent content;
    private final Templates templates;
    private final Assets assets;
    private final Path output;
    private final Former former;
    private final Memo memo;
    private final Drawer<EntryPage> drawn;
    private final List<DrawnEntry> drawnEntries = new ArrayList<>();
    private final Models models = new Models();
    private final List<Page> pages = new ArrayList<>();

    private SiteWriter(SiteContent content, Path ownTemplates, Path output, Former former, Memo memo)
            throws IOException {
        this.content = content;
        this.templates = new Templates(ownTemplates);
        this.assets = new Assets(ownTemplates);
        this.output = output;
        this.former = former;
        this.memo = memo;
        this.drawn = drawer(memo);
    }

    /**
     * A page to be made.
     *
     * @param shown stands for all that it shows, where that can be told before it is made; else empty
     */
    private record Page(Address address, String template, Supplier<Record> model, String shown) {}

    /**
     * @param ownTemplates the keeper's template folder, which may be missing; a file there replaces ours
     * @throws TemplateFault when a template is wrong, naming template and line
     * @throws IOException when the folder cannot be written
     */
    public static void write(SiteContent content, Path ownTemplates, Path output) throws IOException {
        write(content, ownTemplates, output, Former.none(), Memo.NONE);
    }

    /**
     * As {@link #write(SiteContent, Path, Path)}, with pages of the former site where nothing they show has changed.
     *
     * @param memo keeps what pages of entries show, so that a changed template does not mean to work it out again
     * @return the entries in their order
     */
    public static List<DrawnEntry> write(SiteContent content, Path ownTemplates, Path output, Former former, Memo memo)
            throws IOException {
        SiteWriter writer = new SiteWriter(content, ownTemplates, output, former, memo);
        writer.writeAll();
        return writer.drawnEntries;
    }

    /** Pages of entries, without words and ways. */
    static Drawer<EntryPage> drawer(Memo memo) {
        return memo.drawer("entry-pages", Packing.withGaps(EntryPage.class));
    }

    private void writeAll() throws IOException {
        Ledger ledger = new Ledger(content, memo);
        Heads heads = new Heads(ledger, Assets.STYLESHEETS);
        Charts charts = new Charts(ledger);
        Downloads downloads = new Downloads(ledger);
        for (String stylesheet : Assets.STYLESHEETS) {
            put(stylesheet, assets.read(stylesheet));
        }
        for (String script : Assets.SCRIPTS) {
            put(script, assets.read(script));
        }
        for (Map.Entry<String, String> file : downloads.files().entrySet()) {
            put(file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
        }
        page(Address.JOURNAL, "journal.ftlh", () -> new JournalPages(ledger, heads, charts).page());
        page(Address.NIGHTS, "nights.ftlh", () -> new NightPages(ledger, heads, charts).page());
        page(Address.CHOICES, "choices.ftlh", () -> new ChoicePages(ledger, heads).page());
        page(Address.METHOD, "method.ftlh", () -> method(heads));
        page(Address.DOWNLOADS, "data.ftlh", () -> downloads.page(heads));
        FindPages find = new FindPages(ledger);
        put(FindWords.PATH, find.words().script());
        page(Address.FIND, "find.ftlh", () -> find.page(heads));
        if (FeedPages.exists(ledger)) {
            page(new Address(FeedPages.PATH), "feed.ftlx", () -> new FeedPages(ledger).page());
        }
        lessons(new LessonPages(ledger, heads), new SheetPages(ledger, heads));
        entries(ledger, new EntryPages(ledger, heads, charts));
        targets(new TargetPages(ledger, heads, charts));
        rigs(new RigPages(ledger, heads, charts));
        changes(new ChangePages(ledger, heads));
        makeAll();
    }

    private void entries(Ledger ledger, EntryPages entries) {
        EntryShown shown = new EntryShown(ledger);
        for (int i = 0; i < content.entries().size(); i++) {
            int at = i;
            String slug = content.entries().get(i).entry().slug();
            String self = shown.of(at, entries.changes(at));
            boolean plain = ledger.unshown(Address.entry(slug)).isEmpty();
            drawnEntries.add(new DrawnEntry(
                    slug, content.entries().get(at).entry().title().value(), plain ? self : ""));
            pages.add(new Page(
                    Address.entry(slug),
                    ENTRY,
                    () -> entries.telling(drawn.recall(slug, self, () -> entries.page(at)), at),
                    shown.between(self, at)));
        }
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
            this.pages.add(new Page(
                    Address.change(review.change().id()), "change.ftlh", () -> pages.page(review), shown(review)));
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
        pages.add(new Page(address, template, model, ""));
    }

    /** On all cores; of several faults the one of the first page is told. */
    private void makeAll() throws IOException {
        Optional<IOException> fault =
                pages.parallelStream().map(this::make).flatMap(Optional::stream).findFirst();
        if (fault.isPresent()) {
            throw fault.get();
        }
    }

    private Optional<IOException> make(Page page) {
        String path = page.address().path();
        if (former.take(path, page.shown(), output)) {
            return Optional.empty();
        }
        Record model = page.model().get();
        if (page.shown().isEmpty() && former.take(path, models.digest(model), output)) {
            return Optional.empty();
        }
        try {
            write(path, templates.fill(page.template(), model).getBytes(StandardCharsets.UTF_8));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(e);
        }
    }

    private void put(String path, byte[] bytes) throws IOException {
        if (!former.take(path, new Digest().bytes(bytes).hex(), output)) {
            write(path, bytes);
        }
    }

    private void write(String path, byte[] bytes) throws IOException {
        Path file = output.resolve(path);
        if (!file.normalize().startsWith(output.normalize())) {
            throw new IOException(path + " leads out of the output folder");
        }
        if (Files.isRegularFile(file) && Files.size(file) == bytes.length) {
            if (Arrays.equals(Files.readAllBytes(file), bytes)) {
                return;
            }
        }
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }
}
