/**
 * Sun, Moon, altitude, airmass, twilight for an instant and a place.
 *
 * <p>Start at {@link noctuary.sky.Night}. This package refuses to know targets by name, notes and rigs.
 */
package noctuary.sky;
