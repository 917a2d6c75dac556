package noctuary.entry;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Finds the notes of a journal, and those that lie where no note is looked for. */
final class NoteFiles {
    /**
     * One note.
     *
     * @param name unique: slug of an entry, id of a rig or site
     * @param folder where paths in the note begin
     */
    record Found(String name, Path file, Path folder) {}

    private static final String ENDING = ".md";
    private static final String ENTRY = "entry.md";
    private static final Set<String> NO_NOTES = Set.of("readme.md");
    /** Folders of {@code entries} that hold other notes. */
    private static final Set<String> OTHERS = Set.of("rigs", "sites");

    private static final int DEEPEST = 4;

    private final Path root;
    private final Path entries;
    private final Ledger ledger;

    NoteFiles(Path root, Ledger ledger) {
        this.root = root;
        this.entries = root.resolve("entries");
        this.ledger = ledger;
    }

    String shown(Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }

    /** Notes of {@code entries/rigs} or {@code entries/sites}. */
    List<Found> in(String name) {
        Path folder = entries.resolve(name);
        List<Found> found = new ArrayList<>();
        var names = new UniqueNames();
        for (Path file : children(folder)) {
            if (Files.isDirectory(file)) {
                strays(file, 1, name + "/ID.md");
            } else if (isNote(file)) {
                add(stem(file), file, folder, names, found);
            } else {
                strangeEnding(file);
            }
        }
        return found;
    }

    List<Found> entries() {
        List<Found> found = new ArrayList<>();
        var names = new UniqueNames();
        for (Path file : children(entries)) {
            String name = file.getFileName().toString();
            if (Files.isDirectory(file) && !OTHERS.contains(name)) {
                folder(file, names, found);
            } else if (isNote(file)) {
                add(stem(file), file, entries, names, found);
            } else if (Files.isRegularFile(file)) {
                strangeEnding(file);
            }
        }
        found.sort(Comparator.comparing(Found::name));
        return found;
    }

    /** Whether an entry's note is looked for at a place in {@code entries}, told by the place alone. */
    static boolean isEntry(Path place) {
        String top = place.getName(0).toString();
        return switch (place.getNameCount()) {
            case 1 -> top.endsWith(ENDING);
            case 2 -> place.endsWith(ENTRY) && !OTHERS.contains(top) && !top.equals("..");
            default -> false;
        };
    }

    private void folder(Path folder, UniqueNames names, List<Found> found) {
        Path entry = folder.resolve(ENTRY);
        if (Files.isRegularFile(entry)) {
            if (isInside(entry)) {
                add(folder.getFileName().toString(), entry, folder, names, found);
            }
        } else {
            strays(folder, 1, "SLUG/entry.md or SLUG.md");
        }
    }

    private void add(String name, Path file, Path folder, UniqueNames names, List<Found> found) {
        String slug = Slug.of(name);
        if (!slug.equals(name)) {
            margin(file)
                    .notice(
                            0,
                            "",
                            "the name " + Margin.quoted(name) + " does not fit an address",
                            "it is called " + slug + " here; use letters, digits, - and _ only");
        }
        String free = names.next(slug);
        if (!free.equals(slug)) {
            margin(file)
                    .fault(
                            0,
                            "",
                            "another file is called " + Margin.quoted(slug) + " too",
                            "rename one of them; this one is called " + free);
        }
        found.add(new Found(free, file, folder));
    }

    private boolean isNote(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(ENDING)
                && Files.isRegularFile(file)
                && !NO_NOTES.contains(name.toLowerCase(Locale.ROOT))
                && isInside(file);
    }

    /** Whether a file may be read; if not, its problem is written. */
    boolean isInside(Path file) {
        try {
            if (file.toRealPath().startsWith(root)) {
                return true;
            }
            margin(file).fault(0, "", "this file is a link that leads out of the journal", "copy the file here");
        } catch (IOException e) {
            margin(file).fault(0, "", "this file cannot be read", "check that you may read it");
        }
        return false;
    }

    private void strangeEnding(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".markdown")
                || name.endsWith(".md.txt")
                || name.endsWith(".mdown")
                || name.endsWith(".yml")) {
            String right = name.endsWith(".yml") ? "journal.yaml" : "NAME.md";
            margin(file).notice(0, "", "this file is not read because of its ending", "call it " + right);
        }
    }

    private void strays(Path folder, int depth, String place) {
        for (Path file : children(folder)) {
            if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS) && depth < DEEPEST) {
                strays(file, depth + 1, place);
            } else if (isNote(file)) {
                margin(file).notice(0, "", "no note is looked for here", "move it to entries/" + place);
            }
        }
    }

    private static String stem(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.length() - ENDING.length());
    }

    private Margin margin(Path file) {
        return new Margin(shown(file), ledger);
    }

    private List<Path> children(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> !file.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            margin(folder).fault(0, "", "this folder cannot be read", "check that you may read it");
            return List.of();
        }
    }
}
