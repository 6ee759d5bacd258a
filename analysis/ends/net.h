// A small network of two hidden layers on a few inputs a cell, as tests/render/train/ends.py fits and writes it.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <opencv2/core.hpp>

namespace kempt::ends {

template <size_t Inputs, size_t First, size_t Second>
class Net {
  public:
    // The arrays as they stand in a header of weights: inputs are taken as (input - middle) x scale.
    constexpr Net(const float (&middle)[Inputs], const float (&scale)[Inputs], const float (&first)[Inputs][First],
                  const float (&first_bias)[First], const float (&second)[First][Second],
                  const float (&second_bias)[Second], const float (&last)[Second][1], const float (&last_bias)[1])
        : middle_(middle),
          scale_(scale),
          first_(first),
          first_bias_(first_bias),
          second_(second),
          second_bias_(second_bias),
          last_(last),
          last_bias_(last_bias) {}

    // rows: CV_32FC1, one cell each, so many columns as inputs. A share between 0 and 1 for each.
    [[nodiscard]] cv::Mat shares_of(const cv::Mat& rows) const {
        cv::Mat out(rows.rows, 1, CV_32FC1);
        cv::parallel_for_(cv::Range(0, rows.rows), [&](const cv::Range& part) {
            for (int i = part.start; i < part.end; ++i) out.at<float>(i) = share_of(rows.ptr<float>(i));
        });
        return out;
    }

  private:
    template <size_t From, size_t To>
    static void layer(const std::array<float, From>& in, const float (&weight)[From][To], const float (&bias)[To],
                      std::array<float, To>& out) {
        for (size_t k = 0; k < To; ++k) out[k] = bias[k];
        for (size_t i = 0; i < From; ++i)
            for (size_t k = 0; k < To; ++k) out[k] += in[i] * weight[i][k];
    }
    template <size_t N>
    static void bend(std::array<float, N>& v) {
        for (float& x : v) x = std::max(x, 0.1f * x);
    }
    [[nodiscard]] float share_of(const float* look) const {
        std::array<float, Inputs> in;
        for (size_t i = 0; i < Inputs; ++i) in[i] = (look[i] - middle_[i]) * scale_[i];
        std::array<float, First> one;
        std::array<float, Second> two;
        std::array<float, 1> out;
        layer(in, first_, first_bias_, one);
        bend(one);
        layer(one, second_, second_bias_, two);
        bend(two);
        layer(two, last_, last_bias_, out);
        return 1 / (1 + std::exp(-out[0]));
    }

    const float (&middle_)[Inputs];
    const float (&scale_)[Inputs];
    const float (&first_)[Inputs][First];
    const float (&first_bias_)[First];
    const float (&second_)[First][Second];
    const float (&second_bias_)[Second];
    const float (&last_)[Second][1];
    const float (&last_bias_)[1];
};

}  // namespace kempt::ends
