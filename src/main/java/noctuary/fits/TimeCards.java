package noctuary.fits;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** When the exposure began, from DATE-OBS and its relatives (FITS 4.0 section 9; Rots et al. 2015, A&A 574, A36). */
final class TimeCards {
    /** Modified Julian dates of 1 January 1900 and of 1 January 2200. */
    private static final double FIRST_DAY = 15_020;

    private static final double LAST_DAY = 124_593;

    private static final String[] DATES = {"DATE-BEG", "DATE-OBS"};
    private static final String[] CLOCKS = {"TIME-BEG", "TIME-OBS", "UT", "UTC", "UTSTART", "UT-START", "TIME-STA"};
    private static final String[] DAY_SECONDS = {"TM-START"};
    private static final String[] DAYS = {"MJD-BEG", "MJD-OBS"};
    private static final Instant MJD_ZERO = Instant.parse("1858-11-17T00:00:00Z");
    private static final Duration AGREEMENT = Duration.ofSeconds(60);

    private final CardIndex cards;

    TimeCards(CardIndex cards) {
        this.cards = cards;
    }

    /** @param seconds exposure, for a card whose comment says that it tells the middle or the end */
    Optional<Cited<Instant>> taken(Optional<Double> seconds) {
        Optional<Cited<Instant>> days = days(DAYS);
        for (String keyword : DATES) {
            Optional<Card> card = cards.find(keyword);
            Optional<Cited<DateText>> date = card.flatMap(this::date);
            if (date.isPresent()) {
                Cited<DateText> timed =
                        date.get().value().time().isPresent() ? date.get() : withClock(date.get(), days);
                Cited<Instant> when = new Cited<>(timed.value().instant(), timed.card(), timed.text());
                compare(when, timed.value(), days);
                noteTimeScale();
                return Optional.of(atStart(when, card.get().comment(), seconds));
            }
        }
        return days;
    }

    Optional<Cited<Instant>> middle() {
        Optional<Cited<Instant>> written = cards.find("DATE-AVG")
                .flatMap(this::date)
                .filter(date -> date.value().time().isPresent())
                .map(date -> new Cited<>(date.value().instant(), date.card(), date.text()));
        return written.isPresent() ? written : days("MJD-AVG");
    }

    private Optional<Cited<DateText>> date(Card card) {
        Optional<DateText> date = DateText.parse(card.value());
        if (date.isEmpty()) {
            cards.odd(card.keyword(), card.keyword() + " = " + card.value() + " is no date", "it is left out");
        } else if (date.get().carried()) {
            cards.odd(
                    card.keyword(),
                    card.keyword() + " = " + card.value() + " counts to 60",
                    "the minute is carried over");
        }
        return date.map(d -> new Cited<>(d, card.keyword(), card.value()));
    }

    /** A date alone takes its time from a clock card, from MJD-OBS of the same day, or stays at 0 h with an oddity. */
    private Cited<DateText> withClock(Cited<DateText> date, Optional<Cited<Instant>> days) {
        LocalDate day = date.value().date();
        Optional<Cited<DateText>> clock = cards.text(CLOCKS)
                .flatMap(c -> DateText.withClock(day, c.value()).map(t -> cite(date, t, c.card(), c.text())));
        if (clock.isEmpty()) {
            clock = cards.number(DAY_SECONDS)
                    .filter(s -> s.value() >= 0 && s.value() < 86400)
                    .map(s -> cite(date, ofSeconds(day, s.value()), s.card(), s.text()));
        }
        if (clock.isEmpty()) {
            clock = days.filter(d -> isWithin(day, d.value()))
                    .map(d -> cite(date, ofSeconds(day, secondOfDay(d.value())), d.card(), d.text()));
        }
        if (clock.isEmpty()) {
            cards.odd(
                    date.card(),
                    date.card() + " = " + date.text() + " is a date without a time",
                    "taken as 0 h UTC; the night may be the one before");
        }
        return clock.orElse(date);
    }

    private static Cited<DateText> cite(Cited<DateText> date, DateText timed, String card, String text) {
        return new Cited<>(timed, date.card(), date.text().strip() + " and " + card + " " + text.strip());
    }

    private static DateText ofSeconds(LocalDate day, double seconds) {
        return new DateText(day, Optional.of(Math.round(seconds * 1e9)), false);
    }

    private static double secondOfDay(Instant instant) {
        return Math.floorMod(instant.getEpochSecond(), 86400L) + instant.getNano() / 1e9;
    }

    private static boolean isWithin(LocalDate day, Instant instant) {
        return secondOfDay(instant) > 0
                && LocalDate.ofEpochDay(Math.floorDiv(instant.getEpochSecond(), 86400L))
                        .equals(day);
    }

    private void compare(Cited<Instant> when, DateText date, Optional<Cited<Instant>> days) {
        if (days.isEmpty()) {
            return;
        }
        boolean dateOnly = date.time().isEmpty() || secondOfDay(days.get().value()) == 0;
        Duration allowed = dateOnly ? Duration.ofDays(1) : AGREEMENT;
        if (Duration.between(when.value(), days.get().value()).abs().compareTo(allowed) > 0) {
            cards.odd(
                    when.card(),
                    when.card() + " says " + when.value() + ", " + days.get().card() + " says "
                            + days.get().value(),
                    when.card() + " is used");
        }
    }

    private void noteTimeScale() {
        Optional<Cited<String>> scale = cards.text("TIMESYS")
                .filter(s -> !s.value().toUpperCase(Locale.ROOT).matches("UT[C1]?|GMT"));
        scale.ifPresent(s -> cards.odd(
                "TIMESYS", "TIMESYS = " + s.value() + " is not UTC", "read as UTC, wrong by about a minute at most"));
    }

    private static Cited<Instant> atStart(Cited<Instant> when, String comment, Optional<Double> seconds) {
        String lower = comment.toLowerCase(Locale.ROOT);
        double share = lower.matches(".*\\b(mid|middle|midpoint)\\b.*") ? 0.5 : lower.contains("end of exp") ? 1 : 0;
        long nanos = Math.round(share * seconds.orElse(0.0) * 1e9);
        return new Cited<>(when.value().minusNanos(nanos), when.card(), when.text());
    }

    /** Modified Julian date to a millisecond, which is what a double of today's size can hold. */
    private Optional<Cited<Instant>> days(String... keywords) {
        return cards.number(keywords)
                .filter(mjd -> mjd.value() >= FIRST_DAY && mjd.value() < LAST_DAY)
                .map(mjd ->
                        new Cited<>(MJD_ZERO.plusMillis(Math.round(mjd.value() * 86_400_000)), mjd.card(), mjd.text()));
    }
}
