package noctuary.site.page;

/**
 * A picture that can be looked at closely.
 *
 * @param src the largest preview
 * @param width of the whole picture in pixels
 * @param tiles folder of its tiles; empty when {@code src} is the whole picture
 * @param side of a tile; 0 without tiles
 */
public record Deep(String src, int width, int height, String tiles, int side, int levels) {}
