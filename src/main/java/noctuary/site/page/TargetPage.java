package noctuary.site.page;

import java.util.List;

/**
 * Every attempt on one target.
 *
 * @param framing in the fields of all rigs; null when the catalogue does not know it
 * @param sky attempts on one grid; null for a single one
 */
public record TargetPage(
        Head head,
        String name,
        String summary,
        Drawing growth,
        Drawing framing,
        Link sheet,
        String patch,
        SkyPart sky,
        List<Attempt> attempts) {
    public TargetPage {
        attempts = List.copyOf(attempts);
    }

    /**
     * @param shown the picture on the common grid, null when it could not be laid
     * @param view null without a picture or where {@code shown} stands for it
     * @param exposure empty when not known
     * @param laid how the picture was brought to the common scale
     */
    public record Attempt(
            EntryRow row, boolean reference, SkyPart.Shown shown, View view, String exposure, String laid) {}

    /**
     * A picture turned and scaled onto the reference, in units of the reference's pixels.
     *
     * @param transform for the picture, which is {@code width} by {@code height}
     */
    public record View(
            String src,
            String full,
            String alt,
            String viewBox,
            String boxWidth,
            String boxHeight,
            String transform,
            String width,
            String height) {}
}
