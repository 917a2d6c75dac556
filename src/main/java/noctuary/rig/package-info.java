/**
 * Arithmetic and checks of optics, train, camera and mount.
 *
 * <p>Start at {@link noctuary.rig.RigFigures}. This package refuses to know notes, frames and the sky as measured.
 */
package noctuary.rig;
