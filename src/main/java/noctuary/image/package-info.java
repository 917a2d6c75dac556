/**
 * A plane of pixels and the pixel convention: the centre of the first stored pixel is (0, 0), x runs along the row, y
 * in file order. Nobody else adds 1 or flips, except {@code fits} (the standard's 1-based view) and {@code draw} (the
 * screen).
 *
 * <p>Start at {@link noctuary.image.Plane}. This package refuses to know file formats of the sky and what a star is.
 */
package noctuary.image;
