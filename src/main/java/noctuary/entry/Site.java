package noctuary.entry;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a rig stands. Coordinates never reach a page unless the settings say so.
 *
 * @param latitudeDeg north positive
 * @param longitudeDeg east positive
 */
public record Site(
        String id,
        String file,
        String name,
        OptionalDouble latitudeDeg,
        OptionalDouble longitudeDeg,
        OptionalDouble elevationM,
        Optional<ZoneId> zone,
        String html,
        List<Attachment> attachments) {
    public Site {
        attachments = List.copyOf(attachments);
    }
}
