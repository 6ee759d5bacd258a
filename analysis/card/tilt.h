// Tilt of the card against the camera's axis.
#pragma once

#include "card/plane.h"

namespace kempt::card {

struct TiltOptions {
    double focal_px = 0;  // known focal length, or 0
    double corner_sd_px = 0.1;
};

// Angle in degrees between the card's normal and the camera's optical axis, by the pose and focal length that together
// explain the plane's homography best (Bayesian least squares: pose free, log focal length with a prior).
//
// Why both: the vanishing line of a plane gives tan(tilt) / focal length very sharply, but the focal length of a phone
// photo is unknown by a factor of two (main camera, zoom lens, crop). The foreshortening cos(tilt) needs no focal
// length but is flat at small tilts (2 degrees shorten by 0.06 %). At small tilts a focal length off by 35 % moves a 5
// degree tilt by 1.8 degrees at most and the prior suffices; from about 4 degrees on the foreshortening fixes the focal
// length itself. Least squares over the corners' places weighs the two as their errors deserve. The optical axis is
// taken to pass through the middle of the photo (not true of cropped photos).
[[nodiscard]] double tilt_degrees(const Plane& plane, const Layout& layout, cv::Size photo, const TiltOptions& options);

}  // namespace kempt::card
