package noctuary.effect;

import java.util.List;

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

    public int kept() {
        return bins.stream().mapToInt(Bin::kept).sum();
    }

    public int lost() {
        return bins.stream().mapToInt(Bin::lost).sum();
    }
}
