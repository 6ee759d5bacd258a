#include "intake/loaded.h"

#include <algorithm>
#include <limits>

namespace kempt::intake {
namespace {

// The code whose light is nearest; tables rise with the code.
int code_of(const std::vector<float>& table, float light) {
    const auto above = std::lower_bound(table.begin(), table.end(), light);
    if (above == table.begin()) return 0;
    if (above == table.end()) return static_cast<int>(table.size()) - 1;
    const bool lower_is_nearer = light - *(above - 1) < *above - light;
    return static_cast<int>(above - table.begin()) - (lower_is_nearer ? 1 : 0);
}

template <class Code>
void mix_with_white(cv::Mat& pixels, const cv::Mat& alpha, const ColourEncoding& encoding) {
    constexpr int most = std::numeric_limits<Code>::max();
    for (int row = 0; row < pixels.rows; ++row) {
        auto* pixel = pixels.ptr<cv::Vec<Code, 3>>(row);
        const Code* cover = alpha.ptr<Code>(row);
        for (int col = 0; col < pixels.cols; ++col) {
            if (cover[col] == most) continue;
            const float share = static_cast<float>(cover[col]) / static_cast<float>(most);
            for (int c = 0; c < 3; ++c) {
                const std::vector<float>& table = encoding.linear[static_cast<std::size_t>(c)];
                const float light = share * table[pixel[col][c]] + (1 - share) * table.back();
                pixel[col][c] = static_cast<Code>(cover[col] == 0 ? most : code_of(table, light));
            }
        }
    }
}

}  // namespace

void keep_alpha_if_any(Loaded& loaded) {
    if (loaded.alpha.empty()) return;
    double least = 0;
    cv::minMaxIdx(loaded.alpha, &least, nullptr);
    const double opaque = loaded.alpha.depth() == CV_16U ? 65535 : 255;
    if (least >= opaque) loaded.alpha.release();
}

void lay_over_white(cv::Mat& pixels, const cv::Mat& alpha, const ColourEncoding& encoding) {
    // A conversion of colours may have made the pixels 16 bits deep.
    cv::Mat cover = alpha;
    if (pixels.depth() == CV_16U && alpha.depth() == CV_8U) alpha.convertTo(cover, CV_16U, 257);
    if (pixels.depth() == CV_16U)
        mix_with_white<ushort>(pixels, cover, encoding);
    else
        mix_with_white<uchar>(pixels, cover, encoding);
}

}  // namespace kempt::intake
