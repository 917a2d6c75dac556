/**
 * Background, detection, shape fit, field model; flags per star.
 *
 * <p>Start at {@link noctuary.stars.StarField}; {@link noctuary.stars.BackgroundMesh} gives the sky alone. This package refuses to know files, headers and arcseconds: it sees
 * planes and answers in pixels of the sensor.
 */
package noctuary.stars;
