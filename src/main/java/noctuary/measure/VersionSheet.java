package noctuary.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.effect.Amount;
import noctuary.effect.Effect;
import noctuary.entry.Entry;

/**
 * One version of an entry against the one it came from.
 *
 * @param effect absent when it could not be measured
 * @param whyNot a reason when {@code effect} is absent, else empty
 * @param findings what its numbers say in words
 */
public record VersionSheet(Entry.Version version, Optional<Effect> effect, String whyNot, List<Observation> findings) {
    public VersionSheet {
        findings = List.copyOf(findings);
    }

    static VersionSheet of(Entry.Version version, Effect effect) {
        return new VersionSheet(version, Optional.of(effect), "", StepFindings.of(version, effect));
    }

    static VersionSheet without(Entry.Version version, String why) {
        return new VersionSheet(version, Optional.empty(), why, List.of());
    }

    /** Noise of a pixel, after over before. */
    public OptionalDouble noiseRatio() {
        return value(e -> e.noiseRatio(1));
    }

    public OptionalDouble fwhmRatio() {
        return value(Effect::fwhmRatio);
    }

    /** Share of the faint stars that are lost. */
    public OptionalDouble faintLost() {
        return effect.map(StepFindings::faintLost).orElse(OptionalDouble.empty());
    }

    /** Share of the fine structure of bright parts that is left. */
    public OptionalDouble detailKept() {
        return value(Effect::detailKept);
    }

    public OptionalDouble backgroundCutPercent() {
        return value(Effect::backgroundCutPercent);
    }

    /** Why some or all of it is absent; empty when nothing need be. */
    public String why() {
        return effect.map(Effect::whyNot).orElse(whyNot);
    }

    private OptionalDouble value(Function<Effect, Amount> part) {
        return effect.map(part).map(Amount::value).orElse(OptionalDouble.empty());
    }
}
