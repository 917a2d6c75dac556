/**
 * Robust summaries of plain arrays.
 *
 * <p>Start at {@link noctuary.stats.Robust}. This package refuses to know what the numbers stand for.
 */
package noctuary.stats;
