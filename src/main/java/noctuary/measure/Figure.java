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
    HOT_PIXELS("hotPixels", "Hot pixels", Unit.COUNT),
    COLD_PIXELS("coldPixels", "Cold pixels", Unit.COUNT),
    ROW_BANDING("rowBanding", "Row banding", Unit.ADU),
    COLUMN_BANDING("columnBanding", "Column banding", Unit.ADU),
    CLIPPED_BLACK("clippedBlackPercent", "Clipped black", Unit.PERCENT),
    CLIPPED_WHITE("clippedWhitePercent", "Clipped white", Unit.PERCENT),
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
