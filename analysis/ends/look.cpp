#include "ends/look.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <opencv2/imgproc.hpp>

namespace kempt::ends {

namespace {

constexpr float darkest = 0.004f;      // below a black strand's own light
constexpr float hair_below = 0.75f;    // mean over 4 mm: hair lies there, whatever its colour
constexpr double dense_share = 0.08;   // of the hair's places stand for the fullest
constexpr double least_chroma = 0.05;  // red - blue, relative to the hair's own light, that tells its colour at all

}  // namespace

Looks looks_of(const Grid& grid, const PaperLight& paper) {
    cv::Mat relative, grey, plane;  // used again: spots_of
    cv::max(paper.light, 1e-3, relative);
    cv::divide(grid.light, relative, relative);
    cv::transform(relative, grey, cv::Matx13f(1 / 3.f, 1 / 3.f, 1 / 3.f));
    cv::transform(relative, plane, cv::Matx13f(1, 0, -1));
    Looks out;
    out.chroma = mean_over(cells_of(plane), 1.25);
    out.grey = cells_of(grey);
    out.mean05 = mean_over(out.grey, 0.5);
    out.mean15 = mean_over(out.grey, 1.5);
    out.mean4 = mean_over(out.grey, 4);
    cv::multiply(grey, grey, plane);
    const cv::Mat squares = mean_over(cells_of(plane), 1.5);
    cv::sqrt(cv::max(squares - out.mean15.mul(out.mean15), 0), out.spread);
    const Spots spots = spots_of(grey, plane);
    out.high = spots.high;
    out.low = spots.low;
    cv::resize(grid.valid, out.valid, out.grey.size(), 0, 0, cv::INTER_AREA);
    out.valid = out.valid == 255;
    cv::resize(paper.bare, out.bare, out.grey.size(), 0, 0, cv::INTER_NEAREST);
    return out;
}

HairLook hair_look(const Looks& looks) {
    HairLook hair;
    std::vector<cv::Point> places;
    std::vector<float> high, rise;
    for (int y = 4; y < looks.grey.rows; ++y)
        for (int x = 0; x < looks.grey.cols; ++x)
            if (looks.valid.at<uchar>(y, x) && looks.mean4.at<float>(y, x) < hair_below) {
                const float mean = looks.mean15.at<float>(y, x), top = looks.high.at<float>(y, x);
                places.emplace_back(x, y);
                high.push_back(top);
                rise.push_back((top - mean) / std::max(0.05f, 1 - mean));
            }
    hair.cells = static_cast<double>(places.size());
    if (places.empty()) return hair;
    const float dim = quantile(high, dense_share), even = quantile(rise, dense_share);
    double dim_n = 0, even_n = 0;
    for (size_t i = 0; i < places.size(); ++i) {
        const cv::Point p = places[i];
        if (high[i] <= dim) {
            hair.dense += looks.mean15.at<float>(p);
            hair.chroma += looks.chroma.at<float>(p);
            hair.spread += looks.spread.at<float>(p);
            ++dim_n;
        }
        if (rise[i] <= even) hair.even += looks.mean15.at<float>(p), ++even_n;
    }
    hair.dense = std::max<double>(darkest, hair.dense / dim_n);
    hair.chroma /= dim_n, hair.spread /= dim_n;
    hair.even = std::max<double>(darkest, hair.even / even_n);
    return hair;
}

cv::Mat inputs_of(const Looks& looks, const HairLook& hair, const Circumstances& at, const cv::Mat& wanted) {
    const int n = cv::countNonZero(wanted);
    cv::Mat out(n, inputs, CV_32FC1);
    const auto dense = static_cast<float>(hair.dense);
    // How far the hair has a colour of its own, and that colour.
    const auto coloured = static_cast<float>(std::min(1.0, std::abs(hair.chroma) / 0.1));
    const double own = hair.chroma / hair.dense;
    const auto own_chroma = static_cast<float>(std::abs(own) > least_chroma ? own : least_chroma);
    const float whole[] = {std::log(dense),
                           coloured,
                           static_cast<float>(hair.spread) / dense,
                           static_cast<float>(std::log(hair.even / hair.dense)),
                           at.light_known ? 1.f : 0.f,
                           static_cast<float>(std::log(at.px_per_mm / 12))};
    const auto ratio = [](float a, float b) { return std::log(std::max(a, darkest) / b); };
    std::vector<int> first(static_cast<size_t>(wanted.rows));
    for (int y = 0, row = 0; y < wanted.rows; ++y) {
        first[static_cast<size_t>(y)] = row;
        row += cv::countNonZero(wanted.row(y));
    }
    cv::parallel_for_(cv::Range(0, wanted.rows), [&](const cv::Range& rows) {
        for (int y = rows.start; y < rows.end; ++y) {
            const auto* ok = wanted.ptr<uchar>(y);
            int row = first[static_cast<size_t>(y)];
            for (int x = 0; x < wanted.cols; ++x) {
                if (!ok[x]) continue;
                auto* v = out.ptr<float>(row++);
                const float m = std::max(looks.mean15.at<float>(y, x), darkest);
                v[0] = std::log(m);
                v[1] = ratio(looks.high.at<float>(y, x), m);
                v[2] = ratio(looks.low.at<float>(y, x), m);
                v[3] = looks.spread.at<float>(y, x) / m;
                v[4] = ratio(looks.mean05.at<float>(y, x), m);
                v[5] = ratio(looks.mean4.at<float>(y, x), m);
                v[6] = std::clamp(looks.chroma.at<float>(y, x) / m / own_chroma, -1.f, 2.f) * coloured;
                v[7] = std::log(m / dense);
                v[8] = (m - dense) / (1 - dense);
                v[9] = (looks.high.at<float>(y, x) - dense) / (1 - dense);
                std::copy(std::begin(whole), std::end(whole), v + 10);
            }
        }
    });
    return out;
}

}  // namespace kempt::ends
