package noctuary.measure;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import noctuary.entry.Site;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.keep.Digest;
import noctuary.keep.Drawer;
import noctuary.keep.Packing;
import noctuary.sky.Night;
import noctuary.stars.StarField;
import noctuary.stars.Summary;

/** Makes the courses of an entry's nights. */
final class NightCourses {
    private final Optional<Site> site;

    private NightCourses(Optional<Site> site) {
        this.site = site;
    }

    record Courses(List<NightCourse> all) {
        static final Packing<Courses> PACKING = Packing.of(Courses.class);
    }

    /** As {@link #of(List, Optional)}, from {@code kept} where all files are known to it. */
    static List<NightCourse> of(String slug, List<FrameSheet> frames, Optional<Site> site, Drawer<Courses> kept) {
        Digest key = new Digest().text(site.map(Site::toString).orElse(""));
        frames.forEach(f -> key.text(f.name())
                .text(f.measurement().content())
                .text(f.report().imageScale().toString())
                .text(f.notCounted().orElse("")));
        boolean known = frames.stream().noneMatch(f -> f.measurement().content().isEmpty());
        return kept.recall(slug, known ? key.hex() : "", () -> new Courses(of(frames, site)))
                .all();
    }

    /** One a night, ascending, from counted frames that have a time. */
    static List<NightCourse> of(List<FrameSheet> frames, Optional<Site> site) {
        ZoneId zone = Nights.zone(site);
        Map<LocalDate, List<FrameSheet>> nights = new TreeMap<>();
        frames.stream()
                .filter(FrameSheet::counted)
                .filter(f -> f.report().taken().isPresent())
                .sorted(Comparator.comparing(NightCourses::taken).thenComparing(FrameSheet::name))
                .forEach(f -> nights.computeIfAbsent(Night.of(taken(f), zone), k -> new ArrayList<>())
                        .add(f));
        NightCourses courses = new NightCourses(site);
        return nights.entrySet().stream()
                .map(e -> courses.course(e.getKey(), e.getValue()))
                .toList();
    }

    private NightCourse course(LocalDate night, List<FrameSheet> frames) {
        Map<String, List<FrameSheet>> alike = new LinkedHashMap<>();
        frames.forEach(
                f -> alike.computeIfAbsent(likeness(f), k -> new ArrayList<>()).add(f));
        FrameSheet fieldReference = reference(frames);
        List<CourseFrame> all = new ArrayList<>();
        List<Observation> observations = new ArrayList<>();
        for (List<FrameSheet> series : alike.values()) {
            FrameSheet lightReference = reference(series);
            List<CourseFrame> course = series.stream()
                    .map(f -> frame(f, lightReference, fieldReference))
                    .toList();
            all.addAll(course);
            observations.addAll(CourseRules.look(course, alike.size() > 1));
        }
        all.sort(Comparator.comparing(CourseFrame::taken).thenComparing(CourseFrame::name));
        return new NightCourse(night, fieldReference.name(), all, FieldDrift.of(all), observations);
    }

    private CourseFrame frame(FrameSheet frame, FrameSheet lightReference, FrameSheet fieldReference) {
        FrameReport report = frame.report();
        Optional<StarField> stars = frame.measurement().field();
        Optional<Summary> fwhm = stars.flatMap(StarField::fwhmPx);
        Optional<FrameMatch> light = FrameMatch.of(lightReference, frame);
        Optional<FrameMatch> field = lightReference == fieldReference ? light : FrameMatch.of(fieldReference, frame);
        double longer = report.exposureSeconds().orElse(Double.NaN)
                / lightReference.report().exposureSeconds().orElse(Double.NaN);
        OptionalDouble ratio = light.map(FrameMatch::fluxRatio).orElseGet(OptionalDouble::empty);
        boolean comparable = ratio.isPresent() && Double.isFinite(longer) && longer > 0;
        return new CourseFrame(
                frame.name(),
                taken(frame),
                report.filter().orElse(""),
                report.exposureSeconds(),
                known(fwhm.map(Summary::median)),
                known(fwhm.map(Summary::standardError)),
                report.stars().map(s -> s.fwhmArcsec().median()).orElseGet(OptionalDouble::empty),
                known(stars.flatMap(StarField::ellipticity).map(Summary::median)),
                frame.measurement().elongation(),
                known(stars.map(s -> s.background().level())),
                known(stars.map(s -> s.background().noise())),
                frame.stars().size(),
                frame.header().map(h -> FrameAirmass.of(h, site)).orElseGet(OptionalDouble::empty),
                comparable ? OptionalDouble.of(ratio.getAsDouble() / longer) : OptionalDouble.empty(),
                comparable ? OptionalDouble.of(light.get().fluxRatioError() / longer) : OptionalDouble.empty(),
                light.map(FrameMatch::common).orElse(0),
                field.map(FrameMatch::move),
                light.flatMap(FrameMatch::dimmed));
    }

    /** Frames whose star light can be compared: filter, size and gain are the same. */
    private static String likeness(FrameSheet frame) {
        return String.join(
                "|",
                frame.report().filter().orElse(""),
                frame.measurement().width() + "x" + frame.measurement().height(),
                frame.header()
                        .flatMap(FrameHeader::electronsPerAdu)
                        .map(Cited::text)
                        .orElse(""));
    }

    private static FrameSheet reference(List<FrameSheet> frames) {
        return frames.stream()
                .reduce((a, b) -> b.stars().size() > a.stars().size() ? b : a)
                .orElseThrow();
    }

    private static Instant taken(FrameSheet frame) {
        return frame.report().taken().orElseThrow();
    }

    private static OptionalDouble known(Optional<Double> value) {
        return value.filter(Double::isFinite).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
