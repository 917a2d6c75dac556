package noctuary.stars;

/** Gauss-Legendre points over one pixel, -1/2 to 1/2, weights adding to 1. Abramowitz &amp; Stegun 25.4.30. */
final class Quadrature {
    private static final double[][] NODES = {
        {},
        {0},
        {-0.28867513459481288, 0.28867513459481288},
        {-0.38729833462074169, 0, 0.38729833462074169},
        {-0.43056815579702629, -0.16999052179242813, 0.16999052179242813, 0.43056815579702629},
        {-0.45308992296933200, -0.26923465505284155, 0, 0.26923465505284155, 0.45308992296933200},
        {
            -0.46623475710157601,
            -0.33060469323313226,
            -0.11930959304159845,
            0.11930959304159845,
            0.33060469323313226,
            0.46623475710157601
        }
    };
    private static final double[][] WEIGHTS = {
        {},
        {1},
        {0.5, 0.5},
        {0.27777777777777778, 0.44444444444444444, 0.27777777777777778},
        {0.17392742256872693, 0.32607257743127307, 0.32607257743127307, 0.17392742256872693},
        {0.11846344252809454, 0.23931433524968324, 0.28444444444444444, 0.23931433524968324, 0.11846344252809454},
        {
            0.08566224618958517,
            0.18038078652406930,
            0.23395696728634552,
            0.23395696728634552,
            0.18038078652406930,
            0.08566224618958517
        }
    };

    private Quadrature() {}

    static double[] nodes(int order) {
        return NODES[order];
    }

    static double[] weights(int order) {
        return WEIGHTS[order];
    }

    /** Order that integrates a profile of this minor-axis width to about 1e-4 of its peak, in the core. */
    static int coreOrder(double minorFwhm) {
        return minorFwhm < 1.0 ? 6 : minorFwhm < 1.5 ? 5 : minorFwhm < 2.2 ? 4 : minorFwhm < 4.0 ? 3 : 2;
    }

    /** As {@link #coreOrder}, far from the centre, where the centre's value and curvature do for widths over 2.2 pixels. */
    static int wingOrder(double minorFwhm) {
        return minorFwhm < 1.5 ? 3 : minorFwhm < 2.2 ? 2 : 1;
    }
}
