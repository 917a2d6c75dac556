package noctuary.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import noctuary.fits.RealFrames;
import noctuary.stars.Star;
import org.junit.jupiter.api.Test;

/** Star lists of real frames, measured with SEP 1.2.1 and astropy; without these files the tests are skipped. */
class RealFieldsTest {
    /** Two frames of one night that the observers have laid on one another, a minute apart. */
    @Test
    void framesOfOneNightLieOnOneAnother() throws IOException {
        Match match = Match.find(stars("eso085-030_004.fit"), stars("eso085-030_005.fit"))
                .orElseThrow();
        Alignment found = match.alignment();
        double[] corner = found.apply(1024, 682);
        assertThat(corner[0]).isCloseTo(1024, within(0.5));
        assertThat(corner[1]).isCloseTo(682, within(0.5));
        assertThat(found.mirrored()).isFalse();
        assertThat(found.matched()).isGreaterThan(30);
        assertThat(found.rmsPx()).isLessThan(0.5);
    }

    @Test
    void aTurnedAndMirroredListIsTurnedBack() throws IOException {
        List<Star> plate = stars("ngc6819_dss.fits");
        Alignment turn = new Alignment(0.3, 137, true, 800, 40, 0, 0);
        List<Star> turned = plate.stream()
                .map(s -> {
                    double[] p = turn.apply(s.x(), s.y());
                    return new Star(p[0], p[1], s.flux(), 1, 0, 0, 1, s.snr(), 1, Set.of());
                })
                .toList();
        Alignment found = Alignment.find(plate, turned).orElseThrow();
        assertThat(found.mirrored()).isTrue();
        assertThat(found.scale()).isCloseTo(0.3, within(1e-9));
        assertThat(found.rotationDeg()).isCloseTo(137, within(1e-6));
        assertThat(found.matched()).isEqualTo(plate.size());
    }

    @Test
    void differentFieldsAreRefused() throws IOException {
        List<List<Star>> fields = List.of(stars("eso085-030_004.fit"), stars("ngc6819_dss.fits"), stars("m13.fits"));
        for (List<Star> a : fields) {
            for (List<Star> b : fields) {
                assertThat(Alignment.find(a, b).isPresent()).isEqualTo(a == b);
            }
        }
    }

    private static List<Star> stars(String frame) throws IOException {
        Path file = RealFrames.file("ref/" + frame + ".stars.tsv");
        return Files.readAllLines(file).stream()
                .skip(1)
                .map(line -> line.split("\t"))
                .map(c -> StarPairs.star(
                        Double.parseDouble(c[0]) - 1, Double.parseDouble(c[1]) - 1, Double.parseDouble(c[6])))
                .toList();
    }
}
