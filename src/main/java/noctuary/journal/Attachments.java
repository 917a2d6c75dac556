package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import noctuary.draw.PlainCopy;
import noctuary.entry.Attachment;
import noctuary.entry.Journal;
import noctuary.fact.Problem;
import noctuary.keep.Glance;
import noctuary.site.Former;

/** Puts the files that notes show or link to beside their pages. */
final class Attachments {
    private static final Set<String> PICTURES = Set.of("png", "jpg", "jpeg", "gif", "webp");

    private Attachments() {}

    /** Faults for pictures that cannot be shown without what their file says beside the pixels. */
    static List<Problem> publish(Journal journal, Path output, Former former) throws IOException {
        List<Problem> problems = new ArrayList<>();
        for (var entry : journal.entries()) {
            String page = "entries/" + entry.slug() + "/";
            problems.addAll(publish(entry.file(), entry.attachments(), page, output, former));
        }
        for (var rig : journal.rigs().values()) {
            String page = "rigs/" + rig.id() + "/";
            problems.addAll(publish(rig.file(), rig.attachments(), page, output, former));
        }
        return problems;
    }

    private static List<Problem> publish(
            String note, List<Attachment> attachments, String page, Path output, Former former) throws IOException {
        List<Problem> problems = new ArrayList<>();
        for (Attachment attachment : attachments) {
            String path = page + attachment.href();
            if (former.take(path, Glance.at(attachment.file()), output)) {
                continue;
            }
            Path target = output.resolve(path);
            Files.createDirectories(target.getParent());
            if (!isPicture(attachment.file())) {
                Files.copy(attachment.file(), target, StandardCopyOption.REPLACE_EXISTING);
                continue;
            }
            Optional<byte[]> pixels = PlainCopy.of(attachment.file());
            if (pixels.isPresent()) {
                Files.write(target, pixels.get());
            } else {
                problems.add(Problem.fault(
                        note,
                        attachment.file().getFileName().toString(),
                        "the picture cannot be read, so it is not shown",
                        "save it as PNG or JPEG"));
            }
        }
        return problems;
    }

    private static boolean isPicture(Path file) {
        String name = file.getFileName().toString();
        return PICTURES.contains(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
    }
}
