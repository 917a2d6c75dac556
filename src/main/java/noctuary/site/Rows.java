package noctuary.site;

import java.util.List;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.site.page.EntryRow;
import noctuary.site.page.ProblemRow;
import noctuary.site.page.Teaser;

/** Entries in lists, and problems, as printed on a page at one address. */
final class Rows {
    private final Ledger ledger;
    private final Address page;

    Rows(Ledger ledger, Address page) {
        this.ledger = ledger;
        this.page = page;
    }

    EntryRow row(EntrySheet sheet) {
        return new EntryRow(
                ledger.entryLink(page, sheet),
                ledger.targetLink(page, sheet),
                ledger.rigLink(page, sheet),
                ledger.siteName(sheet),
                sheet.secondsByFilter().keySet().stream()
                        .filter(filter -> !filter.isEmpty())
                        .toList(),
                sheet.night().map(Object::toString).orElse(""),
                sheet.number(Figure.EXPOSURE)
                        .map(q -> Numerals.hours(q.value()))
                        .orElse(""),
                number(sheet, Figure.FWHM_ARCSEC, 2),
                number(sheet, Figure.IMAGE_SCALE, 2));
    }

    List<EntryRow> rows(List<EntrySheet> sheets) {
        return sheets.stream().map(this::row).toList();
    }

    Teaser teaser(EntrySheet sheet, Plates plates) {
        return new Teaser(
                ledger.entryLink(page, sheet),
                ledger.targetName(sheet),
                sheet.night().map(Dates::reading).orElse(""),
                sheet.night().map(Object::toString).orElse(""),
                figures(sheet),
                plates.ofFace(sheet));
    }

    List<ProblemRow> problems(List<noctuary.fact.Problem> problems) {
        Discretion discretion = ledger.discretion();
        return problems.stream()
                .map(p -> new ProblemRow(
                        p.isFault(), discretion.where(p), discretion.text(p.what()), discretion.text(p.hint())))
                .toList();
    }

    private String figures(EntrySheet sheet) {
        return String.join(
                " · ",
                List.of(
                                sheet.number(Figure.EXPOSURE).map(Numerals::of).orElse(""),
                                ledger.rigName(sheet),
                                sheet.number(Figure.FWHM_ARCSEC)
                                        .map(q -> "stars " + Numerals.withUnit(Numerals.fixed(q.value(), 2), q.unit()))
                                        .orElse(""))
                        .stream()
                        .filter(text -> !text.isEmpty())
                        .toList());
    }

    private static String number(EntrySheet sheet, Figure figure, int decimals) {
        return sheet.number(figure)
                .map(q -> Numerals.fixed(q.value(), decimals))
                .orElse("");
    }
}
