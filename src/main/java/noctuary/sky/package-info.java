/**
 * Sun, Moon, altitude, airmass, twilight and moonlight for an instant and a place; nights; a catalogue of well-known
 * deep-sky objects.
 *
 * <p>Start at {@link noctuary.sky.Night}, {@link noctuary.sky.SkyAt}, {@link noctuary.sky.Darkness} and
 * {@link noctuary.sky.Catalogue}. This package refuses to know notes, rigs and frames.
 */
package noctuary.sky;
