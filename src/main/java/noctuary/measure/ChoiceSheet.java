package noctuary.measure;

import java.util.List;
import java.util.OptionalDouble;
import noctuary.effect.Effect;

/**
 * One processing step across all entries.
 *
 * @param name in lower case, as notes write it
 * @param uses oldest first
 */
public record ChoiceSheet(String name, List<Use> uses) {
    public ChoiceSheet {
        uses = List.copyOf(uses);
    }

    /**
     * One version that the step went into. Its numbers are those of all its steps together.
     *
     * @param setting as typed, may be empty
     * @param strength the first number of the setting
     * @param alone whether it was the only step
     */
    public record Use(EntrySheet entry, VersionSheet version, String setting, OptionalDouble strength, boolean alone) {

        /** Noise of a pixel, after over before. */
        public OptionalDouble noiseRatio() {
            return version.noiseRatio();
        }

        /** Share of the faint stars that are lost. */
        public OptionalDouble faintLost() {
            return version.faintLost();
        }

        public OptionalDouble fwhmRatio() {
            return version.fwhmRatio();
        }

        public OptionalDouble backgroundCutPercent() {
            return version.backgroundCutPercent();
        }

        /** Strength of the stretch as estimated from the pixels. */
        public OptionalDouble stretchFound() {
            return version.effect()
                    .flatMap(Effect::stretch)
                    .map(s -> s.strength().value())
                    .orElse(OptionalDouble.empty());
        }
    }
}
