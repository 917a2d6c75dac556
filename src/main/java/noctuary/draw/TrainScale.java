package noctuary.draw;

/**
 * Millimetres of a train on the drawing, the same along and across.
 *
 * @param zero where the corrector's rear lies
 * @param perMm drawing units for one millimetre
 * @param stub drawn length of the corrector, of which only the rear matters
 * @param body drawn length of the camera behind the sensor
 */
record TrainScale(double zero, double perMm, double stub, double body) {
    /** Outside of a part beyond its thread. */
    private static final double WALL_MM = 2;

    /** The largest scale at which so much length and width find room. */
    static TrainScale of(Form form, double lengthMm, double widthMm) {
        double stub = form.pick(70, 44);
        double body = form.pick(40, 28);
        double room = form.width() - stub - body - 16;
        double perMm = Math.min(room / lengthMm, form.pick(270, 200) / (widthMm + 2 * WALL_MM));
        return new TrainScale(8 + stub + (room - lengthMm * perMm) / 2, perMm, stub, body);
    }

    double x(double mm) {
        return zero + mm * perMm;
    }

    /** From the axis to the outside of a part. */
    double half(double diameterMm) {
        return (diameterMm / 2 + WALL_MM) * perMm;
    }
}
