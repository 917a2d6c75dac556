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

/** Puts the files that notes show or link to beside their pages. */
final class Attachments {
    private static final Set<String> PICTURES = Set.of("png", "jpg", "jpeg", "gif", "webp");

    private Attachments() {}

    /** Faults for pictures that cannot be shown without what their file says beside the pixels. */
    static List<Problem> publish(Journal journal, Path output) throws IOException {
        List<Problem> problems = new ArrayList<>();
        for (var entry : journal.entries()) {
            Path page = output.resolve("entries").resolve(entry.slug());
            problems.addAll(publish(entry.file(), entry.attachments(), page));
        }
        for (var rig : journal.rigs().values()) {
            problems.addAll(publish(
                    rig.file(), rig.attachments(), output.resolve("rigs").resolve(rig.id())));
        }
        return problems;
    }

    private static List<Problem> publish(String note, List<Attachment> attachments, Path page) throws IOException {
        List<Problem> problems = new ArrayList<>();
        for (Attachment attachment : attachments) {
            Path target = page.resolve(attachment.href());
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
