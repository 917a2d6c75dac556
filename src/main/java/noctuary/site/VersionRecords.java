package noctuary.site;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.effect.Effect;
import noctuary.effect.StarFates;
import noctuary.entry.Entry;
import noctuary.measure.VersionSheet;
import noctuary.site.JournalRecord.VersionRecord;

/** Versions as they stand in the downloads. */
final class VersionRecords {
    private VersionRecords() {}

    /** @param sheet absent where nothing was compared */
    static VersionRecord of(Entry.Version version, Optional<VersionSheet> sheet) {
        Optional<Effect> effect = sheet.flatMap(VersionSheet::effect);
        Optional<StarFates> fates = effect.flatMap(Effect::fates);
        return new VersionRecord(
                version.name(),
                version.from(),
                steps(version),
                effect.map(e -> e.noiseRatio(1).value()).orElseGet(OptionalDouble::empty),
                effect.map(e -> e.fwhmRatio().value()).orElseGet(OptionalDouble::empty),
                number(fates.map(StarFates::kept)),
                number(fates.map(StarFates::lost)),
                number(fates.map(StarFates::invented)),
                number(effect.map(Effect::clippedBlackPercent)),
                number(effect.map(Effect::clippedWhitePercent)));
    }

    static String step(Entry.Step step) {
        return step.setting().isEmpty() ? step.choice() : step.choice() + ": " + step.setting();
    }

    private static OptionalDouble number(Optional<? extends Number> number) {
        return number.isPresent() ? OptionalDouble.of(number.get().doubleValue()) : OptionalDouble.empty();
    }

    static List<String> steps(Entry.Version version) {
        return version.steps().stream().map(VersionRecords::step).toList();
    }
}
