package noctuary.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables of screw threads, quoted from memory; tolerances (ISO 965, classes of ASME B1.1) are not modelled. */
class ThreadsTest {
    /** ISO 261 and 262, coarse pitches of M3 to M64 in order. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.7, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6})
    void coarseMetricPitchesAreKnown(double pitchMm) {
        assertThat(Threads.standardMetricPitch(pitchMm)).isTrue();
    }

    /** ISO 261, fine pitches met at telescopes: M28.5 x 0.6, M42 x 0.75, M54 x 0.75, M68 x 1. */
    @ParameterizedTest
    @ValueSource(doubles = {0.6, 0.75, 1})
    void finePitchesOfTelescopesAreKnown(double pitchMm) {
        assertThat(Threads.standardMetricPitch(pitchMm)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.57, 0.76, 1.058333, 1.1, 1.27})
    void otherPitchesAreNot(double pitchMm) {
        assertThat(Threads.standardMetricPitch(pitchMm)).isFalse();
    }

    /** ASME B1.1 (ANSI): 1/4-20 and 1/4-28, 3/8-16 and 3/8-24, 1/2-13 and 1/2-20, 1-8 and 1-12, 2-4 1/2. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 28, 16, 24, 13, 8, 12, 4.5})
    void unifiedThreadsAnInchAreKnown(double threadsPerInch) {
        assertThat(Threads.standardTpi(threadsPerInch)).isTrue();
    }

    /** ISO 724, basic minor diameters: the nominal one less twice five eighths of the height of the triangle. */
    @ParameterizedTest
    @CsvSource({"6, 1, 4.917", "8, 1.25, 6.647", "10, 1.5, 8.376", "12, 1.75, 10.106", "48, 5, 42.587"})
    void theInsideOfANutIsAsInTheTable(double nominalMm, double pitchMm, double minorMm) {
        assertThat(nominalMm - Threads.profileDepthMm(pitchMm)).isCloseTo(minorMm, within(5e-4));
    }

    /** A thread of an eyepiece filter is 0.6 mm of pitch, 42.33 an inch: no inch thread. */
    @Test
    void metricAndInchPitchesAreNotTakenForEachOther() {
        assertThat(Threads.standardTpi(Threads.MM_PER_INCH / 0.6)).isFalse();
        assertThat(Threads.standardMetricPitch(Threads.MM_PER_INCH / 24)).isFalse();
    }
}
