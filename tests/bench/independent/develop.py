"""Linear scene light to a phone-like photo: optics, sensor noise, white balance, tone curve, sharpening, JPEG."""
import cv2
import numpy as np

from scene import WHITE, srgb


def develop(linear, size, spec, rng):
    """linear: RGB float, white plate = WHITE; size (w, h) px; spec: see make.plan(). Returns uint8 BGR."""
    factor = linear.shape[1] / size[0]
    light = cv2.GaussianBlur(linear, (0, 0), spec["blur_px"] * factor)
    light = cv2.resize(light, size, interpolation=cv2.INTER_AREA) / WHITE
    y, x = np.mgrid[0:size[1], 0:size[0]].astype(np.float32)
    r2 = ((x / size[0] - 0.5) ** 2 + (y / size[1] - 0.5) ** 2) / 0.5
    light = light * (1 - spec["vignette"] * r2)[..., None] * spec["exposure"] * np.array(spec["gains"], np.float32)
    noise = rng.normal(0, 1, light.shape).astype(np.float32)
    noise = cv2.GaussianBlur(noise, (0, 0), spec["noise_px"]) if spec["noise_px"] > 0.2 else noise
    noise /= noise.std()
    light = light + noise * np.sqrt(np.clip(light, 0, None) * spec["shot"] + spec["read"] ** 2)
    light = np.where(light > 0.85, 0.85 + 0.15 * np.tanh((light - 0.85) / 0.15 * 0.8), light)  # soft shoulder
    code = srgb(light).astype(np.float32)
    k = spec["curve"]
    code = code + k * (code * code * (3 - 2 * code) - code)
    if spec["sharpen"] > 0:
        code = code + spec["sharpen"] * (code - cv2.GaussianBlur(code, (0, 0), 1.1))
    return (np.clip(code, 0, 1)[..., ::-1] * 255 + 0.5).astype(np.uint8)
