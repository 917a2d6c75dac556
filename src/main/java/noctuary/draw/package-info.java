/**
 * Charts as SVG text, previews and thumbnails as bytes.
 *
 * <p>This package refuses to know entries, pages and files: it is given numbers and planes. Colours come from the
 * style sheet's custom properties, never from here.
 */
package noctuary.draw;
