#include "work/common_area.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace kempt::work {

namespace {

constexpr int steps = 300;       // along the longer side: a fifth of a millimetre for a line of 6 cm
constexpr double least_mm = 10;  // a strip thinner than half the band shows nothing

bool covers(const cv::Matx33d& px_from_mm, double sign, const cv::Size& size, double x, double y) {
    const cv::Vec3d at = px_from_mm * cv::Vec3d(x, y, 1);
    if (!(at[2] * sign > 0)) return false;  // beyond the horizon of the photo's plane
    const double px = at[0] / at[2], py = at[1] / at[2];
    return px >= 1 && py >= 1 && px <= size.width - 2 &&
           py <= size.height - 2;  // the outermost pixels blend with empty
}

cv::Mat1b covered_points(const cv::Rect2d& area, double step, cv::Size points, const std::vector<Shown>& photos) {
    cv::Mat1b covered(points, 255);
    for (const Shown& photo : photos) {
        const cv::Matx33d back = photo.mm_from_px.inv();
        const cv::Vec3d middle = photo.mm_from_px * cv::Vec3d(photo.size_px.width / 2.0, photo.size_px.height / 2.0, 1);
        for (int y = 0; y < points.height; ++y)
            for (int x = 0; x < points.width; ++x)
                if (!covers(back, middle[2], photo.size_px, area.x + x * step, area.y + y * step)) covered(y, x) = 0;
    }
    return covered;
}

double empty_share(const cv::Mat1b& line) {
    return 1 - static_cast<double>(cv::countNonZero(line)) / static_cast<double>(line.total());
}

}  // namespace

cv::Rect2d common_area(const cv::Rect2d& area, const cv::Rect2d& kept, const std::vector<Shown>& photos) {
    const double step = std::max(area.width, area.height) / steps;
    if (!(step > 0)) return area;
    const cv::Size points(static_cast<int>(area.width / step + 1e-6) + 1,
                          static_cast<int>(area.height / step + 1e-6) + 1);
    const cv::Mat1b covered = covered_points(area, step, points, photos);
    const auto before = [step](double mm) { return static_cast<int>(std::floor(mm / step)); };
    const auto after = [step](double mm) { return static_cast<int>(std::ceil(mm / step)); };
    // First and last grid point of each side, and how far each may move.
    int left = 0, right = points.width - 1, top = 0, bottom = points.height - 1;
    const int left_stop = before(kept.x - area.x), right_stop = after(kept.br().x - area.x);
    const int top_stop = before(kept.y - area.y), bottom_stop = after(kept.br().y - area.y);
    for (;;) {
        const bool wide = (right - left) * step > least_mm, high = (bottom - top) * step > least_mm;
        const cv::Rect now(left, top, right - left + 1, bottom - top + 1);
        const cv::Mat1b inside = covered(now);
        const std::array<double, 4> empty = {
            wide && left < left_stop ? empty_share(inside.col(0)) : 0.0,
            wide && right > right_stop ? empty_share(inside.col(now.width - 1)) : 0.0,
            high && top < top_stop ? empty_share(inside.row(0)) : 0.0,
            high && bottom > bottom_stop ? empty_share(inside.row(now.height - 1)) : 0.0};
        const auto worst = std::max_element(empty.begin(), empty.end());
        if (*worst <= 0) break;
        switch (worst - empty.begin()) {
            case 0:
                ++left;
                break;
            case 1:
                --right;
                break;
            case 2:
                ++top;
                break;
            default:
                --bottom;
        }
    }
    return {area.x + left * step, area.y + top * step, (right - left) * step, (bottom - top) * step};
}

}  // namespace kempt::work
