package noctuary.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import noctuary.fits.FitsFile;
import noctuary.fits.RealFrames;
import noctuary.stars.Star;
import noctuary.stars.StarField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Real frames through the whole path: read, stars found, aligned. The manifest beside them says which show one field;
 * their observers have laid them on one another, so that the true transform is near to none. Without these files the
 * tests are skipped.
 */
class RealPairsTest {
    private static final List<String> FIELDS = List.of(
            "eso085-030_004.fit",
            "decam_obs04a.fits",
            "m13.fits",
            "m51_kpno1987.fits.gz",
            "ntt_sep_image.fits",
            "saao_1m_a8280271.fits");

    private static final Map<String, List<Star>> KNOWN = new TreeMap<>();

    private static List<Star> stars(String name) throws Exception {
        if (!KNOWN.containsKey(name)) {
            Path file = RealFrames.file("stars/" + name);
            KNOWN.put(
                    name,
                    StarField.measure(FitsFile.read(file).planes().get(0), StarField.Conditions.PLAIN)
                            .stars());
        }
        return KNOWN.get(name);
    }

    /** Fewest stars to be matched, and most residual in pixels. The five frames of one night hold 22 to 27 stars each. */
    @ParameterizedTest
    @CsvSource({
        "eso085-030_004.fit, eso085-030_005.fit, 450, 0.35",
        "m13.fits, m13real.fits, 425, 0.1",
        "m13.fits, m13_hcomp.fits, 430, 0.1",
        "decam_obs04a.fits, decam_obs04b.fits, 17, 0.7",
        "decam_obs04a.fits, decam_obs04c.fits, 17, 0.7",
        "decam_obs04a.fits, decam_obs04d.fits, 17, 0.7",
        "decam_obs04a.fits, decam_obs04e.fits, 17, 0.7",
        "decam_obs04b.fits, decam_obs04c.fits, 17, 0.7",
        "decam_obs04b.fits, decam_obs04d.fits, 17, 0.7",
        "decam_obs04b.fits, decam_obs04e.fits, 17, 0.7",
        "decam_obs04c.fits, decam_obs04d.fits, 17, 0.7",
        "decam_obs04c.fits, decam_obs04e.fits, 17, 0.7",
        "decam_obs04d.fits, decam_obs04e.fits, 17, 0.7"
    })
    void twoFramesOfOneFieldAlign(String first, String second, int fewest, double mostPx) throws Exception {
        Alignment found = Alignment.find(stars(first), stars(second)).orElseThrow();
        assertThat(found.matched()).isGreaterThanOrEqualTo(fewest);
        assertThat(found.rmsPx()).isLessThan(mostPx);
        assertThat(found.mirrored()).isFalse();
        for (double[] corner : new double[][] {{0, 0}, {255, 255}}) {
            double[] laid = found.apply(corner[0], corner[1]);
            assertThat(Math.hypot(laid[0] - corner[0], laid[1] - corner[1])).isLessThan(0.3);
        }
    }

    @Test
    void framesOfDifferentFieldsAreRefused() throws Exception {
        for (String first : FIELDS) {
            for (String second : FIELDS) {
                if (!first.equals(second)) {
                    assertThat(Alignment.find(stars(first), stars(second)))
                            .as("%s on %s", first, second)
                            .isEmpty();
                }
            }
        }
    }
}
