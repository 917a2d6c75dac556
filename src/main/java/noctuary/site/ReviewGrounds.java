package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import noctuary.review.Grounds;
import noctuary.review.Influence;
import noctuary.review.MeasureReview;
import noctuary.review.Shift;
import noctuary.site.page.Labelled;

/** What a verdict rests on, as printed: the plain shift and the adjusted one beside each other. */
final class ReviewGrounds {
    private final MeasureReview review;
    private final Grounds grounds;
    private final List<Labelled> lines = new ArrayList<>();

    private ReviewGrounds(MeasureReview review) {
        this.review = review;
        this.grounds = review.grounds();
    }

    static List<Labelled> of(MeasureReview review) {
        return new ReviewGrounds(review).all();
    }

    private List<Labelled> all() {
        add(
                ReviewText.ofPictures(review) ? "Shift, as the entries stand" : "Shift, as the nights stand",
                grounds.plain().map(s -> shift(s, !grounds.decides())));
        add(
                "Shift at equal " + words(grounds.adjustedFor(), " and "),
                grounds.adjusted().map(s -> shift(s, grounds.decides())));
        add("p, corrected for the other measures", number(review.adjustedP(), 4));
        add("How far the sides lie apart (−1 to 1)", number(grounds.cliff(), 2));
        add("Smallest change these nights would show", percent(grounds.detectable()));
        add("Pairs of one night or target", count(grounds.pairs()));
        add("Nights set aside, with none to compare them with", count(grounds.setAside()));
        add(
                "Not known of every night",
                Optional.of(words(grounds.unknown(), " and ")).filter(w -> !w.isEmpty()));
        return lines;
    }

    private void add(String label, Optional<String> value) {
        value.ifPresent(v -> lines.add(new Labelled(label, v)));
    }

    private String shift(Shift shift, boolean decides) {
        int decimals = ReviewText.decimals(review.before().orElse(shift.value()));
        String text = ReviewText.signed(shift.value(), decimals);
        if (shift.bounded()) {
            text += " (" + ReviewText.signed(shift.low(), decimals) + " to "
                    + ReviewText.signed(shift.high(), decimals) + " in " + Numerals.fixed(100 * shift.coverage(), 0)
                    + "\u00a0%)";
        }
        String unit = ReviewText.withUnit(text, review.nights().measure().unit());
        return unit + ", p " + Numerals.fixed(shift.p(), 4)
                + (decides && grounds.adjusted().isPresent() ? ", decides" : "");
    }

    private static Optional<String> number(OptionalDouble value, int decimals) {
        return value.isPresent() ? Optional.of(Numerals.fixed(value, decimals)) : Optional.empty();
    }

    private static Optional<String> percent(OptionalDouble share) {
        return share.isPresent()
                ? Optional.of(Numerals.fixed(100 * share.getAsDouble(), 0) + "\u00a0%")
                : Optional.empty();
    }

    private static Optional<String> count(int number) {
        return number > 0 ? Optional.of(number + "") : Optional.empty();
    }

    private static String words(List<Influence> influences, String last) {
        return influences.stream().map(Influence::word).collect(Collectors.joining(last));
    }
}
