"""Pinhole camera over the plane z = 0 (mm): the POV-Ray camera block and the same projection in numpy.

World: x along the hairline, y into the hair, z away from the scalp, all in mm. Pixel coordinates follow the usual picture
convention: the centre of the top left pixel is (0, 0), so the picture's left border is at x = -0.5.
"""
import numpy as np


class Camera:
    """centre: plane point (mm) seen in the middle of the picture; tilt and its azimuth and roll in degrees;
    distance in mm; field (width, height) in mm at the centre; scale in px/mm at the centre."""

    def __init__(self, centre, tilt, azimuth, roll, distance, field, scale):
        t, a, q = np.radians([tilt, azimuth, roll])
        away = np.array([np.sin(t) * np.cos(a), np.sin(t) * np.sin(a), np.cos(t)])
        self.axis = -away
        right = np.cross(np.array([0.0, 1, 0]), away)
        right /= np.linalg.norm(right)
        up = np.cross(away, right)
        self.right = np.cos(q) * right + np.sin(q) * up
        self.up = -np.sin(q) * right + np.cos(q) * up
        self.centre = np.array([centre[0], centre[1], 0.0])
        self.position = self.centre + distance * away
        self.distance, self.field, self.tilt = distance, field, tilt
        self.size = (int(round(field[0] * scale)), int(round(field[1] * scale)))
        self.focal = distance * scale

    def resized(self, scale):
        """The same view at another number of px/mm."""
        other = Camera.__new__(Camera)
        other.__dict__.update(self.__dict__)
        other.size = (int(round(self.field[0] * scale)), int(round(self.field[1] * scale)))
        other.focal = self.focal * other.size[0] / self.size[0]
        return other

    def pov(self):
        w, h = self.size
        vec = lambda v: "<%.9f,%.9f,%.9f>" % tuple(v)
        return ("camera { perspective location %s direction %s right %s up %s }\n"
                % (vec(self.position), vec(self.axis * self.focal), vec(self.right * w), vec(self.up * h)))

    def px(self, points):
        """(..., 3) mm to (..., 2) px; (..., 2) points are taken on z = 0."""
        p = np.asarray(points, float)
        if p.shape[-1] == 2:
            p = np.concatenate([p, np.zeros(p.shape[:-1] + (1,))], -1)
        v = p - self.position
        depth = v @ self.axis
        x = self.focal * (v @ self.right) / depth + self.size[0] / 2 - 0.5
        y = -self.focal * (v @ self.up) / depth + self.size[1] / 2 - 0.5
        return np.stack([x, y], -1)

    def plane(self, px):
        """(..., 2) px to (..., 2) mm on z = 0."""
        p = np.asarray(px, float)
        u = (p[..., 0] + 0.5 - self.size[0] / 2) / self.focal
        v = -(p[..., 1] + 0.5 - self.size[1] / 2) / self.focal
        ray = self.axis + u[..., None] * self.right + v[..., None] * self.up
        k = -self.position[2] / ray[..., 2]
        return self.position[:2] + k[..., None] * ray[..., :2]

    def scale_at(self, point):
        """Geometric mean px/mm of the local affine map at a plane point (2 or 3 numbers)."""
        p = np.zeros(3)
        p[: len(point)] = point
        e = 0.01
        a = (self.px(p + [e, 0, 0]) - self.px(p - [e, 0, 0])) / (2 * e)
        b = (self.px(p + [0, e, 0]) - self.px(p - [0, e, 0])) / (2 * e)
        return float(np.sqrt(abs(a[0] * b[1] - a[1] * b[0])))
