package noctuary.entry;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How far the files named in notes may lie: inside the journal, or inside an archive folder that the settings name.
 *
 * @param root the journal, with symbolic links resolved
 * @param trail told every place that is looked at
 */
record Reach(Path root, Map<String, Path> archives, Trail trail) {
    private static final String FIRST = "archive";
    private static final int MOST_STEPS = 40;

    /**
     * A typed path taken apart.
     *
     * @param typed as it stands in the note
     * @param fence nothing outside may be read; with symbolic links resolved
     * @param start where the steps begin
     * @param shown the start as a reader may see it
     * @param steps between slashes
     */
    record Route(String typed, Path fence, Path start, String shown, List<String> steps) {}

    /** @param folder where relative paths begin */
    Route route(String typed, Path folder) throws Unfit {
        if (typed.indexOf('\\') >= 0) {
            throw new Unfit(Margin.quoted(typed) + " has a backslash", "write / between folders");
        }
        int colon = typed.indexOf(':');
        if (colon < 0) {
            return new Route(typed, root, folder, shown(folder), steps(typed, typed));
        }
        String name = typed.substring(0, colon);
        Path archive = archive(name, typed);
        return new Route(typed, fence(archive, name), archive, name + ":", steps(typed.substring(colon + 1), typed));
    }

    /** A folder or file as problems name it. */
    String shown(Path path) {
        return path.startsWith(root) ? root.relativize(path).toString().replace('\\', '/') : "a folder elsewhere";
    }

    private Path archive(String name, String typed) throws Unfit {
        if (archives.isEmpty()) {
            throw new Unfit(
                    Margin.quoted(typed) + " needs an archive folder, and none is named",
                    "write \"archive: {main: ../frames}\" in entries/journal.yaml");
        }
        if (name.equals(FIRST) && !archives.containsKey(FIRST)) {
            return archives.values().iterator().next();
        }
        if (!archives.containsKey(name)) {
            throw new Unfit(
                    "no archive folder is called " + Margin.quoted(name), Nearest.hint(name, archives.keySet()));
        }
        return archives.get(name);
    }

    private static Path fence(Path archive, String name) throws Unfit {
        try {
            return archive.toRealPath();
        } catch (IOException e) {
            throw new Unfit("the archive folder " + Margin.quoted(name) + " is not there", "is its disk connected?");
        }
    }

    private static List<String> steps(String path, String typed) throws Unfit {
        if (path.startsWith("/") || path.startsWith("~")) {
            throw new Unfit(
                    Margin.quoted(typed) + " leaves the journal",
                    "write a path beside the entry, or name an archive folder in entries/journal.yaml");
        }
        List<String> steps = new ArrayList<>();
        for (String step : path.split("/", -1)) {
            if (!step.isEmpty() && !step.equals(".")) {
                checked(step, typed);
                steps.add(step);
            }
        }
        if (steps.isEmpty()) {
            throw new Unfit(Margin.quoted(typed) + " names no file", "write a file name or a pattern such as *.fits");
        }
        if (steps.size() > MOST_STEPS) {
            throw new Unfit(Margin.quoted(typed) + " has too many steps", "name fewer folders");
        }
        return steps;
    }

    private static void checked(String step, String typed) throws Unfit {
        try {
            Path.of(step.replaceAll("[*?]", "x"));
        } catch (InvalidPathException e) {
            throw new Unfit(Margin.quoted(typed) + " cannot be a file name", "delete its odd characters");
        }
    }
}
