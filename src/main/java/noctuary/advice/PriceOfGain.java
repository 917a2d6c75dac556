package noctuary.advice;

import static noctuary.advice.Words.say;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import noctuary.entry.RigNote.Price;
import noctuary.fact.Printed;
import noctuary.measure.RigSheet;
import noctuary.review.ChangeKind;
import noctuary.review.MeasureReview;
import noctuary.review.Review;
import noctuary.review.Verdict;

/**
 * What a change of rig or part cost beside what it surely gave.
 *
 * @param rig that it led to
 * @param change id of the review
 * @param what changed
 * @param sentences a measure each that is surely better; one that says why there is none
 */
public record PriceOfGain(String rig, String change, String what, List<String> sentences) {
    public PriceOfGain {
        sentences = List.copyOf(sentences);
    }

    /** Of every change of a rig whose price both notes tell in one currency. */
    public static List<PriceOfGain> of(List<Review> reviews, Map<String, RigSheet> rigs) {
        List<PriceOfGain> all = new ArrayList<>();
        for (Review review : reviews) {
            if (review.change().kind() == ChangeKind.RIG) {
                rig(review, rigs)
                        .ifPresent(rig -> price(review, rig, rigs)
                                .ifPresent(price -> all.add(new PriceOfGain(
                                        rig,
                                        review.change().id(),
                                        review.change().sentence(),
                                        sentences(review, price)))));
            }
        }
        return all;
    }

    /** The rig itself, or the one within which a part changed. */
    private static Optional<String> rig(Review review, Map<String, RigSheet> rigs) {
        String after = review.change().after().id();
        return rigs.containsKey(after)
                ? Optional.of(after)
                : rigs.keySet().stream()
                        .filter(id -> review.change().id().startsWith("rig-" + id + "-"))
                        .findFirst();
    }

    private static Optional<Price> price(Review review, String rig, Map<String, RigSheet> rigs) {
        List<Price> own = rigs.get(rig).note().cost();
        Optional<String> part = review.change().part().map(p -> p.toLowerCase(Locale.ROOT));
        if (part.isPresent()) {
            return own.stream()
                    .filter(p -> p.part().toLowerCase(Locale.ROOT).contains(part.get()))
                    .findFirst();
        }
        RigSheet before = rigs.get(review.change().before().id());
        Map<String, BigDecimal> sums = new TreeMap<>();
        if (before == null || before.note().cost().isEmpty() || own.isEmpty()) {
            return Optional.empty();
        }
        own.forEach(p -> sums.merge(p.currency(), p.amount(), BigDecimal::add));
        before.note().cost().forEach(p -> sums.merge(p.currency(), p.amount().negate(), BigDecimal::add));
        return sums.size() == 1
                ? sums.entrySet().stream().findFirst().map(e -> new Price(rig, e.getValue(), e.getKey()))
                : Optional.empty();
    }

    private static List<String> sentences(Review review, Price price) {
        List<String> sentences = review.measures().stream()
                .filter(m -> m.verdict() == Verdict.BETTER && m.shift().isPresent())
                .map(m -> m.why() + " " + cost(m, price))
                .toList();
        return sentences.isEmpty()
                ? List.of(
                        money(price) + " more; nothing is surely better, so no gain to set against it. " + review.why())
                : sentences;
    }

    private static String cost(MeasureReview m, Price price) {
        if (price.amount().signum() <= 0) {
            return say("It cost %s less.", money(new Price("", price.amount().negate(), price.currency())));
        }
        String unit = m.nights().measure().unit();
        double each = price.amount().doubleValue() / Math.abs(m.shift().getAsDouble());
        return unit.isEmpty()
                ? say("It cost %s more.", money(price))
                : say("It cost %s more: %s %s for each %s.", money(price), Math.round(each), price.currency(), unit);
    }

    private static String money(Price price) {
        return Printed.exact(price.amount().doubleValue()) + " " + price.currency();
    }
}
