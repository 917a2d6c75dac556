/**
 * Two star lists to a transform, or a refusal.
 *
 * <p>Start at {@link noctuary.match.Alignment}. This package refuses to know pixels, files and the sky.
 */
package noctuary.match;
