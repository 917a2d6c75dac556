/**
 * What the keeper writes: notes with front matter and line numbers, markdown to HTML, rigs, sites, settings, typed
 * quantities.
 *
 * <p>Start at {@link noctuary.entry.Journal}. This package refuses to know frames, measurements and pages.
 */
package noctuary.entry;
