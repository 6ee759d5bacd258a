#include "ends/blue.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <opencv2/imgproc.hpp>

#include "card/card_layout.h"
#include "card/plane.h"
#include "ends/blue_weights.h"
#include "ends/cells.h"
#include "ends/net.h"

namespace kempt::ends {

namespace {

constexpr float hair_lacks = 0.25f;   // mean over 4 mm: hair lies there, whatever its lightness
constexpr double dense_share = 0.08;  // of the hair's places stand for the fullest, as on white
constexpr float least_white = 0.02f;
constexpr float most_light = 3;  // times the hair's own: a glint

}  // namespace

cv::Vec3f white_light(const Photo& photo, const card::Calibration& calibration) {
    if (calibration.light) return {1, 1, 1};  // what the card's light makes of bare paper
    std::array<std::vector<float>, 3> light;
    if (calibration.sheet) {
        const card::LightMap map(photo, calibration);
        const cv::Matx33d px_from_mm = calibration.sheet->mm_from_px.inv();
        const cv::Size2d page = card::paper_size_mm(calibration.sheet->paper);
        const cv::Rect2d blue = card::blue_area_mm(calibration.sheet->paper);
        const cv::Rect photo_px({}, photo.pixels.size());
        const auto look = [&](double x, double y) {
            const cv::Point2d at = card::apply(px_from_mm, {x, y});
            const cv::Point p(cvRound(at.x), cvRound(at.y));
            if (!photo_px.contains(p)) return;
            const cv::Mat one = map.linear(photo.pixels(cv::Rect(p, cv::Size(1, 1))));
            for (int c = 0; c < 3; ++c) light[static_cast<size_t>(c)].push_back(one.at<cv::Vec3f>(0)[c]);
        };
        for (double y = blue.y; y <= blue.br().y; y += 2)
            for (const double x : {blue.x / 2, (blue.br().x + page.width) / 2}) look(x, y);
    }
    cv::Vec3f white{1, 1, 1};  // nothing white in view: the photo's own range stands for it
    if (light[0].size() > 20)
        // Hair may lie on some of it.
        for (int c = 0; c < 3; ++c) white[c] = std::max(least_white, quantile(light[static_cast<size_t>(c)], 0.6));
    return white;
}

BlueLooks blue_looks(const Grid& grid, const PaperLight& paper, const cv::Vec3f& white) {
    BlueLooks out;
    // The blue's own colour, of the cells where it was seen bare.
    cv::Mat bare;
    cv::resize(paper.bare, bare, grid.light.size(), 0, 0, cv::INTER_NEAREST);
    const cv::Scalar own = cv::mean(paper.light, cv::countNonZero(bare) > 0 ? bare : cv::Mat());
    double whole = 0;
    for (int c = 0; c < 3; ++c) {
        out.bare[static_cast<size_t>(c)] = static_cast<float>(own[c]) / white[c];
        whole += out.bare[static_cast<size_t>(c)];
    }
    // What falls on each place, 1 where it is as on the white: from the blue carried on under the hair, all channels.
    cv::Mat fall, reflectance[3];
    cv::transform(paper.light, fall,
                  cv::Matx13f(static_cast<float>(1 / (white[0] * whole)), static_cast<float>(1 / (white[1] * whole)),
                              static_cast<float>(1 / (white[2] * whole))));
    cv::max(fall, 0.02, fall);
    cv::split(grid.light, reflectance);
    for (int c = 0; c < 3; ++c) {
        cv::divide(reflectance[c], fall, reflectance[c], 1 / white[c]);
        cv::max(reflectance[c], 0, reflectance[c]);
        cv::min(reflectance[c], 2, reflectance[c]);
    }
    const cv::Mat &red = reflectance[0], &blue = reflectance[2];
    const float range = std::max(0.05f, out.bare[2] - out.bare[0]);
    cv::Mat plane = 1 - (blue - red) * (1 / range);  // used again: spots_of
    const cv::Mat red_cells = cells_of(red), blue_cells = cells_of(blue), lack_cells = cells_of(plane);
    const Spots spots = spots_of(red, plane);
    out.high = spots.high;
    out.low = spots.low;
    out.red05 = mean_over(red_cells, 0.5);
    out.red15 = mean_over(red_cells, 1.5);
    out.red4 = mean_over(red_cells, 4);
    cv::multiply(red, red, plane);
    const cv::Mat squares = mean_over(cells_of(plane), 1.5);
    cv::sqrt(cv::max(squares - out.red15.mul(out.red15), 0), out.spread);
    out.blue05 = mean_over(blue_cells, 0.5);
    out.blue15 = mean_over(blue_cells, 1.5);
    out.lack05 = mean_over(lack_cells, 0.5);
    out.lack15 = mean_over(lack_cells, 1.5);
    out.lack4 = mean_over(lack_cells, 4);
    cv::resize(grid.valid, out.valid, red_cells.size(), 0, 0, cv::INTER_AREA);
    out.valid = out.valid == 255;
    cv::resize(paper.bare, out.bare_seen, red_cells.size(), 0, 0, cv::INTER_NEAREST);
    return out;
}

BlueHair blue_hair(const BlueLooks& looks) {
    BlueHair hair;
    std::vector<cv::Point> places;
    std::vector<float> lack;
    for (int y = 4; y < looks.red15.rows; ++y)
        for (int x = 0; x < looks.red15.cols; ++x)
            if (looks.valid.at<uchar>(y, x) && looks.lack4.at<float>(y, x) > hair_lacks) {
                places.emplace_back(x, y);
                lack.push_back(looks.lack4.at<float>(y, x));
            }
    hair.cells = static_cast<double>(places.size());
    if (places.empty()) return hair;
    const float full = quantile(lack, 1 - dense_share);
    double n = 0;
    for (size_t i = 0; i < places.size(); ++i) {
        if (lack[i] < full) continue;
        const cv::Point p = places[i];
        hair.red += looks.red15.at<float>(p);
        hair.blue += looks.blue15.at<float>(p);
        hair.spread += looks.spread.at<float>(p);
        hair.lack += looks.lack15.at<float>(p);
        ++n;
    }
    hair.red /= n, hair.blue /= n, hair.spread /= n, hair.lack /= n;
    return hair;
}

cv::Mat blue_inputs_of(const BlueLooks& looks, const BlueHair& hair, const Circumstances& at, const cv::Mat& wanted) {
    cv::Mat out(cv::countNonZero(wanted), blue_inputs, CV_32FC1);
    const auto own = static_cast<float>(std::max(hair.red, 0.01)), lack = static_cast<float>(std::max(hair.lack, 0.2));
    const auto light = [&](const cv::Mat& map, int y, int x) { return std::max(0.f, map.at<float>(y, x)) / own; };
    int row = 0;
    for (int y = 0; y < wanted.rows; ++y) {
        const auto* ok = wanted.ptr<uchar>(y);
        for (int x = 0; x < wanted.cols; ++x) {
            if (!ok[x]) continue;
            auto* v = out.ptr<float>(row++);
            v[0] = looks.lack15.at<float>(y, x) / lack;
            v[1] = looks.lack05.at<float>(y, x) / lack;
            v[2] = looks.lack4.at<float>(y, x) / lack;
            v[3] = std::min(most_light, light(looks.red15, y, x));
            v[4] = light(looks.low, y, x);
            v[5] = light(looks.high, y, x);
            v[6] = light(looks.spread, y, x);
            v[7] = std::max(0.f, looks.blue15.at<float>(y, x)) / std::max(0.05f, looks.bare[2]);
            v[8] = looks.bare[0] / own;
            v[9] = lack;
            v[10] = std::sqrt(own);
            v[11] = static_cast<float>(hair.spread) / own;
            v[12] = at.light_known ? 1.f : 0.f;
            v[13] = std::min(most_light, light(looks.red05, y, x));
        }
    }
    return out;
}

cv::Mat blue_cover_of(const BlueLooks& looks, const BlueHair& hair, const Circumstances& at) {
    constexpr Net fitted(blue_net::middle, blue_net::scale, blue_net::first, blue_net::first_bias, blue_net::second,
                         blue_net::second_bias, blue_net::last, blue_net::last_bias);
    const cv::Mat wanted = looks.valid & ~looks.bare_seen;
    cv::Mat in = blue_inputs_of(looks, hair, at, wanted);
    for (int i = 0; i < in.rows; ++i)
        for (int k = 0; k < blue_inputs; ++k)
            in.at<float>(i, k) = std::clamp(in.at<float>(i, k), blue_net::low[k], blue_net::high[k]);
    return placed(fitted.shares_of(in), wanted);
}

}  // namespace kempt::ends
