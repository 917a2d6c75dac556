package noctuary.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import noctuary.measure.RigSheet;
import noctuary.rig.RigFigures;
import noctuary.stats.Robust;

/** From rig A to rig B by arithmetic, beside what stars and widths showed. */
final class Foretelling {
    private final RigFigures a;
    private final RigFigures b;
    private final List<DepthPair> pairs;
    private final Optional<MeasureNights> widths;

    private Foretelling(RigFigures a, RigFigures b, List<DepthPair> pairs, Optional<MeasureNights> widths) {
        this.a = a;
        this.b = b;
        this.pairs = pairs;
        this.widths = widths;
    }

    /** Nothing when no rig changed, or nothing about one is known. */
    static List<Foretold> of(Change change, List<DepthPair> pairs, List<MeasureNights> measures) {
        Optional<RigFigures> a = change.before().state().map(RigSheet.State::figures);
        Optional<RigFigures> b = change.after().state().map(RigSheet.State::figures);
        if (change.kind() != ChangeKind.RIG || change.part().isPresent() || a.isEmpty() || b.isEmpty()) {
            return List.of();
        }
        Optional<MeasureNights> widths = measures.stream()
                .filter(m -> m.measure().equals(Gauges.FWHM_ARCSEC))
                .findFirst();
        return new Foretelling(a.get(), b.get(), pairs, widths).rows();
    }

    private List<Foretold> rows() {
        List<Foretold> rows = new ArrayList<>();
        rows.add(ratio("Image scale", "arcsec/px", 3, RigFigures::imageScaleArcsecPerPx, scales()));
        rows.add(ratio("Field width", "deg", 2, RigFigures::fieldWidthDeg, OptionalDouble.empty()));
        rows.add(ratio("Field height", "deg", 2, RigFigures::fieldHeightDeg, OptionalDouble.empty()));
        rows.add(ratio("Focal ratio", "", 2, RigFigures::focalRatio, OptionalDouble.empty()));
        rows.add(ratio("Diffraction limit", "arcsec", 2, RigFigures::airyFwhmArcsec, OptionalDouble.empty()));
        rows.add(relative("Light a pixel", perPixel(), OptionalDouble.empty()));
        rows.add(relative("Light a square arcsec", perSky(), median(DepthPair::throughput)));
        rows.add(width());
        rows.add(depth());
        return rows;
    }

    private Foretold ratio(
            String label, String unit, int decimals, Function<RigFigures, OptionalDouble> part, OptionalDouble shown) {
        OptionalDouble before = part.apply(a);
        OptionalDouble after = part.apply(b);
        OptionalDouble foretold = both(after, before, (x, y) -> x / y);
        return new Foretold(label, unit, decimals, false, before, after, foretold, shown, remark(foretold, shown));
    }

    private static Foretold relative(String label, OptionalDouble foretold, OptionalDouble shown) {
        return new Foretold(
                label,
                "",
                2,
                false,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                foretold,
                shown,
                remark(foretold, shown));
    }

    /** The width that the stars before would have had, had only diffraction changed: widths added in quadrature. */
    private Foretold width() {
        OptionalDouble before = middle(true);
        OptionalDouble seen = middle(false);
        OptionalDouble after = before.isPresent()
                        && a.airyFwhmArcsec().isPresent()
                        && b.airyFwhmArcsec().isPresent()
                ? OptionalDouble.of(Math.sqrt(
                        Math.max(0, square(before) - square(a.airyFwhmArcsec()) + square(b.airyFwhmArcsec()))))
                : OptionalDouble.empty();
        OptionalDouble foretold = both(after, before, (x, y) -> x / y);
        OptionalDouble shown = both(seen, before, (x, y) -> x / y);
        return new Foretold(
                "Star width, were only diffraction changed",
                "arcsec",
                2,
                false,
                before,
                after,
                foretold,
                shown,
                remark(foretold, shown));
    }

    /** A star against the background under one sky: light grows with D², its noise with D times the width. */
    private Foretold depth() {
        OptionalDouble width = both(middle(true), middle(false), (x, y) -> x / y);
        OptionalDouble foretold = both(diameters(), width, (d, w) -> 2.5 * Math.log10(d * w));
        OptionalDouble shown = median(DepthPair::deeperMag);
        String remark = foretold.isEmpty() || shown.isEmpty()
                ? ""
                : moreOrLess(shown.getAsDouble() - foretold.getAsDouble(), 0.1, "%.1f mag") + filters();
        return new Foretold(
                "Limit at equal exposure, under one sky",
                "mag",
                1,
                true,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                foretold,
                shown,
                remark);
    }

    private String filters() {
        return pairs.stream().allMatch(DepthPair::sameFilter) ? "" : "; but the filters differ";
    }

    private OptionalDouble diameters() {
        return both(diameter(b), diameter(a), (x, y) -> x / y);
    }

    private static OptionalDouble diameter(RigFigures rig) {
        return both(rig.effectiveFocalLengthMm(), rig.focalRatio(), (f, n) -> f / n);
    }

    private OptionalDouble perSky() {
        return both(diameters(), OptionalDouble.of(2), Math::pow);
    }

    private OptionalDouble perPixel() {
        OptionalDouble scale = both(b.imageScaleArcsecPerPx(), a.imageScaleArcsecPerPx(), (x, y) -> x / y);
        return both(diameters(), scale, (d, s) -> d * d * s * s);
    }

    private OptionalDouble scales() {
        return median(p -> OptionalDouble.of(p.scaleRatio()));
    }

    private OptionalDouble median(Function<DepthPair, OptionalDouble> part) {
        double[] known = pairs.stream()
                .map(part)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        return known.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(known));
    }

    private OptionalDouble middle(boolean before) {
        return widths.map(w -> Robust.median((before ? w.before() : w.after())
                        .stream().mapToDouble(NightValue::value).toArray()))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static String remark(OptionalDouble foretold, OptionalDouble shown) {
        if (foretold.isEmpty()) {
            return "the rigs do not tell enough for it";
        }
        return shown.isEmpty()
                ? ""
                : moreOrLess(100 * (shown.getAsDouble() / foretold.getAsDouble() - 1), 1, "%.0f %%");
    }

    private static String moreOrLess(double by, double least, String format) {
        if (Math.abs(by) < least) {
            return "as foretold";
        }
        return String.format(Locale.ROOT, format, Math.abs(by))
                + (by > 0 ? " more than foretold" : " less than foretold");
    }

    private static double square(OptionalDouble value) {
        return value.getAsDouble() * value.getAsDouble();
    }

    private static OptionalDouble both(OptionalDouble x, OptionalDouble y, DoubleBinaryOperator how) {
        return x.isPresent() && y.isPresent()
                ? OptionalDouble.of(how.applyAsDouble(x.getAsDouble(), y.getAsDouble()))
                : OptionalDouble.empty();
    }
}
