/**
 * Noise at scales, hot pixels, banding, streaks, clipping, shadows.
 *
 * <p>Start at {@link noctuary.noise.Defects}. This package refuses to know stars beyond masking them, and files.
 */
package noctuary.noise;
