package noctuary.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Affine;
import noctuary.match.Alignment;
import noctuary.match.Match;
import noctuary.stars.Star;
import noctuary.stars.StarField;
import noctuary.stats.Robust;

/**
 * One file laid on another by their stars alone.
 *
 * @param toReference where a pixel of the file lies in the reference; both as their files store them
 * @param rmsPx root mean square distance of the matched stars, pixels of the reference
 * @param light what values above the background must be multiplied by to be as bright as in the reference, from the
 *     flux of the same stars; absent with fewer than six measured in both
 */
public record SkyMatch(
        Affine toReference,
        int matched,
        double rmsPx,
        double scale,
        double rotationDeg,
        boolean mirrored,
        OptionalDouble light) {
    private static final int FEWEST = 6;

    /** The reference on itself. */
    public static SkyMatch itself(Measurement reference) {
        return new SkyMatch(Affine.SAME, stars(reference).size(), 0, 1, 0, false, OptionalDouble.of(1));
    }

    /** Nothing when the stars do not match; {@link #whyNot} then says why. */
    public static Optional<SkyMatch> of(Measurement file, Measurement reference) {
        return Match.find(stars(file), stars(reference)).map(match -> laid(match, file, reference));
    }

    /** Why two files that did not match did not: a sentence without its full stop. */
    public static String whyNot(Measurement file, Measurement reference) {
        int here = stars(file).size();
        if (here < FEWEST) {
            return here + " stars were found on it, and it takes six";
        }
        return stars(reference).size() < FEWEST
                ? "the reference shows fewer than six stars"
                : "no way of laying its " + here + " stars on the reference's is better than chance";
    }

    private static SkyMatch laid(Match match, Measurement file, Measurement reference) {
        Alignment way = match.alignment();
        Affine map = affine(way);
        double[] ratios = match.pairs().stream()
                .filter(p -> stars(file).get(p.from()).measured()
                        && stars(reference).get(p.to()).measured())
                .mapToDouble(p -> stars(reference).get(p.to()).flux()
                        / stars(file).get(p.from()).flux())
                .toArray();
        OptionalDouble light =
                ratios.length < FEWEST ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(ratios) / map.area());
        return new SkyMatch(map, way.matched(), way.rmsPx(), way.scale(), way.rotationDeg(), way.mirrored(), light);
    }

    private static Affine affine(Alignment way) {
        double[] origin = way.apply(0, 0);
        double[] right = way.apply(1, 0);
        double[] up = way.apply(0, 1);
        return new Affine(
                right[0] - origin[0], up[0] - origin[0], origin[0], right[1] - origin[1], up[1] - origin[1], origin[1]);
    }

    private static List<Star> stars(Measurement file) {
        return file.field().map(StarField::stars).orElse(List.of());
    }
}
