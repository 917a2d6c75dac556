package noctuary.entry;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import noctuary.fact.Quantity;

/**
 * One note: front matter and body.
 *
 * @param slug unique in the journal, from the folder's or file's name
 * @param file as named in problems
 * @param folder where globs and pictures beside the entry start
 * @param rig id of a rig that exists; absent when none is named anywhere or the name is unknown
 * @param site as rig
 * @param date typed night, for entries without frames
 * @param frames files that the globs matched, sorted by path
 * @param closes lessons that exist, as slug#about
 * @param html the body as HTML that cannot run anything; headings begin at h2, links to other entries lead to
 *     {@code ../../entries/SLUG/index.html} and to rigs {@code ../../rigs/ID/index.html}
 * @param attachments to be copied beside the page
 */
public record Entry(
        String slug,
        String file,
        Path folder,
        Typed<String> title,
        Optional<Typed<String>> target,
        Optional<Typed<String>> rig,
        Optional<Typed<String>> site,
        Optional<Typed<LocalDate>> date,
        List<Path> frames,
        Optional<Path> stack,
        List<Typed<TypedExposure>> exposure,
        Optional<Typed<Quantity>> guidingRms,
        List<Lost> lost,
        List<Typed<String>> changes,
        List<Version> versions,
        List<Lesson> lessons,
        List<String> closes,
        String html,
        List<Attachment> attachments) {
    public Entry {
        frames = List.copyOf(frames);
        exposure = List.copyOf(exposure);
        lost = List.copyOf(lost);
        changes = List.copyOf(changes);
        versions = List.copyOf(versions);
        lessons = List.copyOf(lessons);
        closes = List.copyOf(closes);
        attachments = List.copyOf(attachments);
    }

    /** The same entry with the lessons it closes. */
    Entry closing(List<String> lessonIds) {
        return with(lessonIds, html);
    }

    /** The same entry without its body, which nothing but the words on pages follows from. */
    Entry wordless() {
        return with(closes, "");
    }

    private Entry with(List<String> lessonIds, String body) {
        return new Entry(
                slug,
                file,
                folder,
                title,
                target,
                rig,
                site,
                date,
                frames,
                stack,
                exposure,
                guidingRms,
                lost,
                changes,
                versions,
                lessons,
                lessonIds,
                body,
                attachments);
    }

    /** Exposure typed when the frames are gone; filter empty when not told. */
    public record TypedExposure(int count, BigDecimal seconds, String filter) {}

    public record Lost(double minutes, String cause, String note) {}

    /** @param from {@code stack} or the name of another version of this entry, never in a circle */
    public record Version(String name, Optional<Path> image, String from, List<Step> steps) {
        public Version {
            steps = List.copyOf(steps);
        }
    }

    /** One processing choice with its setting as typed, which may be empty. */
    public record Step(String choice, String setting) {}

    /** @param id slug#about, unique within the entry */
    public record Lesson(String id, String about, String todo) {}
}
