package noctuary.entry;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import noctuary.entry.Entry.Lost;
import noctuary.entry.Entry.TypedExposure;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** The keys of an entry. */
final class EntryReader {
    /** An entry whose claims to close lessons are not yet checked. */
    record Draft(Entry entry, List<Typed<String>> closes) {}

    private final SettingsReader defaults;
    private final Set<String> rigs;
    private final Set<String> sites;
    private final FileFinder files;

    /**
     * @param rigs ids of those that exist
     * @param sites as rigs
     * @param files for one note, which leave its trail
     */
    EntryReader(SettingsReader defaults, Set<String> rigs, Set<String> sites, FileFinder files) {
        this.defaults = defaults;
        this.rigs = rigs;
        this.sites = sites;
        this.files = files;
    }

    Draft read(String slug, Path folder, Note note, NoteHtml.Page page, Margin margin) {
        var fields = new Fields(note.keys(), margin);
        Typed<String> title =
                fields.one("title", Forms::text).orElse(new Typed<>(slug, margin.file(), 1, "title", slug));
        Optional<Typed<String>> target = fields.one("target", Forms::text);
        Optional<Typed<String>> rig = existing(fields, "rig", rigs, defaults.rig());
        Optional<Typed<String>> site = existing(fields, "site", sites, defaults.site());
        Optional<Typed<LocalDate>> date = date(fields);
        List<Path> frames = files.all(fields.list("frames", Forms::text), folder, margin);
        Optional<Path> stack = fields.one("stack", Forms::text).flatMap(path -> files.one(path, folder, margin));
        List<Typed<TypedExposure>> exposure = exposure(fields);
        Optional<Typed<Quantity>> guiding = guiding(fields);
        List<Typed<String>> closes = fields.list("closes", Forms::text);
        var entry = new Entry(
                slug,
                margin.file(),
                folder,
                title,
                target,
                rig,
                site,
                date,
                frames,
                stack,
                exposure,
                guiding,
                lost(fields),
                fields.list("changes", Forms::text),
                VersionReader.read(fields, path -> files.one(path, folder, margin)),
                LessonReader.read(fields, slug),
                List.of(),
                page.html(),
                page.attachments());
        fields.refuseOthers();
        refuseEmptiness(fields);
        return new Draft(entry, closes);
    }

    private static void refuseEmptiness(Fields fields) {
        boolean something = fields.has("frames") || fields.has("stack") || fields.has("exposure");
        if (fields.whole() && !something) {
            fields.margin()
                    .fault(
                            fields.line(),
                            "frames",
                            "nothing says what was exposed",
                            "write one of frames, stack or exposure, such as \"frames: [lights/*.fits]\"");
        }
    }

    private static Optional<Typed<String>> existing(
            Fields fields, String key, Set<String> known, Optional<Typed<String>> otherwise) {
        if (!fields.has(key)) {
            if (otherwise.isEmpty() && fields.whole() && key.equals("rig")) {
                fields.margin()
                        .fault(
                                fields.line(),
                                key,
                                "no rig is named here, nor in " + SettingsReader.FILE,
                                "write \"rig: \" and the name of a file in entries/rigs");
            }
            return otherwise.filter(typed -> known.contains(typed.value()));
        }
        return fields.one(key, text -> known(text, key, known));
    }

    /** An id that exists, or a complaint with the nearest one. */
    static String known(String id, String kind, Set<String> known) throws Unfit {
        if (!known.contains(id)) {
            throw new Unfit("there is no " + kind + " " + Margin.quoted(id), Nearest.hint(id, known));
        }
        return id;
    }

    private static Optional<Typed<LocalDate>> date(Fields fields) {
        Optional<Typed<LocalDate>> date = fields.one("date", Forms::night);
        Optional<Typed<LocalDate>> night = fields.one("night", Forms::night);
        if (date.isPresent() && night.isPresent()) {
            fields.margin().fault(night.get().line(), "night", "the night is told twice", "keep either date or night");
        }
        return night.or(() -> date);
    }

    private static List<Typed<TypedExposure>> exposure(Fields fields) {
        List<Typed<TypedExposure>> exposure = new ArrayList<>();
        for (Fields one : fields.groups("exposure", "\"- {count: 48, seconds: 120}\"")) {
            var count = one.needed("count", Forms::count, "\"count: 48\"");
            var seconds = one.needed("seconds", text -> TypedQuantity.time(text, TypedUnit.SECOND), "\"seconds: 120\"");
            String filter = one.one("filter", Forms::text).map(Typed::value).orElse("");
            one.refuseOthers();
            if (count.isPresent() && seconds.isPresent()) {
                BigDecimal each = seconds.get().value();
                var typed = new TypedExposure(count.get().value(), each, filter);
                String text =
                        count.get().text() + " x " + seconds.get().text() + (filter.isEmpty() ? "" : ", " + filter);
                exposure.add(new Typed<>(typed, fields.margin().file(), one.line(), "exposure", text));
            }
        }
        return exposure;
    }

    private static Optional<Typed<Quantity>> guiding(Fields fields) {
        Fields group = fields.group("guiding", "\"guiding: {rms: 0.62 arcsec}\"");
        Optional<Typed<Quantity>> rms = group.one("rms", TypedQuantity.positive(Unit.ARCSECOND));
        group.refuseOthers();
        return rms;
    }

    private static List<Lost> lost(Fields fields) {
        List<Lost> lost = new ArrayList<>();
        for (Fields one : fields.groups("lost", "\"- {minutes: 45, cause: cabling}\"")) {
            var minutes = one.needed("minutes", text -> TypedQuantity.time(text, TypedUnit.MINUTE), "\"minutes: 45\"");
            var cause = one.needed("cause", Forms::text, "\"cause: cabling\"");
            String note = one.one("note", Forms::text).map(Typed::value).orElse("");
            one.refuseOthers();
            if (minutes.isPresent() && cause.isPresent()) {
                lost.add(new Lost(
                        minutes.get().value().doubleValue(), cause.get().value(), note));
            }
        }
        return lost;
    }
}
