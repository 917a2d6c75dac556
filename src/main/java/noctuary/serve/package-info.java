/**
 * A folder over loopback, for the keeper's own browser: pages load again when they change.
 *
 * <p>Start at {@link noctuary.serve.SiteServer}. This package refuses to know journals, and callers from elsewhere.
 */
package noctuary.serve;
