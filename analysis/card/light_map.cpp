#include "card/calibration.h"
#include "card/ramp.h"
#include "card/sampler.h"

namespace kempt::card {
namespace {

template <class Code>
void map_rows(const cv::Mat& codes, cv::Mat& light, const std::array<std::vector<float>, 3>& table,
              const cv::Matx33f& m) {
    const bool plain = cv::norm(m - cv::Matx33f::eye()) < 1e-6;
    const float *r_of = table[0].data(), *g_of = table[1].data(), *b_of = table[2].data();
    cv::parallel_for_(cv::Range(0, codes.rows), [&](const cv::Range& rows) {
        for (int y = rows.start; y < rows.end; ++y) {
            const Code* in = codes.ptr<Code>(y);
            float* out = light.ptr<float>(y);
            for (int x = 0; x < codes.cols; ++x, in += 3, out += 3) {
                const float r = r_of[in[0]], g = g_of[in[1]], b = b_of[in[2]];
                if (plain) {
                    out[0] = r, out[1] = g, out[2] = b;
                } else {
                    out[0] = m(0, 0) * r + m(0, 1) * g + m(0, 2) * b;
                    out[1] = m(1, 0) * r + m(1, 1) * g + m(1, 2) * b;
                    out[2] = m(2, 0) * r + m(2, 1) * g + m(2, 2) * b;
                }
            }
        }
    });
}

}  // namespace

LightMap::LightMap(const Photo& photo, const Calibration& calibration)
    : table_(code_tables(photo)), matrix_(photo.colour.srgb_from_device) {
    if (!calibration.light) return;
    for (int c = 0; c < 3; ++c)
        for (float& light : table_[static_cast<size_t>(c)]) light = corrected(*calibration.light, c, light);
}

cv::Mat LightMap::linear(const cv::Mat& device_codes) const {
    cv::Mat light(device_codes.size(), CV_32FC3);
    const size_t needed = device_codes.depth() == CV_16U ? 65536 : 256;
    if (device_codes.channels() != 3 || table_[0].size() != needed) {
        light.setTo(cv::Scalar::all(0));  // codes of another depth than the photo's have no light
        return light;
    }
    if (needed == 256)
        map_rows<uchar>(device_codes, light, table_, matrix_);
    else
        map_rows<ushort>(device_codes, light, table_, matrix_);
    return light;
}

cv::Vec3f LightMap::linear(const cv::Vec3b& codes) const {
    // A 16-bit photo's table is asked at the same share of its range: 257 * code.
    const size_t step = table_[0].size() == 65536 ? 257 : 1;
    return matrix_ * cv::Vec3f(table_[0][codes[0] * step], table_[1][codes[1] * step], table_[2][codes[2] * step]);
}

}  // namespace kempt::card
