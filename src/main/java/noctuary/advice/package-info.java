/**
 * What limits an image, how much exposure is still wanted, when to refocus, where the time went, and what was learnt:
 * sentences with their evidence and with what would settle them.
 *
 * <p>Start at {@link noctuary.advice.Advice}. This package refuses to know pixels and pages, and it says nothing below
 * the number of nights or stars at which chance could make it wrong.
 */
package noctuary.advice;
