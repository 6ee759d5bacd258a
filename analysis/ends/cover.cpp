#include "ends/cover.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "ends/cells.h"
#include "ends/cover_weights.h"

namespace kempt::ends {

namespace {

template <size_t From, size_t To>
void layer(const std::array<float, From>& in, const float (&weight)[From][To], const float (&bias)[To],
           std::array<float, To>& out) {
    for (size_t k = 0; k < To; ++k) out[k] = bias[k];
    for (size_t i = 0; i < From; ++i)
        for (size_t k = 0; k < To; ++k) out[k] += in[i] * weight[i][k];
}

template <size_t N>
void bend(std::array<float, N>& v) {
    for (float& x : v) x = std::max(x, 0.1f * x);
}

float cover_at(const float* look) {
    std::array<float, inputs> in;
    for (size_t i = 0; i < inputs; ++i) in[i] = (look[i] - net::middle[i]) * net::scale[i];
    std::array<float, net::first_width> one;
    std::array<float, net::second_width> two;
    std::array<float, 1> out;
    layer(in, net::first, net::first_bias, one);
    bend(one);
    layer(one, net::second, net::second_bias, two);
    bend(two);
    layer(two, net::last, net::last_bias, out);
    return 1 / (1 + std::exp(-out[0]));
}

}  // namespace

cv::Mat cover_of(const Looks& looks, const HairLook& hair, const Circumstances& at) {
    const cv::Mat wanted = looks.valid & ~looks.bare;
    const cv::Mat in = inputs_of(looks, hair, at, wanted);
    cv::Mat values(in.rows, 1, CV_32FC1);
    cv::parallel_for_(cv::Range(0, in.rows), [&](const cv::Range& rows) {
        for (int i = rows.start; i < rows.end; ++i) values.at<float>(i) = cover_at(in.ptr<float>(i));
    });
    return placed(values, wanted);
}

}  // namespace kempt::ends
