/**
 * FITS headers and image data to planes; the only room that knows the FITS library.
 *
 * <p>Start at {@link noctuary.fits.FitsFile}. This package refuses to know rigs, notes and what a measurement is.
 */
package noctuary.fits;
