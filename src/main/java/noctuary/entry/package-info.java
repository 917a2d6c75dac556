/**
 * What the keeper writes: notes with front matter and line numbers, markdown to HTML, rigs, sites, settings, typed
 * quantities.
 *
 * <p>Start at {@link noctuary.entry.Journal}; a new journal begins at {@link noctuary.entry.Beginning}. A file goes
 * from bytes ({@code NoteText}) to front matter and body ({@code Note}), from there to a tree with lines
 * ({@code YamlReader}) that small readers bind key by key ({@code Fields}), and to HTML ({@code NoteHtml}). This
 * package refuses to know frames, measurements and pages.
 */
package noctuary.entry;
