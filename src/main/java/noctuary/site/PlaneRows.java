package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.measure.EntrySheet;
import noctuary.measure.Measurement.PlaneSummary;
import noctuary.site.page.EntryPage.PlaneRow;
import noctuary.stars.Summary;

/** Sky, noise and star width of each colour of a stack of three planes; none for other files. */
final class PlaneRows {
    private static final List<String> COLOURS = List.of("Red", "Green", "Blue");

    private PlaneRows() {}

    static List<PlaneRow> of(EntrySheet sheet) {
        List<PlaneSummary> planes =
                sheet.stack().map(stack -> stack.measurement().planes()).orElse(List.of());
        List<PlaneRow> rows = new ArrayList<>();
        for (int i = 0; planes.size() == COLOURS.size() && i < planes.size(); i++) {
            rows.add(row(COLOURS.get(i), planes.get(i)));
        }
        return rows;
    }

    private static PlaneRow row(String colour, PlaneSummary plane) {
        return new PlaneRow(
                colour,
                Numerals.fixed(known(plane.background().level()), 1),
                Numerals.fixed(known(plane.background().noise()), 2),
                Numerals.fixed(width(plane.fwhmPx()), 2));
    }

    private static OptionalDouble width(Optional<Summary> fwhm) {
        return fwhm.map(s -> OptionalDouble.of(s.median())).orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble known(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
