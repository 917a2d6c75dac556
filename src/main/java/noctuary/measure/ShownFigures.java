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

/** Defects measured on the one file that stands for an entry. */
final class ShownFigures {
    private static final String HOT = "hot-pixels";
    private static final String BANDING = "banding";
    private static final String CLIPPING = "clipping";

    private final Optional<FrameSheet> shown;
    private final Map<Figure, Fact<Quantity>> figures = new EnumMap<>(Figure.class);

    private ShownFigures(Optional<FrameSheet> shown) {
        this.shown = shown;
    }

    static Map<Figure, Fact<Quantity>> of(Optional<FrameSheet> shown) {
        ShownFigures facts = new ShownFigures(shown);
        facts.defect(Figure.HOT_PIXELS, HOT, Defects::hotPixels);
        facts.defect(Figure.COLD_PIXELS, HOT, Defects::coldPixels);
        facts.defect(Figure.ROW_BANDING, BANDING, Defects::rowBanding);
        facts.defect(Figure.COLUMN_BANDING, BANDING, Defects::columnBanding);
        facts.defect(Figure.CLIPPED_BLACK, CLIPPING, Defects::clippedBlackPercent);
        facts.defect(Figure.CLIPPED_WHITE, CLIPPING, Defects::clippedWhitePercent);
        return facts.figures;
    }

    private void defect(Figure figure, String method, Function<Defects, OptionalDouble> part) {
        OptionalDouble value =
                shown.flatMap(f -> f.measurement().defects()).map(part).orElseGet(OptionalDouble::empty);
        String why = shown.isEmpty()
                ? "there is no frame or stack to measure"
                : "it could not be looked for on these pixels";
        figures.put(
                figure,
                value.isEmpty()
                        ? Fact.missing(why)
                        : Fact.of(
                                Quantity.of(value.getAsDouble(), figure.unit()),
                                new Measured(shown.orElseThrow().name(), method)));
    }
}
