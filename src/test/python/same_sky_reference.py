"""Resampling of SameSkyBench's attempts by scipy.ndimage.affine_transform, order 3; prints the seconds it took.

Usage: same_sky_reference.py FOLDER WIDTH HEIGHT. FOLDER holds attempt-N.raw (float32, little endian, row after row) and
maps.txt, a line each: xx xy x0 yx yy y0, from pixels of the grid to those of the attempt. Debian's python3-scipy.
"""

import sys
import time

import numpy
from scipy import ndimage

folder, width, height = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
seconds = 0.0
for number, line in enumerate(open(folder + "/maps.txt")):
    xx, xy, x0, yx, yy, y0 = map(float, line.split())
    pixels = numpy.fromfile(f"{folder}/attempt-{number}.raw", dtype="<f4").reshape(height, width)
    start = time.perf_counter()
    laid = ndimage.affine_transform(
        pixels, [[yy, yx], [xy, xx]], offset=[y0, x0], order=3, output=numpy.float32, cval=numpy.nan)
    seconds += time.perf_counter() - start
    print(number, laid[height // 2, width // 2], file=sys.stderr)
print(seconds)
