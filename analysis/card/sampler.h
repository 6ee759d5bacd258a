// Reads linear device light from a photo at whole and broken pixel positions.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

#include "core/photo.h"

namespace kempt::card {

class Sampler {
  public:
    explicit Sampler(const Photo& photo);
    [[nodiscard]] bool inside(cv::Point2d px) const {
        return px.x >= 0 && px.y >= 0 && px.x < cols_ - 1 && px.y < rows_ - 1;
    }
    // Linear device light 0..1 of one channel at a whole pixel.
    [[nodiscard]] float pixel(int x, int y, int channel) const {
        const std::vector<float>& table = *tables_[static_cast<size_t>(channel)];
        return wide_ ? table[pixels_.ptr<ushort>(y)[3 * x + channel]] : table[pixels_.ptr<uchar>(y)[3 * x + channel]];
    }
    // Bilinear in linear light; px must be inside().
    [[nodiscard]] float at(cv::Point2d px, int channel) const;
    [[nodiscard]] int cols() const { return cols_; }
    [[nodiscard]] int rows() const { return rows_; }
    // Linear light of a channel's highest code.
    [[nodiscard]] float highest(int channel) const { return tables_[static_cast<size_t>(channel)]->back(); }

  private:
    cv::Mat pixels_;
    int cols_, rows_;
    bool wide_;
    std::array<std::vector<float>, 3> own_;  // only when the photo came without its tables
    std::array<const std::vector<float>*, 3> tables_;

  public:
    Sampler(const Sampler&) = delete;
    Sampler& operator=(const Sampler&) = delete;
};

// The photo's code-to-light tables; sRGB where it has none of the right length.
[[nodiscard]] std::array<std::vector<float>, 3> code_tables(const Photo& photo);
[[nodiscard]] bool has_code_tables(const Photo& photo);

}  // namespace kempt::card
