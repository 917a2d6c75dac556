package noctuary.entry;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Finds the files that notes name by path or pattern, and never looks beyond their reach. */
final class FileFinder {
    private static final int DEEPEST = 12;
    private static final int MOST = 100_000;

    private final Reach reach;

    FileFinder(Reach reach) {
        this.reach = reach;
    }

    /** Files of all patterns, each once, sorted by path. */
    List<Path> all(List<Typed<String>> patterns, Path folder, Margin margin) {
        var found = new TreeSet<Path>();
        for (Typed<String> pattern : patterns) {
            try {
                found.addAll(search(pattern, folder, margin));
            } catch (Unfit e) {
                margin.fault(pattern.line(), pattern.key(), e);
            }
        }
        return List.copyOf(found);
    }

    /** The one file of a plain path. */
    Optional<Path> one(Typed<String> path, Path folder, Margin margin) {
        try {
            List<Path> found = search(path, folder, margin);
            if (found.size() > 1) {
                throw new Unfit(
                        Margin.quoted(path.value()) + " matches " + found.size() + " files", "name one of them");
            }
            return Optional.of(found.get(0));
        } catch (Unfit e) {
            margin.fault(path.line(), path.key(), e);
            return Optional.empty();
        }
    }

    private List<Path> search(Typed<String> typed, Path folder, Margin margin) throws Unfit {
        Reach.Route route = reach.route(typed.value(), folder);
        Collection<Path> places = List.of(route.start());
        List<String> steps = route.steps();
        for (String step : steps.subList(0, steps.size() - 1)) {
            places = enter(places, step, route);
        }
        List<Path> found = new ArrayList<>();
        for (Path place : places) {
            found.addAll(files(place, steps.get(steps.size() - 1), route));
        }
        if (found.isEmpty()) {
            throw Missing.explain(route, reach);
        }
        return inside(found, route, typed, margin);
    }

    /** A link that leads out costs itself only, unless nothing else was found. */
    private static List<Path> inside(List<Path> found, Reach.Route route, Typed<String> typed, Margin margin)
            throws Unfit {
        List<Path> inside = found.stream().filter(file -> isInside(file, route)).toList();
        if (inside.isEmpty()) {
            throw leadsOut(Margin.quoted(route.typed()) + " leads", route);
        }
        if (inside.size() < found.size()) {
            Path first = found.stream()
                    .filter(file -> !inside.contains(file))
                    .findFirst()
                    .orElseThrow();
            String others = found.size() - inside.size() > 1 ? " and others lead" : " leads";
            margin.fault(typed.line(), typed.key(), leadsOut(Margin.quoted(name(first)) + others, route));
        }
        return inside.stream().map(Path::normalize).toList();
    }

    private Set<Path> enter(Collection<Path> places, String step, Reach.Route route) throws Unfit {
        Set<Path> entered = new LinkedHashSet<>();
        for (Path place : places) {
            if (step.equals("**")) {
                descend(place, 0, entered, route);
            } else if (step.equals("..")) {
                entered.add(fenced(place.resolve("..").normalize(), route));
            } else if (Glob.isPattern(step)) {
                Glob glob = Glob.of(step);
                for (Path child : children(place, route)) {
                    if (Files.isDirectory(child) && glob.matches(name(child))) {
                        entered.add(child);
                    }
                }
            } else if (isFolder(place.resolve(step))) {
                entered.add(fenced(place.resolve(step), route));
            }
        }
        return entered;
    }

    private boolean isFolder(Path place) {
        reach.trail().pass(place);
        return Files.isDirectory(place);
    }

    private void descend(Path place, int depth, Set<Path> entered, Reach.Route route) throws Unfit {
        if (!entered.add(place)) {
            return;
        }
        if (depth == DEEPEST || entered.size() > MOST) {
            throw new Unfit("** leads through too many folders", "name the folders");
        }
        for (Path child : children(place, route)) {
            if (Files.isDirectory(child, LinkOption.NOFOLLOW_LINKS)) {
                descend(child, depth + 1, entered, route);
            }
        }
    }

    private List<Path> files(Path place, String step, Reach.Route route) throws Unfit {
        if (!Glob.isPattern(step)) {
            Path file = place.resolve(step);
            reach.trail().pass(file);
            return Files.isRegularFile(file) && !step.startsWith(".") ? List.of(file) : List.of();
        }
        Glob glob = Glob.of(step);
        List<Path> files = new ArrayList<>();
        for (Path child : children(place, route)) {
            if (glob.matches(name(child)) && Files.isRegularFile(child)) {
                reach.trail().pass(child);
                files.add(child);
            }
        }
        return files;
    }

    private List<Path> children(Path folder, Reach.Route route) throws Unfit {
        return children(folder, route, reach);
    }

    /** What a folder holds, without hidden files, sorted. */
    static List<Path> children(Path folder, Reach.Route route, Reach reach) throws Unfit {
        reach.trail().pass(folder);
        List<Path> children = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            for (Path child : stream) {
                if (!name(child).startsWith(".") && children.size() < MOST) {
                    children.add(child);
                }
            }
        } catch (IOException e) {
            throw new Unfit("a folder below " + route.shown() + " cannot be read", "check that you may read it");
        }
        children.sort(null);
        return children;
    }

    private static Path fenced(Path path, Reach.Route route) throws Unfit {
        if (!isInside(path, route)) {
            throw leadsOut(Margin.quoted(route.typed()) + " leads", route);
        }
        return path.normalize();
    }

    private static boolean isInside(Path path, Reach.Route route) {
        try {
            return path.toRealPath().startsWith(route.fence());
        } catch (IOException e) {
            return path.normalize().startsWith(route.fence());
        }
    }

    private static Unfit leadsOut(String what, Reach.Route route) {
        return new Unfit(
                what + " out of " + out(route),
                "only files inside are read; name an archive folder in entries/journal.yaml");
    }

    private static String out(Reach.Route route) {
        return route.shown().endsWith(":")
                ? "the archive folder " + route.shown().replace(":", "")
                : "the journal";
    }

    private static String name(Path path) {
        return path.getFileName().toString();
    }
}
