package noctuary.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import noctuary.entry.Journal;
import noctuary.fact.Printed;
import noctuary.journal.FrameGroup.Exposure;

/** The lines of a new note. */
final class NoteText {
    private NoteText() {}

    static List<String> of(Journal journal, FrameGroup group) {
        SeenFrame first = group.first();
        List<String> lines = new ArrayList<>();
        lines.add("---");
        lines.add("title: " + quoted(title(first)));
        lines.add(first.target()
                .map(t -> "target: " + quoted(t)
                        + first.header()
                                .object()
                                .map(o -> o.value().equals(t) ? "" : "  # OBJECT is " + plain(o.value()))
                                .orElse("  # no OBJECT card; the nearest to the coordinates: is it right?"))
                .orElse("# target:                      # no OBJECT card: which object is it?"));
        if (first.night().isEmpty()) {
            lines.add("# night: 2025-06-14             # no date in the headers: which night was it?");
        }
        RigGuess rig = RigGuess.of(journal, first);
        lines.add(rig.id().map(id -> "rig: " + id).orElse("# rig:") + "  # " + rig.why());
        lines.add(journal.settings()
                .site()
                .map(s -> "site: " + s)
                .orElse("# site:                        # where was it?"));
        lines.addAll(frames(journal, group));
        lines.add("# guiding: {rms: 0.7 arcsec}");
        lines.add("# lost: [{minutes: 45, cause: cloud, note: what it was}]");
        lines.add("# lessons: [{about: focus, do: what to do differently}]");
        lines.add("---");
        lines.add("");
        lines.add(sum(group));
        lines.add("");
        lines.add("- [ ] What did you want to find out or try that night?");
        lines.add("- [ ] What changed in rig, site or way of working since the last time?");
        lines.add("- [ ] What was clear sky lost to, and how long?");
        lines.add("- [ ] What will you do differently?");
        return lines;
    }

    private static String title(SeenFrame frame) {
        return frame.target().orElse("Unnamed")
                + frame.night().map(n -> ", " + n).orElse("");
    }

    private static List<String> frames(Journal journal, FrameGroup group) {
        Optional<List<String>> singles = FramePatterns.of(journal, group.slug(), group.singles());
        Optional<List<String>> stacks = FramePatterns.of(journal, group.slug(), group.stacks());
        List<String> lines = new ArrayList<>();
        if (singles.isEmpty() || stacks.isEmpty()) {
            lines.addAll(farAway(group));
            return lines;
        }
        if (!singles.get().isEmpty()) {
            lines.add("frames: [" + list(singles.get()) + "]");
        }
        lines.addAll(stacks(FramePatterns.oneByOne(journal, group.slug(), group.stacks())));
        return lines;
    }

    private static List<String> stacks(List<String> stacks) {
        if (stacks.size() < 2) {
            return stacks.stream().map(s -> "stack: " + quoted(s)).toList();
        }
        return List.of(
                "stack: " + quoted(stacks.get(0)) + "  # or which of these is the one?",
                "#      " + list(stacks.subList(1, stacks.size())));
    }

    private static List<String> farAway(FrameGroup group) {
        String ending = FramePatterns.ending(group.first().path().getFileName().toString());
        List<String> lines = new ArrayList<>();
        lines.add("# The frames lie outside the journal. To have them measured, name their folder in");
        lines.add("# entries/journal.yaml (archive: {main: FOLDER}), and here (frames: [\"main:*" + plain(ending)
                + "\"]) instead of");
        lines.add("# the typed exposure.");
        String typed =
                group.exposures().entrySet().stream().map(NoteText::typed).collect(Collectors.joining(", "));
        lines.add(
                typed.isEmpty()
                        ? "# exposure: [{count: 10, seconds: 120}]   # the headers tell none: how many frames, how long?"
                        : "exposure: [" + typed + "]");
        return lines;
    }

    private static String list(List<String> patterns) {
        return patterns.stream().map(NoteText::quoted).collect(Collectors.joining(", "));
    }

    private static String typed(Map.Entry<Exposure, Integer> each) {
        Exposure e = each.getKey();
        return "{count: " + each.getValue() + ", seconds: " + Printed.exact(e.seconds())
                + (e.filter().isBlank() ? "" : ", filter: " + quoted(e.filter())) + "}";
    }

    private static String sum(FrameGroup group) {
        if (group.exposures().isEmpty()) {
            return (group.frames().size() == 1
                            ? "One file; its header does"
                            : group.frames().size() + " files; their headers do")
                    + " not tell the exposure of single frames.";
        }
        return group.exposures().entrySet().stream()
                .map(e -> e.getValue() + " × " + Printed.exact(e.getKey().seconds()) + " s"
                        + (e.getKey().filter().isBlank()
                                ? ""
                                : " through " + plain(e.getKey().filter())))
                .collect(Collectors.joining(", ", "", "."));
    }

    /** A YAML double-quoted scalar; headers may hold anything. */
    private static String quoted(String text) {
        return '"' + plain(text).replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}", " ").strip();
    }
}
