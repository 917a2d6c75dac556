/**
 * An entry and its frames to a fact sheet, every fact with its origin; and the cache of measurements.
 *
 * <p>Start at {@link noctuary.measure.EntrySheet}. This package refuses to know pages, and what is better or worse.
 */
package noctuary.measure;
