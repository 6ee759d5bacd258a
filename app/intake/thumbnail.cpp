#include <QBuffer>
#include <QColorSpace>
#include <QImage>
#include <algorithm>
#include <array>
#include <cmath>

#include "colour/colour.h"
#include "intake/intake.h"

namespace kempt::intake {
namespace {

constexpr int jpeg_quality = 85;   // no visible blocks at thumbnail size, 10 to 20 kB
constexpr int samples_a_side = 6;  // of each thumbnail pixel's square: 36 samples leave no visible grain

uchar srgb_code(float light) {
    static const std::array<uchar, 4097> codes = [] {
        std::array<uchar, 4097> table{};
        for (std::size_t i = 0; i < table.size(); ++i)
            table[i] = static_cast<uchar>(std::lround(255 * colour::srgb_from_linear(static_cast<double>(i) / 4096)));
        return table;
    }();
    return codes[static_cast<std::size_t>(std::clamp(light, 0.f, 1.f) * 4096 + 0.5f)];
}

template <class Code>
cv::Vec3f mean_light(const Photo& photo, cv::Rect square) {
    const int step_x = std::max(1, square.width / samples_a_side), step_y = std::max(1, square.height / samples_a_side);
    const auto& linear = photo.colour.linear;
    cv::Vec3f sum(0, 0, 0);
    int count = 0;
    for (int y = square.y; y < square.y + square.height; y += step_y) {
        const auto* row = photo.pixels.ptr<cv::Vec<Code, 3>>(y);
        for (int x = square.x; x < square.x + square.width; x += step_x, ++count)
            for (int c = 0; c < 3; ++c) sum[c] += linear[static_cast<std::size_t>(c)][row[x][c]];
    }
    return sum * (1.f / static_cast<float>(count));
}

// The square of the photo that a thumbnail pixel stands for; never empty.
int edge_of(int index, int from, int to) {
    return static_cast<int>(qint64(index) * from / to);
}

}  // namespace

QByteArray thumbnail_of(const Photo& photo, int side) {
    const cv::Mat& pixels = photo.pixels;
    const bool deep = pixels.type() == CV_16UC3;
    const std::size_t codes = deep ? 65536 : 256;
    if (pixels.empty() || side < 1 || !(deep || pixels.type() == CV_8UC3)) return {};
    for (const auto& table : photo.colour.linear)
        if (table.size() != codes) return {};
    const double scale = std::min(1.0, static_cast<double>(side) / std::max(pixels.cols, pixels.rows));
    const int width = std::max(1, static_cast<int>(std::lround(pixels.cols * scale)));
    const int height = std::max(1, static_cast<int>(std::lround(pixels.rows * scale)));

    QImage small(width, height, QImage::Format_RGB888);
    if (small.isNull()) return {};
    for (int y = 0; y < height; ++y) {
        uchar* line = small.scanLine(y);
        const int top = edge_of(y, pixels.rows, height), bottom = edge_of(y + 1, pixels.rows, height);
        for (int x = 0; x < width; ++x) {
            const int left = edge_of(x, pixels.cols, width), right = edge_of(x + 1, pixels.cols, width);
            const cv::Rect square(left, top, std::max(1, right - left), std::max(1, bottom - top));
            const cv::Vec3f device = deep ? mean_light<ushort>(photo, square) : mean_light<uchar>(photo, square);
            const cv::Vec3f light = photo.colour.srgb_from_device * device;
            for (int c = 0; c < 3; ++c) *line++ = srgb_code(light[c]);
        }
    }
    small.setColorSpace(QColorSpace::SRgb);
    QByteArray jpeg;
    QBuffer buffer(&jpeg);
    buffer.open(QIODevice::WriteOnly);
    return small.save(&buffer, "JPEG", jpeg_quality) ? jpeg : QByteArray();
}

}  // namespace kempt::intake
