package noctuary.measure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Every attempt on one target, each laid on the reference attempt by its stars.
 *
 * @param id for the page's address
 * @param name as most entries write it
 * @param reference slug of the attempt that the others are laid on
 * @param attempts oldest first
 */
public record TargetSheet(String id, String name, String reference, List<Attempt> attempts) {
    public TargetSheet {
        attempts = List.copyOf(attempts);
    }

    /**
     * @param matched number of stars that agree; 0 when the stars did not match, and then the rest is absent
     * @param scale arcsec per pixel of this attempt over the reference's, from the stars alone
     * @param rotationDeg counter-clockwise
     */
    public record Attempt(
            String slug,
            int matched,
            OptionalDouble rmsPx,
            OptionalDouble scale,
            OptionalDouble rotationDeg,
            boolean mirrored) {}
}
