/**
 * Seeded mutation of sound inputs: FITS files, notes, pictures, and whole journals. {@link noctuary.fuzz.FuzzBench} runs
 * as many as wanted in a small heap; {@code FuzzTest} a slice of the same at every build.
 */
package noctuary.fuzz;
