// The kinds of step that the network is made of, each over all rows of a picture and on all cores. `out` must have its
// shape; it may not be `in`.
#pragma once

#include <functional>
#include <opencv2/core.hpp>

#include "edges/planes.h"

namespace kempt::edges {

// The band (CV_32FC3) through a 4 x 4 convolution of stride 2, relu, and a 3 x 3 one, relu.
void begin(const Convolver& by, const Layer& stem, const Layer& fine, const cv::Mat& band, Planes& out);
// A 3 x 3 convolution of stride 2, relu.
void halve(const Convolver& by, const Layer& layer, const Planes& in, Planes& out);
// in + relu(3 x 3 convolution of in), its taps `spread` cells apart.
void refine(const Convolver& by, const Layer& layer, int spread, const Planes& in, Planes& out);

// relu(2 x 2 transposed convolution of in) + beside, then a 3 x 3 one, relu. up: that of the cells (0, 0), (0, 1),
// (1, 0) and (1, 1) of each square.
struct Doubling {
    Layer up[4], join;
};
void enlarge(const Convolver& by, const Doubling& layers, const Planes& in, const Planes& beside, Planes& out);
// The same, then a 1 x 1 convolution to maps of one channel each (CV_32F, of the size of `beside`).
void finish(const Convolver& by, const Doubling& layers, const Layer& last, const Planes& in, const Planes& beside,
            const std::vector<cv::Mat>& maps);

}  // namespace kempt::edges
