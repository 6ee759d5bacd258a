// What the reader of a format hands over: pixels as stored, and what is known about their colours.
#pragma once

#include <opencv2/core.hpp>

#include "intake/colour_profile.h"

namespace kempt::intake {

struct Loaded {
    cv::Mat pixels;  // CV_8UC3, CV_16UC3 (R G B) or CV_8UC4 (C M Y K)
    cv::Mat alpha;   // one channel of the same depth; empty when every pixel is opaque
    Ink ink = Ink::rgb;
    Profile profile;
};

// Drops the alpha of a picture that is opaque all over.
void keep_alpha_if_any(Loaded& loaded);
// Mixes with white as light mixes, in linear light; pixels keep their encoding.
void lay_over_white(cv::Mat& pixels, const cv::Mat& alpha, const ColourEncoding& encoding);

}  // namespace kempt::intake
