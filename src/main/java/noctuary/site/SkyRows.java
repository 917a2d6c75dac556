package noctuary.site;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import noctuary.measure.EntrySheet;
import noctuary.review.FrameSky;
import noctuary.review.MiddleSky;
import noctuary.site.page.EntryPage;

/** The sky over an entry, as printed. How high the Moon stood is not told, because it would tell where the site lies. */
final class SkyRows {
    private SkyRows() {}

    static List<EntryPage.SkyRow> of(Ledger ledger, EntrySheet sheet) {
        return MiddleSky.of(ledger.content().journal(), sheet).entrySet().stream()
                .map(e -> row(e.getKey(), e.getValue()))
                .toList();
    }

    private static EntryPage.SkyRow row(LocalDate night, FrameSky sky) {
        return new EntryPage.SkyRow(
                Dates.reading(night),
                Numerals.fixed(sky.airmass(), 2),
                lit(sky.moonLit()),
                sky.moonAltitudeDeg().isEmpty()
                        ? ""
                        : sky.moonAltitudeDeg().getAsDouble() > 0 ? "up" : "below the horizon",
                sky.moonDistanceDeg().isEmpty() ? "" : Numerals.fixed(sky.moonDistanceDeg(), 0) + "°",
                Numerals.fixed(sky.moonMagnitudes(), 2));
    }

    private static String lit(OptionalDouble share) {
        return share.isEmpty() ? "" : Numerals.fixed(100 * share.getAsDouble(), 0) + "\u00a0%";
    }
}
