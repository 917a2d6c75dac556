package noctuary.entry;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Why a path or pattern found nothing: the folder looked in, and what lies there instead. */
final class Missing {
    private Missing() {}

    static Unfit explain(Reach.Route route, Reach reach) {
        List<String> steps = route.steps();
        String last = steps.get(steps.size() - 1);
        Path folder = route.start();
        for (String step : steps.subList(0, steps.size() - 1)) {
            if (Glob.isPattern(step)) {
                return unfit(route.typed(), last, "no folder below " + shown(folder, route, reach) + " holds it");
            }
            folder = folder.resolve(step).normalize();
            reach.trail().pass(folder);
            if (!Files.isDirectory(folder)) {
                return unfit(route.typed(), last, "there is no folder " + shown(folder, route, reach));
            }
        }
        return unfit(
                route.typed(),
                last,
                "looked in " + shown(folder, route, reach) + ", which holds " + held(folder, last, route, reach));
    }

    private static Unfit unfit(String typed, String last, String hint) {
        String what = Glob.isPattern(last) ? " matches no file" : " is not there";
        return new Unfit(Margin.quoted(typed) + what, hint);
    }

    private static String held(Path folder, String last, Reach.Route route, Reach reach) {
        try {
            List<String> names = FileFinder.children(folder, route, reach).stream()
                    .filter(Files::isRegularFile)
                    .map(path -> path.getFileName().toString())
                    .toList();
            if (names.isEmpty()) {
                return "no files";
            }
            String example = Nearest.to(last, names).orElse(names.get(0));
            return names.size() == 1 ? "only " + example : names.size() + " files, such as " + example;
        } catch (Unfit e) {
            return "nothing that may be read";
        }
    }

    private static String shown(Path folder, Reach.Route route, Reach reach) {
        if (!route.shown().endsWith(":")) {
            return reach.shown(folder);
        }
        return route.shown() + route.start().relativize(folder).toString().replace('\\', '/');
    }
}
