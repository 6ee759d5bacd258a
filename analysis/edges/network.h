// The small network that sees hair below the pixel (trained on rendered truth: tests/render/train/train.py). It turns
// the band's log light into maps at half resolution: the share of a pixel that hair hides, and how often visible
// strands cross test lines in six directions.
#pragma once

#include <memory>
#include <opencv2/core.hpp>

#include "edges/convolve.h"
#include "edges/reference_colours.h"

namespace kempt::edges {

inline constexpr int test_directions = 6;  // at 0, 30 .. 150 degrees from the edge line

struct HairMaps {
    cv::Mat cover;       // CV_32F, half resolution, about 0..1 (not clamped: means stay unbiased)
    cv::Mat cross_edge;  // CV_32F, crossings per band pixel of test line, along the edge line
    cv::Mat cross_mean;  // CV_32F, the same averaged over all directions
};

// relative_log_light: CV_32FC3, log light minus the skin's; rows and columns a multiple of 8.
// Weights come from model/edge_net.onnx, which is compiled in; the layers are computed by convolve.h. The test
// `network` holds it against OpenCV's own run of the same file. Not thread-safe on one object; build one for each
// thread (about a millisecond).
class Network {
  public:
    explicit Network(const Convolver& by = convolver());
    ~Network();
    Network(const Network&) = delete;
    Network& operator=(const Network&) = delete;
    [[nodiscard]] HairMaps look(const cv::Mat& relative_log_light, const Context& context) {
        HairMaps maps;
        look(relative_log_light, context, maps);
        return maps;
    }
    // The same into maps that may hold earlier ones of this function, whose memory is then used again.
    void look(const cv::Mat& relative_log_light, const Context& context, HairMaps& maps);

  private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

}  // namespace kempt::edges
