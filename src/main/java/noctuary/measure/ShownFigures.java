package noctuary.measure;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.fact.Fact;
import noctuary.fact.Origin.Measured;
import noctuary.fact.Quantity;
import noctuary.noise.Defects;
import noctuary.noise.Shading;
import noctuary.stars.FieldModel;
import noctuary.stars.StarField;

/** What is measured on the one file that stands for an entry: its field model and its defects. */
final class ShownFigures {
    private static final String FIELD = "field-map";
    private static final String HOT = "hot-pixels";
    private static final String BANDING = "banding";
    private static final String STREAK = "drift-streak";
    private static final String CLIPPING = "clipping";
    private static final String CORNER = "corner-light";

    private final Optional<FrameSheet> shown;
    private final Map<Figure, Fact<Quantity>> figures = new EnumMap<>(Figure.class);

    private ShownFigures(Optional<FrameSheet> shown) {
        this.shown = shown;
    }

    static Map<Figure, Fact<Quantity>> of(Optional<FrameSheet> shown) {
        ShownFigures facts = new ShownFigures(shown);
        facts.field();
        facts.defects();
        facts.shading();
        return facts.figures;
    }

    private void field() {
        model(Figure.CENTRE_FWHM, FieldModel::centreFwhmPx, FieldModel::centreErrorPx);
        model(Figure.CORNER_EXCESS, FieldModel::cornerExcessPx, FieldModel::cornerExcessErrorPx);
        model(Figure.FIELD_TILT, FieldModel::tiltPx, FieldModel::tiltErrorPx);
        model(
                Figure.TILT_DIRECTION,
                FieldModel::tiltDirectionDeg,
                ShownFigures::tiltDirectionErrorDeg,
                "no tilt stands out from its error by more than twice");
        model(Figure.FIELD_CURVATURE, FieldModel::curvaturePx, FieldModel::curvatureErrorPx);
    }

    /** Of an angle whose vector is known to the same error in both directions; NaN when it is hardly known at all. */
    private static double tiltDirectionErrorDeg(FieldModel m) {
        double error = m.tiltErrorPx() / m.tiltPx();
        return error < 1 ? Math.toDegrees(Math.asin(error)) : Double.NaN;
    }

    private void defects() {
        defect(Figure.HOT_PIXELS, HOT, Defects::hotPixels);
        defect(Figure.COLD_PIXELS, HOT, Defects::coldPixels);
        defect(Figure.ROW_BANDING, BANDING, Defects::rowBanding);
        defect(Figure.COLUMN_BANDING, BANDING, Defects::columnBanding);
        defect(Figure.DRIFT_STREAK, STREAK, Defects::driftStreak);
        defect(Figure.DRIFT_STREAK_ANGLE, STREAK, Defects::driftStreakAngleDeg);
        defect(Figure.CLIPPED_BLACK, CLIPPING, Defects::clippedBlackPercent);
        defect(Figure.CLIPPED_WHITE, CLIPPING, Defects::clippedWhitePercent);
    }

    private void shading() {
        shade(Figure.DARK_CORNER, s -> s.darkCorner().map(Shading.Corner::amount));
        shade(Figure.CORNER_GLOW, s -> s.glow().map(Shading.Corner::amount));
    }

    private void model(Figure figure, Function<FieldModel, Double> value, Function<FieldModel, Double> error) {
        model(figure, value, error, "it takes thirty measured stars to tell the middle of the field from its corners");
    }

    private void model(
            Figure figure, Function<FieldModel, Double> value, Function<FieldModel, Double> error, String why) {
        Optional<FieldModel> model = shown.flatMap(f -> f.measurement().field()).flatMap(StarField::model);
        Optional<Quantity> known = model.filter(m -> Double.isFinite(value.apply(m)))
                .map(m -> Double.isFinite(error.apply(m))
                        ? Quantity.of(value.apply(m), figure.unit(), error.apply(m))
                        : Quantity.of(value.apply(m), figure.unit()));
        put(figure, FIELD, known, model.isEmpty() ? "fewer than ten stars could be measured" : why);
    }

    private void defect(Figure figure, String method, Function<Defects, OptionalDouble> part) {
        OptionalDouble value =
                shown.flatMap(f -> f.measurement().defects()).map(part).orElseGet(OptionalDouble::empty);
        Optional<Quantity> known =
                value.isPresent() ? Optional.of(Quantity.of(value.getAsDouble(), figure.unit())) : Optional.empty();
        String why = figure == Figure.DRIFT_STREAK_ANGLE
                ? "no streaks were found"
                : "it could not be looked for on these pixels";
        put(figure, method, known, why);
    }

    /** Zero when looked for and not found. */
    private void shade(Figure figure, Function<Shading, Optional<Double>> part) {
        Optional<Quantity> known = shown.flatMap(f -> f.measurement().defects())
                .flatMap(Defects::shading)
                .map(s -> Quantity.of(part.apply(s).orElse(0.0), figure.unit()));
        put(figure, CORNER, known, "the frame is too small to tell");
    }

    private void put(Figure figure, String method, Optional<Quantity> known, String why) {
        String none = shown.isEmpty() ? "there is no frame or stack to measure" : why;
        figures.put(
                figure,
                known.map(q -> Fact.of(q, new Measured(shown.orElseThrow().name(), method)))
                        .orElseGet(() -> Fact.missing(none)));
    }
}
