package noctuary.site.page;

/**
 * A picture on a page.
 *
 * @param src a middling size; {@code srcset} names all
 * @param full the largest size
 * @param overlay drawn over the picture on demand, or empty
 * @param deep for looking at it closely
 */
public record Plate(
        String src, String srcset, int width, int height, String alt, String full, Markup overlay, Deep deep) {}
