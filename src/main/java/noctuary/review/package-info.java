/**
 * Before against after: which nights stand on either side of a change, under what sky, and what they say together.
 *
 * <p>Start at {@link noctuary.review.Judgement}. This package refuses to know pages
 * and pixels; the night is its unit, never the frame.
 */
package noctuary.review;
