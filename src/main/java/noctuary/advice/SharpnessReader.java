package noctuary.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.fits.FrameHeader;
import noctuary.measure.CourseFrame;
import noctuary.measure.Elongation;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.FrameAirmass;
import noctuary.measure.FrameSheet;
import noctuary.rig.RigFigures;
import noctuary.sky.Airmass;
import noctuary.sky.Catalogue;
import noctuary.stars.StarField;
import noctuary.stats.Robust;

/** Takes from an entry's sheet what bears on its sharpness. */
final class SharpnessReader {
    /** A median over fewer stars says little. */
    private static final int FEWEST_STARS = 20;

    private final EntryContext context;
    private final EntrySheet sheet;

    private SharpnessReader(EntryContext context) {
        this.context = context;
        this.sheet = context.sheet();
    }

    /** Absent without a star width in arcsec from enough stars. */
    static Optional<Sharpness> read(EntryContext context) {
        OptionalDouble width = context.number(Figure.FWHM_ARCSEC);
        double stars = context.number(Figure.STARS).orElse(0);
        return width.isPresent() && stars >= FEWEST_STARS
                ? Optional.of(new SharpnessReader(context).sharpness(width.getAsDouble(), (int) stars))
                : Optional.empty();
    }

    private Sharpness sharpness(double width, int stars) {
        Optional<RigFigures> rig = context.rig().map(state -> state.figures());
        List<StarField> fields =
                files().stream().flatMap(f -> f.measurement().field().stream()).toList();
        return new Sharpness(
                width,
                stars,
                context.number(Figure.IMAGE_SCALE),
                rig.map(RigFigures::airyFwhmArcsec).orElseGet(OptionalDouble::empty),
                context.number(Figure.GUIDING_RMS),
                trail(),
                Drift.judged(sheet.courses()),
                Drift.of(sheet.courses()),
                Corners.of(fields.stream().flatMap(f -> f.model().stream()).toList()),
                airmass(),
                bestAirmass(),
                rig.map(SharpnessReader::spacingError).orElseGet(OptionalDouble::empty));
    }

    /** The counted frames, else the stack: the files that the width comes from. */
    private List<FrameSheet> files() {
        List<FrameSheet> lights = context.lights();
        return lights.isEmpty() ? sheet.stack().stream().toList() : lights;
    }

    /** Of the frame in the middle: the common elongation differs from frame to frame, and a mean would cancel it. */
    private Optional<Elongation> trail() {
        List<Elongation> seen = files().stream()
                .flatMap(f -> f.measurement().elongation().stream())
                .sorted((a, b) -> Double.compare(a.ellipticity(), b.ellipticity()))
                .toList();
        return seen.isEmpty() ? Optional.empty() : Optional.of(seen.get(seen.size() / 2));
    }

    private OptionalDouble airmass() {
        double[] told = sheet.courses().stream()
                .flatMap(course -> course.frames().stream())
                .map(CourseFrame::airmass)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        if (told.length > 0) {
            return OptionalDouble.of(Robust.median(told));
        }
        return sheet.stack()
                .flatMap(FrameSheet::header)
                .map(h -> FrameAirmass.of(h, context.site()))
                .orElseGet(OptionalDouble::empty);
    }

    /** At the target's highest point: 90° less the way from the site's latitude to its declination. */
    private OptionalDouble bestAirmass() {
        OptionalDouble latitude = context.site().map(s -> s.latitudeDeg()).orElseGet(OptionalDouble::empty);
        Optional<Double> declination = declination();
        return latitude.isPresent() && declination.isPresent()
                ? Airmass.kastenYoung(90 - Math.abs(latitude.getAsDouble() - declination.get()))
                : OptionalDouble.empty();
    }

    private Optional<Double> declination() {
        return sheet.target()
                .value()
                .flatMap(Catalogue::find)
                .map(object -> object.j2000().decDeg())
                .or(() -> Stream.concat(sheet.frames().stream(), sheet.stack().stream())
                        .flatMap(f -> f.header().flatMap(FrameHeader::centre).stream())
                        .map(c -> c.value().decDeg())
                        .findFirst());
    }

    private static OptionalDouble spacingError(RigFigures rig) {
        return rig.backFocusActualMm().isPresent() && rig.backFocusRequiredMm().isPresent()
                ? OptionalDouble.of(rig.backFocusActualMm().getAsDouble()
                        - rig.backFocusRequiredMm().getAsDouble())
                : OptionalDouble.empty();
    }
}
