"""Fits the estimate of cover on the blue gauge sheet (analysis/ends/blue.cpp) on rendered pictures and writes its weights.

  cmake --build BUILD --target bench_ends
  BUILD/tests/bench/bench_ends blue-strips 331000 1400 strips.bin    (seeds that no benchmark uses)
  BUILD/tests/bench/bench_ends blue-photos 340000 300 photos.bin
  python3 ends_blue.py strips.bin photos.bin ../../../analysis/ends/blue_weights.h

Needs numpy alone. Cover is a quadratic form of a few ratios, by ridge regression on single cells near the hem plus
MEAN_WEIGHT times a picture's mean error, because see_through is a mean. A weight of 100 makes the mean of a strip's own
cells better (1.9 against 2.3 points) and the readings worse, for the hem that they are taken at is found by single
cells: on 24 photos of grey and of salt-and-pepper hair weights of 5, 20 and 100 missed see_through by 2.1, 2.4 and 2.3
points and hem_unevenness by 0.25, 0.33 and 0.43 mm. It does as well on strips left out as the network that white paper
has (2.1 against 2.2 points, 800 strips). Prints the error of the mean cover near the hem by hair colour, each fifth of
the pictures left out in turn, before it fits on all.
"""
import sys

import numpy as np

INPUTS, RIDGE, MEAN_WEIGHT, OTHER_WEIGHT = 14, 1e-4, 5.0, 0.2
HAIR = {4: "blonde", 5: "grey", 6: "salt and pepper"}


def read(path):
    strips = []
    with open(path, "rb") as f:
        while True:
            head = np.fromfile(f, np.float32, 5)
            if head.size < 5:
                return strips
            near, other = int(head[3]), int(head[4])
            cells = np.fromfile(f, np.float32, (near + other) * (INPUTS + 1)).reshape(-1, INPUTS + 1)
            if near >= 400:
                strips.append((int(head[0]), cells[:near].astype(float), cells[near:].astype(float)))


def products(cells, low, high):
    x = np.concatenate([np.ones((len(cells), 1)), np.clip(cells[:, :INPUTS], low, high)], 1)
    i, j = np.triu_indices(INPUTS + 1)
    return x[:, i] * x[:, j]


def bounds(strips):
    sample = np.concatenate([np.concatenate([n, o]) for _, n, o in strips])[:, :INPUTS]
    return np.quantile(sample, 0.001, 0), np.quantile(sample, 0.999, 0)


def sums(strips, low, high):
    """Of each strip what the regression needs, scaled by the products' spread."""
    spread = products(np.concatenate([n[::20] for _, n, _ in strips]), low, high).std(0) + 1e-6
    all_sums = []
    for _, near, other in strips:
        x, y = products(near, low, high) / spread, near[:, INPUTS]
        mean = x.mean(0)
        a = x.T @ x / len(x) + MEAN_WEIGHT * np.outer(mean, mean)
        b = x.T @ y / len(x) + MEAN_WEIGHT * mean * y.mean()
        if len(other):
            x, y = products(other, low, high) / spread, other[:, INPUTS]
            a, b = a + OTHER_WEIGHT * x.T @ x / len(x), b + OTHER_WEIGHT * x.T @ y / len(x)
        all_sums.append((a, b))
    return spread, all_sums


def solve(spread, some):
    a, b = sum(s[0] for s in some), sum(s[1] for s in some)
    return np.linalg.solve(a + RIDGE * len(some) * np.eye(len(b)), b) / spread


def report(strips, low, high, spread, all_sums):
    errors = {hair: [] for hair in HAIR}
    for fifth in range(5):
        left_out = [i // 3 % 5 == fifth for i in range(len(strips))]
        weights = solve(spread, [s for s, out in zip(all_sums, left_out) if not out])
        for (hair, near, _), out in zip(strips, left_out):
            if out:
                cover = np.clip(products(near, low, high) @ weights, 0, 1)
                errors[hair].append(100 * (cover - near[:, INPUTS]).mean())
    print(f"{len(strips)} strips, each fifth left out in turn:")
    for hair, e in errors.items():
        print(f"  {HAIR[hair]}: {np.abs(e).mean():.2f} points, bias {np.mean(e):+.2f}, 95 % below {np.quantile(np.abs(e), 0.95):.1f}")


def write(path, count, low, high, weights):
    def braces(values):
        return "{" + ", ".join(f"{v:.7g}f" if "." in f"{v:.7g}" or "e" in f"{v:.7g}" else f"{v:.7g}.f" for v in values) + "}"

    with open(path, "w") as f:
        f.write(f"// Written by tests/render/train/ends_blue.py: {count} pictures. Do not edit.\n#pragma once\n\n"
                '#include "ends/blue.h"\n\n// clang-format off\nnamespace kempt::ends::blue_fit {\n\n'
                f"inline constexpr float low[blue_inputs] = {braces(low)};\n"
                f"inline constexpr float high[blue_inputs] = {braces(high)};\n"
                f"// Of 1 and the inputs, each times itself and all that follow it.\n"
                f"inline constexpr float weights[] = {braces(weights)};\n"
                "\n}  // namespace kempt::ends::blue_fit\n// clang-format on\n")


if __name__ == "__main__":
    all_strips = [s for path in sys.argv[1:-1] for s in read(path)]
    least, most = bounds(all_strips)
    scale, parts = sums(all_strips, least, most)
    report(all_strips, least, most, scale, parts)
    write(sys.argv[-1], len(all_strips), least, most, solve(scale, parts))
