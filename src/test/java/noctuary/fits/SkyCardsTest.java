package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** World coordinates against astropy.wcs 5.2.1 (wcslib), in three writings and from real headers. */
class SkyCardsTest {
    private static final String S = Double.toString(1.3849 / 3600);

    private static SkyPlane sky(String... cards) {
        List<String> all = new ArrayList<>(List.of(
                "CTYPE1  = 'RA---TAN'",
                "CTYPE2  = 'DEC--TAN'",
                "CRVAL1  = 150.0",
                "CRVAL2  = 20.0",
                "CRPIX1  = 50.5",
                "CRPIX2  = 40.5"));
        all.addAll(List.of(cards));
        return FitsBytes.header(all.toArray(String[]::new)).sky().orElseThrow().value();
    }

    @Test
    void readsCd() {
        SkyPlane sky = sky("CD1_1   = -" + S, "CD1_2 = 0", "CD2_1 = 0", "CD2_2   = " + S);
        assertThat(sky.arcsecPerPx()).isCloseTo(1.3849, within(1e-9));
        assertThat(sky.rotationDeg()).isCloseTo(0, within(1e-9));
        assertThat(sky.mirrored()).isFalse();
        assertThat(sky.raDeg()).isCloseTo(150, within(1e-9));
        assertThat(sky.decDeg()).isCloseTo(20, within(1e-9));
    }

    @Test
    void readsASkewedCdAsTheRootOfItsDeterminant() {
        SkyPlane sky = sky("CD1_1   = -3.9E-4", "CD1_2   = 1.2E-5", "CD2_1   = 8.0E-6", "CD2_2   = 3.85E-4");
        assertThat(sky.arcsecPerPx()).isCloseTo(1.3954168, within(1e-7));
    }

    /** The same angle means opposite turns in the two writings. */
    @Test
    void turnsCrotaAndPcEachItsOwnWay() {
        String cos = Double.toString(Math.cos(Math.toRadians(30)));
        SkyPlane crota = sky("CDELT1  = -" + S, "CDELT2  = " + S, "CROTA2  = 30.0");
        SkyPlane pc = sky(
                "CDELT1  = -" + S,
                "CDELT2  = " + S,
                "PC1_1   = " + cos,
                "PC1_2   = -0.5",
                "PC2_1   = 0.5",
                "PC2_2   = " + cos);
        assertThat(crota.rotationDeg()).isCloseTo(330, within(1e-6));
        assertThat(crota.mirrored()).isFalse();
        assertThat(pc.rotationDeg()).isCloseTo(30, within(1e-6));
        assertThat(pc.arcsecPerPx()).isCloseTo(1.3849, within(1e-9));
    }

    @Test
    void seesAMirroredImage() {
        SkyPlane sky = sky("CDELT1  = " + S, "CDELT2  = " + S, "CROTA2  = 30.0");
        assertThat(sky.rotationDeg()).isCloseTo(330, within(1e-6));
        assertThat(sky.mirrored()).isTrue();
    }

    @Test
    void readsCrotaOfTheFirstAxisWhereTheSecondHasNone() {
        assertThat(sky("CDELT1  = -" + S, "CDELT2  = " + S, "CROTA1  = 30.0").rotationDeg())
                .isCloseTo(330, within(1e-6));
    }

    @Test
    void readsValuesWrittenAsText() {
        assertThat(sky("CDELT1  = '-" + S + "'", "CDELT2  = '" + S + "'").arcsecPerPx())
                .isCloseTo(1.3849, within(1e-9));
    }

    @Test
    void findsTheScaleInsidePc() {
        SkyPlane sky = sky("CDELT1  = 1.0", "CDELT2  = 1.0", "PC1_1   = -" + S, "PC2_2   = " + S);
        assertThat(sky.arcsecPerPx()).isCloseTo(1.3849, within(1e-9));
    }

    /** TAN, reference value (150, 20), reference pixel (1024.5, 768.5): pixels (1, 1) and (2048, 1536). */
    @Test
    void projectsLikeTheReference() {
        double s = 1.3849 / 3600;
        Linear linear = new Linear(-s, 0, 0, s, 1024.5, 768.5, 150, 20, 180, "CD1_1", "");
        double[] first = Projection.TAN.skyDeg(linear, 1, 1);
        double[] last = Projection.TAN.skyDeg(linear, 2048, 1536);
        assertThat(first).containsExactly(new double[] {150.41821195, 19.70426514}, within(1e-7));
        assertThat(last).containsExactly(new double[] {149.58021637, 20.29475009}, within(1e-7));
    }

    @Test
    void takesNoSkyWithoutCelestialAxes() {
        FrameHeader blank = FitsBytes.header("CTYPE1  = ' '", "CDELT1  = 1.0", "CDELT2  = 1.0", "CRVAL1 = 1.0");
        assertThat(blank.sky()).isEmpty();
        assertThat(blank.oddities()).isEmpty();
    }

    @Test
    void refusesCoordinatesThatCannotBe() {
        FrameHeader header = FitsBytes.header(
                "CTYPE1  = 'RA---TAN'",
                "CTYPE2  = 'DEC--TAN'",
                "CRVAL1  = 10",
                "CRVAL2  = 10",
                "CDELT1  = 1",
                "CDELT2  = 1");
        assertThat(header.sky()).isEmpty();
        assertThat(header.oddities()).hasSize(1);
    }

    static List<Arguments> astropy() {
        return RealFrames.table("wcs-astropy.tsv").stream()
                .map(row -> Arguments.of(row[0], row))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("astropy")
    void agreesWithAstropyOnRealHeaders(String name, String[] row) throws Exception {
        Path file = name.startsWith("/") ? Path.of(name) : RealFrames.file(name);
        assumeTrue(Files.isRegularFile(file), "skipped: python3-astropy is not installed: no " + file);
        SkyPlane sky = FitsFile.readHeader(file).sky().orElseThrow().value();
        assertThat(sky.arcsecPerPx()).isCloseTo(Double.parseDouble(row[1]), within(1e-8));
        assertThat(sky.raDeg()).isCloseTo(Double.parseDouble(row[2]), within(1e-7));
        assertThat(sky.decDeg()).isCloseTo(Double.parseDouble(row[3]), within(1e-7));
        assertThat(sky.rotationDeg()).isCloseTo(Double.parseDouble(row[4]), within(1e-6));
        assertThat(String.valueOf(sky.mirrored()).toUpperCase(Locale.ROOT)).isEqualTo(row[5].toUpperCase(Locale.ROOT));
    }
}
