package noctuary.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogueTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "M31",
                "m 31",
                "M-31",
                "Messier 31",
                "messier_031",
                "NGC224",
                "NGC 0224",
                "ngc-224",
                "Andromeda Galaxy",
                "the andromeda  galaxy",
                "Andromeda",
                "M31 Andromeda Galaxy",
                "M 31 (Andromeda)",
                "Andromeda galaxy, NGC 224"
            })
    void oneObjectHasOneName(String written) {
        assertThat(Catalogue.canonicalName(written)).isEqualTo("M 31");
    }

    @ParameterizedTest
    @CsvSource({
        "ngc6888, NGC 6888",
        "Crescent, NGC 6888",
        "The crescent nebula, NGC 6888",
        "NGC 6888 Crescent, NGC 6888",
        "ngc 2244, NGC 2237",
        "ic_1396, IC 1396",
        "sh 2-101, Sh2-101",
        "Sharpless 2-101, Sh2-101",
        "B33, IC 434",
        "h Persei, NGC 869",
        "Owl Nebula, M 97",
        "Owl Cluster, NGC 457",
        "Cocoon Nebula, IC 5146",
        "NGC 7001, NGC 7001",
        "ldn1235, LDN 1235"
    })
    void names(String written, String expected) {
        assertThat(Catalogue.canonicalName(written)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "'  my  corner of the sky ', my corner of the sky",
        "M31 panel 2, M31 panel 2",
        "M42 Andromeda Galaxy, M42 Andromeda Galaxy",
        "Owl, Owl",
        "Cocoon, Cocoon",
        "M 111, M 111",
        "M31.5, M31.5",
        "Comet 12P, Comet 12P",
        "'', ''"
    })
    void namesThatSayMoreOrNothingStayAsWritten(String written, String expected) {
        assertThat(Catalogue.canonicalName(written)).isEqualTo(expected);
    }

    @Test
    void allOfMessierAndMore() {
        assertThat(IntStream.rangeClosed(1, 110).mapToObj(n -> Catalogue.find("M" + n)))
                .allMatch(found -> found.isPresent());
        assertThat(Catalogue.all()).hasSizeGreaterThan(190);
    }

    @Test
    void noNameStandsTwice() {
        Set<String> names = new HashSet<>();
        for (DeepSkyObject object : Catalogue.all()) {
            assertThat(names.add(object.name())).as(object.name()).isTrue();
            object.sameAs().forEach(name -> assertThat(names.add(name)).as(name).isTrue());
            object.commonNames()
                    .forEach(name -> assertThat(names.add(name)).as(name).isTrue());
            assertThat(Catalogue.find(object.name())).contains(object);
            object.sameAs().forEach(name -> assertThat(Catalogue.find(name)).contains(object));
            object.commonNames()
                    .forEach(name -> assertThat(Catalogue.find(name)).contains(object));
        }
    }

    @Test
    void everyRowIsPossible() {
        assertThat(Catalogue.all()).allSatisfy(object -> {
            assertThat(object.j2000().raDeg()).isBetween(0.0, 360.0);
            assertThat(object.j2000().decDeg()).isBetween(-90.0, 90.0);
            assertThat(object.heightArcmin()).isPositive().isLessThanOrEqualTo(object.widthArcmin());
            assertThat(object.constellation()).matches("[A-Z][A-Za-z]{2}");
        });
    }

    /** ICRS positions from SIMBAD (from memory). */
    @ParameterizedTest
    @CsvSource({
        "M1, 83.6331, 22.0145",
        "M13, 250.4235, 36.4613",
        "M31, 10.6847, 41.2688",
        "M42, 83.8221, -5.3911",
        "M51, 202.4696, 47.1952",
        "M57, 283.3963, 33.0292",
        "M101, 210.8024, 54.3489",
        "M104, 189.9976, -11.6231",
        "NGC 891, 35.6392, 42.3492",
        "NGC 7293, 337.4107, -20.8372",
        "NGC 6946, 308.7180, 60.1539",
        "NGC 7331, 339.2671, 34.4156",
        "NGC 2392, 112.2949, 20.9118",
        "NGC 7662, 351.4743, 42.5350"
    })
    void positionsOfCompactObjects(String name, double raDeg, double decDeg) {
        Equatorial position = Catalogue.find(name).orElseThrow().j2000();
        assertThat(60 * position.separationDeg(new Equatorial(raDeg, decDeg))).isCloseTo(0, within(1.5));
    }
}
