#!/usr/bin/python3
"""Runs a kempt executable on the ray-traced photos and prints how its readings compare with the truth.

Usage: judge.py --kempt /work/build/bin/kempt [--photos /work/independent] [--csv rows.csv] [--only TEXT] [--jobs 1]
For each reading: n given, refused, mean error (bias), mean absolute error, SD of error, share of 95 % intervals that hold the
truth, mean interval width; then by skin, hair colour, shape, contrast, px/mm, coverage, card. A test of the sums themselves:
--self-test feeds the truth with a known error and checks the sums.
"""
import argparse
import concurrent.futures as futures
import csv
import json
import os
import subprocess
import sys
import time

READINGS = ["edge_coverage", "fill_depth", "bare_length", "edge_strands", "length_density"]
# The same two readings against the truth without vellus (hairs under 30 um), which few photos can show.
TERMINAL = {"edge_strands_terminal": "edge_strands", "length_density_terminal": "length_density"}
# How finely the truth itself is known (absolute, share of it), from strand numbers at 96 and at 160 px/mm: README. An interval
# counts as holding the truth within this.
RESOLUTION = {"edge_coverage": (0.1, 0), "fill_depth": (0.03, 0), "bare_length": (0.15, 0), "edge_strands": (0.2, 0.03), "length_density": (0.01, 0.01),
              "edge_strands_terminal": (0.2, 0.015), "length_density_terminal": (0.01, 0.005)}


def run_one(kempt, folder, row):
    began = time.time()
    done = subprocess.run([kempt, "measure", os.path.join(folder, row["photo"]), "--marks", os.path.join(folder, row["marks"]), "--json"],
                          capture_output=True, text=True, timeout=600)
    seconds = time.time() - began
    if done.returncode:
        return {"error": (done.stderr.strip().splitlines() or ["exit %d" % done.returncode])[-1], "seconds": seconds}
    try:
        return dict(json.loads(done.stdout), seconds=seconds)
    except ValueError as e:
        return {"error": "stdout is not one JSON object: %s" % e, "seconds": seconds}


def band(value, edges):
    for a, b in zip(edges[:-1], edges[1:]):
        if a <= value < b:
            return "%g-%g" % (a, b)
    return "%g+" % edges[-1]


def factors(row):
    dark = {"black", "dark brown"}
    return {"skin": row["skin"], "hair": row["hair"], "shape": row["shape"], "comb": row["comb"], "card": "card" if row["card"] else "two points",
            "px/mm": band(row["px_per_mm"], [0, 15, 18, 22, 26]), "contrast (CIEDE2000)": band(row["ciede2000"], [0, 10, 20, 30, 45]),
            "true coverage %": band(row["edge_coverage"], [0, 10, 25, 45, 70]), "tilt": band(row["tilt_deg"], [0, 5, 12, 18]),
            "hard pairs": "dark hair on brown or dark skin" if row["hair"] in dark and row["skin"] in ("brown", "dark")
            else "blonde or grey on light skin" if row["hair"] in ("blonde", "grey") and row["skin"] in ("very light", "light") else "the rest"}


def summary(pairs, grain=(0, 0)):
    """grain: resolution of the truth, absolute and relative; pairs: (truth, value, low, high) or (truth, None, None, None) for a refusal."""
    given = [p for p in pairs if p[1] is not None]
    out = {"n": len(given), "refused": len(pairs) - len(given)}
    if given:
        e = [v - t for t, v, _, _ in given]
        m = sum(e) / len(e)
        out.update(bias=m, mae=sum(map(abs, e)) / len(e), sd=(sum((x - m) ** 2 for x in e) / max(1, len(e) - 1)) ** 0.5,
                   worst=max(e, key=abs))
        with_interval = [p for p in given if p[2] is not None and p[3] is not None]
        if with_interval:
            out["held"] = 100 * sum(lo - grain[0] - grain[1] * t <= t <= hi + grain[0] + grain[1] * t for t, _, lo, hi in with_interval) / len(with_interval)
            out["width"] = sum(hi - lo for _, _, lo, hi in with_interval) / len(with_interval)
    return out


def line(label, s):
    f = lambda k, w=8: ("%*.2f" % (w, s[k])) if k in s else " " * (w - 1) + "-"
    return "  %-34s %4d %4d %s %s %s %s %s %s" % (label, s["n"], s["refused"], f("bias"), f("mae"), f("sd"), f("worst"), f("held", 6), f("width"))


def table(results):
    head = "  %-34s %4s %4s %8s %8s %8s %8s %6s %8s" % ("", "n", "ref", "bias", "MAE", "SD", "worst", "held%", "width")
    for name in READINGS + list(TERMINAL):
        pairs, groups = [], {}
        for row, got in results:
            if row.get(name) is None or "error" in got:
                continue
            r = next((r for r in got.get("readings", []) if r["name"] == TERMINAL.get(name, name)), None)
            p = (row[name], r["value"], r.get("low"), r.get("high")) if r and r.get("value") is not None else (row[name], None, None, None)
            pairs.append(p)
            for k, v in factors(row).items():
                groups.setdefault(k, {}).setdefault(v, []).append(p)
        if not pairs:
            continue
        print("\n%s\n%s\n%s" % (name, head, line("all", summary(pairs, RESOLUTION[name]))))
        for k in groups:
            print(" by " + k)
            for v in sorted(groups[k], key=str):
                print(line(v, summary(groups[k][v], RESOLUTION[name])))


def scale_table(results):
    rows = [(row, got["card"]) for row, got in results if "error" not in got and row["card"] and "card" in got]
    found = [(row, c) for row, c in rows if c.get("found")]
    print("\ncard: found in %d of %d photos that show one" % (len(found), len(rows)))
    if found:
        e = [100 * (c["px_per_mm"] / row["px_per_mm"] - 1) for row, c in found]
        print("  px/mm error %%: mean %.3f, mean absolute %.3f, worst %.3f" % (sum(e) / len(e), sum(map(abs, e)) / len(e), max(e, key=abs)))
        e = [c["tilt_deg"] - row["tilt_deg"] for row, c in found if c.get("tilt_deg") is not None]
        if e:
            print("  tilt error deg: mean %.2f, mean absolute %.2f, worst %.2f" % (sum(e) / len(e), sum(map(abs, e)) / len(e), max(e, key=abs)))
    missed = [row["photo"] for row, c in rows if not c.get("found")]
    if missed:
        print("  not found in: " + " ".join(missed))


def reasons(results):
    errors, codes = {}, {}
    for row, got in results:
        if "error" in got:
            errors.setdefault(got["error"], []).append(row["id"])
        for r in got.get("refused", []):
            codes.setdefault((r["name"], r.get("code", "?")), []).append(row["id"])
    print("\nfailed runs: %d" % sum(map(len, errors.values())))
    for e, ids in errors.items():
        print("  %3d x %s   (%s)" % (len(ids), e[:150], " ".join(ids[:4])))
    print("refusals by reading and code")
    for (name, code), ids in sorted(codes.items()):
        print("  %3d x %-16s %-28s e.g. %s" % (len(ids), name, code, " ".join(ids[:4])))
    seconds = sorted(got["seconds"] for _, got in results)
    print("seconds a photo: median %.1f, longest %.1f" % (seconds[len(seconds) // 2], seconds[-1]))


def self_test(rows):
    """The sums must find the error that was put in: +3 with intervals of +-2 (none holds), then +1 (all hold)."""
    for shift, held in ((3, 0.0), (1, 100.0)):
        s = summary([(r["edge_coverage"], r["edge_coverage"] + shift, r["edge_coverage"] + shift - 2, r["edge_coverage"] + shift + 2) for r in rows]
                    + [(1, None, None, None)])
        good = abs(s["bias"] - shift) < 1e-9 and abs(s["mae"] - shift) < 1e-9 and s["held"] == held and s["refused"] == 1 and s["n"] == len(rows)
        print("self-test +%g: %s" % (shift, "ok" if good else "WRONG %s" % s))
        if not good:
            sys.exit(1)


def main():
    a = argparse.ArgumentParser()
    a.add_argument("--kempt", default="/work/build/bin/kempt")
    a.add_argument("--photos", default="/work/independent")
    a.add_argument("--csv", help="also write a row for each photo and reading")
    a.add_argument("--only", default="", help="photos whose id, skin, hair or shape holds this text")
    a.add_argument("--jobs", type=int, default=1)
    a.add_argument("--self-test", action="store_true")
    o = a.parse_args()
    rows = json.load(open(os.path.join(o.photos, "index.json")))["photos"]
    rows = [r for r in rows if o.only in " ".join((r["id"], r["skin"], r["hair"], r["shape"]))]
    if not rows:
        sys.exit("no photos in " + o.photos)
    if o.self_test:
        return self_test(rows)
    with futures.ThreadPoolExecutor(o.jobs) as pool:
        results = list(zip(rows, pool.map(lambda r: run_one(o.kempt, o.photos, r), rows)))
    print("%d photos of %d scenes, %s" % (len(rows), len({r["scene"] for r in rows}), o.kempt))
    table(results)
    scale_table(results)
    reasons(results)
    if o.csv:
        with open(o.csv, "w", newline="") as out:
            w = csv.writer(out)
            w.writerow(["id", "skin", "hair", "shape", "comb", "card", "true_px_per_mm", "tilt_deg", "ciede2000", "reading", "truth", "value", "low", "high", "refused"])
            for row, got in results:
                for name in READINGS:
                    r = next((r for r in got.get("readings", []) if r["name"] == name), {})
                    why = got.get("error") or next((x.get("code") for x in got.get("refused", []) if x["name"] == name), "")
                    w.writerow([row[k] for k in ("id", "skin", "hair", "shape", "comb", "card", "px_per_mm", "tilt_deg", "ciede2000")]
                               + [name, row[name], r.get("value"), r.get("low"), r.get("high"), why])


if __name__ == "__main__":
    main()
