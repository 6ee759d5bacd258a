"""Truth of a scene from its geometry and the strand-number picture; never from the photo.

Band coordinates: s along the edge line, depth inward from it, both mm on the plane z = 0, seen through the scene's own camera
(so that a lifted hair counts where it is seen). Definitions: design section 4 and README.md here.
"""
import numpy as np

COLUMN, BIN = 1.0, 0.25


def strand_numbers(codes):
    c = codes.astype(np.int32)
    return c[..., 0] << 16 | c[..., 1] << 8 | c[..., 2]


def look(numbers, px):
    """Strand numbers at (..., 2) px, nearest; 0 outside."""
    x, y = np.rint(px[..., 0]).astype(int), np.rint(px[..., 1]).astype(int)
    inside = (x >= 0) & (y >= 0) & (x < numbers.shape[1]) & (y < numbers.shape[0])
    out = np.zeros(x.shape, numbers.dtype)
    out[inside] = numbers[y[inside], x[inside]]
    return out


def edge_span(camera, edge, margin_mm=0.5, deep=20.0):
    """Longest stretch of s around 0 whose whole band, -0.5..deep, lies in the picture."""
    s = np.arange(-60, 60, 0.1)
    ok = np.ones(len(s), bool)
    m = margin_mm * camera.scale_at(camera.centre[:2])
    for d in (-0.5, 0.0, deep / 2, deep):
        p = camera.px(edge.point(s, np.full(len(s), d)))
        ok &= (p[:, 0] > m) & (p[:, 1] > m) & (p[:, 0] < camera.size[0] - m) & (p[:, 1] < camera.size[1] - m)
    middle = len(s) // 2
    if not ok[middle]:
        raise ValueError("the band leaves the picture")
    a = middle - np.argmin(ok[:middle + 1][::-1]) + 1
    b = middle + np.argmin(ok[middle:]) - 1
    return float(s[a]), float(s[b])


def measure(camera, edge, numbers, strands, span):
    """All values of the truth file that follow from geometry. camera: the one of the strand-number picture."""
    s0, s1 = span
    s = np.arange(s0 + 0.01, s1, 0.02)
    d = np.arange(0.01, 20, 0.02)
    grid = edge.point(np.repeat(s, len(d)), np.tile(d, len(s)))
    hair = (look(numbers, camera.px(grid)) > 0).reshape(len(s), len(d))
    out = {"edge_coverage": 100 * hair[:, d < 10].mean()}
    bins = hair.mean(0)[: int(20 / 0.02) // 1].reshape(-1, 1)
    edges = np.arange(0, 20 + 1e-9, BIN)
    profile = np.array([bins[(d >= a) & (d < a + BIN)].mean() for a in edges[:-1]])
    out["coverage_profile"] = {"depth_mm": (edges[:-1] + BIN / 2).round(4).tolist(), "percent": (100 * profile).round(3).tolist()}
    smooth = np.convolve(np.pad(profile, 1, mode="edge"), [0.25, 0.5, 0.25], "valid")
    half = profile[edges[:-1] >= 15].mean() / 2
    out["coverage_15_20"] = 100 * 2 * half
    above = np.flatnonzero(smooth >= half)
    if half > 0.01 and len(above):
        i, mid = above[0], edges[:-1] + BIN / 2
        out["fill_depth"] = 0.0 if i == 0 else float(mid[i - 1] + BIN * (half - smooth[i - 1]) / (smooth[i] - smooth[i - 1]))
    else:
        out["fill_depth"] = None
    column = np.minimum(((s - s0) / COLUMN).astype(int), int(np.ceil((s1 - s0) / COLUMN)) - 1)
    along = np.array([hair[column == c][:, d < 10].mean() for c in range(column.max() + 1)])
    width = np.minimum(COLUMN, s1 - s0 - COLUMN * np.arange(len(along)))
    out["bare_length"] = float((width * (along < 0.20)).sum())
    out["coverage_along"] = {"column_mm": COLUMN, "percent": (100 * along).round(2).tolist()}
    at5 = (look(numbers, camera.px(edge.point(s, np.full(len(s), 5.0)))) > 0)
    out["line5_coverage"] = 100 * at5.mean()
    out["edge_length_mm"] = s1 - s0
    out.update(strand_truth(camera, edge, numbers, strands, span))
    return out


def strand_truth(camera, edge, numbers, strands, span):
    """edge_strands and length_density: each strand's centre line is seen through the camera, laid on the plane and followed
    in steps of 0.04 mm; at each place its width is sampled across and compared with the strand-number picture."""
    s0, s1 = span
    length = {"seen": 0.0, "all": 0.0, "seen_vellus": 0.0}
    crossings = {"seen": 0, "all": 0, "seen_vellus": 0}
    who = set()
    across = np.linspace(-0.86, 0.86, 7)  # of the half width: clear of the rim's rounding to a pixel
    for number, strand in enumerate(strands, 1):
        p3, r = strand.points, strand.radius
        flat = camera.plane(camera.px(p3))
        if flat[:, 1].max() < -12:
            continue
        step = np.hypot(*np.diff(flat, axis=0).T)
        u = np.concatenate([[0], np.cumsum(step)])
        if u[-1] < 0.08:
            continue
        t = np.arange(0.02, u[-1], 0.04)
        line3 = np.stack([np.interp(t, u, p3[:, i]) for i in range(3)], -1)
        radius = np.interp(t, u, r)
        px = camera.px(line3)
        xy = camera.plane(px)
        band_s, band_d = edge.band(xy)
        near = (band_d > -0.5) & (band_d < 10.5) & (band_s > s0 - 0.5) & (band_s < s1 + 0.5)
        if not near.any():
            continue
        run = np.gradient(px, axis=0) if len(px) > 1 else np.ones_like(px)
        run /= np.maximum(np.linalg.norm(run, axis=1, keepdims=True), 1e-9)
        normal = np.stack([-run[:, 1], run[:, 0]], -1)
        local = camera.focal / ((line3 - camera.position) @ camera.axis)  # px per mm at that depth
        share = np.zeros(len(t))
        where = px[near, None] + across[None, :, None] * (radius * local)[near, None, None] * normal[near, None]
        share[near] = (look(numbers, where) == number).mean(1)
        seen = share >= 0.5
        inside = (band_d >= 0) & (band_d < 10) & (band_s >= s0) & (band_s <= s1)
        length["all"] += 0.04 * inside.sum()
        length["seen"] += 0.04 * (inside & seen).sum()
        if strand.kind == "vellus":
            length["seen_vellus"] += 0.04 * (inside & seen).sum()
        cross = np.flatnonzero((band_d[:-1] < 5) != (band_d[1:] < 5))
        cross = cross[(band_s[cross] >= s0) & (band_s[cross] <= s1) & near[cross]]
        for c in cross:
            crossings["all"] += 1
            if share[max(0, c - 1):c + 3].mean() >= 0.5:
                crossings["seen"] += 1
                crossings["seen_vellus"] += strand.kind == "vellus"
                who.add(number)
    cm, area = (s1 - s0) / 10, (s1 - s0) * 10
    return {"edge_strands": crossings["seen"] / cm, "edge_strands_distinct": len(who) / cm,
            "edge_strands_hidden_too": crossings["all"] / cm, "edge_strands_vellus": crossings["seen_vellus"] / cm,
            "length_density": length["seen"] / area, "length_density_hidden_too": length["all"] / area,
            "length_density_vellus": length["seen_vellus"] / area}
