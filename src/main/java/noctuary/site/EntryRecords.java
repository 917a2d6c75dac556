package noctuary.site;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.entry.Entry;
import noctuary.entry.Typed;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.Observation;
import noctuary.measure.VersionSheet;
import noctuary.site.JournalRecord.EntryRecord;
import noctuary.site.JournalRecord.FindingRecord;
import noctuary.site.JournalRecord.ProblemRecord;
import noctuary.site.JournalRecord.VersionRecord;

/** Entries as they stand in the downloads. */
final class EntryRecords {
    private final Ledger ledger;

    EntryRecords(Ledger ledger) {
        this.ledger = ledger;
    }

    EntryRecord of(EntrySheet sheet) {
        Entry entry = sheet.entry();
        Discretion discretion = ledger.discretion();
        return new EntryRecord(
                entry.slug(),
                entry.title().value(),
                sheet.target().value().orElse(null),
                sheet.night().map(LocalDate::toString).orElse(null),
                sheet.nights().stream().map(LocalDate::toString).toList(),
                entry.rig().map(Typed::value).orElse(null),
                entry.site().map(Typed::value).orElse(null),
                number(sheet, Figure.EXPOSURE),
                byFilter(sheet),
                entry.frames().size(),
                number(sheet, Figure.IMAGE_SCALE),
                sheet.scaleFrom().orElse(null),
                number(sheet, Figure.FWHM_ARCSEC),
                number(sheet, Figure.FWHM_PX),
                number(sheet, Figure.ELLIPTICITY),
                number(sheet, Figure.BACKGROUND_LEVEL),
                number(sheet, Figure.BACKGROUND_NOISE),
                findings(sheet),
                sheet.problems().stream()
                        .map(p -> new ProblemRecord(
                                discretion.where(p), discretion.text(p.what()), discretion.text(p.hint())))
                        .toList(),
                versions(sheet));
    }

    /** What limits the image, most first; then what its nights looked like; then what its versions cost. */
    private List<FindingRecord> findings(EntrySheet sheet) {
        Stream<FindingRecord> limits = ledger.advice().findings(sheet.entry().slug()).stream()
                .map(f -> finding(f.id(), (f.text() + " " + f.settle()).strip(), f.evidence()));
        Stream<FindingRecord> observed = Stream.concat(
                        sheet.observations().stream(),
                        ledger.versions(sheet).stream().flatMap(EntryRecords::findings))
                .map(o -> finding(o.id(), o.text(), o.evidence()));
        return Stream.concat(limits, observed).toList();
    }

    private FindingRecord finding(String id, String text, String evidence) {
        return new FindingRecord(
                id, ledger.discretion().text(text), ledger.discretion().text(evidence));
    }

    private static Map<String, Double> byFilter(EntrySheet sheet) {
        Map<String, Double> seconds = new LinkedHashMap<>();
        sheet.secondsByFilter()
                .forEach((filter, told) -> seconds.put(filter, told.isPresent() ? told.getAsDouble() : null));
        return seconds;
    }

    /** The findings of a version, each with the version's name before it. */
    private static Stream<Observation> findings(VersionSheet version) {
        String name = version.version().name();
        return version.findings().stream()
                .map(o -> new Observation(o.id() + "-" + name, "Version " + name + ": " + o.text(), o.evidence()));
    }

    private List<VersionRecord> versions(EntrySheet sheet) {
        Map<String, VersionSheet> compared = new LinkedHashMap<>();
        ledger.versions(sheet).forEach(v -> compared.put(v.version().name(), v));
        return sheet.entry().versions().stream()
                .map(v -> VersionRecords.of(v, Optional.ofNullable(compared.get(v.name()))))
                .toList();
    }

    static OptionalDouble number(EntrySheet sheet, Figure figure) {
        return sheet.number(figure).map(q -> OptionalDouble.of(q.value())).orElse(OptionalDouble.empty());
    }
}
