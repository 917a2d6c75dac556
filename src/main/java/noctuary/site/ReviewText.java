package noctuary.site;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.draw.IntervalPlot.Tone;
import noctuary.review.Change;
import noctuary.review.ChangeKind;
import noctuary.review.Influence;
import noctuary.review.Measure;
import noctuary.review.MeasureReview;
import noctuary.review.Verdict;

/** Verdicts and measures as printed. */
final class ReviewText {
    private static final int FIGURES = 3;
    private static final int MOST_DECIMALS = 4;

    private ReviewText() {}

    /** What changed, beginning with a capital. */
    static String title(Change change) {
        String sentence = change.sentence();
        return sentence.isEmpty()
                ? change.id()
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    static String words(Optional<Verdict> verdict) {
        return verdict.map(Verdict::words).orElse("");
    }

    /** The class that colours it; the words say it too. */
    static String tone(Optional<Verdict> verdict) {
        return verdict.map(ReviewText::tone)
                .map(tone -> tone == Tone.BETTER ? "good" : tone == Tone.WORSE ? "bad" : "open")
                .orElse("open");
    }

    static Tone tone(Verdict verdict) {
        return switch (verdict) {
            case BETTER -> Tone.BETTER;
            case WORSE -> Tone.WORSE;
            default -> Tone.OPEN;
        };
    }

    static String kind(ChangeKind kind) {
        return switch (kind) {
            case RIG -> "Rig";
            case SITE -> "Site";
            case WAY -> "Way of working";
            case CHOICE -> "Processing choice";
        };
    }

    /** Whether pictures are compared, made with a step and without, and no nights. */
    static boolean ofPictures(MeasureReview review) {
        return review.nights().measure().follows().contains(Influence.STEPS);
    }

    static String before(boolean pictures) {
        return pictures ? "without" : "before";
    }

    static String after(boolean pictures) {
        return pictures ? "with" : "after";
    }

    /** To three figures, with the unit. */
    static String value(Measure measure, double value) {
        return withUnit(number(value), measure.unit());
    }

    static String value(Measure measure, OptionalDouble value) {
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? value(measure, value.getAsDouble()) : "";
    }

    static String number(double value) {
        return Numerals.fixed(value, decimals(value));
    }

    static String signed(double value, int decimals) {
        return (value > 0 ? "+" : "") + Numerals.fixed(value, decimals);
    }

    static String withUnit(String number, String unit) {
        return unit.isEmpty() || number.isEmpty() ? number : number + "\u00a0" + unit;
    }

    static int decimals(double value) {
        double size = Math.abs(value);
        int wanted = size > 0 ? FIGURES - 1 - (int) Math.floor(Math.log10(size)) : 1;
        return Math.max(0, Math.min(MOST_DECIMALS, wanted));
    }
}
