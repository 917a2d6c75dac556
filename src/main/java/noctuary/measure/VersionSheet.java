package noctuary.measure;

import java.util.List;
import java.util.Optional;
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
}
