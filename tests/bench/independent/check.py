#!/usr/bin/python3
"""Checks this bench itself on scenes whose answer follows from arithmetic: exits 1 when the truth code or the projection is off.

Parallel strands of 0.080 mm lying flat, 2 mm apart, from depth `start` inward, on a tilted and turned camera, straight edge line. Expected:
coverage 0.080 / (2 cos a) from `start` on, 5 cos-free strands a cm, length density 1 / (2 cos a), with a the lean from the normal.
"""
import os
import sys

import numpy as np

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import hairline
import scene
import truth
from camera import Camera


def fence(lean, start, doubled):
    out = []
    reach = 26 / np.cos(lean)
    for x in np.arange(-60.0, 60, 2.0):
        t = np.linspace(0, reach, 30)
        for copy in range(2 if doubled else 1):  # the second copy lies exactly under the first: hidden
            p = np.stack([x + t * np.sin(lean), start + t * np.cos(lean), np.full(30, 0.13 - 0.085 * copy)], -1)
            out.append(hairline.Strand(p, np.full(30, 0.04 if copy == 0 else 0.035), "long", 0))
    return out


def run(name, lean_deg, start, doubled, tilt):
    lean = np.radians(lean_deg)
    work = "/tmp/kempt-independent/check"
    os.makedirs(work, exist_ok=True)
    camera = Camera(centre=(0, 7.8), tilt=tilt, azimuth=35, roll=183, distance=4000, field=(40, 30.5), scale=48)
    edge = hairline.Edge(0, 0)
    strands = fence(lean, start, doubled)
    scene.geometry(strands, work + "/hair.inc")
    text = scene.numbers(camera, 1e6, None)
    numbers = truth.strand_numbers(scene.render(work, "numbers", text, camera.size, 8))
    got = truth.measure(camera, edge, numbers, strands, truth.edge_span(camera, edge))
    per_mm = 0.080 / (2 * np.cos(lean))
    inside = (10 - start) / 10
    want = {"edge_coverage": (100 * per_mm * inside, 0.06), "edge_strands": (5.0, 0.2), "edge_strands_hidden_too": (10.0 if doubled else 5.0, 0.4),
            "length_density": (inside / (2 * np.cos(lean)), 0.012), "fill_depth": (start, 0.26), "bare_length": (got["edge_length_mm"], 0.01)}
    bad = 0
    for k, (w, tolerance) in want.items():
        ok = abs(got[k] - w) <= tolerance
        bad += not ok
        print("%-22s %-26s got %8.3f want %8.3f +- %.3f  %s" % (name, k, got[k], w, tolerance, "ok" if ok else "WRONG"))
    return bad


if __name__ == "__main__":
    # tilt 0 with doubles, so that the lower strand is hidden right under the upper one; tilted without
    wrong = run("upright", 0, 0.0, True, 0) + run("leaning, from 3 mm", 40, 3.0, False, 20)
    sys.exit(1 if wrong else 0)
