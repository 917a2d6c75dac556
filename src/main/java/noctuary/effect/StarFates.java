package noctuary.effect;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What became of the stars.
 *
 * @param bins of brightness, faintest first
 * @param invented stars on the picture whose light is not in the origin
 */
public record StarFates(List<Bin> bins, int invented) {
    public StarFates {
        bins = List.copyOf(bins);
    }

    /**
     * @param fromSnr signal-to-noise ratio on the origin
     * @param toSnr infinite for the brightest
     * @param kept at least half of their light is still there
     */
    public record Bin(double fromSnr, double toSnr, int kept, int lost) {
        public int all() {
            return kept + lost;
        }
    }

    /** Share of the stars below this signal-to-noise ratio that are lost; absent for fewer than {@code fewest}. */
    public OptionalDouble lostShare(double belowSnr, int fewest) {
        int all = 0;
        int gone = 0;
        for (Bin bin : bins) {
            all += bin.toSnr() <= belowSnr ? bin.all() : 0;
            gone += bin.toSnr() <= belowSnr ? bin.lost() : 0;
        }
        return all < Math.max(1, fewest) ? OptionalDouble.empty() : OptionalDouble.of(gone / (double) all);
    }

    public int kept() {
        return bins.stream().mapToInt(Bin::kept).sum();
    }

    public int lost() {
        return bins.stream().mapToInt(Bin::lost).sum();
    }
}
