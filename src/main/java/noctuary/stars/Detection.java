package noctuary.stars;

/**
 * A place where the filtered plane peaks.
 *
 * @param x whole pixel of the peak
 * @param centreX refined by a parabola through the neighbours
 * @param response of the filter, ADU
 * @param snr response over its noise
 * @param peak highest counting pixel within one of the peak, above the sky around, ADU
 */
record Detection(int x, int y, double centreX, double centreY, double response, double snr, double peak) {}
