// How dark a photo's pixels are against the paper around them.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

#include "combings/field.h"
#include "core/photo.h"

namespace kempt::combings {

// 0 paper, 1 black, below 0 brighter than paper: 1 - light / light of the paper, of a mean of the channels near luma.
class Darkness {
  public:
    Darkness(const Photo& photo, const Field& field);
    // Of the columns [from, to) of a row.
    void row(int y, int from, int to, float* out) const;
    // Bilinear; 0 outside the photo.
    [[nodiscard]] float at(double x, double y) const;
    [[nodiscard]] cv::Size size() const { return pixels_.size(); }

  private:
    [[nodiscard]] float light(int x, int y) const;
    cv::Mat pixels_;
    bool wide_;
    std::array<std::vector<float>, 3> table_;  // code to linear light, times the channel's weight
    cv::Mat1f per_paper_;                      // 1 / light of the paper, a cell each 32 x 32 pixels
};

}  // namespace kempt::combings
