package noctuary.site;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.site.page.FindPage;

/** The numbers by which entries are found: those of their pages, with as many decimals as a table has room for. */
final class FindFacts {
    private FindFacts() {}

    private enum Column {
        EXPOSURE(
                "exposure",
                "Exposure",
                "h",
                sheet -> sheet.number(Figure.EXPOSURE)
                        .map(q -> Numerals.hours(q.value()))
                        .orElse("")),
        WIDTH("fwhm", "Star FWHM", "arcsec", sheet -> number(sheet, Figure.FWHM_ARCSEC, 2)),
        SHAPE("ellipticity", "Ellipticity", "", sheet -> number(sheet, Figure.ELLIPTICITY, 3)),
        SCALE("scale", "Image scale", "arcsec/px", sheet -> number(sheet, Figure.IMAGE_SCALE, 2)),
        NOISE("noise", "Background noise", "e", sheet -> number(sheet, Figure.BACKGROUND_NOISE_ELECTRONS, 2)),
        GUIDING("guiding", "Guiding RMS", "arcsec", sheet -> number(sheet, Figure.GUIDING_RMS, 2)),
        LOST("lost", "Time lost", "h", FindFacts::lost);

        private final FindPage.Fact fact;
        private final Function<EntrySheet, String> print;

        Column(String id, String label, String unit, Function<EntrySheet, String> print) {
            this.fact = new FindPage.Fact(id, label, unit);
            this.print = print;
        }
    }

    static List<FindPage.Fact> columns() {
        return Arrays.stream(Column.values()).map(column -> column.fact).toList();
    }

    /** One a column, empty where not known. */
    static List<String> of(EntrySheet sheet) {
        return Arrays.stream(Column.values())
                .map(column -> column.print.apply(sheet))
                .toList();
    }

    private static String number(EntrySheet sheet, Figure figure, int decimals) {
        return sheet.number(figure)
                .map(q -> Numerals.fixed(q.value(), decimals))
                .orElse("");
    }

    /** Empty where the note tells of no loss. */
    private static String lost(EntrySheet sheet) {
        double minutes =
                sheet.entry().lost().stream().mapToDouble(Entry.Lost::minutes).sum();
        return minutes > 0 ? Numerals.fixed(minutes / 60, 2) : "";
    }
}
