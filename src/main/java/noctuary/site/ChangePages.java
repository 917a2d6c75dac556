package noctuary.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import noctuary.review.Change;
import noctuary.review.ChangeKind;
import noctuary.review.Review;
import noctuary.review.Side;
import noctuary.site.page.ChangePage;
import noctuary.site.page.ChangePage.TestPart;
import noctuary.site.page.ChangesPage;
import noctuary.site.page.Link;

/** The list of changes and one page a change. */
final class ChangePages {
    private final Ledger ledger;
    private final Heads heads;

    ChangePages(Ledger ledger, Heads heads) {
        this.ledger = ledger;
        this.heads = heads;
    }

    ChangesPage index() {
        List<Review> newestFirst = new ArrayList<>(ledger.content().reviews());
        newestFirst.sort(Comparator.comparing((Review r) -> r.change().date().orElse(LocalDate.MIN))
                .reversed());
        List<ChangesPage.Row> rows = newestFirst.stream().map(this::row).toList();
        return new ChangesPage(
                heads.of(Address.CHANGES, "Changes", "Every change of rig, site or way of working: did it help?"),
                rows);
    }

    private ChangesPage.Row row(Review review) {
        Change change = review.change();
        return new ChangesPage.Row(
                Link.of(ReviewText.title(change), Address.CHANGES.to(Address.change(change.id()))),
                iso(change),
                reading(change),
                ReviewText.kind(change.kind()),
                ReviewText.words(review.verdict()),
                ReviewText.tone(review.verdict()),
                decides(review),
                review.why(),
                counts(change));
    }

    private static String counts(Change change) {
        boolean choice = change.kind() == ChangeKind.CHOICE;
        return nights(change.before())
                + (choice ? " without, " : " before, ")
                + change.after().dates().size()
                + (choice ? " with" : " after");
    }

    ChangePage page(Review review) {
        Change change = review.change();
        Address here = Address.change(change.id());
        ReviewRows rows = new ReviewRows(ledger, here, review);
        return new ChangePage(
                heads.of(
                        here,
                        ReviewText.title(change),
                        ReviewText.title(change) + ": before and after, and what can be said of it."),
                ReviewText.title(change),
                ReviewText.kind(change.kind()),
                iso(change),
                reading(change),
                ReviewText.words(review.verdict()),
                ReviewText.tone(review.verdict()),
                decides(review),
                review.why(),
                change.words(),
                side(rows, change.before()),
                side(rows, change.after()),
                review.leftOut(),
                ReviewCharts.overview(review),
                review.measures().stream().map(rows::measure).toList(),
                rows.absent(),
                review.coincidences(),
                rows.circumstances(),
                rows.losses(),
                rows.pairs(),
                rows.foretold(),
                review.test().map(t -> new TestPart(t.question(), t.sentence())).orElse(null));
    }

    private static ChangePage.SidePart side(ReviewRows rows, Side side) {
        String counts = nights(side) + ", "
                + Numerals.count(side.entries().size(), "entry", "entries") + ", "
                + Numerals.count(side.files(), "measured file", "measured files");
        return new ChangePage.SidePart(side.name(), counts, rows.nights(side));
    }

    private static String decides(Review review) {
        return review.primary().map(m -> m.nights().measure().label()).orElse("");
    }

    private static String nights(Side side) {
        return Numerals.count(side.dates().size(), "night", "nights");
    }

    private static String iso(Change change) {
        return change.date().map(LocalDate::toString).orElse("");
    }

    private static String reading(Change change) {
        return change.date().map(Dates::reading).orElse("");
    }
}
