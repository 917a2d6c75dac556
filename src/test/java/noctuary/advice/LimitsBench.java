package noctuary.advice;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How often the planted trouble is named first, how often nothing is said of clean nights, and what is said of troubles
 * so faint that they may or may not stand out.
 *
 * <p>Arguments: number of troubled nights (200), number of clean nights (200), seed of the keeper (1), number of faintly
 * troubled nights (0). Pixels are simulated and measured.
 */
final class LimitsBench {
    private static final PlantedImage.Trouble[] KINDS = PlantedImage.Trouble.values();
    private static final int STRENGTHS = 5;

    private final PlantedKeeper keeper;
    private final long seed;
    private final Map<PlantedImage.Trouble, Map<String, Integer>> first = new EnumMap<>(PlantedImage.Trouble.class);

    private LimitsBench(PlantedKeeper keeper, long seed) {
        this.keeper = keeper;
        this.seed = seed;
    }

    public static void main(String[] args) throws IOException {
        int troubled = argument(args, 0, 200);
        int clean = argument(args, 1, 200);
        int faint = argument(args, 3, 0);
        long seed = argument(args, 2, 1);
        LimitsBench bench = new LimitsBench(new PlantedKeeper(Files.createTempDirectory("limits"), seed), seed);
        bench.strong(troubled, clean);
        bench.faint(faint);
    }

    private static int argument(String[] args, int place, int usual) {
        return args.length > place ? Integer.parseInt(args[place]) : usual;
    }

    private void strong(int troubled, int clean) {
        int right = 0;
        for (int n = 0; n < troubled; n++) {
            PlantedImage.Trouble trouble = KINDS[1 + n % (KINDS.length - 1)];
            right += judge(trouble, new PlantedImage(trouble, 100_000 * seed + 5000 + n));
        }
        int silent = 0;
        for (int n = 0; n < clean; n++) {
            PlantedImage.Trouble none = PlantedImage.Trouble.NONE;
            silent += judge(none, new PlantedImage(none, 100_000 * seed + 9000 + n));
        }
        PrintStream out = System.out;
        first.forEach((trouble, named) -> out.println(trouble + " " + named));
        out.println("named first " + right + " of " + troubled + ", nothing said of clean nights " + silent + " of "
                + clean);
    }

    private int judge(PlantedImage.Trouble trouble, PlantedImage night) {
        String named = named(night);
        first.computeIfAbsent(trouble, k -> new TreeMap<>()).merge(named, 1, Integer::sum);
        return named.equals(trouble.finding) ? 1 : 0;
    }

    private String named(PlantedImage night) {
        List<Finding> findings = keeper.next(night);
        return findings.isEmpty() ? "-" : findings.get(0).id();
    }

    /** From a tenth to all of a mild trouble, a row each; what is named first, by kind. */
    private void faint(int nights) {
        PrintStream out = System.out;
        int wrong = 0;
        for (int row = 0; row < STRENGTHS && nights > 0; row++) {
            Map<String, Integer> said = new TreeMap<>();
            for (int n = row; n < nights; n += STRENGTHS) {
                PlantedImage.Trouble trouble = KINDS[1 + n / STRENGTHS % (KINDS.length - 1)];
                double share = (row + 0.5) / STRENGTHS;
                String named = named(PlantedImage.faint(trouble, 100_000 * seed + 20_000 + n, share));
                boolean silent = named.equals("-") || named.equals(PlantedImage.Trouble.NONE.finding);
                boolean right = named.equals(trouble.finding);
                wrong += right || silent ? 0 : 1;
                said.merge(right ? "right" : silent ? "nothing" : trouble + " taken for " + named, 1, Integer::sum);
            }
            out.println("share " + (row + 0.5) / STRENGTHS + " of a mild trouble: " + said);
        }
        out.println("wrong one first " + wrong + " of " + nights);
    }
}
