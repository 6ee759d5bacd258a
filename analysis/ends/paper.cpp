#include "ends/paper.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <opencv2/imgproc.hpp>

#include "ends/cells.h"

namespace kempt::ends {

namespace {

constexpr int block_px = 4;   // 0.5 mm: twice a cell of the looks
constexpr double rim_mm = 4;  // where seeds are looked for
// Paper's grain and the sensor's noise leave 1-3 % within a cell's neighbourhood; a single strand beside it 5 % or
// more.
constexpr float least_texture = 0.02f, texture_over_rim = 2.0f;
// Relative change of light from cell to cell: the sharpest soft shadows (4 mm from light to dark, depth 0.6) change by
// 8 % a cell, a strand's own edge by 15 % and more.
constexpr float most_step = 0.09f;
// Shadows on paper go down to a quarter of the open light close to a thick lock; darker is not taken.
constexpr float darkest_share = 0.3f;
// Paper under the same lamp keeps its colour; soft and hard light may differ a little.
constexpr float most_colour_shift = 0.05f;
// Of the blue sheet: red is so dark there that noise moves its ratio more, and hair over a twentieth of a cell moves it
// by 0.3 and more. Print is also less even than paper.
constexpr float most_blue_shift = 0.2f, least_blue_texture = 0.04f;
// The blue has six to twelve times as much blue as red, paper under the yellowest lamp of a salon 0.4, under open sky
// 1.4 times (common practice; a card's light makes it 1).
constexpr double least_blueness = 2.5;

// Means of filled cells at ever coarser levels, used where the finer level has none.
void carry_on(cv::Mat& light, const cv::Mat& weight) {
    std::vector<cv::Mat> sums, weights;
    cv::Mat spread;
    cv::cvtColor(weight, spread, cv::COLOR_GRAY2BGR);
    sums.push_back(light.mul(spread));
    weights.push_back(weight);
    while (std::min(sums.back().cols, sums.back().rows) > 2) {
        cv::Mat s, w;
        cv::pyrDown(sums.back(), s);
        cv::pyrDown(weights.back(), w);
        sums.push_back(s);
        weights.push_back(w);
    }
    cv::Mat filled;
    for (size_t k = sums.size(); k-- > 0;) {
        cv::Mat w3, own, share;
        cv::cvtColor(weights[k], w3, cv::COLOR_GRAY2BGR);
        cv::divide(sums[k], cv::max(w3, 1e-6), own);
        if (filled.empty()) {
            filled = own;
            continue;
        }
        cv::Mat up;
        cv::pyrUp(filled, up, sums[k].size());
        // A level counts in full where a quarter of its neighbourhood was seen.
        cv::Mat trust = cv::min(w3 * 4, 1.0);
        filled = own.mul(trust) + up.mul(cv::Scalar::all(1) - trust);
    }
    light = filled;
}

}  // namespace

std::optional<PaperLight> paper_light(const Grid& grid, card::Ground ground) {
    const bool on_blue = ground == card::Ground::blue;
    const float most_shift = on_blue ? most_blue_shift : most_colour_shift;
    const cv::Mat light = cells_of(grid.light, block_px);
    cv::Mat plane, texture, all_valid;
    cv::transform(grid.light, plane, cv::Matx13f(1 / 3.f, 1 / 3.f, 1 / 3.f));
    const cv::Mat mean = cells_of(plane, block_px);
    cv::multiply(plane, plane, plane);
    cv::boxFilter(cells_of(plane, block_px) - mean.mul(mean), texture, CV_32F, {3, 3});
    plane.release();
    cv::sqrt(cv::max(texture, 0), texture);
    cv::Mat wide;
    cv::blur(mean, wide, {3, 3});
    cv::divide(texture, cv::max(wide, 1e-4), texture);
    cv::erode(grid.valid, all_valid, cv::Mat::ones(3, 3, CV_8U));
    cv::resize(all_valid, all_valid, mean.size(), 0, 0, cv::INTER_AREA);

    // Seeds: cells of the rim, but for the first side, that are smooth and about as bright as the rim's brighter half.
    const int rim = static_cast<int>(rim_mm * grid_px_per_mm / block_px);
    std::vector<float> rim_grey, rim_texture, red, blue;
    const auto each_rim_cell = [&](const auto& use) {
        for (int y = 0; y < mean.rows; ++y) {
            const auto* ok = all_valid.ptr<uchar>(y);
            int first = 0, last = mean.cols - 1;
            while (first < mean.cols && ok[first] < 255) ++first;
            while (last >= 0 && ok[last] < 255) --last;
            for (int x = first; x <= last; ++x)
                if (ok[x] == 255 && (y >= mean.rows - rim || x < first + rim || x > last - rim)) use(x, y);
        }
    };
    each_rim_cell([&](int x, int y) { rim_grey.push_back(mean.at<float>(y, x)); });
    // Hair and shadows are darker than paper; on the blue, hair is lighter or darker than it.
    const float bright = quantile(rim_grey, on_blue ? 0.5 : 0.85);
    each_rim_cell([&](int x, int y) {
        if (mean.at<float>(y, x) > 0.6f * bright) rim_texture.push_back(texture.at<float>(y, x));
    });
    const float smooth =
        std::max(on_blue ? least_blue_texture : least_texture, texture_over_rim * quantile(rim_texture, 0.4));
    if (rim_texture.size() < 40 || bright < 0.02f) return std::nullopt;
    each_rim_cell([&](int x, int y) {
        if (mean.at<float>(y, x) < 0.6f * bright || texture.at<float>(y, x) > smooth) return;
        const auto& c = light.at<cv::Vec3f>(y, x);
        red.push_back(std::log(std::max(c[0], 1e-4f) / std::max(c[1], 1e-4f)));
        blue.push_back(std::log(std::max(c[2], 1e-4f) / std::max(c[1], 1e-4f)));
    });
    if (red.size() < 40) return std::nullopt;
    const float red_of_paper = quantile(red, 0.5), blue_of_paper = quantile(blue, 0.5);
    const auto like_paper = [&](int x, int y) {
        const auto& c = light.at<cv::Vec3f>(y, x);
        const float g = std::max(c[1], 1e-4f);
        return all_valid.at<uchar>(y, x) == 255 && texture.at<float>(y, x) <= smooth &&
               mean.at<float>(y, x) > darkest_share * bright &&
               std::abs(std::log(std::max(c[0], 1e-4f) / g) - red_of_paper) < most_shift &&
               std::abs(std::log(std::max(c[2], 1e-4f) / g) - blue_of_paper) < most_shift;
    };
    PaperLight out;
    out.rim = bright;
    out.bare = cv::Mat(mean.size(), CV_8UC1, cv::Scalar(0));
    std::vector<cv::Point> todo;
    each_rim_cell([&](int x, int y) {
        if (mean.at<float>(y, x) > 0.6f * bright && like_paper(x, y)) {
            out.bare.at<uchar>(y, x) = 255;
            todo.emplace_back(x, y);
        }
    });
    while (!todo.empty()) {
        const cv::Point p = todo.back();
        todo.pop_back();
        const float here = mean.at<float>(p);
        for (const cv::Point& q : {cv::Point(p.x - 1, p.y), {p.x + 1, p.y}, {p.x, p.y - 1}, {p.x, p.y + 1}}) {
            if (q.x < 0 || q.y < 0 || q.x >= mean.cols || q.y >= mean.rows || out.bare.at<uchar>(q)) continue;
            if (std::abs(mean.at<float>(q) - here) > most_step * here || !like_paper(q.x, q.y)) continue;
            out.bare.at<uchar>(q) = 255;
            todo.push_back(q);
        }
    }
    if (on_blue) cv::erode(out.bare, out.bare, cv::Mat::ones(3, 3, CV_8U));  // a strand's rim is still bluish
    out.bare_share =
        cv::countNonZero(out.bare) / std::max(1.0, static_cast<double>(cv::countNonZero(all_valid == 255)));
    cv::Mat weight, filled = light.clone();
    out.bare.convertTo(weight, CV_32F, 1 / 255.0);
    carry_on(filled, weight);
    cv::blur(filled, filled, {3, 3});
    cv::resize(filled, out.light, grid.light.size(), 0, 0, cv::INTER_LINEAR);
    return out;
}

card::Ground ground_of_rim(const Grid& grid) {
    const cv::Mat light = cells_of(grid.light, block_px);
    cv::Mat all_valid;
    cv::resize(grid.valid, all_valid, light.size(), 0, 0, cv::INTER_AREA);
    std::vector<float> bluer;
    for (int y = light.rows * 3 / 4; y < light.rows; ++y)  // beyond the ends
        for (int x = 0; x < light.cols; ++x)
            if (all_valid.at<uchar>(y, x) == 255) {
                const auto& c = light.at<cv::Vec3f>(y, x);
                bluer.push_back(std::max(c[2], 1e-4f) / std::max(c[0], 1e-4f));
            }
    return quantile(bluer, 0.5) > least_blueness ? card::Ground::blue : card::Ground::white;
}

}  // namespace kempt::ends
