"""Runs Debian's python3-astroalign on the pairs that noctuary.match.AstroalignBench wrote.

usage: /usr/bin/python3 astroalign_pairs.py FILE

Lines of FILE begin with P (scale, rotation, mirrored, shift), F and T (x, y, flux of the first and the second list,
brightest first) or S (true places in the first list of the stars in both). Prints a line for each pair: the root mean
square distance from the truth over the shared stars in pixels of the finer image ("refused" where nothing was found,
nan where no star is shared), and milliseconds of the wall around the call.
"""
import sys
import time

import astroalign
import numpy as np


def pairs(path):
    pair = None
    with open(path) as lines:
        for line in lines:
            mark, *cells = line.split()
            numbers = [float(c) for c in cells]
            if mark == "P":
                if pair:
                    yield pair
                pair = {"P": numbers, "F": [], "T": [], "S": []}
            else:
                pair[mark].append(numbers[:2])
    yield pair


def truth(p, xy):
    scale, rotation, mirrored, shift_x, shift_y = p
    z = np.where(mirrored, -xy[:, 0], xy[:, 0]) + 1j * xy[:, 1]
    w = scale * np.exp(1j * np.radians(rotation)) * z + shift_x + 1j * shift_y
    return np.column_stack((w.real, w.imag))


def error(transform, pair):
    if not pair["S"]:
        return "nan"
    shared = np.array(pair["S"])
    off = transform(shared) - truth(pair["P"], shared)
    return "%.6f" % (np.sqrt((off**2).sum(axis=1).mean()) * max(1, 1 / pair["P"][0]))


def tried(pair):
    source, target = np.array(pair["F"]), np.array(pair["T"])
    transform = None
    start = time.perf_counter()
    try:
        transform, _ = astroalign.find_transform(source, target)
    except Exception:
        pass
    milliseconds = 1000 * (time.perf_counter() - start)
    return ("refused" if transform is None else error(transform, pair)), milliseconds


np.random.seed(1)  # the library draws its trials from here
first = True
for pair in pairs(sys.argv[1]):
    if first:
        tried(pair)
        first = False
    print("%s %.4f" % tried(pair))
