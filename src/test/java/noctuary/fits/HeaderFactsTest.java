package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Camera, exposure and kind in the dialects of drivers and observatories (common practice, no source, unless named).
 */
class HeaderFactsTest {
    private static <T> Object value(Optional<Cited<T>> cited) {
        return cited.<Object>map(Cited::value).orElse("-");
    }

    @ParameterizedTest
    @CsvSource({
        "IMAGETYP, Light Frame, LIGHT",
        "IMAGETYP, object, LIGHT",
        "OBSTYPE, SCIENCE, LIGHT",
        "FRAME, Dark, DARK",
        "IMAGETYP, Dark Flat, DARK",
        "IMAGETYP, Master Dark, DARK",
        "IMAGETYP, zero, BIAS",
        "IMAGETYP, Bias Frame, BIAS",
        "IMAGETYP, skyflat, FLAT",
        "IMAGETYP, Twilight, FLAT",
        "OBSTYPE, domeflat, FLAT",
        "IMAGETYP, comp, OTHER",
        "IMAGETYP, sharpest, OTHER",
        "FRAME, 17, UNTOLD",
        "OBJECT, M 1, UNTOLD"
    })
    void tellsKinds(String keyword, String text, FrameKind kind) {
        assertThat(FitsBytes.header(String.format("%-8s= '%s'", keyword, text)).kind())
                .isEqualTo(kind);
    }

    @Test
    void readsExposureFromItsDialects() {
        assertThat(value(FitsBytes.header("EXPTIME = 120.0").exposureSeconds())).isEqualTo(120.0);
        assertThat(value(FitsBytes.header("EXPTIME = '53.907456'").exposureSeconds()))
                .isEqualTo(53.907456);
        assertThat(value(FitsBytes.header("EXPOSURE= 1.2D+02").exposureSeconds()))
                .isEqualTo(120.0);
        assertThat(value(FitsBytes.header("EXPOSURE= 70.0 /Exposure time minutes")
                        .exposureSeconds()))
                .isEqualTo(4200.0);
        assertThat(value(FitsBytes.header("EXPTIME = 70.0 / [s] minutes and seconds")
                        .exposureSeconds()))
                .isEqualTo(70.0);
        assertThat(value(FitsBytes.header("EXPTIME = -1.0").exposureSeconds())).isEqualTo("-");
        assertThat(value(FitsBytes.header("EXPTIME = ").exposureSeconds())).isEqualTo("-");
    }

    @Test
    void countsCombinedFramesAndTheirTotal() {
        FrameHeader stack = FitsBytes.header("EXPTIME = 300.0", "NCOMBINE= 24", "LIVETIME= 7200.0");
        assertThat(value(stack.exposures())).isEqualTo(24);
        assertThat(value(stack.totalSeconds())).isEqualTo(7200.0);
        FrameHeader single = FitsBytes.header("EXPTIME = 300.0", "NCOMBINE= 1", "LIVETIME= 299.0");
        assertThat(value(single.exposures())).isEqualTo("-");
        assertThat(value(single.totalSeconds())).isEqualTo("-");
    }

    @ParameterizedTest
    @CsvSource({
        "GAIN    = 1.9 / e-/ADU, 1.9, -",
        "GAIN    = 2 / electrons per ADU, 2.0, -",
        "GAIN    = 1.7, 1.7, -",
        "GAIN    = 100, -, 100.0",
        "GAIN    = 120.0, -, 120.0",
        "GAIN    = 0, -, 0.0",
        "GAIN    = 5 / driver setting, -, 5.0",
        "EGAIN   = 0.25, 0.25, -",
        "CVF     = 0.31, 0.31, -",
        "EGAIN   = 0, -, -"
    })
    void keepsGainAndSettingApart(String card, String electrons, String setting) {
        FrameHeader header = FitsBytes.header(card);
        assertThat(value(header.electronsPerAdu())).hasToString(electrons);
        assertThat(value(header.gainSetting())).hasToString(setting);
    }

    @Test
    void readsGainBesideEgainAsASetting() {
        FrameHeader header = FitsBytes.header("GAIN    = 1.5", "EGAIN   = 0.3");
        assertThat(value(header.electronsPerAdu())).isEqualTo(0.3);
        assertThat(value(header.gainSetting())).isEqualTo(1.5);
    }

    @Test
    void readsTemperatures() {
        assertThat(value(FitsBytes.header("CCD-TEMP= -19.9").sensorTemperatureC()))
                .isEqualTo(-19.9);
        FrameHeader kelvin = FitsBytes.header("CCD-TEMP= 180.2");
        assertThat(kelvin.sensorTemperatureC().orElseThrow().value()).isCloseTo(-92.95, within(1e-9));
        assertThat(kelvin.oddities()).hasSize(1);
        FrameHeader asked = FitsBytes.header("SET-TEMP= -10.0");
        assertThat(value(asked.sensorTemperatureC())).isEqualTo("-");
        assertThat(value(asked.setTemperatureC())).isEqualTo(-10.0);
        assertThat(value(FitsBytes.header("CCD-TEMP= -999.0").sensorTemperatureC()))
                .isEqualTo("-");
    }

    @Test
    void readsOpticsAndPixels() {
        FrameHeader header = FitsBytes.header(
                "XPIXSZ  = 7.52", "YPIXSZ  = 7.52", "XBINNING= 2", "FOCALLEN= 560.0", "APTDIA  = 80.0");
        assertThat(value(header.pixelPitchUm())).isEqualTo(7.52);
        assertThat(header.binning()).isEqualTo(2);
        assertThat(value(header.focalLengthMm())).isEqualTo(560.0);
        assertThat(value(header.apertureMm())).isEqualTo(80.0);
        assertThat(value(FitsBytes.header("FOCALLEN= 0.0").focalLengthMm())).isEqualTo("-");
        assertThat(FitsBytes.header("CCDSUM  = '3 3'").binning()).isEqualTo(3);
        assertThat(FitsBytes.header("BINNING = '2x2'").binning()).isEqualTo(2);
        assertThat(FitsBytes.header("OBJECT  = 'x'").binning()).isEqualTo(1);
        assertThat(FitsBytes.header("XPIXSZ  = 9.0", "YPIXSZ  = 18.0").oddities())
                .hasSize(1);
    }

    @Test
    void doesNotComplainOfWordsWhereNobodyKnew() {
        assertThat(FitsBytes.header("AMBTEMP = 'N/A'", "FOCUSPOS= 'unknown'").oddities())
                .isEmpty();
        assertThat(FitsBytes.header("AMBTEMP = '12 C'").oddities()).hasSize(1);
    }

    @Test
    void citesTheCard() {
        Cited<Double> cited =
                FitsBytes.header("SECZ    = 1.176 / start").airmass().orElseThrow();
        assertThat(cited).isEqualTo(new Cited<>(1.176, "SECZ", "1.176"));
    }

    @Test
    void neverRepeatsSerialNumbers() {
        FrameHeader header = FitsBytes.header(
                "SERIAL  = 'AB-12345",
                "SERIAL  = 'AB-99999'",
                "CAMID   = 'SN778899'",
                "SWSERIAL='55-66'",
                "IMAGETYP= 'x'");
        assertThat(header.oddities()).isNotEmpty();
        assertThat(header.oddities().toString()).doesNotContain("12345", "99999", "778899", "55-66");
    }
}
