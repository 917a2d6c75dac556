package noctuary.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.measure.VersionSheet;

/**
 * What a processing choice did to pictures: versions made with it against versions without, each measured against what it
 * was made from. The unit is the entry, at its first night; the two sides are compared only where all other steps agree,
 * so that versions of one image, with and without, are the pairs that tell most.
 */
final class ChoiceEvidence {
    static final Measure NOISE = step("noiseRatio", "Noise left", "", true).byShare();
    static final Measure FWHM = step("fwhmRatio", "Star FWHM, ratio", "", true).byShare();
    static final Measure STARS_LOST = step("faintStarsLostPercent", "Faint stars lost", "%", true);
    static final Measure DETAIL = step("detailKeptPercent", "Fine detail kept", "%", false);
    static final Measure CUT = step("backgroundCutPercent", "Background cut to black", "%", true);

    private record Yardstick(Measure measure, Function<VersionSheet, OptionalDouble> read) {}

    private static final List<Yardstick> ALL = List.of(
            new Yardstick(NOISE, VersionSheet::noiseRatio),
            new Yardstick(FWHM, VersionSheet::fwhmRatio),
            new Yardstick(STARS_LOST, v -> percent(v.faintLost())),
            new Yardstick(DETAIL, v -> percent(v.detailKept())),
            new Yardstick(CUT, VersionSheet::backgroundCutPercent));

    private final String choice;
    private final Function<EntrySheet, List<VersionSheet>> versions;

    private ChoiceEvidence(String choice, Function<EntrySheet, List<VersionSheet>> versions) {
        this.choice = choice;
        this.versions = versions;
    }

    private static Measure step(String id, String label, String unit, boolean less) {
        return new Measure(id, label, unit, less).following(Influence.STEPS);
    }

    /** @param versions of an entry, measured */
    static Evidence of(Change change, Function<EntrySheet, List<VersionSheet>> versions) {
        return new ChoiceEvidence(change.part().orElseThrow(), versions).evidence(change);
    }

    private Evidence evidence(Change change) {
        List<MeasureNights> measures = new ArrayList<>();
        List<AbsentMeasure> absent = new ArrayList<>();
        for (Yardstick yardstick : ALL) {
            List<NightValue> before = values(yardstick, change.before(), false);
            List<NightValue> after = values(yardstick, change.after(), true);
            if (before.isEmpty() || after.isEmpty()) {
                boolean with = !before.isEmpty();
                absent.add(new AbsentMeasure(yardstick.measure(), why(with ? change.after() : change.before(), with)));
            } else {
                measures.add(new MeasureNights(yardstick.measure(), false, before, after));
            }
        }
        return new Evidence(Primary.named(change, measures), absent);
    }

    private List<NightValue> values(Yardstick yardstick, Side side, boolean with) {
        List<NightValue> values = new ArrayList<>();
        for (EntryNight night : side.nights()) {
            for (VersionSheet version : versions.apply(night.sheet())) {
                OptionalDouble value = yardstick.read().apply(version);
                if (has(version.version()) == with && value.isPresent()) {
                    values.add(value(night, version.version(), value.getAsDouble()));
                }
            }
        }
        return values;
    }

    private NightValue value(EntryNight night, Entry.Version version, double value) {
        return new NightValue(
                night.slug(),
                night.night(),
                night.target(),
                night.rig(),
                night.site(),
                night.filter(),
                others(version),
                value,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private boolean has(Entry.Version version) {
        return version.steps().stream().anyMatch(s -> s.choice().equals(choice));
    }

    /** All steps but the choice, with their settings, and what they began from when that is no stack. */
    private String others(Entry.Version version) {
        return version.steps().stream()
                .filter(s -> !s.choice().equals(choice))
                .map(s -> s.choice() + ": " + s.setting())
                .collect(Collectors.joining("; ", version.from() + "; ", ""));
    }

    private String why(Side side, boolean with) {
        Set<String> reasons = new LinkedHashSet<>();
        side.nights().stream()
                .flatMap(n -> versions.apply(n.sheet()).stream())
                .filter(v -> has(v.version()) == with)
                .map(VersionSheet::why)
                .filter(reason -> !reason.isEmpty())
                .forEach(reasons::add);
        return Evidence.sentence((reasons.isEmpty() ? "its pictures do not tell" : String.join("; ", reasons))
                + (with ? " (with it)" : " (without it)"));
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share;
    }
}
