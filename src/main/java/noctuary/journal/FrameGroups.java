package noctuary.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Journal;

/** Frames sorted into entries: one for each target, night and rig. */
final class FrameGroups {
    private FrameGroups() {}

    static List<FrameGroup> of(Journal journal, Collection<SeenFrame> frames) {
        Map<String, Map<String, List<SeenFrame>>> bySlug = new LinkedHashMap<>();
        for (SeenFrame frame : frames) {
            bySlug.computeIfAbsent(frame.slug(), k -> new LinkedHashMap<>())
                    .computeIfAbsent(frame.setup(), k -> new ArrayList<>())
                    .add(frame);
        }
        List<FrameGroup> groups = new ArrayList<>();
        bySlug.forEach((slug, setups) -> groups.addAll(apart(journal, slug, joined(setups))));
        return groups;
    }

    /** Headers that tell less of their rig than the others of that target and night go with the only rig there is. */
    private static List<List<SeenFrame>> joined(Map<String, List<SeenFrame>> setups) {
        List<String> vague =
                setups.keySet().stream().filter(s -> s.contains("?")).toList();
        if (setups.size() - vague.size() != 1) {
            return new ArrayList<>(setups.values());
        }
        List<SeenFrame> all = new ArrayList<>();
        setups.values().forEach(all::addAll);
        return List.of(all);
    }

    private static List<FrameGroup> apart(Journal journal, String slug, List<List<SeenFrame>> setups) {
        if (setups.size() == 1) {
            return List.of(new FrameGroup(slug, setups.get(0)));
        }
        List<FrameGroup> groups = new ArrayList<>();
        List<String> taken = new ArrayList<>();
        for (List<SeenFrame> frames : setups) {
            Optional<String> rig = RigGuess.of(journal, frames.get(0)).onlyOne();
            String suffix = rig.filter(id -> !taken.contains(id)).orElse("rig-" + (groups.size() + 1));
            taken.add(suffix);
            groups.add(new FrameGroup(slug + "-" + suffix, frames));
        }
        return groups;
    }
}
