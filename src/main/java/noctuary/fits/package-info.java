/**
 * FITS headers and image data to planes; the only room that knows the FITS library.
 *
 * <p>Start at {@link noctuary.fits.FitsFile}. This package refuses to know rigs, notes and what a measurement is.
 *
 * <p>A file passes the gate (magic bytes), the scanner (headers, by rules of our own, believing no claim that the
 * file's length cannot bear) and then either the decoder (plain and gzipped arrays) or, for compressed tiles, the
 * library under a header of our own writing. Facts are read from the cards afterwards, each kind in its own class.
 */
package noctuary.fits;
