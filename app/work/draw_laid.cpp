#include "work/draw_laid.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "colour/colour.h"

namespace kempt::work {

namespace {

constexpr int longest_warped_px = 30000;  // OpenCV's warp addresses pixels in 16 bits
constexpr std::uint8_t empty_grey = 200;  // where a photo does not reach
constexpr int band_code = 38;             // of the band over her eyes: dark, and no colour of hair or skin

// Linear light to sRGB codes; the same for both pictures.
QImage image_from(const cv::Mat& linear_rgb) {
    static const std::vector<std::uint8_t> table = [] {
        std::vector<std::uint8_t> codes(4097);
        for (std::size_t i = 0; i < codes.size(); ++i)
            codes[i] =
                static_cast<std::uint8_t>(std::lround(255 * colour::srgb_from_linear(static_cast<double>(i) / 4096.0)));
        return codes;
    }();
    QImage image(linear_rgb.cols, linear_rgb.rows, QImage::Format_RGB888);
    for (int y = 0; y < linear_rgb.rows; ++y) {
        const auto* from = linear_rgb.ptr<cv::Vec3f>(y);
        std::uint8_t* to = image.scanLine(y);
        for (int x = 0; x < linear_rgb.cols; ++x)
            for (int c = 0; c < 3; ++c)
                *to++ = table[static_cast<std::size_t>(std::clamp(from[x][c], 0.0f, 1.0f) * 4096.0f)];
    }
    return image;
}

// Filled, not blurred: nothing of what lies under a band is left in the picture.
cv::Mat with_eyes_hidden(const cv::Mat& pixels, const QVector<EyeBand>& bands) {
    if (bands.isEmpty()) return pixels;
    cv::Mat hidden = pixels.clone();
    const double code = pixels.depth() == CV_16U ? band_code * 257.0 : band_code;
    for (const EyeBand& band : bands) {
        std::vector<cv::Point> corners;
        for (const QPointF& p : band.corners())
            corners.emplace_back(static_cast<int>(std::lround(p.x())), static_cast<int>(std::lround(p.y())));
        cv::fillConvexPoly(hidden, corners, cv::Scalar::all(code));
    }
    return hidden;
}

}  // namespace

QImage draw_laid(const PairSide& side, const cv::Matx33d& out_from_px, cv::Size size, bool with_light) {
    cv::Mat pixels = with_eyes_hidden(side.photo->decoded.photo.pixels, side.hidden), codes, reach;
    cv::Matx33d map = out_from_px;
    if (const int longest = std::max(pixels.cols, pixels.rows); longest > longest_warped_px) {
        const double factor = static_cast<double>(longest_warped_px) / longest;
        cv::resize(pixels, pixels, {}, factor, factor, cv::INTER_AREA);
        map = map * cv::Matx33d(1 / factor, 0, 0, 0, 1 / factor, 0, 0, 0, 1);
    }
    const cv::Size fine(size.width * finer, size.height * finer);
    cv::warpPerspective(pixels, codes, map, fine, cv::INTER_LINEAR, cv::BORDER_CONSTANT);
    cv::warpPerspective(cv::Mat(pixels.size(), CV_8UC1, cv::Scalar(255)), reach, map, fine, cv::INTER_NEAREST,
                        cv::BORDER_CONSTANT);
    const card::LightMap light(side.photo->decoded.photo, with_light ? side.calibration : card::Calibration{});
    cv::Mat linear = light.linear(codes);
    linear.setTo(cv::Scalar::all(colour::linear_from_srgb(empty_grey / 255.0)), reach == 0);
    cv::resize(linear, linear, size, 0, 0, cv::INTER_AREA);
    return image_from(linear);
}

}  // namespace kempt::work
