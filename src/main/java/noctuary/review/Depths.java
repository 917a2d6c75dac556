package noctuary.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.keep.Digest;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.match.Alignment;
import noctuary.match.Match;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.stars.Star;
import noctuary.stats.Robust;

/**
 * Lays the last image before a change and the first after it on each other, target by target. The limit of an image is
 * the flux at which a star's noise is all background's; in units of the stars that both images share it compares
 * whatever the counts mean, and at equal exposure because background noise grows with the root of time.
 */
final class Depths {
    private static final int FEWEST = 12;
    /** Magnitudes of a limit for a factor of ten in exposure, background-limited: 2.5 / 2. */
    private static final double PER_DECADE = 1.25;

    private Depths() {}

    private record Found(Optional<Laid> laid) {
        static final Packing<Found> PACKING = Packing.of(Found.class);
    }

    /** What a {@link DepthPair} says of its two images, without the nights that they stand for. */
    private record Laid(
            int matched,
            double scaleRatio,
            double rotationDeg,
            boolean mirrored,
            OptionalDouble throughput,
            OptionalDouble throughputError,
            OptionalDouble deeperMag,
            String why) {
        DepthPair of(EntryNight before, EntryNight after) {
            return new DepthPair(
                    before,
                    after,
                    matched,
                    scaleRatio,
                    rotationDeg,
                    mirrored,
                    throughput,
                    throughputError,
                    deeperMag,
                    why);
        }
    }

    static List<DepthPair> of(Change change, Memo memo) {
        Map<String, EntryNight> last = new LinkedHashMap<>();
        change.before().nights().stream().filter(Depths::usable).forEach(n -> last.put(n.target(), n));
        Map<String, EntryNight> first = new LinkedHashMap<>();
        change.after().nights().stream().filter(Depths::usable).forEach(n -> first.putIfAbsent(n.target(), n));
        List<DepthPair> pairs = new ArrayList<>();
        last.forEach((target, before) -> Optional.ofNullable(first.get(target))
                .flatMap(after -> pair(before, after, memo))
                .ifPresent(pairs::add));
        return pairs;
    }

    private static boolean usable(EntryNight night) {
        return !night.target().isEmpty() && night.fileCount() > 0;
    }

    private static Optional<DepthPair> pair(EntryNight before, EntryNight after, Memo memo) {
        String a = richest(before).content();
        String b = richest(after).content();
        boolean known = !a.isEmpty() && !b.isEmpty();
        Digest key = new Digest().text(a + b);
        Stream.of(before, after)
                .forEach(n -> key.text(n.slug()).text(n.target()).text(n.filter()));
        return memo.recall("depths", Found.PACKING, known ? key.hex() : "", () -> new Found(laid(before, after)))
                .laid()
                .map(laid -> laid.of(before, after));
    }

    private static Optional<Laid> laid(EntryNight before, EntryNight after) {
        FrameSheet a = before.files().get(richest(before).at());
        FrameSheet b = after.files().get(richest(after).at());
        return Match.find(a.stars(), b.stars()).map(match -> laid(before, after, a, b, match));
    }

    private static NightTraits.Richest richest(EntryNight night) {
        return night.traits().richest().orElseThrow();
    }

    private static Laid laid(EntryNight before, EntryNight after, FrameSheet a, FrameSheet b, Match match) {
        double[] ratios = ratios(match, a.stars(), b.stars());
        boolean enough = ratios.length >= FEWEST;
        double ratio = Robust.median(ratios);
        double error = Robust.medianError(ratios) / ratio;
        String unlike = enough ? unlikeCounts(before, after, a, b) : "too few stars are measured in both";
        double counts = unlike.isEmpty() ? perElectronSecond(b) / perElectronSecond(a) : Double.NaN;
        OptionalDouble deeper = enough ? deeper(a, b, ratio) : OptionalDouble.empty();
        Alignment alignment = match.alignment();
        return new Laid(
                alignment.matched(),
                1 / alignment.scale(),
                alignment.rotationDeg(),
                alignment.mirrored(),
                unlike.isEmpty() ? OptionalDouble.of(ratio * counts) : OptionalDouble.empty(),
                unlike.isEmpty() ? OptionalDouble.of(ratio * counts * error) : OptionalDouble.empty(),
                deeper,
                unlike.isEmpty() ? "" : "No relative throughput: " + unlike + ".");
    }

    /** Flux after over before of stars measured in both. */
    private static double[] ratios(Match match, List<Star> before, List<Star> after) {
        return match.pairs().stream()
                .filter(p ->
                        before.get(p.from()).measured() && after.get(p.to()).measured())
                .mapToDouble(
                        p -> after.get(p.to()).flux() / before.get(p.from()).flux())
                .toArray();
    }

    private static String unlikeCounts(EntryNight before, EntryNight after, FrameSheet a, FrameSheet b) {
        if (!Readings.single(a) || !Readings.single(b)) {
            return "the counts of a stack have no known unit";
        }
        if (!before.filter().equals(after.filter())) {
            return "the filters differ";
        }
        return Double.isFinite(perElectronSecond(a)) && Double.isFinite(perElectronSecond(b))
                ? ""
                : "gain or exposure is not known";
    }

    /** Electrons a second that one count stands for. */
    private static double perElectronSecond(FrameSheet file) {
        FrameReport report = file.report();
        return report.gain().orElse(Double.NaN) / report.exposureSeconds().orElse(Double.NaN);
    }

    private static OptionalDouble deeper(FrameSheet a, FrameSheet b, double ratio) {
        OptionalDouble noiseA = faintNoise(a.stars());
        OptionalDouble noiseB = faintNoise(b.stars());
        double secondsA = a.report().exposureSeconds().orElse(0);
        double secondsB = b.report().exposureSeconds().orElse(0);
        if (noiseA.isEmpty() || noiseB.isEmpty() || !(secondsA > 0) || !(secondsB > 0)) {
            return OptionalDouble.empty();
        }
        double asTaken = 2.5 * Math.log10(ratio * noiseA.getAsDouble() / noiseB.getAsDouble());
        return OptionalDouble.of(asTaken - PER_DECADE * Math.log10(secondsB / secondsA));
    }

    /** Noise of the flux of the faintest quarter of the measured stars: nearly all of it is the background's. */
    private static OptionalDouble faintNoise(List<Star> stars) {
        List<Star> measured = stars.stream()
                .filter(s -> s.measured() && s.snr() > 0 && s.flux() > 0)
                .sorted(Comparator.comparingDouble(Star::flux))
                .toList();
        if (measured.size() < 4 * FEWEST) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Robust.median(measured.subList(0, measured.size() / 4).stream()
                .mapToDouble(s -> s.flux() / s.snr())
                .toArray()));
    }
}
