# Writes the small tile-compressed integers beside it, sound inputs to be damaged. Run with astropy 5.2.1, numpy 1.24.2:
#   /usr/bin/python3 make_packed.py
import numpy as np
from astropy.io import fits

CASES = {
    "rice-16": dict(compression_type="RICE_1"),
    "rice-tiled": dict(compression_type="RICE_1", tile_size=(16, 9)),
    "plio": dict(compression_type="PLIO_1"),
    "hcompress-16": dict(compression_type="HCOMPRESS_1", tile_size=(32, 16)),
    "hcompress-smooth": dict(compression_type="HCOMPRESS_1", hcomp_scale=8, hcomp_smooth=1),
    "gzip-1": dict(compression_type="GZIP_1"),
}
pixels = (1000 + 10 * np.random.default_rng(3).standard_normal((24, 40))).astype("i2")
for name, options in CASES.items():
    fits.HDUList([fits.PrimaryHDU(), fits.CompImageHDU(pixels, **options)]).writeto(name + ".fits", overwrite=True)
