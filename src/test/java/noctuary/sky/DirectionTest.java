package noctuary.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DirectionTest {
    /** Meeus 7.a and 7.b and the definition of J2000; all agree with astropy 5.2.1. */
    @ParameterizedTest
    @CsvSource({
        "1957-10-04T19:26:24Z, 2436116.31",
        "1987-01-27T00:00:00Z, 2446822.5",
        "1987-06-19T12:00:00Z, 2446966.0",
        "2000-01-01T12:00:00Z, 2451545.0",
        "1600-01-01T00:00:00Z, 2305447.5"
    })
    void julianDates(String utc, double expected) {
        assertThat(JulianDate.of(Instant.parse(utc))).isCloseTo(expected, within(1e-6));
    }

    /** Meeus 12.a and 12.b; erfa 2.0.0.1 gmst82 agrees. 1e-4 s of time is 4e-7 degrees. */
    @Test
    void siderealTime() {
        assertThat(JulianDate.siderealDeg(2446895.5)).isCloseTo(197.693195, within(1e-6));
        double evening = JulianDate.of(Instant.parse("1987-04-10T19:21:00Z"));
        assertThat(JulianDate.siderealDeg(evening)).isCloseTo(128.7378732, within(1e-6));
    }

    /** Meeus 13.b, Venus over Washington; his azimuth counts from the south, 68.0337. */
    @Test
    void altitudeAndAzimuth() {
        Horizontal direction = Horizontal.of(64.352133, -6.719892, 38.921389);
        assertThat(direction.altitudeDeg()).isCloseTo(15.1249, within(1e-4));
        assertThat(direction.azimuthDeg()).isCloseTo(248.0337, within(1e-4));
    }

    /** Meeus 17.a, Arcturus and Spica; the second with astropy 5.2.1. */
    @Test
    void separationsLargeAndSmall() {
        assertThat(new Equatorial(213.9154, 19.1825).separationDeg(new Equatorial(201.2983, -11.1614)))
                .isCloseTo(32.79303, within(1e-5));
        assertThat(3600 * new Equatorial(10, 60).separationDeg(new Equatorial(10.001, 60.0005)))
                .isCloseTo(2.545575, within(1e-6));
    }

    /** Meeus 21.b, θ Persei to 2028-11-13.19 with the proper motion already applied. */
    @Test
    void precession() {
        Equatorial ofDate = new Equatorial(41.054063, 49.227750).precessed(0.288670500);
        assertThat(ofDate.raDeg()).isCloseTo(41.547214, within(1e-6));
        assertThat(ofDate.decDeg()).isCloseTo(49.348483, within(1e-6));
    }

    /** astropy 5.2.1, full transform without refraction; precession alone leaves 0.01 degrees. */
    @Test
    void aTargetOfJ2000() {
        SkyAt sky = SkyAt.at(Instant.parse("2025-01-15T22:00:00Z"), new SkyPlace(52, 5));
        Horizontal orion = sky.target(new Equatorial(83.822083, -5.391111)).direction();
        assertThat(orion.altitudeDeg()).isCloseTo(32.3597, within(0.01));
        assertThat(orion.azimuthDeg()).isCloseTo(187.6288, within(0.01));
    }

    /** Values of Kasten &amp; Young's formula worked out; their own table has about 38 at the horizon (from memory). */
    @ParameterizedTest
    @CsvSource({
        "90, 0.9997",
        "60, 1.1540",
        "45, 1.4126",
        "30, 1.9943",
        "20, 2.9031",
        "15, 3.8129",
        "10, 5.5860",
        "5, 10.3058",
        "1, 26.3106",
        "0, 37.9196"
    })
    void airmass(double altitudeDeg, double expected) {
        assertThat(Airmass.kastenYoung(altitudeDeg).orElseThrow()).isCloseTo(expected, within(1e-4));
    }

    @Test
    void belowTheHorizonThereIsNoAirmass() {
        assertThat(Airmass.kastenYoung(-0.01)).isEmpty();
        assertThat(Airmass.kastenYoung(Double.NaN)).isEmpty();
    }

    /**
     * Stars seen at 0.5, 10 and 30 degrees: Bennett 1982 takes 28.754 (Meeus 16.a), 5.392 and 1.717 arcmin off; the
     * formula for the way up agrees within 0.1 arcmin (Meeus, from memory).
     */
    @ParameterizedTest
    @CsvSource({"0.02077, 28.754", "9.91013, 5.392", "29.97138, 1.717"})
    void refractionLiftsAStar(double trueAltitudeDeg, double expectedArcmin) {
        assertThat(60 * Airmass.refractionDeg(trueAltitudeDeg)).isCloseTo(expectedArcmin, within(0.1));
    }

    @Test
    void aPlaceOffTheGlobeIsRefused() {
        Assertions.assertThatThrownBy(() -> new SkyPlace(91, 0)).hasMessageContaining("91");
    }
}
