package noctuary.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunMoonTest {
    private static final SkyPlace GREENWICH = new SkyPlace(51.4778, 0);

    /** Meeus, Astronomical Algorithms, 25.b: the Sun on 1992-10-13 at 0h dynamical time; PyEphem 4.1.4 agrees. */
    @Test
    void theSunOfTheWorkedExample() {
        Sun sun = Sun.at((2448908.5 - JulianDate.J2000) / 36525, 0);
        assertThat(sun.position().raDeg()).isCloseTo(198.378178, within(5e-4));
        assertThat(sun.position().decDeg()).isCloseTo(-7.783871, within(5e-4));
        assertThat(sun.distanceAu()).isCloseTo(0.99760775, within(3e-5));
    }

    /** Meeus 48.a: 1992-04-12 at 0h dynamical time. */
    @Test
    void theLitMoonOfTheWorkedExample() {
        double elongation = new Equatorial(20.6579, 8.6964).separationDeg(new Equatorial(134.6885, 13.7684));
        assertThat(elongation).isCloseTo(110.79289, within(1e-5));
        assertThat(Moon.phaseAngleDeg(elongation, 149971520, 368410)).isCloseTo(69.07564, within(1e-5));
        assertThat(Moon.litFraction(elongation, 149971520, 368410)).isCloseTo(0.678568, within(1e-6));
    }

    /** Mean distances; the formula of Meeus 48.3 worked out. */
    @ParameterizedTest
    @CsvSource({"30, 0.06731", "60, 0.25097", "90, 0.50128", "120, 0.75096", "150, 0.93333"})
    void theLitFractionGrowsWithTheElongation(double elongationDeg, double expected) {
        assertThat(Moon.litFraction(elongationDeg, 149597870.7, 384400)).isCloseTo(expected, within(1e-5));
    }

    /** astropy 5.2.1 and PyEphem 4.1.4 agree on these; no refraction. */
    @ParameterizedTest
    @CsvSource({"2025-03-20T20:00:00Z, -16.9621, -46.8037, 0.660", "2025-06-21T00:00:00Z, -15.0852, -5.5819, 0.259"})
    void sunAndMoonOverGreenwich(String utc, double sunAltitude, double moonAltitude, double lit) {
        SkyAt sky = SkyAt.at(Instant.parse(utc), GREENWICH);
        assertThat(sky.sun().altitudeDeg()).isCloseTo(sunAltitude, within(0.002));
        assertThat(sky.moon().altitudeDeg()).isCloseTo(moonAltitude, within(0.02));
        assertThat(sky.moonLit()).isCloseTo(lit, within(0.0015));
    }

    /** PyEphem 4.1.4 at Greenwich, 2025-03-20: sunset and the ends of the three twilights; 0.013 degrees are 5 s. */
    @ParameterizedTest
    @CsvSource({"18:13:23, -0.8333", "18:46:44, -6", "19:26:10, -12", "20:07:17, -18"})
    void twilightsOverGreenwich(String time, double altitudeDeg) {
        SkyAt sky = SkyAt.at(Instant.parse("2025-03-20T" + time + "Z"), GREENWICH);
        assertThat(sky.sun().altitudeDeg()).isCloseTo(altitudeDeg, within(0.013));
    }

    @Test
    void theSunsAzimuthOverGreenwich() {
        SkyAt sky = SkyAt.at(Instant.parse("2025-03-20T20:00:00Z"), GREENWICH);
        assertThat(sky.sun().azimuthDeg()).isCloseTo(292.8534, within(0.002));
    }

    /** astropy 5.2.1, get_sun and get_moon from 47.5 N 53.0 W, no refraction. */
    @ParameterizedTest
    @CsvSource({
        "2025-06-14T23:30:00Z, 303.0271, 38.3550, 21.349, 55.860, 2.7301, -28.260, 0.868, 61.465, -0.7334",
        "2025-01-20T02:00:00Z, 83.8221, -5.3911, 35.974, 195.535, 1.6991, -6.962, 0.665, 105.542, -55.5739",
        "2025-10-05T01:15:00Z, 10.6847, 41.2690, 67.005, 93.740, 1.0858, 34.590, 0.939, 54.626, -39.5064"
    })
    void conditionsOfATarget(
            String utc,
            double ra,
            double dec,
            double altitude,
            double azimuth,
            double airmass,
            double moonAltitude,
            double lit,
            double moonDistance,
            double sunAltitude) {
        SkyAt sky = SkyAt.at(Instant.parse(utc), new SkyPlace(47.5, -53));
        SkyAt.Target target = sky.target(new Equatorial(ra, dec));
        assertThat(target.direction().altitudeDeg()).isCloseTo(altitude, within(0.01));
        assertThat(target.direction().azimuthDeg()).isCloseTo(azimuth, within(0.015));
        assertThat(sky.moon().altitudeDeg()).isCloseTo(moonAltitude, within(0.02));
        assertThat(sky.moonLit()).isCloseTo(lit, within(0.0015));
        assertThat(target.moonDistanceDeg()).isCloseTo(moonDistance, within(0.025));
        assertThat(sky.sun().altitudeDeg()).isCloseTo(sunAltitude, within(0.001));
        assertThat(Airmass.kastenYoung(altitude).orElseThrow()).isCloseTo(airmass, within(2e-4));
        assertThat(target.airmass().orElseThrow()).isBetween(airmass * 0.997, airmass + 1e-3);
    }
}
