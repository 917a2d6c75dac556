# Writes the small tile-compressed floats beside it and prints quantised-astropy.tsv. Run with astropy 5.2.1, numpy 1.24.2:
#   /usr/bin/python3 make_quantised.py > quantised-astropy.tsv
import numpy as np
from astropy.io import fits

CASES = {
    "quantised-no-dither": dict(compression_type="RICE_1", quantize_level=16, quantize_method=-1),
    "quantised-dither-1": dict(compression_type="RICE_1", quantize_level=4, quantize_method=1, dither_seed=77),
    "quantised-dither-2": dict(compression_type="RICE_1", quantize_level=16, quantize_method=2, dither_seed=77),
    "quantised-hcompress": dict(compression_type="HCOMPRESS_1", quantize_level=16, quantize_method=-1, tile_size=(24, 10)),
    "lossless-gzip-2": dict(compression_type="GZIP_2", quantize_level=0),
}
print("# Made by make_quantised.py: mean, first pixel, pixel in column 4 of row 3, last pixel, as astropy 5.2.1 reads the file; tolerance 2e-7 relative.")
print("# file\tmean\tfirst\tx4y3\tlast")
for name, options in CASES.items():
    pixels = (1000 + 10 * np.random.default_rng(3).standard_normal((20, 24))).astype("f4")
    if name == "quantised-dither-2":
        pixels[3, 4] = 0
    fits.HDUList([fits.PrimaryHDU(), fits.CompImageHDU(pixels, **options)]).writeto(name + ".fits", overwrite=True)
    if name == "lossless-gzip-2":  # a legal card that names a method although nothing is quantised
        with fits.open(name + ".fits", mode="update", disable_image_compression=True) as table:
            table[1].header["ZQUANTIZ"] = "NO_DITHER"
    d = fits.getdata(name + ".fits").astype("f8")
    print("\t".join([name + ".fits"] + [repr(float(v)) for v in (d.mean(), d[0, 0], d[3, 4], d[19, 23])]))
