package noctuary.journal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.fact.Printed;
import noctuary.review.Change;
import noctuary.review.Foretold;
import noctuary.review.MeasureReview;
import noctuary.review.Review;
import noctuary.review.Side;
import noctuary.review.Verdict;

/** A review as text for a terminal. */
final class ReviewTable {
    private static final int WIDTH = 96;
    private static final String ROW = "%-34s %10s %10s  %-26s %-7s %s";

    private final StringBuilder text = new StringBuilder();

    private ReviewTable() {}

    static String of(Review review) {
        ReviewTable table = new ReviewTable();
        Change change = review.change();
        table.line(change.sentence() + change.date().map(d -> ", " + d).orElse(""));
        table.line("  before: " + counts(change.before()));
        table.line("  after:  " + counts(change.after()));
        table.line("");
        table.wrapped(verdict(review) + review.why(), "");
        table.measures(review);
        table.list("What else was not the same", review.coincidences());
        table.list(
                "What arithmetic foretold",
                review.foretold().stream().flatMap(f -> foretold(f).stream()).toList());
        table.list(
                "A fair test",
                review.test().stream()
                        .map(t -> t.question() + " " + t.sentence())
                        .toList());
        table.list(
                "Nothing to say of",
                review.absent().stream()
                        .map(a -> a.measure().label() + ": " + a.why())
                        .toList());
        table.list("Left out, because nobody tells their night", review.leftOut());
        return table.text.toString();
    }

    private static String verdict(Review review) {
        String decides = review.primary()
                .map(m -> " (" + m.nights().measure().label() + ")")
                .orElse("");
        return review.verdict()
                .map(v -> words(v).toUpperCase(Locale.ROOT) + decides + ": ")
                .orElse("");
    }

    private static String counts(Side side) {
        return side.name() + ": " + count(side.dates().size(), "night", "nights") + ", "
                + count(side.files(), "measured file", "measured files");
    }

    private static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    private void measures(Review review) {
        if (review.measures().isEmpty()) {
            return;
        }
        line("");
        line(String.format(Locale.ROOT, ROW, "measure", "before", "after", "shift (interval)", "p", "verdict"));
        review.measures().forEach(m -> line(row(m)));
        line("* decides");
    }

    private static String row(MeasureReview m) {
        String unit = m.nights().measure().unit();
        String label = m.nights().measure().label()
                + (unit.isEmpty() ? "" : ", " + unit)
                + (m.nights().primary() ? " *" : "");
        return String.format(
                        Locale.ROOT,
                        ROW,
                        label,
                        number(m.before()),
                        number(m.after()),
                        shift(m),
                        m.p().isPresent() ? String.format(Locale.ROOT, "%.4f", m.p().getAsDouble()) : "-",
                        words(m.verdict()))
                .stripTrailing();
    }

    private static String shift(MeasureReview m) {
        boolean interval = finite(m.low()) && finite(m.high());
        return number(m.shift()) + (interval ? " (" + number(m.low()) + " to " + number(m.high()) + ")" : "");
    }

    private static boolean finite(OptionalDouble value) {
        return value.isPresent() && Double.isFinite(value.getAsDouble());
    }

    /** To three figures. */
    private static String number(OptionalDouble value) {
        if (!finite(value)) {
            return "-";
        }
        double v = value.getAsDouble();
        int decimals = v == 0 ? 0 : Math.max(0, Math.min(4, 2 - (int) Math.floor(Math.log10(Math.abs(v)))));
        return String.format(Locale.ROOT, "%." + decimals + "f", v);
    }

    private static Optional<String> foretold(Foretold f) {
        return f.foretold().isEmpty()
                ? Optional.empty()
                : Optional.of(f.label() + ": foretold " + gain(f, f.foretold())
                        + (f.shown().isPresent() ? ", shown " + gain(f, f.shown()) : "")
                        + (f.remark().isEmpty() ? "" : ", " + f.remark()));
    }

    private static String gain(Foretold f, OptionalDouble value) {
        return f.difference()
                ? Printed.number(value.getAsDouble()) + " " + f.unit()
                : "x " + Printed.number(value.getAsDouble());
    }

    private void list(String title, List<String> sentences) {
        if (!sentences.isEmpty()) {
            line("");
            line(title);
            sentences.forEach(s -> wrapped("- " + s, "  "));
        }
    }

    /** Breaks between words at the width of a terminal. */
    private void wrapped(String sentence, String indent) {
        StringBuilder row = new StringBuilder();
        for (String word : sentence.split(" ")) {
            if (row.length() + word.length() + 1 > WIDTH && row.length() > 0) {
                line(row.toString());
                row.setLength(0);
                row.append(indent);
            } else if (row.length() > 0) {
                row.append(' ');
            }
            row.append(word);
        }
        line(row.toString());
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    private static String words(Verdict verdict) {
        return switch (verdict) {
            case BETTER -> "better";
            case WORSE -> "worse";
            case NO_DIFFERENCE -> "no difference seen";
            case TOO_FEW -> "too few nights";
            case CONFOUNDED -> "confounded";
        };
    }
}
