/**
 * The conductor: reads a journal, measures its frames, previews them, lets them go, hands all to {@code site}.
 *
 * <p>Start at {@code Renderer}. This package refuses to know terminals.
 */
package noctuary.journal;
