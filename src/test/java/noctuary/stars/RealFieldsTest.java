package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import noctuary.fits.FitsFile;
import noctuary.fits.RealFrames;
import noctuary.fits.UnreadableException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Open frames of observatories (see the manifest beside them for source and licence). The reference widths are medians
 * of astropy 5.2.1 least-squares Moffats at pixel centres, good to 5 %; a pixel adds 0.46 px² to their square.
 */
class RealFieldsTest {
    @ParameterizedTest
    @CsvSource({
        "eso085-030_004.fit, 2.69",
        "eso085-030_005.fit, 2.70",
        "decam_obs04a.fits, 4.94",
        "decam_obs04b.fits, 4.78",
        "decam_obs04c.fits, 5.52",
        "decam_obs04d.fits, 4.84",
        "decam_obs04e.fits, 3.71",
        "m13.fits, 3.18",
        "m13_rice.fits, 3.18",
        "feder_kelt16_cutout.fit.gz, 6.80",
        "saao_1m_a8280271.fits, 7.64",
        "iraf_apphot_fits1.fits, 2.24"
    })
    void widthsAgreeWithTheReference(String file, double atPixelCentres) throws UnreadableException {
        double expected = Math.sqrt(atPixelCentres * atPixelCentres - 0.462);
        assertThat(measure(file).fwhmPx().orElseThrow().median()).isCloseTo(expected, within(0.06 * expected));
    }

    @ParameterizedTest
    @ValueSource(strings = {"iraf_apphot_fits2.fits", "iraf_apphot_fits4.fits", "feder_eyuma_thumb.fit.gz"})
    void fieldsWithoutUsableStarsSayWhy(String file) throws UnreadableException {
        StarField field = measure(file);
        assertThat(field.fwhmPx()).isEmpty();
        assertThat(field.whyNot()).isPresent();
    }

    private static StarField measure(String file) throws UnreadableException {
        Path path = RealFrames.file("stars/" + file);
        return StarField.measure(FitsFile.read(path).planes().get(0), StarField.Conditions.PLAIN);
    }
}
