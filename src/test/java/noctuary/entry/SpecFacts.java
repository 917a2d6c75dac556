package noctuary.entry;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import noctuary.fact.Quantity;

/** What a journal holds as lines of text, for the examples. */
final class SpecFacts {
    private final String name;
    private final List<String> lines = new ArrayList<>();

    private SpecFacts(String name) {
        this.name = name;
    }

    static List<String> of(Settings settings) {
        var facts = new SpecFacts("journal");
        facts.put("title", settings.title());
        facts.put("keeper", settings.keeper());
        facts.put("archives", settings.archive().keySet().toString());
        facts.put("coordinates", String.valueOf(settings.publish().coordinates()));
        facts.put("file names", String.valueOf(settings.publish().fileNames()));
        return facts.lines;
    }

    static List<String> of(RigNote rig) {
        var facts = new SpecFacts(rig.id());
        facts.put("name", rig.name().value());
        facts.put("from", rig.from());
        facts.put("to", rig.to());
        facts.quantities(rig.optics());
        facts.quantities(rig.camera());
        facts.put("mosaic", rig.mosaic().map(Typed::value));
        facts.put("mount", rig.mountName());
        facts.put("capacity", rig.mountCapacity().map(SpecFacts::shown));
        rig.train().forEach(part -> facts.put("train", shown(part)));
        rig.payload().forEach(part -> facts.put("payload", shown(part)));
        rig.cost().forEach(cost -> facts.put("cost", cost.part() + " " + cost.amount() + " " + cost.currency()));
        facts.put("html", rig.html().strip());
        return facts.lines;
    }

    static List<String> of(Site site) {
        var facts = new SpecFacts(site.id());
        facts.put("name", site.name());
        facts.put("latitude", site.latitudeDeg());
        facts.put("longitude", site.longitudeDeg());
        facts.put("elevation", site.elevationM());
        facts.put("zone", site.zone());
        return facts.lines;
    }

    static List<String> of(Entry entry, Path root) {
        var facts = new SpecFacts(entry.slug());
        facts.put("title", entry.title().value());
        facts.put("target", entry.target().map(Typed::value));
        facts.put("rig", entry.rig().map(rig -> rig.value() + " from " + rig.file() + ", line " + rig.line()));
        facts.put("site", entry.site().map(Typed::value));
        facts.put("date", entry.date().map(Typed::value));
        facts.put("frames", names(entry.frames(), root));
        facts.put("stack", entry.stack().map(path -> names(List.of(path), root)));
        entry.exposure().forEach(typed -> facts.put("exposure", shown(typed.value())));
        facts.put("guiding", entry.guidingRms().map(SpecFacts::shown));
        entry.lost().forEach(lost -> facts.put("lost", lost.minutes() + " min, " + lost.cause() + ", " + lost.note()));
        entry.changes().forEach(change -> facts.put("change", change.value()));
        entry.versions().forEach(version -> facts.put("version", shown(version)));
        entry.lessons().forEach(lesson -> facts.put("lesson", lesson.id() + ": " + lesson.todo()));
        entry.closes().forEach(id -> facts.put("closes", id));
        facts.put(
                "attached",
                names(entry.attachments().stream().map(Attachment::file).toList(), root));
        facts.put("html", entry.html().strip().replace("\n", "⏎"));
        return facts.lines;
    }

    private void put(String key, Object value) {
        if (value instanceof Optional<?> optional) {
            put(key, optional.map(Object::toString).orElse("-"));
        } else if (value instanceof OptionalDouble number) {
            put(key, number.isPresent() ? String.valueOf(number.getAsDouble()) : "-");
        } else {
            lines.add(name + " " + key + ": " + value);
        }
    }

    private void quantities(Map<String, Typed<Quantity>> quantities) {
        quantities.forEach((key, value) -> put(key, shown(value)));
    }

    private static String shown(Typed<Quantity> typed) {
        return (typed.value().value() + " " + typed.value().unit().symbol()).strip();
    }

    private static String shown(RigNote.Part part) {
        return part.name()
                + part.since().map(since -> " since " + since).orElse("")
                + part.length().map(length -> ", " + shown(length) + " long").orElse("")
                + part.glass().map(glass -> ", " + shown(glass) + " glass").orElse("")
                + part.mass().map(mass -> ", " + shown(mass)).orElse("")
                + part.front().map(front -> ", front " + front.value()).orElse("")
                + part.rear().map(rear -> ", rear " + rear.value()).orElse("");
    }

    private static String shown(Entry.TypedExposure exposure) {
        return exposure.count() + " x " + exposure.seconds().toPlainString() + " s " + exposure.filter();
    }

    private static String shown(Entry.Version version) {
        return version.name() + " from " + version.from() + ": "
                + version.steps().stream()
                        .map(step -> step.choice() + "=" + step.setting())
                        .collect(Collectors.joining(", "));
    }

    private static String names(Collection<Path> paths, Path root) {
        return paths.stream()
                .map(path -> root.relativize(path).toString().replace('\\', '/'))
                .collect(Collectors.joining(" "));
    }
}
