/**
 * Seeded mutation of sound inputs: FITS files, notes, pictures, whole journals with their caches, calls to the server; and
 * well-formed values that are meant to upset pages. {@link noctuary.fuzz.FuzzBench} runs
 * as many as wanted in a small heap; {@code FuzzTest} a slice of the same at every build.
 */
package noctuary.fuzz;
