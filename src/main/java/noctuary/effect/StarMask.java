package noctuary.effect;

import java.util.List;
import noctuary.stars.Star;

/** Which pixels of a tile hold the light of the origin's stars, farther out around brighter ones. */
final class StarMask {
    private static final double REACH = 1.3;
    private static final double REACH_FOR_LIGHT = 0.6;
    private static final double FAINTEST_SNR = 5;

    private StarMask() {}

    /**
     * @param fwhm of the stars on the picture's grid, pixels
     * @param smear by how much the picture has them wider, in quadrature
     * @return true where there is star light
     */
    static boolean[] of(Tile tile, List<Star> stars, Laying laying, double fwhm, double smear) {
        boolean[] mask = new boolean[tile.size()];
        for (Star star : stars) {
            double[] at = laying.onPicture(star);
            double snr = Double.isFinite(star.snr()) ? star.snr() : FAINTEST_SNR;
            double light = Math.log(Math.max(1, snr / FAINTEST_SNR));
            blank(mask, tile, at, Math.hypot(fwhm * (REACH + REACH_FOR_LIGHT * light), REACH * smear));
        }
        return mask;
    }

    private static void blank(boolean[] mask, Tile tile, double[] at, double reach) {
        int top = (int) Math.max(0, Math.ceil(at[1] - reach - tile.y()));
        int bottom = (int) Math.min(tile.height() - 1.0, Math.floor(at[1] + reach - tile.y()));
        for (int y = top; y <= bottom; y++) {
            double half = Math.sqrt(Math.max(0, reach * reach - Math.pow(y + tile.y() - at[1], 2)));
            int left = (int) Math.max(0, Math.ceil(at[0] - half - tile.x()));
            int right = (int) Math.min(tile.width() - 1.0, Math.floor(at[0] + half - tile.x()));
            for (int x = left; x <= right; x++) {
                mask[y * tile.width() + x] = true;
            }
        }
    }
}
