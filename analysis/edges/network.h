// The small network that sees hair below the pixel (trained on rendered truth: tests/render/train/train.py). It turns
// the band's log light into two kinds of map at half resolution: the share of a pixel that hair hides, and how often
// visible strands cross test lines in six directions.
#pragma once

#include <array>
#include <memory>
#include <opencv2/core.hpp>

#include "edges/reference_colours.h"

namespace kempt::edges {

inline constexpr int test_directions = 6;  // at 0, 30 .. 150 degrees from the edge line

struct HairMaps {
    cv::Mat cover;  // CV_32F, half resolution, about 0..1 (not clamped: means stay unbiased)
    std::array<cv::Mat, test_directions> crossings;  // CV_32F, crossings per band pixel of test line
};

// relative_log_light: CV_32FC3, log light minus the skin's; rows and columns a multiple of 8.
// Not thread-safe on one object; build one for each thread (a few milliseconds).
class Network {
  public:
    Network();
    ~Network();
    Network(const Network&) = delete;
    Network& operator=(const Network&) = delete;
    [[nodiscard]] HairMaps look(const cv::Mat& relative_log_light, const Context& context);

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

}  // namespace kempt::edges
