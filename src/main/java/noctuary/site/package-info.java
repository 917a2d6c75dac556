/**
 * Page models, templates, links, downloads.
 *
 * <p>Start at {@link noctuary.site.SiteWriter}, which is given a {@link noctuary.site.SiteContent}. This package refuses
 * to measure and to compare: it is given finished sheets and writes files.
 */
package noctuary.site;
