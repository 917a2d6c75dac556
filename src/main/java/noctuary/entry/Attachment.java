package noctuary.entry;

import java.nio.file.Path;

/**
 * A picture or small file inside the journal that a note shows or links to.
 *
 * @param href where the note's HTML expects it, relative to the note's page, such as {@code files/dew.jpg}
 * @param file to copy there
 */
public record Attachment(String href, Path file) {}
