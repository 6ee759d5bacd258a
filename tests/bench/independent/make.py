#!/usr/bin/python3
"""Ray-traced hairline photos with known truth. Usage: make.py --out DIR [--scenes FIRST LAST] [--card CARD.png] [--size small|card]

A scene is rendered once, finely (FINE px/mm, linear light), and developed into three photos with different px/mm and camera traits.
Existing scenes are kept; index.json is rewritten at the end and after each scene.
"""
import argparse
import glob
import json
import os
import shutil
import sys
import time

import cv2
import numpy as np

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import hairline
import scene
import truth
from camera import Camera
from develop import develop

FINE = {"small": 96, "card": 72}  # px/mm of the strand-number picture
LIGHT = {"small": 36, "card": 28}  # px/mm of the light picture
SKINS, HAIRS = list(scene.SKIN), list(scene.HAIR)
LEVELS = [("sparse", .25), ("thin", .6), ("medium", 1.1), ("good", 1.9), ("full", 3.0)]  # follicles per mm2 behind the ramp
ITA = {"very light": (56, 66), "light": (42, 54), "intermediate": (29, 40), "tan": (11, 27), "brown": (-28, 9), "dark": (-62, -32)}


def plan(kind, number):
    """Everything that is chosen for a scene; 42 numbers in a row pass through each pair of skin and hair once."""
    rng = np.random.default_rng([7719, number, kind == "card"])
    shuffled = np.random.default_rng([31, kind == "card", number // 30])
    pick = lambda k: int(shuffled.permutation(np.arange(30) % k)[number % 30])
    s = {"seed": int(rng.integers(1 << 30)), "skin": SKINS[number % 6], "hair": HAIRS[(number + 3 * (kind == "card")) % 7]}
    # ramps: the first six small scenes turned out sparse near the edge; from there on they are shorter
    level, s["density"] = LEVELS[pick(5)]
    s["level"], s["shape"], s["comb"] = level, ["straight", "wavy", "coiled"][pick(3)], ["back", "sideways", "mixed"][pick(3)]
    if s["shape"] == "coiled":
        s["density"] *= 0.75
    u = rng.uniform
    s.update(side=int(rng.choice([-1, 1])), ita=u(*ITA[s["skin"]]), ramp_mm=u(0.5, 12) * (1.0 if kind == "small" and number < 6 else 0.55), floor=u(0.02, 0.5), regrowth=u(0.03, 0.25),
             vellus_per_mm2=u(0, 0.35), width_um=float(np.clip(rng.normal(70, 7), 55, 85)), lift_mm=u(0.35, 1.1), clump_pull=u(0, 0.6),
             clump_per_mm2=u(0.04, 0.15), wave_mm=u(12, 25), wave_amp=u(0.7, 2.0), coil_r=u(0.8, 2.0), coil_pitch=u(2.5, 5.0),
             gaps=[(float(u(-18, 18)), float(u(3, 9))) for _ in range(int(rng.integers(0, 3)))] if u(0, 1) < 0.5 else [], gap_depth=u(8, 16))
    s.update(key=u(0.45, 0.65), fill=u(0.2, 0.3), key_at=(u(0, 360), u(38, 75)), fill_at=(u(0, 360), u(45, 75)), key_mm=u(60, 260),
             bump=u(0.3, 0.9), oil=u(0.03, 0.12), oil_rough=u(0.05, 0.12), sheen=u(0.12, 0.45), sheen_rough=u(0.008, 0.03),
             white_share=u(0.25, 0.6), radius=u(800, 1500))
    tilt = u(0, 25) if kind == "card" else u(0, 8)
    s["view"] = dict(tilt=tilt, azimuth=u(0, 360), roll=float(rng.normal(0, 2)) + 180 * int(rng.integers(0, 2)), distance=u(130, 240),
                     centre=(0, -6.5) if kind == "card" else (0, 7.8), field=(98 * (1 + tilt / 400), 62 * (1 + tilt / 400)) if kind == "card" else (40, 30.5))
    s["edge"] = (u(-1.5, 2.5), u(-0.02, 0.02)) if kind == "card" else (u(-4, 4), u(-0.05, 0.05))
    s["card"] = (u(-1, 1), -20.0 - u(0, 0.8), rng.normal(0, 0.6), 0.3) if kind == "card" else None
    scales = (u(12, 17), u(17, 23), u(23, 30)) if kind != "card" else (u(12, 15), u(15, 18), u(18, 23))
    s["cameras"] = [dict(px_per_mm=p, blur_px=u(0.4, 0.8), vignette=u(0, 0.08), exposure_pull=u(0.9, 1.1), gains=[u(0.88, 1.12), 1.0, u(0.85, 1.15)],
                         shot=10 ** u(-3.7, -2.8), read=u(0.001, 0.005), noise_px=u(0, 0.7), curve=u(0.05, 0.35),
                         sharpen=u(0.2, 0.7) if u(0, 1) < 0.6 else 0.0, quality=int(u(80, 96))) for p in scales]
    return s


def lab(linear_rgb):
    from skimage.color import xyz2lab
    m = np.array([[0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.072175], [0.0193339, 0.119192, 0.9503041]])
    return xyz2lab((m @ np.asarray(linear_rgb, float)).reshape(1, 1, 3)).reshape(3)


def contrast(linear, covered, keep):
    from skimage.color import deltaE_ciede2000
    a, b = (linear[m & keep].mean(0) / scene.WHITE if (m & keep).any() else np.zeros(3) for m in (covered > 0.75, covered < 0.01))
    la, lb = lab(a), lab(b)
    return {"hair_lab": la.round(2).tolist(), "skin_lab": lb.round(2).tolist(), "ciede2000": float(deltaE_ciede2000(la[None], lb[None])[0])}


def set_up(kind, number):
    """Everything before the light: spec, name, work folder, camera, edge, strands, rng."""
    spec = plan(kind, number)
    name = "%s%02d" % (kind, number)
    work = "/tmp/kempt-independent/" + name
    os.makedirs(work, exist_ok=True)
    rng = np.random.default_rng(spec["seed"])
    v, r = spec["view"], spec["radius"]
    camera = Camera(scale=FINE[kind], **v)
    edge = hairline.Edge(*spec["edge"])
    half, deep = v["field"][0] / 2 * 1.12 + 1, 29 if kind != "card" else 31
    strands = hairline.strands(rng, edge, spec, half, deep, lambda x, y: np.sqrt(r * r - x * x - y * y) - r)
    scene.geometry(strands, work + "/hair.inc")
    return spec, name, work, rng, camera, edge, strands, (half, deep)


def values_of(spec, work, camera, edge, strands):
    codes = scene.render(work, "numbers", scene.numbers(camera, spec["radius"], spec["card"]), camera.size, 8)
    numbers = truth.strand_numbers(codes)
    span = truth.edge_span(camera, edge)
    return numbers, span, truth.measure(camera, edge, numbers, strands, span)


def truth_again(kind, number, out):
    """Rewrites the truth of a scene whose photos are there, from its geometry; the contrast needs the light and stays."""
    spec, name, work, _, camera, edge, strands, _ = set_up(kind, number)
    _, _, values = values_of(spec, work, camera, edge, strands)
    for path in glob.glob("%s/truth_%s?.json" % (out, name)):
        t = json.load(open(path))
        assert t["strands_in_scene"] == len(strands) and abs(t["truth"]["edge_coverage"] - values["edge_coverage"]) < 1, "not the same scene: " + path
        values["contrast"] = t["truth"]["contrast"]
        before, t["truth"] = t["truth"], values
        json.dump(t, open(path, "w"), indent=1)
    print(name, *("%s %.3f -> %.3f" % (k, before[k], values[k]) for k in ("edge_coverage", "fill_depth", "edge_strands", "length_density")), flush=True)
    shutil.rmtree(work)


def make(kind, number, card_png, out, keep_work=False):
    spec, name, work, rng, camera, edge, strands, (half, deep) = set_up(kind, number)
    v, r = spec["view"], spec["radius"]
    bright = camera.resized(LIGHT[kind])
    box = (-half - 6, v["centre"][1] - v["field"][1] * 0.65 - 4, half + 6, deep + 6)
    starts = np.array([s.points[0, :2] for s in strands if s.kind != "vellus" and s.points[0, 2] < -0.05])
    scene.skin_pictures(rng, spec, box, starts.reshape(-1, 2), work)
    began = time.time()
    numbers, span, values = values_of(spec, work, camera, edge, strands)
    linear = scene.render(work, "light", scene.beauty(spec, bright, box, r, card_png if kind == "card" else None), bright.size, 16)
    seconds = time.time() - began
    h, w = linear.shape[:2]
    covered = cv2.resize((numbers > 0).astype(np.float32), (w, h), interpolation=cv2.INTER_AREA)
    xy = bright.plane(np.stack(np.meshgrid(np.arange(w), np.arange(h)), -1).astype(float))
    side = xy[..., 1] > np.interp(xy[..., 0], edge.x, edge.y) - (3 if kind == "card" else 99)  # the card is no skin
    values["contrast"] = contrast(linear, covered, side)
    mean = float(linear.mean() / scene.WHITE)
    for i, c in enumerate(spec["cameras"]):
        photo_camera = camera.resized(c["px_per_mm"])
        c["exposure"] = (0.9 if kind == "card" else float(np.clip((0.22 / mean) ** 0.6, 0.7, 2.2))) * c["exposure_pull"]
        picture = develop(linear, photo_camera.size, c, np.random.default_rng([spec["seed"], i]))
        tag = "%s%d" % (name, i)
        at = spec["card"][:2] + (spec["card"][3],) if kind == "card" else v["centre"]
        s = np.linspace(span[0], span[1], max(6, int((span[1] - span[0]) / 3)))
        line = photo_camera.px(edge.point(s, np.zeros(len(s))))
        hair_side = photo_camera.px(edge.point(np.array([sum(span) / 2]), np.array([8.0])))[0]
        marks = {"view": "front hairline", "edge_line": line.round(2).tolist(), "hair_side": hair_side.round(2).tolist()}
        if kind != "card":
            marks["scale"] = {"points": photo_camera.px(np.array([[-15.0, 7.0], [15.0, 7.0]])).round(2).tolist(), "mm": 30}
        bits = {"id": tag, "scene": name, "photo": "photo_%s.jpg" % tag, "marks": "marks_%s.json" % tag, "card": kind == "card",
                "skin": spec["skin"], "ita_deg": spec["ita"], "hair": spec["hair"], "shape": spec["shape"], "comb": spec["comb"], "level": spec["level"],
                "px_per_mm": photo_camera.scale_at(at), "tilt_deg": v["tilt"], "focal_px": photo_camera.focal, "width": photo_camera.size[0],
                "height": photo_camera.size[1], "strands_in_scene": len(strands), "camera_traits": c, "scene_choices": {k: spec[k] for k in spec if k != "cameras"},
                "truth": values}
        cv2.imwrite("%s/photo_%s.jpg" % (out, tag), picture, [cv2.IMWRITE_JPEG_QUALITY, c["quality"]])
        json.dump(marks, open("%s/marks_%s.json" % (out, tag), "w"))
        json.dump(bits, open("%s/truth_%s.json" % (out, tag), "w"), indent=1)
    print("%s %-12s %-15s %-8s %-8s %-6s strands %5d  cover %5.1f  fill %s  bare %4.1f  n %5.1f  L %5.2f  dE %4.1f  render %3.0f s" % (
        name, spec["skin"], spec["hair"], spec["shape"], spec["comb"], spec["level"], len(strands), values["edge_coverage"],
        "%4.1f" % values["fill_depth"] if values["fill_depth"] is not None else "none", values["bare_length"], values["edge_strands"],
        values["length_density"], values["contrast"]["ciede2000"], seconds), flush=True)
    if not keep_work:
        shutil.rmtree(work)


def index(out):
    rows = []
    for path in sorted(glob.glob(out + "/truth_*.json")):
        t = json.load(open(path))
        row = {k: t[k] for k in ("id", "scene", "photo", "marks", "card", "skin", "hair", "shape", "comb", "level", "px_per_mm", "tilt_deg")}
        row.update({k: t["truth"][k] for k in ("edge_coverage", "fill_depth", "bare_length", "edge_strands", "length_density", "line5_coverage")},
                   edge_strands_terminal=t["truth"]["edge_strands"] - t["truth"]["edge_strands_vellus"],
                   length_density_terminal=t["truth"]["length_density"] - t["truth"]["length_density_vellus"],
                   ciede2000=t["truth"]["contrast"]["ciede2000"])
        rows.append(row)
    json.dump({"photos": rows}, open(out + "/index.json", "w"), indent=1)


if __name__ == "__main__":
    a = argparse.ArgumentParser()
    a.add_argument("--out", default="/work/independent")
    a.add_argument("--kind", default="small", choices=["small", "card"])
    a.add_argument("--scenes", nargs=2, type=int, default=[0, 10], help="first and one past the last")
    a.add_argument("--card", help="PNG of the card's face (kempt card --kind card --png --px-per-mm 20)")
    a.add_argument("--keep-work", action="store_true")
    a.add_argument("--again", action="store_true", help="also scenes that are there already")
    a.add_argument("--truth-again", action="store_true", help="only recompute the truth of scenes that are there")
    o = a.parse_args()
    if o.kind == "card" and not o.card and not o.truth_again:
        a.error("--kind card needs --card")
    os.makedirs(o.out, exist_ok=True)
    for n in range(*o.scenes):
        there = os.path.exists("%s/truth_%s%02d1.json" % (o.out, o.kind, n))
        if o.truth_again and there:
            truth_again(o.kind, n, o.out)
            index(o.out)
        elif not o.truth_again and (o.again or not there):
            make(o.kind, n, o.card and os.path.abspath(o.card), o.out, o.keep_work)
            index(o.out)
