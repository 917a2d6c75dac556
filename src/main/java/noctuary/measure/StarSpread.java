package noctuary.measure;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.measure.FrameReport.Spread;
import noctuary.stats.Robust;

/** How star widths spread in several files taken together. */
final class StarSpread {
    private StarSpread() {}

    /** The median over the files of each percentile, arcsec; empty where no file has a width. */
    static Spread fwhmArcsec(List<FrameSheet> files) {
        List<Spread> spreads = files.stream()
                .flatMap(f -> f.report().stars().stream())
                .map(FrameReport.Stars::fwhmArcsec)
                .filter(s -> s.median().isPresent())
                .toList();
        return new Spread(median(spreads, Spread::median), median(spreads, Spread::low), median(spreads, Spread::high));
    }

    private static OptionalDouble median(List<Spread> spreads, Function<Spread, OptionalDouble> percentile) {
        double[] values = spreads.stream()
                .mapToDouble(s -> percentile.apply(s).orElseThrow())
                .toArray();
        return values.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(values));
    }
}
