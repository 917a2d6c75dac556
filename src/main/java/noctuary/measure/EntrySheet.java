package noctuary.measure;

import java.lang.ref.SoftReference;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import noctuary.entry.Entry;
import noctuary.fact.Fact;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;

/**
 * All that is known about one entry. What is wanted of every entry at each render lies ready; its files with all that
 * rests on them come when they are first asked for, and go when memory is short.
 */
public final class EntrySheet {
    private final Entry entry;
    private final String key;
    private final EntrySummary summary;
    private final Supplier<EntryFiles> source;
    private SoftReference<EntryFiles> files = new SoftReference<>(null);

    private EntrySheet(Entry entry, String key, EntrySummary summary, Supplier<EntryFiles> source) {
        this.entry = entry;
        this.key = key;
        this.summary = summary;
        this.source = source;
    }

    /**
     * A sheet in memory, of which nothing is kept.
     *
     * @param nights all nights with frames, ascending
     * @param exposureByFilter by filter as the keeper or the header wrote it, most exposure first
     * @param figures every {@link Figure}, known or missing with a reason
     * @param stack measured, when there is one
     * @param shown the file whose stars and picture stand for the entry: the stack, else the sharpest frame
     * @param courses of the counted frames, one a night, ascending
     */
    public static EntrySheet of(
            Entry entry,
            Fact<String> target,
            Fact<LocalDate> night,
            List<LocalDate> nights,
            Map<String, Fact<Quantity>> exposureByFilter,
            Map<Figure, Fact<Quantity>> figures,
            List<FrameSheet> frames,
            Optional<FrameSheet> stack,
            Optional<FrameSheet> shown,
            List<NightCourse> courses,
            List<Problem> problems) {
        EntryFiles files = new EntryFiles(exposureByFilter, figures, frames, stack, shown, courses);
        return new EntrySheet(entry, "", EntrySummary.of(target, night, nights, files, problems), () -> files);
    }

    /**
     * @param key stands for all that the sheet follows from; empty when that cannot be told
     * @param source gives its files at any time
     */
    static EntrySheet kept(Entry entry, String key, EntrySummary summary, Supplier<EntryFiles> source) {
        return new EntrySheet(entry, key, summary, source);
    }

    /** The same sheet, whose files are at hand already. */
    EntrySheet holding(EntryFiles found) {
        files = new SoftReference<>(found);
        return this;
    }

    public Entry entry() {
        return entry;
    }

    /** Stands for all that the sheet follows from: note, files, rig and site; empty when that cannot be told. */
    public String key() {
        return key;
    }

    public Fact<String> target() {
        return summary.target();
    }

    public Fact<LocalDate> night() {
        return summary.night();
    }

    /** All nights with frames, ascending. */
    public List<LocalDate> nights() {
        return summary.nights();
    }

    /** The value of a figure; where it comes from, or why it is not known, is in {@link #figure}. */
    public Optional<Quantity> number(Figure figure) {
        return Optional.ofNullable(summary.numbers().get(figure));
    }

    /** Seconds of exposure by filter as the keeper or the header wrote it, most first. */
    public Map<String, OptionalDouble> secondsByFilter() {
        return summary.secondsByFilter();
    }

    /** Begin and seconds of each counted frame that tells its time. */
    public List<Exposed> exposed() {
        return summary.exposed();
    }

    /** Counted frames that do not tell their time, where others do. */
    public int timeless() {
        return summary.timeless();
    }

    /** What all its nights looked like. */
    public List<Observation> observations() {
        return summary.observations();
    }

    /** Star widths of the files that {@link Figure#FWHM_ARCSEC} comes from: the median of each percentile over them. */
    public FrameReport.Spread fwhmSpreadArcsec() {
        return summary.fwhmSpreadArcsec();
    }

    /** {@code wcs}, {@code header optics} or {@code rig}: as the shown file says, else rig when it was typed. */
    public Optional<String> scaleFrom() {
        return summary.scaleFrom();
    }

    /** The file of {@link #shown}, without what was measured on it. */
    public Optional<ShownFile> shownFile() {
        return summary.shown();
    }

    public List<Problem> problems() {
        return summary.problems();
    }

    /** Known, or missing with a reason. */
    public Fact<Quantity> figure(Figure figure) {
        return files().figures().getOrDefault(figure, Fact.missing("not looked for"));
    }

    public Map<String, Fact<Quantity>> exposureByFilter() {
        return files().exposureByFilter();
    }

    public List<FrameSheet> frames() {
        return files().frames();
    }

    /** Measured, when there is one. */
    public Optional<FrameSheet> stack() {
        return files().stack();
    }

    /** The file whose stars and picture stand for the entry: the stack, else the sharpest frame. */
    public Optional<FrameSheet> shown() {
        return files().shown();
    }

    /** Of the counted frames, one a night, ascending. */
    public List<NightCourse> courses() {
        return files().courses();
    }

    private synchronized EntryFiles files() {
        EntryFiles found = files.get();
        if (found == null) {
            found = source.get();
            files = new SoftReference<>(found);
        }
        return found;
    }

    public record Exposed(Instant taken, double seconds) {}
}
