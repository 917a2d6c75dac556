package noctuary.measure;

import noctuary.fact.Unit;

/** The numbers of an entry's fact sheet: id as in the downloads, label for a reader, unit. */
public enum Figure {
    EXPOSURE("exposureSeconds", "Exposure", Unit.SECOND),
    IMAGE_SCALE("imageScaleArcsecPerPx", "Image scale", Unit.ARCSECOND_PER_PIXEL),
    FIELD_WIDTH("fieldWidthDeg", "Field width", Unit.DEGREE),
    FIELD_HEIGHT("fieldHeightDeg", "Field height", Unit.DEGREE),
    FOCAL_LENGTH("focalLengthMm", "Focal length", Unit.MILLIMETRE),
    FOCAL_RATIO("focalRatio", "Focal ratio", Unit.NONE),
    PIXEL_PITCH("pixelPitchUm", "Pixel pitch", Unit.MICROMETRE),
    SAMPLING("samplingPxPerFwhm", "Sampling", Unit.PIXEL),
    GAIN("gain", "Gain", Unit.ELECTRON_PER_ADU),
    SENSOR_TEMPERATURE("sensorTemperatureC", "Sensor temperature", Unit.CELSIUS),
    FWHM_ARCSEC("fwhmArcsec", "Star FWHM", Unit.ARCSECOND),
    FWHM_PX("fwhmPx", "Star FWHM", Unit.PIXEL),
    ELLIPTICITY("ellipticity", "Ellipticity", Unit.NONE),
    HALF_FLUX_RADIUS("halfFluxRadiusPx", "Half-flux radius", Unit.PIXEL),
    STARS("stars", "Stars measured", Unit.COUNT),
    BACKGROUND_LEVEL("backgroundLevel", "Background level", Unit.ADU),
    BACKGROUND_NOISE("backgroundNoise", "Background noise", Unit.ADU),
    BACKGROUND_NOISE_ELECTRONS("backgroundNoiseElectrons", "Background noise in electrons", Unit.ELECTRON),
    NOISE_OF_NEIGHBOURS("noiseOfNeighbours", "Noise between neighbouring pixels", Unit.ADU),
    NOISE_CORRELATION("noiseCorrelation", "Noise of large areas over that of pixels", Unit.NONE),
    BACKGROUND_GRADIENT("backgroundGradientPercent", "Gradient of the background", Unit.PERCENT),
    CENTRE_FWHM("centreFwhmPx", "Width in the centre", Unit.PIXEL),
    CORNER_EXCESS("cornerExcessPx", "Corners over the centre", Unit.PIXEL),
    FIELD_TILT("fieldTiltPx", "Tilt across the field", Unit.PIXEL),
    TILT_DIRECTION("tiltDirectionDeg", "Direction of the tilt", Unit.DEGREE),
    FIELD_CURVATURE("fieldCurvaturePx", "Curvature", Unit.PIXEL),
    HOT_PIXELS("hotPixels", "Hot pixels", Unit.COUNT),
    COLD_PIXELS("coldPixels", "Cold pixels", Unit.COUNT),
    ROW_BANDING("rowBanding", "Row banding", Unit.ADU),
    COLUMN_BANDING("columnBanding", "Column banding", Unit.ADU),
    DRIFT_STREAK("driftStreak", "Drift streaks", Unit.NONE),
    DRIFT_STREAK_ANGLE("driftStreakAngleDeg", "Angle of the streaks", Unit.DEGREE),
    CLIPPED_BLACK("clippedBlackPercent", "Clipped black", Unit.PERCENT),
    CLIPPED_WHITE("clippedWhitePercent", "Clipped white", Unit.PERCENT),
    DARK_CORNER("darkCornerAdu", "Dark corner", Unit.ADU),
    CORNER_GLOW("cornerGlowAdu", "Glow in a corner", Unit.ADU),
    GUIDING_RMS("guidingRmsArcsec", "Guiding RMS", Unit.ARCSECOND);

    private final String id;
    private final String label;
    private final Unit unit;

    Figure(String id, String label, Unit unit) {
        this.id = id;
        this.label = label;
        this.unit = unit;
    }

    public String id() {
        return id;
    }

    public String label() {
        return label;
    }

    public Unit unit() {
        return unit;
    }
}
