package noctuary.stars;

import java.util.List;
import java.util.Locale;
import noctuary.stars.sim.PlantedStar;
import noctuary.stars.sim.SimulatedFrame;
import noctuary.stars.sim.WidthBound;
import noctuary.stats.Robust;

/** What one simulated frame gave against what was planted. */
record TruthRow(
        SkyScenes scene,
        StarField field,
        double fwhmErrorPercent,
        double ellipticityError,
        double foundOfBright,
        double foundOfFaint,
        int falseStars,
        int planted,
        double scatterOverBound,
        long milliseconds) {
    private static final double MATCH_PX = 1.5;

    static TruthRow measure(SkyScenes scene) {
        long start = System.nanoTime();
        StarField field = StarField.measure(scene.frame().plane(), StarField.Conditions.PLAIN);
        long took = (System.nanoTime() - start) / 1_000_000;
        List<PlantedStar> stars = scene.frame().stars();
        double fwhm = field.fwhmPx().map(Summary::median).orElse(Double.NaN);
        double ellipticity = field.ellipticity().map(Summary::median).orElse(Double.NaN);
        return new TruthRow(
                scene,
                field,
                100 * (fwhm / scene.fwhm() - 1),
                ellipticity - scene.ellipticity(),
                found(stars, field, 20, 1e9),
                found(stars, field, 10, 20),
                falseStars(scene.frame(), field),
                stars.size(),
                scatter(scene, field),
                took);
    }

    static String heading() {
        return "scene          FWHM    e  beta |  FWHM %  +-  e err  beta | >20 %  10-20 %  false found/planted meas. /bound |   ms | FWHM e det scatter";
    }

    boolean fwhmHolds() {
        return Math.abs(fwhmErrorPercent) <= (scene.fwhm() < 2 ? 2 : 1) * (scene.special() ? 2 : 1);
    }

    boolean scatterHolds() {
        return !(scatterOverBound > 1.2);
    }

    boolean ellipticityHolds() {
        return Math.abs(ellipticityError) <= (scene.fwhm() < 2 || scene.special() ? 0.02 : 0.01);
    }

    boolean detectionHolds() {
        boolean hard = scene.name().equals("crowded") || scene.name().equals("nebula");
        return foundOfBright >= (hard ? 0.95 : 0.98)
                && !(foundOfFaint < (hard ? 0.85 : 0.9))
                && falseStars <= (scene.name().equals("nebula") ? 10 : 4);
    }

    String csv() {
        return String.format(
                Locale.ROOT,
                "%s,%s,%s,%s,%.4f,%.4f,%.4f,%.4f,%d",
                scene.name(),
                scene.fwhm(),
                scene.ellipticity(),
                scene.beta(),
                scene.fwhm() * (1 + fwhmErrorPercent / 100),
                scene.ellipticity() + ellipticityError,
                foundOfBright,
                foundOfFaint,
                falseStars);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%-13s %5.1f %4.1f %5.1f | %+6.2f %5.2f %+.3f %5.2f | %5.1f %7.1f %5d %6d/%d %6d %6.2f | %5d | %s %s %s %s %s",
                scene.name(),
                scene.fwhm(),
                scene.ellipticity(),
                scene.beta(),
                fwhmErrorPercent,
                field.fwhmPx().map(s -> 100 * s.standardError() / s.median()).orElse(Double.NaN),
                ellipticityError,
                field.moffatBeta().orElse(Double.NaN),
                100 * foundOfBright,
                100 * foundOfFaint,
                falseStars,
                field.stars().size(),
                planted,
                field.measured(),
                scatterOverBound,
                milliseconds,
                fwhmHolds() ? "ok" : "NO",
                ellipticityHolds() ? "ok" : "NO",
                detectionHolds() ? "ok" : "NO",
                scatterHolds() ? "ok" : "NO",
                field.whyNot().orElse(""));
    }

    private static double found(List<PlantedStar> stars, StarField field, double from, double to) {
        List<PlantedStar> wanted =
                stars.stream().filter(s -> s.snr() >= from && s.snr() < to).toList();
        long hit = wanted.stream()
                .filter(p -> field.stars().stream().anyMatch(s -> near(p, s)))
                .count();
        return wanted.isEmpty() ? Double.NaN : (double) hit / wanted.size();
    }

    private static int falseStars(SimulatedFrame frame, StarField field) {
        return (int) field.stars().stream()
                .filter(s -> frame.stars().stream().noneMatch(p -> near(p, s)))
                .count();
    }

    private static boolean near(PlantedStar p, Star s) {
        return Math.hypot(p.x() - s.x(), p.y() - s.y()) < Math.max(MATCH_PX, 0.4 * p.fwhmPx());
    }

    /**
     * Robust scatter of log width a star over its Cramér-Rao bound (HANDBOOK 3.7; beta is the frame's, so known), for
     * stars of S/N 20 to 100; what all widths of the frame have in common, the error of beta, is not scatter.
     */
    private static double scatter(SkyScenes scene, StarField field) {
        double[] scaled = field.stars().stream()
                .filter(Star::measured)
                .flatMapToDouble(s -> scene.frame().stars().stream()
                        .filter(p -> near(p, s) && p.snr() > 20 && p.snr() < 100)
                        .mapToDouble(p -> Math.log(s.fwhmPx() / p.fwhmPx())
                                / WidthBound.of(p, SkyScenes.variance(scene.name(), p.x(), p.y()))))
                .toArray();
        return scaled.length < 10 ? Double.NaN : Robust.sigma(scaled);
    }
}
