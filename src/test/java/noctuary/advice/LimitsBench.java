package noctuary.advice;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How often the planted trouble is named first, and how often nothing is said of clean nights.
 *
 * <p>Arguments: number of troubled nights (200), number of clean nights (200), seed of the keeper (1). Pixels are simulated
 * and measured.
 */
final class LimitsBench {
    private LimitsBench() {}

    public static void main(String[] args) throws IOException {
        int troubled = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        int clean = args.length > 1 ? Integer.parseInt(args[1]) : 200;
        long seed = args.length > 2 ? Long.parseLong(args[2]) : 1;
        Path folder = Files.createTempDirectory("limits");
        PlantedKeeper keeper = new PlantedKeeper(folder, seed);
        Map<PlantedImage.Trouble, Map<String, Integer>> first = new EnumMap<>(PlantedImage.Trouble.class);
        PlantedImage.Trouble[] kinds = PlantedImage.Trouble.values();
        int right = 0;
        for (int n = 0; n < troubled; n++) {
            right += judge(keeper, kinds[1 + n % (kinds.length - 1)], 100_000 * seed + 5000 + n, first);
        }
        int silent = 0;
        for (int n = 0; n < clean; n++) {
            silent += judge(keeper, PlantedImage.Trouble.NONE, 100_000 * seed + 9000 + n, first);
        }
        PrintStream out = System.out;
        first.forEach((trouble, named) -> out.println(trouble + " " + named));
        out.println("named first " + right + " of " + troubled + ", nothing said of clean nights " + silent + " of "
                + clean);
    }

    private static int judge(
            PlantedKeeper keeper,
            PlantedImage.Trouble trouble,
            long seed,
            Map<PlantedImage.Trouble, Map<String, Integer>> first) {
        List<Finding> findings = keeper.next(new PlantedImage(trouble, seed));
        String named = findings.isEmpty() ? "-" : findings.get(0).id();
        first.computeIfAbsent(trouble, k -> new TreeMap<>()).merge(named, 1, Integer::sum);
        return named.equals(trouble.finding) ? 1 : 0;
    }
}
