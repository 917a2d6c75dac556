package noctuary.site;

import java.util.List;
import noctuary.site.page.DownloadsPage.Column;

/** The columns of the spreadsheets, in order, with what they hold. */
final class Columns {
    static final List<Column> ENTRIES = List.of(
            column("slug", "name of the entry in addresses"),
            column("title", "as written"),
            column("target", "as the note says, else the header"),
            column("night", "evening's date of the first night"),
            column("nights", "all nights, separated by spaces"),
            column("rig", "id"),
            column("site", "id"),
            column("exposureSeconds", "total, s"),
            column("exposureByFilter", "filter=seconds, separated by semicolons"),
            column("frames", "number of files, counted or not"),
            column("imageScaleArcsecPerPx", "arcsec a sensor pixel"),
            column("imageScaleFrom", "wcs, header optics or rig"),
            column("fwhmArcsec", "median star width, arcsec"),
            column("fwhmPx", "median star width, sensor pixels"),
            column("ellipticity", "median 1 − b/a"),
            column("backgroundLevel", "ADU"),
            column("backgroundNoise", "standard deviation a pixel, ADU"),
            column("problems", "number of problems"));

    static final List<Column> FRAMES = List.of(
            column("slug", "entry"),
            column("frame", "number within the entry, from 1"),
            column("file", "name, where the journal publishes file names"),
            column("kind", "light, dark, flat, bias, other or untold"),
            column("counted", "whether it adds exposure"),
            column("taken", "start, UTC"),
            column("exposureSeconds", "s"),
            column("filter", "as written"),
            column("gain", "e/ADU"),
            column("sensorTemperatureC", "°C"),
            column("backgroundLevel", "ADU"),
            column("backgroundNoise", "standard deviation a pixel, ADU"),
            column("gradientPercent", "range of the background over its level, %"),
            column("noiseOfNeighbours", "noise by the differences of neighbouring pixels, ADU"),
            column("noiseCorrelation", "noise of 8 x 8 px over what independent pixels would have"),
            column("backgroundNoiseElectrons", "noise of a pixel of a single frame of known gain, electrons"),
            column("starsFound", "number"),
            column("starsMeasured", "number whose shape counts"),
            column("starsSaturated", "number"),
            column("fwhmPx", "median, sensor pixels"),
            column("fwhmArcsec", "median, arcsec"),
            column("ellipticity", "median 1 − b/a"),
            column("halfFluxRadiusPx", "median, sensor pixels"),
            column("moffatBeta", "median of the wings' exponent"),
            column("hotPixels", "number"),
            column("rowBanding", "excess standard deviation, ADU"),
            column("columnBanding", "excess standard deviation, ADU"),
            column("driftStreak", "share of the noise"),
            column("clippedBlackPercent", "share of pixels, %"),
            column("clippedWhitePercent", "share of pixels, %"),
            column("relativeTransparency", "light of the same stars over that in the night’s reference frame"),
            column("driftXArcsec", "way of the field along +x since the reference frame, arcsec"),
            column("driftYArcsec", "along +y, arcsec"),
            column("rotationDeg", "turn of the field against the reference frame, from +x towards +y, degrees"));

    private Columns() {}

    private static Column column(String name, String meaning) {
        return new Column(name, meaning);
    }
}
