package noctuary.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class TrianglesTest {
    /** Ratios b/a and c/a after Valdes et al. 1995, worked out by hand: sides 300, 400, 500. */
    @Test
    void theShapeOfThreeFourFive() {
        Triangles triangles = triangle(0, 0, 400, 0, 0, 300);
        assertThat(triangles.size()).isEqualTo(1);
        assertThat(triangles.ratioB[0]).isCloseTo(0.8f, within(1e-6f));
        assertThat(triangles.ratioC[0]).isCloseTo(0.6f, within(1e-6f));
    }

    /** Sides 107.703296, 114.017543, 133.416641. */
    @Test
    void theShapeOfAnyTriangle() {
        Triangles triangles = triangle(10, 20, 110, 60, 40, 150);
        assertThat(triangles.ratioB[0]).isCloseTo(0.8545976f, within(1e-6f));
        assertThat(triangles.ratioC[0]).isCloseTo(0.8072703f, within(1e-6f));
    }

    @Test
    void theShapeDoesNotDependOnTheOrderButAMirrorTurnsItsSense() {
        Triangles one = triangle(10, 20, 110, 60, 40, 150);
        Triangles other = triangle(40, 150, 10, 20, 110, 60);
        Triangles mirrored = triangle(-10, 20, -110, 60, -40, 150);
        assertThat(other.ratioB[0]).isEqualTo(one.ratioB[0]);
        assertThat(other.counterClockwise[0]).isEqualTo(one.counterClockwise[0]);
        assertThat(mirrored.ratioC[0]).isEqualTo(one.ratioC[0]);
        assertThat(mirrored.counterClockwise[0]).isNotEqualTo(one.counterClockwise[0]);
    }

    @Test
    void passesOverShapesThatNoiseWouldChange() {
        assertThat(triangle(0, 0, 400, 0, 200, 300).size()).as("isosceles").isZero();
        assertThat(triangle(0, 0, 400, 0, 150, 2).size()).as("flat").isZero();
        assertThat(triangle(0, 0, 400, 0, 390, 25).size()).as("one side short").isZero();
        assertThat(triangle(0, 0, 4, 0, 0, 3).size()).as("a few pixels").isZero();
        assertThat(triangle(5, 5, 5, 5, 5, 5).size()).as("one place").isZero();
    }

    private static Triangles triangle(double x1, double y1, double x2, double y2, double x3, double y3) {
        return Triangles.of(
                Points.of(List.of(
                        StarPairs.star(x1, y1, 3000), StarPairs.star(x2, y2, 2000), StarPairs.star(x3, y3, 1000))),
                100);
    }
}
