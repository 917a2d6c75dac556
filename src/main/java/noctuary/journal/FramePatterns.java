package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import noctuary.entry.Journal;

/** How a note names frames: a pattern where it catches just these, else one by one. */
final class FramePatterns {
    private static final Pattern ENDING =
            Pattern.compile("\\.(?:fits?|fts)(?:\\.(?:fz|gz))?$|\\.fz$", Pattern.CASE_INSENSITIVE);

    private FramePatterns() {}

    /** Nothing when a frame lies neither beside the entry nor in an archive folder. */
    static Optional<List<String>> of(Journal journal, String slug, List<Path> frames) {
        Map<Path, List<Path>> byFolder = new TreeMap<>();
        frames.forEach(f ->
                byFolder.computeIfAbsent(f.getParent(), k -> new ArrayList<>()).add(f));
        List<String> patterns = new ArrayList<>();
        for (Map.Entry<Path, List<Path>> each : byFolder.entrySet()) {
            Optional<String> prefix = prefix(journal, slug, each.getKey());
            if (prefix.isEmpty()) {
                return Optional.empty();
            }
            names(each.getKey(), each.getValue()).forEach(name -> patterns.add(prefix.get() + name));
        }
        return Optional.of(patterns);
    }

    /** Whether a note of this entry can name all frames of a group. */
    static boolean reach(Journal journal, FrameGroup group) {
        return of(journal, group.slug(), group.singles()).isPresent()
                && of(journal, group.slug(), group.stacks()).isPresent();
    }

    /** Each file by its own name; only for files that {@link #of} found reachable. */
    static List<String> oneByOne(Journal journal, String slug, List<Path> files) {
        return files.stream()
                .map(f -> prefix(journal, slug, f.getParent()).orElseThrow()
                        + literal(f.getFileName().toString()))
                .toList();
    }

    private static Optional<String> prefix(Journal journal, String slug, Path folder) {
        Path beside = journal.root().resolve("entries").resolve(slug);
        if (folder.startsWith(beside)) {
            return Optional.of(slashed(beside.relativize(folder)));
        }
        return journal.settings().archive().entrySet().stream()
                .filter(a -> folder.startsWith(a.getValue()))
                .sorted(Map.Entry.comparingByKey())
                .map(a -> a.getKey() + ":" + slashed(a.getValue().relativize(folder)))
                .findFirst();
    }

    private static String slashed(Path relative) {
        String text = literal(relative.toString().replace('\\', '/'));
        return text.isEmpty() ? "" : text + "/";
    }

    /** {@code *.ext} where the folder holds no other file of that ending. */
    private static List<String> names(Path folder, List<Path> frames) {
        Set<String> wanted = new HashSet<>();
        frames.forEach(f -> wanted.add(f.getFileName().toString()));
        String first = frames.get(0).getFileName().toString();
        String ending = ending(first);
        try (Stream<Path> all = Files.list(folder)) {
            Set<String> same = new HashSet<>(all.map(f -> f.getFileName().toString())
                    .filter(name -> name.endsWith(ending))
                    .toList());
            if (same.equals(wanted)) {
                return List.of("*" + literal(ending));
            }
        } catch (IOException e) {
            return literal(wanted);
        }
        return literal(wanted);
    }

    /** What makes a name that of a frame: {@code .fits.fz} of {@code a.1.fits.fz}; the whole name where nothing does. */
    static String ending(String name) {
        Matcher known = ENDING.matcher(name);
        return known.find() ? known.group() : name;
    }

    private static List<String> literal(Set<String> names) {
        return names.stream().sorted().map(FramePatterns::literal).toList();
    }

    /** The name as a pattern that means it: signs with a meaning in patterns in brackets, or as any one character. */
    private static String literal(String name) {
        return name.replaceAll("[\\[*?]", "[$0]").replaceAll("[{}:]", "?");
    }
}
