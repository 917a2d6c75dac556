/**
 * What a processing step did: a picture laid on the one it came from, the stretch between them found, and the
 * difference in numbers.
 *
 * <p>Start at {@link noctuary.effect.Effect}. This package refuses to know files, entries and what a step is called.
 */
package noctuary.effect;
