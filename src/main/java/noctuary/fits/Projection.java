package noctuary.fits;

import java.util.Optional;

/** The zenithal projections that frames come in (Calabretta and Greisen 2002, section 5.1). */
enum Projection {
    TAN {
        @Override
        double thetaRad(double r) {
            return Math.atan2(1, r);
        }
    },
    SIN {
        @Override
        double thetaRad(double r) {
            return Math.acos(r);
        }
    },
    STG {
        @Override
        double thetaRad(double r) {
            return Math.PI / 2 - 2 * Math.atan(r / 2);
        }
    },
    ARC {
        @Override
        double thetaRad(double r) {
            return Math.PI / 2 - r;
        }
    },
    ZEA {
        @Override
        double thetaRad(double r) {
            return Math.PI / 2 - 2 * Math.asin(r / 2);
        }
    };

    /** Native latitude of a point at the given distance from the reference point, both in radians. */
    abstract double thetaRad(double r);

    /** From a CTYPE such as RA---TAN-SIP; TPV is TAN with a polynomial. */
    static Optional<Projection> named(String axisType) {
        for (Projection projection : values()) {
            if (axisType.contains("-" + projection.name())) {
                return Optional.of(projection);
            }
        }
        return axisType.contains("-TPV") ? Optional.of(TAN) : Optional.empty();
    }

    /** Right ascension, 0 to 360, and declination of a 1-based pixel; NaN where the projection has no point. */
    double[] skyDeg(Linear linear, double px, double py) {
        double dx = px - linear.crpix1();
        double dy = py - linear.crpix2();
        return skyDeg(
                linear, new double[] {linear.m11() * dx + linear.m12() * dy, linear.m21() * dx + linear.m22() * dy});
    }

    /** The same of a point in intermediate world coordinates, degrees. */
    double[] skyDeg(Linear linear, double[] intermediateDeg) {
        double x = Math.toRadians(intermediateDeg[0]);
        double y = Math.toRadians(intermediateDeg[1]);
        double theta = thetaRad(Math.hypot(x, y));
        double phi = Math.atan2(x, -y) - Math.toRadians(linear.lonPoleDeg());
        double pole = Math.toRadians(linear.decDeg());
        double sinDec = Math.sin(theta) * Math.sin(pole) + Math.cos(theta) * Math.cos(pole) * Math.cos(phi);
        double ra = Math.atan2(
                -Math.cos(theta) * Math.sin(phi),
                Math.sin(theta) * Math.cos(pole) - Math.cos(theta) * Math.sin(pole) * Math.cos(phi));
        double raDeg = linear.raDeg() + Math.toDegrees(ra);
        return new double[] {(raDeg % 360 + 360) % 360, Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sinDec))))};
    }
}
