package noctuary.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import noctuary.entry.Entry;
import noctuary.entry.Journal;
import noctuary.entry.Site;
import noctuary.fact.Fact;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Origin;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;
import noctuary.fits.FrameHeader;
import noctuary.keep.Drawer;
import noctuary.keep.Memo;
import noctuary.stars.Summary;

/** Makes fact sheets. */
public final class EntrySheets {
    private static final String KIND = "sheets";

    private final Journal journal;
    private final List<Path> tops;
    private final Function<Path, Measurement> lookup;
    private final EntryKeys keys;
    private final Memo memo;
    private final Drawer<NightCourses.Courses> courses;

    /** @param lookup measures a file or finds it measured */
    public EntrySheets(Journal journal, Function<Path, Measurement> lookup) {
        this(journal, lookup, Memo.NONE);
    }

    /** @param memo keeps what takes long to work out */
    public EntrySheets(Journal journal, Function<Path, Measurement> lookup, Memo memo) {
        this.memo = memo;
        this.journal = journal;
        this.tops = tops(journal);
        this.lookup = lookup;
        this.keys = new EntryKeys(journal, tops);
        this.courses = memo.drawer("courses", NightCourses.Courses.PACKING);
    }

    /** Sheets of all entries, in their order. Files are measured where nothing is kept of their entry. */
    public List<EntrySheet> all(Consumer<Collection<Path>> measuring) {
        List<Entry> entries = journal.entries();
        List<Optional<EntrySheet>> kept =
                entries.parallelStream().map(this::kept).toList();
        Set<Path> wanted = new LinkedHashSet<>();
        for (int i = 0; i < entries.size(); i++) {
            if (kept.get(i).isEmpty()) {
                wanted.addAll(entries.get(i).frames());
                entries.get(i).stack().ifPresent(wanted::add);
            }
        }
        measuring.accept(wanted);
        return IntStream.range(0, entries.size())
                .parallel()
                .mapToObj(i -> kept.get(i).orElseGet(() -> of(entries.get(i))))
                .toList();
    }

    private Optional<EntrySheet> kept(Entry entry) {
        String key = keys.of(entry);
        return memo.find(KIND, EntrySummary.PACKING, key)
                .map(summary ->
                        EntrySheet.kept(entry, key, summary, () -> whole(entry).files()));
    }

    /** The sheet; its files are measured where that was not done. */
    public EntrySheet of(Entry entry) {
        Whole whole = whole(entry);
        boolean known =
                whole.files().all().allMatch(f -> !f.measurement().content().isEmpty());
        String key = known ? keys.of(entry) : "";
        memo.keep(KIND, EntrySummary.PACKING, key, whole.summary());
        return EntrySheet.kept(entry, key, whole.summary(), () -> whole(entry).files())
                .holding(whole.files());
    }

    private record Whole(EntrySummary summary, EntryFiles files) {}

    private Whole whole(Entry entry) {
        FrameSheets measured = new FrameSheets(entry, tops, lookup);
        List<FrameSheet> bareFrames = measured.frames();
        Optional<FrameSheet> bareStack = measured.stack();
        Nights nights = new Nights(entry, site(entry), bareFrames, bareStack);
        Optional<RigContext> rig = rig(entry, nights.first());
        OptionalDouble rigScale =
                rig.map(r -> r.figures().imageScaleArcsecPerPx()).orElseGet(OptionalDouble::empty);
        List<FrameSheet> frames =
                bareFrames.stream().map(f -> f.withRigScale(rigScale)).toList();
        Optional<FrameSheet> stack = bareStack.map(s -> s.withRigScale(rigScale));
        Exposures exposures = new Exposures(entry, frames, stack);

        List<Problem> problems = new ArrayList<>();
        List<FrameSheet> all = Stream.concat(frames.stream(), stack.stream()).toList();
        all.forEach(f -> problems.addAll(troubles(entry, f)));
        Map<Figure, Fact<Quantity>> figures = figures(entry, frames, stack, rig, exposures, problems);
        Optional<FrameSheet> shown =
                stack.filter(s -> s.measurement().readable()).or(() -> sharpest(frames));
        figures.putAll(ShownFigures.of(shown));
        EntryFiles files = new EntryFiles(
                exposures.byFilter(),
                figures,
                frames,
                stack,
                shown,
                NightCourses.of(entry.slug(), frames, site(entry), courses));
        return new Whole(EntrySummary.of(target(entry, all), nights.first(), nights.all(), files, problems), files);
    }

    private static Map<Figure, Fact<Quantity>> figures(
            Entry entry,
            List<FrameSheet> frames,
            Optional<FrameSheet> stack,
            Optional<RigContext> rig,
            Exposures exposures,
            List<Problem> problems) {
        Map<Figure, Fact<Quantity>> figures = new EnumMap<>(Figure.class);
        Voices exposure = exposures.voices();
        figures.put(Figure.EXPOSURE, exposure.settle("neither frames, stack nor note tell it"));
        problems.addAll(exposure.notices(entry.file()));
        OpticsFigures optics = new OpticsFigures(entry.file(), OpticsSource.of(frames, stack), rig);
        figures.putAll(optics.figures());
        problems.addAll(optics.problems());
        List<FrameSheet> telling = StarFigures.sources(frames, stack);
        Voices gain = CameraFigures.gain(telling, rig);
        figures.put(Figure.GAIN, gain.settle("neither header nor rig tells it"));
        problems.addAll(gain.notices(entry.file()));
        figures.put(Figure.SENSOR_TEMPERATURE, CameraFigures.temperature(telling));
        figures.putAll(new StarFigures(telling).figures(figures.get(Figure.IMAGE_SCALE)));
        figures.putAll(
                new NoiseFigures(telling).figures(figures.get(Figure.BACKGROUND_NOISE), figures.get(Figure.GAIN)));
        figures.put(Figure.GUIDING_RMS, guiding(entry));
        return figures;
    }

    private Optional<Site> site(Entry entry) {
        return entry.site().map(s -> journal.sites().get(s.value()));
    }

    /** The rig as it was that night; as it was last when the night is not known. */
    private Optional<RigContext> rig(Entry entry, Fact<LocalDate> night) {
        return entry.rig()
                .map(r -> journal.rigs().get(r.value()))
                .map(note -> RigContext.on(note, night.value().orElse(LocalDate.MAX)));
    }

    private static Fact<String> target(Entry entry, List<FrameSheet> files) {
        if (entry.target().isPresent()) {
            return Fact.of(entry.target().get().value(), entry.target().get().origin());
        }
        for (FrameSheet file : files) {
            var object = file.header().flatMap(FrameHeader::object);
            if (object.isPresent()) {
                Origin origin = new Origin.Header(
                        file.name(), object.get().card(), object.get().text());
                return Fact.of(object.get().value(), origin);
            }
        }
        return Fact.missing("the note has no target, and no header has an OBJECT");
    }

    private static Fact<Quantity> guiding(Entry entry) {
        return entry.guidingRms()
                .<Fact<Quantity>>map(t -> new Fact.Known<>(new Reading<>(t.value(), t.origin()), List.of()))
                .orElseGet(() -> Fact.missing("the note does not tell it"));
    }

    private static List<Problem> troubles(Entry entry, FrameSheet file) {
        boolean readable = file.measurement().readable();
        return file.measurement().troubles().stream()
                .map(t -> new Problem(
                        readable ? Problem.Severity.NOTICE : Problem.Severity.FAULT,
                        entry.file(),
                        t.where().isEmpty() ? file.name() : file.name() + ", " + t.where(),
                        t.what(),
                        t.hint()))
                .toList();
    }

    private static Optional<FrameSheet> sharpest(List<FrameSheet> frames) {
        return frames.stream()
                .filter(FrameSheet::counted)
                .min(Comparator.comparingDouble(f -> f.measurement()
                        .field()
                        .flatMap(field -> field.fwhmPx())
                        .map(Summary::median)
                        .orElse(Double.MAX_VALUE)));
    }

    private static List<Path> tops(Journal journal) {
        List<Path> tops = new ArrayList<>();
        tops.add(journal.root());
        for (Path archive : journal.settings().archive().values()) {
            tops.add(archive);
            try {
                tops.add(archive.toRealPath());
            } catch (IOException notThere) {
                continue;
            }
        }
        return tops;
    }
}
