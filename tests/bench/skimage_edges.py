#!/usr/bin/python3
"""The edge readings by a plain pipeline of Debian's python3-skimage, on the bands of bench_strips.

    skimage_edges.py FOLDER STRIPS.csv      prints name,value lines: times, errors of both against rendered truth

From the photo and the places of the band, both given: grey of the part that is needed (rgb2gray), straightened (warp,
bilinear: its default and the fastest but one), ridge filter (Sato et al. 1998, as scikit-image sets it), threshold (Otsu
1979), small objects removed, skeleton (Zhang and Suen 1984). Coverage: share of the first 10 mm that is mask; strands:
pieces of skeleton crossed by the line at 5 mm. Whether hair is darker or lighter than the skin is taken from the 15-20 mm
zone against the skin outside. Kempt's time is from the photo and the marks, and holds the finding of these places, all
three colours, the correction by the card, intervals and the other edge readings too. CPU seconds, one thread.
"""
import csv
import os
import sys
import time

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
    os.environ[name] = "1"

import numpy as np
import skimage
from skimage import color, filters, measure, morphology, transform


def straightened(photo, places):
    low = np.maximum(np.floor(places.min((0, 1))).astype(int) - 1, 0)
    high = np.ceil(places.max((0, 1))).astype(int) + 2
    grey = color.rgb2gray(photo[low[1] : high[1], low[0] : high[0]])
    at = np.stack([places[..., 1] - low[1], places[..., 0] - low[0]])
    return transform.warp(grey, at, order=1, mode="edge")


def pipeline(grey, px_per_mm, from_mm):
    row = lambda mm: int(round((mm - from_mm) * px_per_mm))
    dark = np.median(grey[row(15) : row(20)]) < np.median(grey[: row(-0.5)])
    ridges = filters.sato(grey, black_ridges=bool(dark))
    mask = ridges > filters.threshold_otsu(ridges[row(0) :])
    mask = morphology.remove_small_objects(mask, int(0.1 * px_per_mm**2))
    skeleton = morphology.skeletonize(mask)
    coverage = 100 * mask[row(0) : row(10)].mean()
    # Crossings of the 5 mm line, averaged over the millimetre about it as Kempt does.
    counts = [measure.label(line).max() for line in skeleton[row(4.5) : row(5.5)]]
    strands = np.mean(counts) / (grey.shape[1] / px_per_mm / 10)
    return coverage, strands


def main():
    folder, table = sys.argv[1:3]
    ours, theirs, times = [], [], []
    for strip in csv.DictReader(open(table)):
        photo, places = (np.load(f"{folder}/{name}_{strip['seed']}.npy") for name in ("photo", "places"))
        spent, work = [], []
        for _ in range(3):
            start = time.process_time()
            grey = straightened(photo, places)
            cut = time.process_time()
            coverage, strands = pipeline(grey, float(strip["px_per_mm"]), float(strip["from_mm"]))
            end = time.process_time()
            spent.append(1e3 * (end - start))
            work.append(1e3 * (end - cut))
        times.append((float(strip["ms"]), sorted(spent)[1], sorted(work)[1]))
        cover_true, strands_true = float(strip["coverage_true"]), float(strip["strands_true"])
        pair = [(float(strip["coverage"]), float(strip["strands"])), (coverage, strands)]
        for out, (c, s) in zip((ours, theirs), pair):
            # Strands only where Kempt gives them too: elsewhere they lie in a closed mat.
            counted = float(strip["strands"]) >= 0 and strands_true > 0
            out.append((abs(c - cover_true), 100 * abs(s / strands_true - 1) if counted else np.nan))
        if len(sys.argv) > 3:
            print(strip["seed"], strip["hair"], "coverage", cover_true, pair[0][0], round(coverage, 2), "strands",
                  strands_true, pair[0][1], round(strands, 2), "ms", times[-1], file=sys.stderr)
    kempt_ms, skimage_ms, work_ms = np.mean(times, axis=0)
    print(f"skimage_version,{skimage.__version__}\nstrip_bands,{len(times)}")
    print(f"strip_kempt_ms,{kempt_ms:.0f}\nstrip_skimage_ms,{skimage_ms:.0f}")
    print(f"strip_times_faster,{skimage_ms / kempt_ms:.1f}\nstrip_skimage_work_ms,{work_ms:.0f}")
    print(f"strip_times_faster_than_work,{work_ms / kempt_ms:.1f}")
    for name, errors in (("kempt", ours), ("skimage", theirs)):
        print(f"strip_{name}_coverage_error,{np.mean([e[0] for e in errors]):.2f}")
        print(f"strip_{name}_strands_error,{np.nanmean([e[1] for e in errors]):.1f}")


main()
