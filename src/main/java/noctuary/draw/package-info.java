/**
 * Charts as SVG text, previews and thumbnails as bytes.
 *
 * <p>This package refuses to know entries, pages and files: it is given numbers and planes. Colours come from the
 * style sheet's custom properties, never from here.
 *
 * <p>Start at {@link noctuary.draw.Chart}: each kind of chart is a record of plain numbers and words.
 */
package noctuary.draw;
