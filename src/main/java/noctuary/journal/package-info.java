/**
 * The conductor: reads a journal, measures its frames, previews them, lets them go, hands all to {@code site}.
 *
 * <p>Start at {@link noctuary.journal.Rendering}; {@code Noting}, {@code Checking} and {@code Measuring} serve the
 * other commands. This package refuses to know terminals.
 */
package noctuary.journal;
