/**
 * What a template is given: records of finished values, ready to print. Absent text is empty, absent parts are null.
 *
 * <p>Start at {@link noctuary.site.page.Head}. This package refuses to compute and to link.
 */
package noctuary.site.page;
