"""Small pictures of kinds that make_pictures.sh does not write, from reference.ppm. Run in this folder.

Made with Debian's python3-tifffile 2023.2.3 and python3-pil 9.4.0. The pixels of the turned-N files are stored as they
are in the reference; only their tag 274 says which side is up.
"""

import numpy as np
import tifffile
from PIL import Image

WIDTH, HEIGHT = 29, 17
whole = open("reference.ppm", "rb").read()
shorts = np.frombuffer(whole[-WIDTH * HEIGHT * 6:], ">u2").reshape(HEIGHT, WIDTH, 3).astype(np.uint16)
small = (shorts >> 8).astype(np.uint8)

tifffile.imwrite("big-tiled-msb.tif", shorts, photometric="rgb", bigtiff=True, byteorder=">", tile=(16, 16),
                 compression="zlib", predictor=2)
tifffile.imwrite("big.tif", shorts, photometric="rgb", bigtiff=True)
grey = np.stack([shorts[..., 1], 65535 - shorts[..., 1]], -1)
tifffile.imwrite("grey16-alpha.tif", grey, photometric="minisblack", planarconfig="contig",
                 extrasamples=["unassalpha"], compression="zlib")
tifffile.imwrite("longs.tif", shorts.astype(np.uint32) * 65537, photometric="rgb", compression="zlib",
                 planarconfig="contig")
tifffile.imwrite("white-is-zero.tif", 65535 - shorts[..., 1], photometric="miniswhite", compression="zlib")

turned = Image.fromarray(small)
tags = Image.Exif()
tags[274] = 6
turned.save("turned-6.png", exif=tags)
turned.save("turned-6.jpg", exif=tags, quality=100, subsampling=0)
tifffile.imwrite("turned-6.tif", small, photometric="rgb", compression="zlib", extratags=[(274, "H", 1, 6, True)])

# Inks: the blocks' values follow from their place, as in the test.
y, x, ink = np.mgrid[0:2, 0:3, 0:4]
inks = ((37 * x + 91 * y + 53 * ink) % 256).astype(np.uint8)
blocks = np.kron(inks, np.ones((8, 8, 1), np.uint8))
Image.fromarray(blocks, "CMYK").save("cmyk.jpg", quality=100, subsampling=0)
plain = bytearray(open("cmyk.jpg", "rb").read())
plain[plain.index(b"Adobe") + 11] = 2
open("ycck.jpg", "wb").write(plain)
with open("ycck.txt", "w") as out:
    out.write("# Inks of ycck.jpg as python3-pil reads them: cyan, magenta, yellow, black of each 8 x 8 block\n")
    read = np.array(Image.open("ycck.jpg"))[4::8, 4::8]
    for row in read.reshape(-1, 4):
        out.write(" ".join(str(v) for v in row) + "\n")
