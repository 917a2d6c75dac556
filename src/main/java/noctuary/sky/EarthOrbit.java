package noctuary.sky;

/**
 * The Earth's heliocentric longitude and distance: largest terms of VSOP87D (Bretagnon &amp; Francou 1988, A&amp;A 202,
 * 309), amplitude in 1e-8 rad or 1e-8 au, phase in rad, rate in rad per millennium. From memory, checked against erfa
 * 2.0.0.1 (epv00): within 3 arcsec and 0.00004 au from 2000 to 2050.
 */
final class EarthOrbit {
    private static final double[][] LONGITUDE_0 = {
        {175347046, 0, 0},
        {3341656, 4.6692568, 6283.0758500},
        {34894, 4.62610, 12566.15170},
        {3497, 2.7441, 5753.3849},
        {3418, 2.8289, 3.5231},
        {3136, 3.6277, 77713.7715},
        {2676, 4.4181, 7860.4194},
        {2343, 6.1352, 3930.2097},
        {1324, 0.7425, 11506.7698},
        {1273, 2.0371, 529.6910},
        {1199, 1.1096, 1577.3435},
        {990, 5.233, 5884.927},
        {902, 2.045, 26.298},
        {857, 3.508, 398.149},
        {780, 1.179, 5223.694},
        {753, 2.533, 5507.553},
        {505, 4.583, 18849.228},
        {492, 4.205, 775.523},
        {357, 2.920, 0.067},
        {317, 5.849, 11790.629},
        {284, 1.899, 796.298},
        {271, 0.315, 10977.079}
    };
    private static final double[][] LONGITUDE_1 = {
        {628331966747.0, 0, 0},
        {206059, 2.678235, 6283.075850},
        {4303, 2.6351, 12566.1517},
        {425, 1.590, 3.523},
        {119, 5.796, 26.298},
        {109, 2.966, 1577.344}
    };
    private static final double[][] LONGITUDE_2 = {{52919, 0, 0}, {8720, 1.0721, 6283.0758}, {309, 0.867, 12566.152}};
    private static final double[][] LONGITUDE_3 = {{289, 5.844, 6283.076}};
    private static final double[][] DISTANCE_0 = {
        {100013989, 0, 0},
        {1670700, 3.0984635, 6283.0758500},
        {13956, 3.05525, 12566.15170},
        {3084, 5.1985, 77713.7715},
        {1628, 1.1739, 5753.3849},
        {1576, 2.8469, 7860.4194}
    };
    private static final double[][] DISTANCE_1 = {{103019, 1.107490, 6283.075850}};

    private EarthOrbit() {}

    /** Degrees, mean equinox of date. */
    static double longitudeDeg(double centuries) {
        double t = centuries / 10;
        double rad =
                sum(LONGITUDE_0, t) + t * (sum(LONGITUDE_1, t) + t * (sum(LONGITUDE_2, t) + t * sum(LONGITUDE_3, t)));
        return Angles.turn(Math.toDegrees(rad));
    }

    static double distanceAu(double centuries) {
        double t = centuries / 10;
        return sum(DISTANCE_0, t) + t * sum(DISTANCE_1, t);
    }

    private static double sum(double[][] terms, double t) {
        double sum = 0;
        for (double[] term : terms) {
            sum += term[0] * 1e-8 * Math.cos(term[1] + term[2] * t);
        }
        return sum;
    }
}
