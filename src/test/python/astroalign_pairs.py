"""Runs Debian's python3-astroalign on the pairs that noctuary.match.AlignmentPairsFile wrote.

usage: /usr/bin/python3 astroalign_pairs.py FILE [PAIRS]

Prints how many pairs were found within 1 px of the truth (root mean square over the shared stars, pixels of the finer
image), and processor time a pair. The library seeks no mirrored fields: they are counted apart as well.
"""
import itertools
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


found = {0: 0, 1: 0}
count = {0: 0, 1: 0}
times = []
limit = int(sys.argv[2]) if len(sys.argv) > 2 else None
for pair in itertools.islice(pairs(sys.argv[1]), limit):
    mirrored = int(pair["P"][2])
    count[mirrored] += 1
    source, target, shared = (np.array(pair[k]) for k in "FTS")
    start = time.process_time()
    try:
        transform, _ = astroalign.find_transform(source, target)
        off = transform(shared) - truth(pair["P"], shared)
        error = np.sqrt((off**2).sum(axis=1).mean()) * max(1, 1 / pair["P"][0])
        found[mirrored] += error < 1
    except Exception:
        pass
    times.append(1000 * (time.process_time() - start))
times.sort()
print(
    "%d of %d straight, %d of %d mirrored; cpu ms median %.1f, 95th %.1f, most %.1f"
    % (found[0], count[0], found[1], count[1], np.median(times), times[int(0.95 * len(times))], times[-1])
)
