/**
 * Robust summaries, tests of a shift, regression, resampling and power, of plain arrays.
 *
 * <p>Start at {@link noctuary.stats.Robust} for one sample, {@link noctuary.stats.ShiftTest} for two sides, {@link
 * noctuary.stats.Regression} for a shift beside other causes. This package refuses to know what the numbers stand for.
 */
package noctuary.stats;
