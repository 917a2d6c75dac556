package noctuary.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import noctuary.draw.PlainCopy;
import noctuary.entry.Attachment;
import noctuary.entry.Journal;
import noctuary.fact.Problem;
import noctuary.image.UnreadablePictureException;
import noctuary.keep.Glance;
import noctuary.site.Draft;

/** Puts the files that notes show or link to beside their pages. */
final class Attachments {
    private static final Set<String> PICTURES = Set.of("png", "jpg", "jpeg", "gif");

    private Attachments() {}

    /**
     * @param problems faults for pictures that cannot be shown
     * @param unshown why not, by the address that their pages look for them at
     */
    record Published(List<Problem> problems, Map<String, String> unshown) {}

    static Published publish(Journal journal, Draft draft) throws IOException {
        Published published = new Published(new ArrayList<>(), new TreeMap<>());
        for (var entry : journal.entries()) {
            String page = "entries/" + entry.slug() + "/";
            publish(entry.file(), entry.attachments(), page, draft, published);
        }
        for (var rig : journal.rigs().values()) {
            String page = "rigs/" + rig.id() + "/";
            publish(rig.file(), rig.attachments(), page, draft, published);
        }
        return published;
    }

    private static void publish(
            String note, List<Attachment> attachments, String page, Draft draft, Published published)
            throws IOException {
        for (Attachment attachment : attachments) {
            String path = page + attachment.href();
            String shown = Glance.at(attachment.file());
            if (draft.take(path, shown)) {
                continue;
            }
            if (!isPicture(attachment.file())) {
                draft.copy(path, shown, attachment.file());
                continue;
            }
            try {
                draft.write(path, shown, ByteBuffer.wrap(PlainCopy.of(attachment.file())));
            } catch (UnreadablePictureException e) {
                published.unshown().put(path, e.getMessage());
                String name = attachment.file().getFileName().toString();
                published.problems().add(Problem.fault(note, name, e.getMessage() + ", so it is not shown", e.hint()));
            }
        }
    }

    private static boolean isPicture(Path file) {
        String name = file.getFileName().toString();
        return PICTURES.contains(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
    }
}
