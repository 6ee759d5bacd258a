#!/usr/bin/python3
"""Loose strands by a plain pipeline of Debian's python3-skimage, on the sheets of bench_sheets.

    skimage_strands.py FOLDER SHEETS.csv      prints name,value lines: times, errors of both against rendered truth

Ridge filter (Sato et al. 1998; sigmas 1 and 2 for hairs about a pixel wide, to its favour; the time with scikit-image's
own five, 1 to 9, is printed beside it), threshold (Otsu 1979), small objects removed, skeleton (Zhang and Suen 1984). Crossing strands hang together, so that
they are counted by their ends: half the pixels of the skeleton with one neighbour. Mean length: length of all skeletons
(steps of 1 and sqrt 2) over that number. CPU seconds, one thread; Kempt's time is that of the whole photo.
"""
import csv
import os
import sys
import time

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
    os.environ[name] = "1"

import numpy as np
import skimage
from scipy import ndimage
from skimage import filters, morphology


def pipeline(light, px_per_mm, sigmas=(1, 2)):
    ridges = filters.sato(light, sigmas=sigmas, black_ridges=True)
    mask = ridges > filters.threshold_otsu(ridges)
    mask = morphology.remove_small_objects(mask, int(5 * px_per_mm), connectivity=2)
    skeleton = morphology.skeletonize(mask)
    neighbours = ndimage.convolve(skeleton.astype(np.uint8), np.ones((3, 3), np.uint8), mode="constant") - 1
    strands = (skeleton & (neighbours == 1)).sum() / 2
    straight = (skeleton[1:] & skeleton[:-1]).sum() + (skeleton[:, 1:] & skeleton[:, :-1]).sum()
    slant = (skeleton[1:, 1:] & skeleton[:-1, :-1]).sum() + (skeleton[1:, :-1] & skeleton[:-1, 1:]).sum()
    return strands, (straight + np.sqrt(2) * slant) / px_per_mm / max(strands, 1)


def main():
    folder, table = sys.argv[1:3]
    ours, theirs, times = [], [], []
    for sheet in csv.DictReader(open(table)):
        light = np.load(f"{folder}/sheet_{sheet['seed']}.npy")
        start = time.process_time()
        strands, length = pipeline(light, float(sheet["px_per_mm"]))
        middle = time.process_time()
        pipeline(light, float(sheet["px_per_mm"]), range(1, 10, 2))
        times.append((float(sheet["ms"]), 1e3 * (middle - start), 1e3 * (time.process_time() - middle)))
        number, mean = float(sheet["strands_true"]), float(sheet["length_true"])
        share = lambda value, truth: 100 * abs(value / truth - 1)
        ours.append((share(float(sheet["strands"]), number), share(float(sheet["length"]), mean)))
        theirs.append((share(strands, number), share(length, mean)))
        if len(sys.argv) > 3:
            print(sheet, round(strands), round(length, 1), round(times[-1][1]), file=sys.stderr)
    kempt_ms, skimage_ms, own_ms = np.mean(times, axis=0)
    print(f"sheet_sheets,{len(times)}\nsheet_kempt_ms,{kempt_ms:.0f}\nsheet_skimage_ms,{skimage_ms:.0f}")
    print(f"sheet_skimage_own_sigmas_ms,{own_ms:.0f}\nsheet_times_faster,{skimage_ms / kempt_ms:.1f}")
    print(f"sheet_times_faster_own_sigmas,{own_ms / kempt_ms:.1f}")
    for name, errors in (("kempt", ours), ("skimage", theirs)):
        count, length = np.mean(errors, axis=0)
        print(f"sheet_{name}_count_error,{count:.1f}\nsheet_{name}_length_error,{length:.1f}")


main()
