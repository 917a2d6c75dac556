package noctuary.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import noctuary.stats.Robust;

/**
 * A journal of which the truth is known: nights with lognormal seeing (25 %), airmass and moonlight drawn otherwise before
 * than after, 3 to 60 frames a night that scatter by 8 %, targets of which some are on both sides, seven measures that
 * hang together through seeing, moonlight and target.
 *
 * @param measures night by night
 * @param frames the frames behind the values of FWHM brought to airmass 1, before and after
 * @param allFrames the same for every measure, in the order of {@code measures}
 */
record SimulatedJournal(List<MeasureNights> measures, double[][] frames, List<double[][]> allFrames) {
    static final List<Measure> MEASURES = List.of(
            new Measure("fwhmAirmassOneArcsec", "FWHM at airmass 1", "arcsec", true)
                    .byShare()
                    .throughTheSky(),
            new Measure("fwhmArcsec", "FWHM", "arcsec", true)
                    .byShare()
                    .following(Influence.AIRMASS)
                    .throughTheSky(),
            new Measure("fwhmPx", "FWHM in pixels", "px", true)
                    .byShare()
                    .following(Influence.AIRMASS)
                    .throughTheSky(),
            new Measure("ellipticity", "Ellipticity", "", true).throughTheSky(),
            new Measure("backgroundRate", "Background", "e/s", true)
                    .byShare()
                    .following(Influence.MOON, Influence.TARGET, Influence.AIRMASS)
                    .throughTheSky(),
            new Measure("noiseInAnHour", "Noise in an hour", "e/s", true)
                    .byShare()
                    .following(Influence.MOON, Influence.TARGET)
                    .throughTheSky(),
            new Measure("guidingRmsArcsec", "Guiding RMS", "arcsec", true)
                    .byShare()
                    .throughTheSky());

    /** Standard deviation of ln seeing for a scatter of 25 %. */
    private static final double SEEING = Math.sqrt(Math.log(1 + 0.25 * 0.25));

    private static final double FRAME = 0.08;
    private static final int TARGETS = 12;

    /** How many nights fell on which side, and what the change truly did. */
    record Plan(int before, int after, double gain, boolean paired) {}

    private record Sky(LocalDate night, int target, double lnAirmass, double moon) {}

    static SimulatedJournal draw(Plan plan, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] targets = random.doubles(TARGETS, 0, 0.35).toArray();
        double[] glow = new double[TARGETS];
        Arrays.setAll(glow, i -> 0.1 * random.nextGaussian());
        List<List<NightValue>> before = sides();
        List<List<NightValue>> after = sides();
        List<List<double[]>> frames = new ArrayList<>();
        for (boolean later : new boolean[] {false, true}) {
            double tilt = 0.3 * random.nextDouble();
            double moonlit = 0.7 * random.nextDouble();
            int nights = later ? plan.after() : plan.before();
            List<double[]> pooled = new ArrayList<>();
            for (int i = 0; i < nights; i++) {
                int target = plan.paired() ? i % TARGETS : random.nextInt(TARGETS);
                double lnAirmass = targets[target] + tilt * random.nextDouble();
                double moon = random.nextDouble() < moonlit ? 2 * random.nextDouble() : 0;
                LocalDate night = LocalDate.of(2024, 1, 1).plusDays((later ? 500L : 0) + 20L * i + random.nextInt(20));
                double[] truth = night(random, lnAirmass, moon, glow[target], later ? plan.gain() : 0);
                pooled.addAll(night(random, truth, later ? after : before, new Sky(night, target, lnAirmass, moon)));
            }
            frames.add(pooled);
        }
        return of(before, after, frames);
    }

    private static SimulatedJournal of(
            List<List<NightValue>> before, List<List<NightValue>> after, List<List<double[]>> frames) {
        List<MeasureNights> measures = new ArrayList<>();
        List<double[][]> all = new ArrayList<>();
        for (int m = 0; m < MEASURES.size(); m++) {
            int at = m;
            measures.add(new MeasureNights(MEASURES.get(m), m == 0, before.get(m), after.get(m)));
            all.add(new double[][] {
                frames.get(0).stream().mapToDouble(f -> f[at]).toArray(),
                frames.get(1).stream().mapToDouble(f -> f[at]).toArray()
            });
        }
        return new SimulatedJournal(measures, all.get(0), all);
    }

    /** What the night truly was, measure by measure. */
    private static double[] night(SplittableRandom random, double lnAirmass, double moon, double glow, double gain) {
        double seeing = SEEING * random.nextGaussian();
        double sky = 0.15 * random.nextGaussian();
        double background = 0.1 + sky + glow + 0.2 * lnAirmass + moon * Math.log(10) / 2.5;
        double fwhm = Math.log(3) + seeing + Math.log1p(-gain);
        return new double[] {
            fwhm,
            fwhm + 0.6 * lnAirmass,
            fwhm + 0.6 * lnAirmass + Math.log(1 / 1.3),
            Math.log(0.08) - 0.4 * seeing + 0.2 * random.nextGaussian(),
            background,
            background / 2 + 0.05 * random.nextGaussian(),
            Math.log(0.7) + 0.5 * seeing + 0.2 * random.nextGaussian()
        };
    }

    private static List<double[]> night(SplittableRandom random, double[] truth, List<List<NightValue>> side, Sky sky) {
        int count = (int) Math.round(3 * Math.pow(20, random.nextDouble()));
        List<double[]> frames = new ArrayList<>();
        for (int f = 0; f < count; f++) {
            frames.add(Arrays.stream(truth)
                    .map(t -> Math.exp(t + FRAME * random.nextGaussian()))
                    .toArray());
        }
        for (int m = 0; m < truth.length; m++) {
            int at = m;
            double value = Robust.median(frames.stream().mapToDouble(f -> f[at]).toArray());
            side.get(m)
                    .add(new NightValue(
                            sky.night().toString(),
                            sky.night(),
                            "target " + sky.target(),
                            "rig",
                            "terrace",
                            "",
                            value,
                            count,
                            OptionalDouble.of(Math.exp(sky.lnAirmass())),
                            OptionalDouble.of(sky.moon())));
        }
        return frames;
    }

    private static List<List<NightValue>> sides() {
        List<List<NightValue>> sides = new ArrayList<>();
        MEASURES.forEach(m -> sides.add(new ArrayList<>()));
        return sides;
    }
}
