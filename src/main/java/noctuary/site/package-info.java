/**
 * Page models, templates, links, downloads.
 *
 * <p>This package refuses to measure and to compare: it is given finished sheets and writes files.
 */
package noctuary.site;
