package noctuary.rig;

import java.util.Arrays;
import java.util.List;

/** Facts about screw threads: standard pitches and the shape of the profile. */
final class Threads {
    static final double MM_PER_INCH = 25.4;

    /** Pitches of ISO 261 (general plan), mm, coarse and fine together; from memory. */
    private static final double[] ISO_PITCHES_MM = {
        0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5,
        6, 8
    };

    /** Threads per inch of the unified series (ASME B1.1: coarse, fine, extra-fine, constant pitch); from memory. */
    private static final double[] UNIFIED_TPI = {
        4, 4.5, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 24, 28, 32, 36, 40, 44, 48, 56, 64, 72, 80
    };

    /** Threads met between telescope and camera; common practice, no source. */
    private static final List<String> USUAL = List.of(
            "M28.5x0.6", "M42x0.75", "M42x1", "M48x0.75", "M54x0.75", "M56x1", "M63x1", "M68x1", "M72x1", "M82x1");

    private Threads() {}

    static boolean standardMetricPitch(double pitchMm) {
        return Arrays.stream(ISO_PITCHES_MM).anyMatch(p -> Math.abs(p - pitchMm) < 1e-6);
    }

    static boolean standardTpi(double threadsPerInch) {
        return Arrays.stream(UNIFIED_TPI).anyMatch(t -> Math.abs(t - threadsPerInch) < 1e-6);
    }

    /** Usual threads of that nominal diameter. */
    static List<String> usualOf(double diameterMm) {
        String start = "M" + Words.number(diameterMm, 2) + "x";
        return USUAL.stream().filter(t -> t.startsWith(start)).toList();
    }

    /**
     * How much smaller than its nominal diameter the inside of a nut is, mm: 2 (5/8) H with H = (√3/2) P, the basic
     * profile of ISO 68-1, the same for unified threads.
     */
    static double profileDepthMm(double pitchMm) {
        return 1.25 * Math.sqrt(3) / 2 * pitchMm;
    }
}
