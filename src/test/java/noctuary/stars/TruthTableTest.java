package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Five rows of the truth table, with its limits; {@link TruthTableBench} prints them all. */
class TruthTableTest {
    static SkyScenes[] rows() {
        return new SkyScenes[] {
            SkyScenes.plain(1.4, 0.2, 2.5, 3),
            SkyScenes.plain(4.5, 0, 3.5, 3),
            SkyScenes.crowded(3.5, 3),
            SkyScenes.nebula(2, 3),
            SkyScenes.nearlyEmpty(3, 3)
        };
    }

    @ParameterizedTest
    @MethodSource("rows")
    void holds(SkyScenes scene) {
        TruthRow row = TruthRow.measure(scene);
        assertThat(row.fwhmHolds()).as(row.toString()).isTrue();
        assertThat(row.ellipticityHolds()).as(row.toString()).isTrue();
        assertThat(row.detectionHolds()).as(row.toString()).isTrue();
        assertThat(row.field().stars().size()).isLessThanOrEqualTo(row.planted() * 105 / 100);
    }
}
