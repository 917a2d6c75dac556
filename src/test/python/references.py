#!/usr/bin/python3
"""Measures the frames written by noctuary.stars.ReferenceFrames with SEP, Source Extractor and photutils/astropy.

usage: references.py FOLDER [ROWS]

Prints, row by row, the error of the median FWHM (per cent), the error of the median ellipticity, and what was found:
share of planted stars of S/N over 20, of S/N 10 to 20, and false ones. A reference that is not installed is left out.
Which stars count: those planted with S/N over 20 and matched within 1.5 px, for all programs alike.
"""
import csv
import os
import subprocess
import sys
import warnings

import numpy as np

warnings.filterwarnings("ignore")


def read_frame(path):
    with open(path, "rb") as f:
        header = f.read(2880).decode("ascii")
        width = int(header.split("NAXIS1  =")[1][:21])
        height = int(header.split("NAXIS2  =")[1][:21])
        data = np.frombuffer(f.read(2 * width * height), dtype=">i2")
    return data.astype(np.float32).reshape(height, width) + 32768


def by_sep(path, data):
    import sep

    background = sep.Background(data)
    objects = sep.extract(data - background.back(), 3.0, err=background.globalrms)
    a, b = objects["a"], objects["b"]
    return objects["x"], objects["y"], 2 * np.sqrt(np.log(2) * (a**2 + b**2)), 1 - b / a


def by_source_extractor(path, data):
    folder = os.path.dirname(path)
    names = {
        "p.param": "X_IMAGE\nY_IMAGE\nFWHM_IMAGE\nELLIPTICITY\n",
        "k.conv": "CONV NORM\n1 2 1\n2 4 2\n1 2 1\n",
    }
    for name, text in names.items():
        with open(os.path.join(folder, name), "w") as f:
            f.write(text)
    catalogue = os.path.join(folder, "out.cat")
    subprocess.run(
        ["source-extractor", path, "-PARAMETERS_NAME", os.path.join(folder, "p.param"),
         "-FILTER_NAME", os.path.join(folder, "k.conv"), "-CATALOG_NAME", catalogue,
         "-CATALOG_TYPE", "ASCII", "-DETECT_THRESH", "3", "-VERBOSE_TYPE", "QUIET"],
        check=True, stderr=subprocess.DEVNULL)
    rows = np.atleast_2d(np.loadtxt(catalogue))
    return rows[:, 0] - 1, rows[:, 1] - 1, rows[:, 2], rows[:, 3]


def by_astropy(path, data, truth=None, most=40):
    from astropy.stats import sigma_clipped_stats
    from photutils.detection import DAOStarFinder
    from scipy.optimize import least_squares

    mean, median, deviation = sigma_clipped_stats(data[::3, ::3])
    found = DAOStarFinder(fwhm=3, threshold=5 * deviation)(data - median)
    x, y = np.array(found["xcentroid"]), np.array(found["ycentroid"])
    width, ellipticity = np.full(len(x), np.nan), np.full(len(x), np.nan)
    chosen = np.flatnonzero(bright(x, y, truth))[:most]
    for i in chosen:
        cx, cy = int(round(x[i])), int(round(y[i]))
        r = 12
        cut = data[max(0, cy - r):cy + r + 1, max(0, cx - r):cx + r + 1] - median
        v, u = np.mgrid[max(0, cy - r):max(0, cy - r) + cut.shape[0], max(0, cx - r):max(0, cx - r) + cut.shape[1]]

        def model(p):
            amplitude, x0, y0, xx, xy, yy, beta, sky = p
            q = xx * (u - x0)**2 + 2 * xy * (u - x0) * (v - y0) + yy * (v - y0)**2
            return (amplitude * np.maximum(1e-3, 1 + q)**-beta + sky - cut).ravel()

        fit = least_squares(model, [cut.max(), x[i], y[i], 0.3, 0, 0.3, 3, 0])
        _, _, _, xx, xy, yy, beta, _ = fit.x
        values = np.linalg.eigvalsh([[xx, xy], [xy, yy]])
        if fit.success and values[0] > 0 and beta > 1:
            width[i] = 2 * np.sqrt(2**(1 / beta) - 1) / np.sqrt(np.sqrt(values[0] * values[1]))
            ellipticity[i] = 1 - np.sqrt(values[0] / values[1])
    return x, y, width, ellipticity


def bright(x, y, truth, least=20):
    tx, ty, snr = truth
    hit = np.zeros(len(x), bool)
    for i in range(len(x)):
        near = np.hypot(tx - x[i], ty - y[i]) < 1.5
        hit[i] = np.any(near & (snr >= least))
    return hit


def judge(answer, truth, fwhm, ellipticity):
    x, y, width, elongation = answer
    tx, ty, snr = truth
    counts = bright(x, y, truth)
    matched = np.array([np.any(np.hypot(x - a, y - b) < 1.5) for a, b in zip(tx, ty)])
    faint = (snr >= 10) & (snr < 20)
    false = sum(1 for a, b in zip(x, y) if not np.any(np.hypot(tx - a, ty - b) < max(1.5, 0.4 * fwhm)))
    return (100 * (np.nanmedian(width[counts]) / fwhm - 1), np.nanmedian(elongation[counts]) - ellipticity,
            100 * matched[snr >= 20].mean(), 100 * matched[faint].mean() if faint.any() else np.nan, false)


def main():
    folder = sys.argv[1]
    with open(os.path.join(folder, "ours.csv")) as f:
        rows = list(csv.DictReader(f))
    if len(sys.argv) > 2:
        rows = rows[:int(sys.argv[2])]
    print("frame                       | program           FWHM %    e err   >20 %  10-20 %  false")
    worse = 0
    for row in rows:
        path = os.path.join(folder, row["frame"] + ".fits")
        data = read_frame(path)
        truth = np.loadtxt(os.path.join(folder, row["frame"] + ".csv"), delimiter=",", skiprows=1).T
        fwhm, ellipticity = float(row["fwhm"]), float(row["ellipticity"])
        ours = (100 * (float(row["ours_fwhm"]) / fwhm - 1), float(row["ours_ellipticity"]) - ellipticity,
                100 * float(row["ours_bright"]), 100 * float(row["ours_faint"]), int(row["ours_false"]))
        results = [("ours", ours)]
        for name, program in (("sep", by_sep), ("source-extractor", by_source_extractor),
                              ("astropy Moffat", lambda p, d: by_astropy(p, d, truth))):
            try:
                results.append((name, judge(program(path, data), truth, fwhm, ellipticity)))
            except (ImportError, FileNotFoundError) as missing:
                results.append((name + " missing: " + str(missing), (np.nan,) * 5))
        label = f"{row['name']:12s} {fwhm:4.1f} {ellipticity:4.1f} {float(row['beta']):4.1f}"
        for name, r in results:
            print(f"{label:27s} | {name:16s} {r[0]:+7.2f} {r[1]:+8.3f} {r[2]:7.1f} {r[3]:8.1f} {r[4]:6d}"
                  if not np.isnan(r[4]) else f"{label:27s} | {name}")
            label = ""
        others = [abs(r[0]) for _, r in results[1:] if not np.isnan(r[0])]
        worse += bool(others) and abs(ours[0]) > min(others)
    print(f"rows in which a reference came closer to the planted width than we did: {worse} of {len(rows)}")


if __name__ == "__main__":
    main()
