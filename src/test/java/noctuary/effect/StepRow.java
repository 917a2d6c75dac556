package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import noctuary.effect.Chain.Step;

/**
 * A step with its strength, as the table has it.
 *
 * @param tone whether it is itself a change of tones, which belongs to the stretch and comes after it only
 */
record StepRow(String name, boolean tone, Step step) {
    static StepRow named(String name) {
        return all().stream().filter(row -> row.name().equals(name)).findFirst().orElseThrow();
    }

    static List<StepRow> all() {
        List<StepRow> rows = new ArrayList<>();
        rows.add(new StepRow("nothing", false, (p, c) -> p));
        for (double sigma : new double[] {0.7, 1, 1.5, 2, 3}) {
            rows.add(new StepRow("gaussian " + sigma, false, (p, c) -> Steps.gaussian(p, sigma)));
        }
        rows.add(new StepRow("median 3", false, (p, c) -> KeeperSteps.ranked(p, 1, 0.5)));
        rows.add(new StepRow("median 5", false, (p, c) -> KeeperSteps.ranked(p, 2, 0.5)));
        for (double[] a : new double[][] {{0.3, 1}, {0.8, 1.5}, {1.5, 1}, {1.5, 2.5}, {3, 2}}) {
            String name = String.format(Locale.ROOT, "sharpen %.1f at %.1f", a[0], a[1]);
            rows.add(new StepRow(name, false, (p, c) -> Steps.sharpen(p, a[1], a[0])));
        }
        rows.add(new StepRow("deconvolve 5", false, (p, c) -> KeeperSteps.deconvolved(p, 2.5, 5, c.floor())));
        rows.add(new StepRow("deconvolve 20", false, (p, c) -> KeeperSteps.deconvolved(p, 2.5, 20, c.floor())));
        for (double amount : new double[] {0.4, 0.9}) {
            rows.add(new StepRow(
                    "keep detail " + amount, false, (p, c) -> KeeperSteps.keepingDetail(p, 1.5, amount, c.noise())));
        }
        rows.add(new StepRow("bilateral 1.5", false, (p, c) -> KeeperSteps.bilateral(p, 1.5, c.noise())));
        for (double amount : new double[] {0.5, 1}) {
            rows.add(new StepRow(
                    "smaller stars " + amount, false, (p, c) -> KeeperSteps.smallerStars(p, c.stars(), amount)));
        }
        for (double left : new double[] {0, 0.3, 0.7}) {
            rows.add(new StepRow(
                    "stars left " + left, false, (p, c) -> KeeperSteps.starsTaken(p, c.stars(), c.noise(), left)));
        }
        rows.add(new StepRow("halo 10 %", false, (p, c) -> KeeperSteps.halos(p, c.stars(), 0.1, c.level())));
        rows.add(new StepRow("halo 3 %", false, (p, c) -> KeeperSteps.halos(p, c.stars(), 0.03, c.level())));
        for (double times : new double[] {0.5, 1.5}) {
            rows.add(new StepRow("noise added " + times, false, (p, c) -> KeeperSteps.noisier(p, times * c.noise())));
        }
        tones(rows);
        return rows;
    }

    private static void tones(List<StepRow> rows) {
        rows.add(new StepRow("levels to 1.5 sigma", true, (p, c) -> {
            double black = c.level() - 1.5 * c.noise();
            return KeeperSteps.each(p, v -> (v - black) / (1 - black));
        }));
        rows.add(new StepRow("levels to 3 sigma", true, (p, c) -> {
            double black = c.level() - 3 * c.noise();
            return KeeperSteps.each(p, v -> (v - black) / (0.95 - black));
        }));
        rows.add(new StepRow("gamma 1.4", true, (p, c) -> KeeperSteps.each(p, v -> Math.pow(Math.max(0, v), 1 / 1.4))));
        rows.add(new StepRow(
                "s curve",
                true,
                (p, c) -> KeeperSteps.each(p, v -> {
                    double u = Math.max(0, Math.min(1, v));
                    return 0.4 * u + 0.6 * u * u * (3 - 2 * u);
                })));
        rows.add(new StepRow("eight bits", true, (p, c) -> KeeperSteps.each(p, v -> Math.rint(255 * v) / 255)));
    }
}
