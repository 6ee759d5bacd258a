"""Fits the estimate of cover of analysis/ends on rendered strips and writes its weights.

  cmake --build BUILD --target bench_ends
  BUILD/tests/bench/bench_ends strips 300000 1400 a.bin; ... strips 310000 1400 b.bin; cat a.bin b.bin >strips.bin
                                                                     (seeds that no benchmark uses)
  python3 ends.py strips.bin ../../../analysis/ends/cover_weights.h [steps]

Needs numpy alone. Prints the error of the mean cover near the hem on strips left out of the fit (every fourth), by hair
colour, before it fits on all.
"""
import sys

import numpy as np

INPUTS, WIDTHS = 16, (16, 8)
# Blonde, grey and salt-and-pepper hair errs most: its strips are drawn three times as often, which takes a tenth off
# their error and adds nothing to that of the others together.
LIGHT, LIGHT_TIMES = 4, 3
HAIR = ["black", "dark brown", "medium brown", "red", "blonde", "grey", "salt and pepper"]


def read(path, inputs=INPUTS):
    strips = []
    with open(path, "rb") as f:
        while True:
            head = np.fromfile(f, np.float32, 5)
            if head.size < 5:
                return strips
            near, other = int(head[3]), int(head[4])
            cells = np.fromfile(f, np.float32, (near + other) * (inputs + 1)).reshape(-1, inputs + 1)
            if near >= 400:
                strips.append((int(head[0]), cells[:near], cells[near:]))


def forward(net, x):
    steps = [x]
    weights, biases = net
    for k, (w, b) in enumerate(zip(weights, biases)):
        z = steps[-1] @ w + b
        steps.append(np.maximum(z, 0.1 * z) if k < len(weights) - 1 else 1 / (1 + np.exp(-z)))
    return steps


def fit(strips, steps=10000, seed=1, groups=16, cells=160, rate=4e-3, decay=1e-3, mean_weight=5.0):
    """Adam on squared error of single cells plus mean_weight times that of a strip's mean: see_through is a mean."""
    rng = np.random.default_rng(seed)
    sample = np.concatenate([np.concatenate([n, o]) for _, n, o in strips])[::7, :-1]
    middle, spread = sample.mean(0), sample.std(0) + 1e-3
    sizes = [sample.shape[1], *WIDTHS, 1]
    weights = [rng.normal(0, np.sqrt(2 / a), (a, b)) for a, b in zip(sizes, sizes[1:])]
    biases = [np.zeros(b) for b in sizes[1:]]
    values = weights + biases
    first, second = [np.zeros_like(v) for v in values], [np.zeros_like(v) for v in values]
    for step in range(steps):
        rows = []
        for g in rng.integers(0, len(strips), groups):
            _, near, other = strips[g]
            if len(other) < cells // 4:
                other = near
            rows.append(near[rng.integers(0, len(near), cells)])
            rows.append(other[rng.integers(0, len(other), cells // 4)])
        x, group = np.concatenate(rows), np.repeat(np.arange(2 * groups), [len(r) for r in rows])
        a = forward((weights, biases), (x[:, :-1] - middle) / spread)
        error = a[-1][:, 0] - x[:, -1]
        means = np.bincount(group, error) / np.bincount(group)
        # The logistic's slope never falls to nothing, so that cells far off still pull.
        d = ((error + mean_weight * means[group]) * np.maximum(a[-1][:, 0] * (1 - a[-1][:, 0]), 0.08) * 8 / len(x))[:, None]
        slopes = [None] * len(values)
        for k in reversed(range(len(weights))):
            slopes[k] = a[k].T @ d + decay * weights[k]
            slopes[len(weights) + k] = d.sum(0)
            if k:
                d = (d @ weights[k].T) * np.where(a[k] > 0, 1, 0.1)
        now = rate * (1 - step / steps) + 2e-5
        for k, (v, s) in enumerate(zip(values, slopes)):
            first[k] = 0.9 * first[k] + 0.1 * s
            second[k] = 0.999 * second[k] + 0.001 * s * s
            v -= now * (first[k] / (1 - 0.9 ** (step + 1))) / (np.sqrt(second[k] / (1 - 0.999 ** (step + 1))) + 1e-8)
    return middle, spread, (weights, biases)


def estimate(model, cells):
    middle, spread, net = model
    return forward(net, (cells[:, :-1] - middle) / spread)[-1][:, 0]


def by_need(strips):
    return [s for s in strips for _ in range(LIGHT_TIMES if s[0] >= LIGHT else 1)]


def report(model, strips):
    errors, cell = [[] for _ in HAIR], []
    for colour, near, _ in strips:
        e = estimate(model, near) - near[:, -1]
        errors[colour].append(100 * e.mean())
        cell.append((e * e).mean())
    flat = np.abs(np.concatenate(errors))
    print(f"{len(strips)} strips left out: mean error {flat.mean():.2f} points, 95 % below {np.quantile(flat, 0.95):.1f},"
          f" of a cell {100 * np.sqrt(np.mean(cell)):.1f}")
    for name, e in zip(HAIR, errors):
        if e:
            print(f"  {name}: {np.abs(e).mean():.2f}, bias {np.mean(e):+.2f} ({len(e)})")


def braces(a):
    if np.ndim(a) == 0:
        return f"{a:.5g}f" if "." in f"{a:.5g}" or "e" in f"{a:.5g}" else f"{a:.5g}.f"
    return "{" + ", ".join(braces(v) for v in a) + "}"


def write(model, path, script, about, space="net", of="inputs", include="look", bounds=()):
    """bounds: what else stands in the header, (name, values of the inputs)."""
    middle, spread, (w, b) = model
    with open(path, "w") as f:
        f.write(f"// Written by tests/render/train/{script}: {about}. Do not edit.\n#pragma once\n\n#include <cstddef>\n\n"
                f'#include "ends/{include}.h"\n\n// clang-format off\nnamespace kempt::ends::{space} {{\n\n'
                f"inline constexpr size_t first_width = {WIDTHS[0]}, second_width = {WIDTHS[1]};\n")
        for name, shape, value in (*((n, f"[{of}]", v) for n, v in bounds),
                                   ("middle", f"[{of}]", middle), ("scale", f"[{of}]", 1 / spread),
                                   ("first", f"[{of}][first_width]", w[0]), ("first_bias", "[first_width]", b[0]),
                                   ("second", "[first_width][second_width]", w[1]), ("second_bias", "[second_width]", b[1]),
                                   ("last", "[second_width][1]", w[2]), ("last_bias", "[1]", b[2])):
            text = braces(value).replace("}, {", "},\n    {")
            f.write(f"inline constexpr float {name}{shape} = {text};\n")
        f.write(f"\n}}  // namespace kempt::ends::{space}\n// clang-format on\n")


if __name__ == "__main__":
    all_strips = read(sys.argv[1])
    steps = int(sys.argv[3]) if len(sys.argv) > 3 else 10000
    # Left out by sevens: the colours come in turn.
    kept = [s for i, s in enumerate(all_strips) if i // 7 % 4]
    report(fit(by_need(kept), steps), [s for i, s in enumerate(all_strips) if i // 7 % 4 == 0])
    write(fit(by_need(all_strips), steps), sys.argv[2], "ends.py", f"{len(all_strips)} strips, {steps} steps")
