/**
 * What one render leaves for the next: files of a cache, whole or not at all, and what files look like from outside.
 *
 * <p>Start at {@link noctuary.keep.Glance} and {@link noctuary.keep.KeptFile}. This package refuses to know what is kept.
 */
package noctuary.keep;
