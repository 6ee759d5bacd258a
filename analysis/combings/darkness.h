// How dark a photo's pixels are against the paper around them.
#pragma once

#include <array>
#include <cstdint>
#include <cstring>
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
    // Light of the pixels of a row.
    struct Row {
        const float *red, *green, *blue, *pairs;
        const uchar* narrow;
        const ushort* wide;  // null: narrow
        float operator()(int x) const {
            if (wide) return red[wide[3 * x]] + green[wide[3 * x + 1]] + blue[wide[3 * x + 2]];
            return pairs[pair_at(narrow + 3 * x)] + blue[narrow[3 * x + 2]];
        }
    };
    [[nodiscard]] Row row_of(int y) const {
        const uchar* codes = pixels_.data + pixels_.step[0] * static_cast<size_t>(y);
        return {table_[0].data(),
                table_[1].data(),
                table_[2].data(),
                pairs_.data(),
                codes,
                wide_ ? reinterpret_cast<const ushort*>(codes) : nullptr};
    }
    [[nodiscard]] static uint16_t pair_at(const uchar* codes) {
        uint16_t pair = 0;
        std::memcpy(&pair, codes, sizeof(pair));
        return pair;
    }
    void find_paper(cv::Rect box);
    [[nodiscard]] float paper_of(cv::Point cell) const;
    cv::Mat pixels_;
    bool wide_;
    std::array<std::vector<float>, 3> table_;  // code to linear light, times the channel's weight
    // Sum of the first two for each pair of codes of 8 bits as they lie in memory: paper has few of them.
    std::vector<float> pairs_;
    cv::Mat1f per_paper_;  // 1 / light of the paper, a cell each 32 x 32 pixels
};

}  // namespace kempt::combings
