package noctuary.fits;

import java.util.Locale;
import java.util.Optional;

/** Exposure, number of combined frames and total, in seconds (keywords of the HEASARC and NOAO dictionaries). */
final class ExposureCards {
    private static final double LONGEST_SECONDS = 1e8;
    private static final String[] EXPOSURE = {
        "EXPTIME", "XPOSURE", "EXPOSURE", "OTIME", "ITIME", "EXP_TIME", "INTTIME", "ESO.DET.DIT", "ESO.DET.WIN1.DIT1"
    };
    private static final String[] COUNT = {"NCOMBINE", "NIMAGES", "NFRAMES", "NSTACK", "STACKCNT", "SNAPSHOT"};
    private static final double AGREEMENT = 0.02;

    private final CardIndex cards;

    ExposureCards(CardIndex cards) {
        this.cards = cards;
    }

    Optional<Cited<Double>> seconds() {
        Optional<Cited<Double>> first = Optional.empty();
        for (String keyword : EXPOSURE) {
            Optional<Cited<Double>> seconds = seconds(keyword);
            if (first.isEmpty()) {
                first = seconds;
            } else if (seconds.isPresent() && keyword.equals("EXPOSURE")) {
                compare(first.get(), seconds.get());
            }
        }
        return first;
    }

    private void compare(Cited<Double> first, Cited<Double> other) {
        if (Math.abs(first.value() - other.value()) > AGREEMENT * Math.max(first.value(), other.value())) {
            cards.odd(
                    first.card(),
                    first.card() + " says " + first.value() + " s, " + other.card() + " says " + other.value() + " s",
                    first.card() + " is used; one of them may be a total or corrected for dead time");
        }
    }

    private Optional<Cited<Double>> seconds(String keyword) {
        if (cards.raw(keyword).isEmpty()) {
            return Optional.empty();
        }
        Optional<Cited<Double>> number = cards.number(keyword);
        if (number.isPresent() && number.get().value() < 0) {
            cards.odd(keyword, keyword + " = " + number.get().text() + " is negative", "it is left out");
            return Optional.empty();
        }
        if (number.isPresent() && number.get().value() > LONGEST_SECONDS) {
            cards.odd(keyword, keyword + " = " + number.get().text() + " is more than three years", "it is left out");
            return Optional.empty();
        }
        double factor = secondsPerUnit(cards.raw(keyword).get().comment());
        return number.map(n -> new Cited<>(n.value() * factor, n.card(), n.text()));
    }

    /** Survey plates are exposed in minutes, and their comment says so. */
    private static double secondsPerUnit(String comment) {
        String lower = comment.toLowerCase(Locale.ROOT);
        boolean minutes = lower.contains("minute") || lower.contains("[min") || lower.contains("(min");
        return minutes && !lower.contains("sec") ? 60 : 1;
    }

    Optional<Cited<Integer>> count() {
        for (String keyword : COUNT) {
            Optional<Cited<Double>> count = cards.number(keyword)
                    .filter(n -> n.value() > 1 && n.value() < 1e6 && n.value() == Math.rint(n.value()));
            if (count.isPresent()) {
                return count.map(n -> new Cited<>(n.value().intValue(), n.card(), n.text()));
            }
        }
        return Optional.empty();
    }

    /** LIVETIME is a total only in a combined frame; in a single one it is the exposure less the dead time. */
    Optional<Cited<Double>> total(Optional<Cited<Integer>> count) {
        return count.isPresent()
                ? cards.positive("LIVETIME", "ONTIME").filter(n -> n.value() < LONGEST_SECONDS)
                : Optional.empty();
    }
}
