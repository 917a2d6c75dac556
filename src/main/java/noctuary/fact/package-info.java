/**
 * What a number is here: value, unit, uncertainty, origin, or why it is missing; and what is wrong with an input.
 *
 * <p>Start at {@link noctuary.fact.Fact}. This package refuses to know where numbers come from: it only records it.
 */
package noctuary.fact;
