"""Fits the estimate of cover on the blue gauge sheet (analysis/ends/blue.cpp) on rendered pictures and writes its weights.

  cmake --build BUILD --target bench_ends
  BUILD/tests/bench/bench_ends blue-strips 331000 1400 strips.bin    (seeds that no benchmark uses)
  BUILD/tests/bench/bench_ends blue-photos 340000 300 photos.bin
  python3 ends_blue.py strips.bin photos.bin ../../../analysis/ends/blue_weights.h

Needs numpy alone. The same network as on white (ends.py), on inputs held within what the pictures show. Whole photos
count twice. A quadratic form of the same inputs had the same mean error on strips, but told places of 0.1 to 0.5
cover 2 to 5 points too bare and those of 0.6 to 0.85 as much too full, and on 76 whole photos (seeds 340500-340659) its mean
over the last 20 mm was off by 2.5 (grey) and 2.4 points (salt and pepper), the network's by 2.3 and 2.0. More weight on
a picture's mean (15 for 5) takes another 0.1 points off that and adds a fifth to the error of hem_unevenness, for the
hem is found by single cells. Prints the error of the mean cover near the hem by hair colour on every fifth picture, left
out of a first fit, before it fits on all.
"""
import sys

import numpy as np

import ends

INPUTS, PHOTO_TIMES, STEPS = 14, 2, 10000


def bounds(strips):
    sample = np.concatenate([np.concatenate([n, o]) for _, n, o in strips])[:, :INPUTS].astype(float)
    return np.quantile(sample, 0.001, 0), np.quantile(sample, 0.999, 0)


def held(cells, low, high):
    return np.concatenate([np.clip(cells[:, :INPUTS], low, high), cells[:, INPUTS:]], 1).astype(np.float32)


if __name__ == "__main__":
    *sources, header = sys.argv[1:]
    pictures = [ends.read(path, INPUTS) for path in sources]
    count = sum(len(some) for some in pictures)
    low, high = bounds([s for some in pictures for s in some])
    strips, photos = ([(hair, held(n, low, high), held(o, low, high)) for hair, n, o in some] for some in pictures)
    # Left out by threes: the colours come in turn.
    kept = [[s for i, s in enumerate(some) if i // 3 % 5] for some in (strips, photos)]
    ends.report(ends.fit(kept[0] + kept[1] * PHOTO_TIMES, STEPS),
                [s for some in (strips, photos) for i, s in enumerate(some) if i // 3 % 5 == 0])
    ends.write(ends.fit(strips + photos * PHOTO_TIMES, STEPS), header, "ends_blue.py", f"{count} pictures, {STEPS} steps",
               "blue_net", "blue_inputs", "blue", (("low", low), ("high", high)))
