package noctuary.stars;

/** A detection with the pixels around it and what was last fitted to them. */
final class Candidate {
    private final Detection detection;
    private final Stamp stamp;
    private double[] parameters;
    private Shape shape;
    private ProfileSlope slope;

    Candidate(Detection detection, Stamp stamp, double[] start) {
        this.detection = detection;
        this.stamp = stamp;
        this.parameters = start;
    }

    Detection detection() {
        return detection;
    }

    Stamp stamp() {
        return stamp;
    }

    Shape shape() {
        return shape;
    }

    /** What was last fitted, where the next fit begins. */
    double[] parameters() {
        return parameters;
    }

    /** The star as last fitted, without its background. */
    MoffatModel model(Moffat profile) {
        double[] alone = parameters.clone();
        alone[MoffatModel.PARAMETERS - 1] = 0;
        MoffatModel model = new MoffatModel(profile);
        model.set(alone);
        return model;
    }

    ProfileSlope slope() {
        return slope;
    }

    /** Fits, starting from the last answer. */
    Candidate fit(Moffat profile, double photonSlope) {
        ShapeFit fit = new ShapeFit(profile, photonSlope);
        shape = fit.fit(stamp, parameters);
        if (shape.converged()) {
            parameters = fit.parameters();
        }
        return this;
    }

    /** Fits, and sees how chi-square would change with beta. */
    Candidate fitWithSlope(ProfileSlope.Profiles profiles, double photonSlope) {
        ShapeFit fit = new ShapeFit(profiles.middle(), photonSlope);
        shape = fit.fit(stamp, parameters);
        if (shape.converged()) {
            parameters = fit.parameters();
            slope = ProfileSlope.of(profiles, stamp, fit);
        }
        return this;
    }
}
