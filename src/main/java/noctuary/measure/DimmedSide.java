package noctuary.measure;

import java.util.List;
import java.util.Optional;

/**
 * The half of a frame in which stars of the reference frame are gone or dimmed, when the other half keeps them.
 *
 * @param directionDeg from the centre of the frame, from +x towards +y
 * @param lost stars of this half that are gone or dimmed, of {@code all}
 * @param lostOpposite stars of the other half, of {@code allOpposite}
 */
public record DimmedSide(double directionDeg, int lost, int all, int lostOpposite, int allOpposite) {
    private static final int DIRECTIONS = 16;
    /** In standard errors of the difference of two shares: once in 30 000 by chance in one direction. */
    private static final double CLEAR = 4;

    private static final double LEAST_SHARE = 0.25;

    /** A star that should be seen at (x, y), measured from the centre of the frame. */
    record Expected(double x, double y, boolean lost) {}

    /** The half with the clearest loss; absent when no half stands out. */
    static Optional<DimmedSide> of(List<Expected> stars) {
        DimmedSide worst = null;
        for (int i = 0; i < DIRECTIONS; i++) {
            DimmedSide side = half(stars, 360.0 * i / DIRECTIONS);
            worst = worst == null || side.significance() > worst.significance() ? side : worst;
        }
        return Optional.of(worst).filter(DimmedSide::clear);
    }

    public double share() {
        return all == 0 ? 0 : (double) lost / all;
    }

    public double shareOpposite() {
        return allOpposite == 0 ? 0 : (double) lostOpposite / allOpposite;
    }

    private boolean clear() {
        return significance() >= CLEAR && share() >= LEAST_SHARE && shareOpposite() <= share() / 3;
    }

    private double significance() {
        if (all == 0 || allOpposite == 0) {
            return 0;
        }
        double pooled = (double) (lost + lostOpposite) / (all + allOpposite);
        double error = Math.sqrt(pooled * (1 - pooled) * (1.0 / all + 1.0 / allOpposite));
        return error == 0 ? 0 : (share() - shareOpposite()) / error;
    }

    private static DimmedSide half(List<Expected> stars, double directionDeg) {
        double cos = Math.cos(Math.toRadians(directionDeg));
        double sin = Math.sin(Math.toRadians(directionDeg));
        int[] counts = new int[4];
        for (Expected star : stars) {
            int other = star.x() * cos + star.y() * sin > 0 ? 0 : 2;
            counts[other + 1]++;
            counts[other] += star.lost() ? 1 : 0;
        }
        return new DimmedSide(directionDeg, counts[0], counts[1], counts[2], counts[3]);
    }
}
