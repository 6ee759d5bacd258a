"""One scene as POV-Ray text: skin (pigment and relief pictures), hair, light, card; and the strand-number pass.

Colours here are linear light; a white matt plate flat in the scene renders to WHITE so that sheen has headroom.
"""
import os
import subprocess

import cv2
import numpy as np

WHITE = 0.5
SKIN_PX_PER_MM = 22
# Middle of each published class of individual typology angle (ITA = atan((L* - 50) / b*)); a* and b* are typical values
# (from memory of skin colour surveys), the angle alone defines the class.
SKIN = {"very light": (60, 12.5, 9), "light": (48, 15, 10.5), "intermediate": (34, 17, 11.5), "tan": (19, 18.5, 12),
        "brown": (-10, 17.5, 12), "dark": (-46, 13, 9.5)}
# Diffuse reflectance of the fibre, linear red green blue: plausible values, not measurements.
HAIR = {"black": [(.011, .010, .010)], "dark brown": [(.036, .023, .016)], "medium brown": [(.105, .062, .036)],
        "red": [(.215, .082, .034)], "blonde": [(.44, .300, .170)], "grey": [(.60, .585, .55)],
        "salt and pepper": [(.013, .012, .012), (.60, .585, .56)]}
PALE = ("blonde", "grey")


def lab_to_linear(lab):
    f = (lab[0] + 16) / 116
    f = np.array([f + lab[1] / 500, f, f - lab[2] / 200])
    xyz = np.where(f > 6 / 29, f ** 3, 3 * (6 / 29) ** 2 * (f - 4 / 29)) * [0.95047, 1, 1.08883]
    m = np.array([[3.2404542, -1.5371385, -0.4985314], [-0.969266, 1.8760108, 0.041556], [0.0556434, -0.2040259, 1.0572252]])
    return m @ xyz


def srgb(x):
    x = np.clip(x, 0, 1)
    return np.where(x <= 0.0031308, 12.92 * x, 1.055 * x ** (1 / 2.4) - 0.055)


def blob(shape, points, size, depth):
    """Sum of Gaussian spots; points in px, size (SD, px) and depth for each."""
    out = np.zeros(shape, np.float32)
    for (x, y), s, d in zip(points, size, depth):
        r = int(3 * s) + 1
        x0, y0 = int(round(x)), int(round(y))
        if r <= x0 < shape[1] - r and r <= y0 < shape[0] - r:
            g = np.arange(-r, r + 1)
            gx, gy = np.exp(-((g + x0 - x) / s) ** 2 / 2), np.exp(-((g + y0 - y) / s) ** 2 / 2)
            out[y0 - r:y0 + r + 1, x0 - r:x0 + r + 1] += d * gy[:, None] * gx[None]
    return out


def skin_pictures(rng, spec, box, roots_xy, folder):
    """skin.png (pigment) and bump.png (relief) for the plane box (x0, y0, x1, y1); returns nothing."""
    k = SKIN_PX_PER_MM
    w, h = int((box[2] - box[0]) * k), int((box[3] - box[1]) * k)

    def noise(mm):
        small = max(1, int(mm * k / 4))
        n = rng.normal(0, 1, (h // small + 9, w // small + 9)).astype(np.float32)
        n = cv2.resize(cv2.GaussianBlur(n, (0, 0), max(0.8, mm * k / small / 2)), None, fx=small, fy=small, interpolation=cv2.INTER_CUBIC)
        n = n[:h, :w]
        return (n - n.mean()) / n.std()

    ita, b, a = spec["ita"], SKIN[spec["skin"]][1], SKIN[spec["skin"]][2]
    base = lab_to_linear((50 + b * np.tan(np.radians(ita)), a, b))
    melanin = 0.045 * noise(7) + 0.03 * noise(1.6) + 0.03 * noise(0.35)
    blood = 0.035 * noise(9) + 0.03 * noise(2.5)
    n_pores = int(w * h / k / k * rng.uniform(0.3, 0.9))
    at = np.stack([rng.uniform(0, w, n_pores), rng.uniform(0, h, n_pores)], -1)
    pores = blob((h, w), at, rng.uniform(0.04, 0.10, n_pores) * k, rng.uniform(0.08, 0.35, n_pores))
    px = (roots_xy - [box[0], box[1]]) * k
    px[:, 1] = h - px[:, 1]
    dark = 0.30 if spec["hair"] not in PALE else 0.10
    follicles = blob((h, w), px, rng.uniform(0.05, 0.09, len(px)) * k, rng.uniform(0.3, 1, len(px)) * dark)
    moles = rng.poisson(0.7)
    mole = blob((h, w), rng.uniform([0, 0], [w, h], (moles, 2)), rng.uniform(0.25, 0.8, moles) * k, rng.uniform(0.25, 0.8, moles))
    melanin = melanin + pores + follicles + mole
    albedo = base[None, None] * np.exp(-melanin[..., None] * [0.7, 1.0, 1.25] - blood[..., None] * [0.15, 1.0, 0.7])
    cv2.imwrite(folder + "/skin.png", (srgb(albedo)[..., ::-1] * 255 + 0.5).astype(np.uint8))
    creases = np.minimum(np.abs(noise(0.30)), np.abs(noise(0.45)))
    relief = 0.5 + 0.10 * np.clip(creases, 0, 1.2) + 0.05 * noise(1.2) + 0.03 * noise(0.15) - 0.9 * pores - 0.4 * follicles
    cv2.imwrite(folder + "/bump.png", (np.clip(relief, 0, 1) * 255).astype(np.uint8))


def geometry(strands, path):
    """hair.inc: a union for each strand; S(shade, r, g, b) gives its texture, r g b being its number."""
    with open(path, "w") as out:
        for number, s in enumerate(strands, 1):
            p, r = s.points, s.radius
            out.write("union{\n")
            rows = np.column_stack([p[:-1], r[:-1], p[1:], r[1:]])
            out.write("".join("cone{<%.4f,%.4f,%.4f>,%.4f <%.4f,%.4f,%.4f>,%.4f open}\n" % tuple(q) for q in rows))
            shade = s.shade + (100 if s.kind == "vellus" else 0)
            out.write("S(%d,%d,%d,%d)}\n" % (shade, number >> 16, number >> 8 & 255, number & 255))


def beauty(spec, camera, box, radius, card_png):
    f3 = lambda c: "<%.5f,%.5f,%.5f>" % tuple(c)
    rng = np.random.default_rng(spec["seed"] + 5)
    t = ["#version 3.7;\nglobal_settings { assumed_gamma 1.0 max_trace_level 7 adc_bailout 0.05 }\nbackground { rgb 0 }\n", camera.pov()]
    aim = camera.centre
    for share, (az, el), dist, size, n in ((spec["key"], spec["key_at"], 520, spec["key_mm"], (2, 2)), (spec["fill"], spec["fill_at"], 600, 420, (2, 1))):
        az, el = np.radians([az, el])
        away = np.array([np.cos(el) * np.cos(az), np.cos(el) * np.sin(az), np.sin(el)])
        u = np.cross(away, [0.3, 0.2, 0.93]); u /= np.linalg.norm(u)
        v = np.cross(away, u)
        t.append("light_source { %s rgb %.4f area_light %s %s %d %d jitter }\n" % (
            f3(aim + dist * away), share * WHITE / np.sin(el), f3(u * size), f3(v * size), *n))
    rest = 1 - spec["key"] - spec["fill"]
    t.append("light_source { %s rgb %.4f shadowless }\n" % (f3(aim + [0, 60, 500]), rest * WHITE / np.cos(np.arctan(60 / 500))))
    t.append("#declare Fit = transform { scale <%.4f,%.4f,1> translate <%.4f,%.4f,0> }\n" % (box[2] - box[0], box[3] - box[1], box[0], box[1]))
    t.append("sphere { <0,0,%.3f>, %.3f pigment { image_map { png \"skin.png\" interpolate 2 } transform { Fit } }\n"
             " normal { bump_map { png \"bump.png\" interpolate 2 bump_size %.2f } transform { Fit } }\n"
             " finish { ambient 0 diffuse 1 specular %.3f roughness %.3f } }\n" % (-radius, radius, spec["bump"], spec["oil"], spec["oil_rough"]))
    shades = HAIR[spec["hair"]]
    for i in range(12):
        base = np.array(shades[int(i < 12 * spec.get("white_share", 0))] if len(shades) > 1 else shades[0])
        colour = base * rng.lognormal(0, 0.18) * np.array([rng.lognormal(0, 0.03), 1, rng.lognormal(0, 0.05)])
        pale = spec["hair"] in PALE or base[0] > 0.3
        t.append("#declare H%d = texture { pigment { rgb %s %s } finish { ambient %s diffuse 0.85 specular %.3f roughness %.4f phong %.3f phong_size 12 } }\n" % (
            i, f3(np.clip(colour, 0, 1)), "transmit 0.16" if pale else "transmit 0.05" if base[0] > 0.09 else "", "0.08" if pale else "0.02",
            spec["sheen"] * rng.uniform(0.7, 1.3), spec["sheen_rough"], 0.10 * spec["sheen"]))
        soft = np.clip(base * 1.4 + 0.10, 0, 0.65)
        t.append("#declare H%d = texture { pigment { rgb %s transmit 0.35 } finish { ambient 0.05 diffuse 0.8 specular 0.2 roughness 0.02 } }\n" % (100 + i, f3(soft)))
    t.append("#declare P = array[112] {" + ",".join("texture{H%d}" % (i if i < 12 else max(100, i)) for i in range(112)) + "}\n")
    t.append("// light that enters a pale fibre leaves it again without a second shading: the far wall is clear\n"
             "#declare Clear = texture { pigment { rgbt 1 } finish { ambient 0 diffuse 0 } }\n"
             "#macro S(k,r,g,b) texture { P[k] } interior_texture { Clear } #end\n#include \"hair.inc\"\n")
    if card_png:
        x, y, turn, z = spec["card"]
        t.append("box { <0,0,-0.3> <84,30,0> texture { pigment { image_map { png \"%s\" interpolate 2 } scale <84,30,1> }\n"
                 " finish { ambient 0 diffuse 1 specular 0.03 roughness 0.1 } } translate <-42,-15,0> rotate z*%.4f translate <%.4f,%.4f,%.4f> }\n" % (
                     card_png, turn, x, y, z))
    return "".join(t)


def numbers(camera, radius, card):
    t = ["#version 3.7;\nglobal_settings { assumed_gamma 1.0 ambient_light rgb 1 }\nbackground { rgb 0 }\n", camera.pov(),
         "sphere { <0,0,%.3f>, %.3f pigment { rgb 0 } finish { ambient 0 diffuse 0 } }\n" % (-radius, radius),
         "#macro S(k,r,g,b) pigment { rgb <r,g,b>/255 } finish { ambient 1 diffuse 0 } #end\n#include \"hair.inc\"\n"]
    if card:
        t.append("box { <-42,-15,-0.3> <42,15,0> pigment { rgb 0 } finish { ambient 0 diffuse 0 } rotate z*%.4f translate <%.4f,%.4f,%.4f> }\n" % (
            card[2], card[0], card[1], card[3]))
    return "".join(t)


def render(folder, name, text, size, bits):
    """Runs POV-Ray on text; a linear picture (float 0..1, RGB) or, for 8 bits, the codes."""
    with open(os.path.join(folder, name + ".pov"), "w") as out:
        out.write(text)
    cmd = ["nice", "-n", "15", "povray", "+I" + name + ".pov", "+O" + name + ".png", "+W%d" % size[0], "+H%d" % size[1], "+FN%d" % bits,
           "File_Gamma=1.0", "-D", "-A", "+WT1", "-GA", "Verbose=off", "+MB3"]
    done = subprocess.run(cmd, cwd=folder, capture_output=True, text=True)
    if done.returncode:
        raise RuntimeError("povray failed:\n" + done.stderr[-1500:])
    picture = cv2.imread(os.path.join(folder, name + ".png"), cv2.IMREAD_UNCHANGED)[..., :3][..., ::-1]
    return picture if bits == 8 else picture.astype(np.float32) / 65535
