package noctuary.entry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import noctuary.entry.RigNote.Part;

/** Parts with dated replacements, as they were on one date. */
final class PartsOn {
    private PartsOn() {}

    /** A dated part takes the place of its namesake from its date on; without a namesake it joins in its own place. */
    static List<Part> date(List<Part> parts, LocalDate date) {
        List<Part> present = new ArrayList<>();
        Set<String> replaced = new HashSet<>();
        for (Part part : parts) {
            Optional<Part> latest = latest(parts, part.name(), date);
            if (latest.isPresent() && replaced.add(part.name())) {
                present.add(latest.get());
            } else if (latest.isEmpty() && part.since().isEmpty()) {
                present.add(part);
            }
        }
        return List.copyOf(present);
    }

    private static Optional<Part> latest(List<Part> parts, String name, LocalDate date) {
        return parts.stream()
                .filter(part -> part.name().equals(name))
                .filter(part ->
                        part.since().filter(since -> !since.isAfter(date)).isPresent())
                .max(Comparator.comparing(part -> part.since().orElseThrow()));
    }
}
