"""Reference values for noctuary.effect.ReferenceTest, from scikit-image and numpy.

    python3 src/test/python/effect_references.py
"""
import numpy as np
from skimage import __version__
from skimage.metrics import structural_similarity

SIDE = 64


def noise():
    x, out = 12345, np.empty(SIDE * SIDE)
    for i in range(out.size):
        total = 0.0
        for _ in range(12):
            x = (1664525 * x + 1013904223) % 2**32
            total += x / 2**32
        out[i] = 10 * (total - 6)
    return out.reshape(SIDE, SIDE)


def similarity(a, b):
    return structural_similarity(a, b, gaussian_weights=True, sigma=1.5, use_sample_covariance=False, data_range=255)


def power(window, shortest, longest):
    side = len(window)
    hann = np.hanning(side)
    spectrum = np.abs(np.fft.fft2((window - window.mean()) * np.outer(hann, hann))) ** 2
    f = np.fft.fftfreq(side)
    frequency = np.hypot(*np.meshgrid(f, f))
    return spectrum[(frequency > 1 / longest) & (frequency <= 1 / shortest)].sum()


y, x = np.mgrid[:SIDE, :SIDE]
waves = 128 + 60 * np.sin(2 * np.pi * x / 16) * np.cos(2 * np.pi * y / 32)
print("scikit-image", __version__, "numpy", np.__version__)
print("noise %.6f brighter %.6f flatter %.6f" % (
    similarity(waves, waves + noise()), similarity(waves, waves + 10), similarity(waves, 128 + 0.9 * (waves - 128))))
for shortest, longest in ((2, 4), (4, 8), (8, 16)):
    print('"%d, %d, %.10g",' % (shortest, longest, power(noise()[:32, :32], shortest, longest)))
