#include "align/patches.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <optional>

namespace kempt::align {

namespace {

constexpr double least_correlation = 0.15;  // below, the top is one of many
constexpr double least_overlap = 0.5;       // of the patch's own skin

struct Brought {
    cv::Mat texture, weight;  // of the later photo in the earlier frame, with a rim of `rim` pixels about it
};

Brought bring(const Texture& earlier, const Texture& later, const SkinMap& map, int rim) {
    const Ground& e = earlier.ground;
    const cv::Size size(e.weight.cols + 2 * rim, e.weight.rows + 2 * rim);
    cv::Mat where = map.grid(e.mm(-rim, -rim), e.px_per_mm, size);
    const cv::Point2d origin = later.ground.origin_mm;
    const double s = later.ground.px_per_mm;
    where = (where - cv::Scalar(origin.x, origin.y)) * s;
    Brought out;
    cv::remap(later.texture, out.texture, where, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_CONSTANT);
    cv::remap(later.ground.weight, out.weight, where, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_CONSTANT);
    return out;
}

cv::Mat weighted(const cv::Mat& texture, const cv::Mat& weight) {
    cv::Mat many;
    cv::merge(std::vector<cv::Mat>(static_cast<std::size_t>(texture.channels()), weight), many);
    return texture.mul(many);
}

cv::Mat power(const cv::Mat& texture, const cv::Mat& weight) {
    cv::Mat sum;
    cv::transform(texture.mul(texture), sum, cv::Mat(1, texture.channels(), CV_32FC1, cv::Scalar(1)));
    return sum.mul(weight);
}

// Vertex of the parabola through three even samples, held to the middle one's half.
double vertex(double a, double b, double c) {
    const double bend = a - 2 * b + c;
    return bend < 0 ? std::clamp(0.5 * (a - c) / bend, -0.5, 0.5) : 0;
}

}  // namespace

Patches match(const Texture& earlier, const Texture& later, const SkinMap& map, const PatchOptions& options) {
    const Ground& e = earlier.ground;
    const double s = e.px_per_mm;
    const int reach = std::max(2, static_cast<int>(std::ceil(options.search_mm * s))), rim = reach;
    const Brought brought = bring(earlier, later, map, rim);
    const int side = std::max(5, cvRound(options.size_mm * s)), step = std::max(2, cvRound(options.step_mm * s));
    std::vector<cv::Rect> places;
    for (int y = 0; y + side <= e.weight.rows; y += step)
        for (int x = 0; x + side <= e.weight.cols; x += step) places.emplace_back(x, y, side, side);
    Patches out;
    out.skin_mm2 = cv::sum(e.weight.mul(brought.weight(cv::Rect({rim, rim}, e.weight.size()))))[0] / (s * s);
    // What is summed over patch and shift: w1 t1 w2 t2, w1 t1^2 w2, w1 w2 t2^2, w1 w2.
    const cv::Mat w2 = brought.weight, t2 = weighted(brought.texture, w2), q2 = power(brought.texture, w2);
    const cv::Mat w1 = e.weight, t1 = weighted(earlier.texture, w1), q1 = power(earlier.texture, w1);
    const cv::Rect inner(rim, rim, e.weight.cols, e.weight.rows);
    const double ours = cv::sum(q1.mul(w2(inner)))[0], theirs = cv::sum(w1.mul(q2(inner)))[0];
    if (ours > 0 && theirs > 0) out.correlation = t1.dot(t2(inner)) / std::sqrt(ours * theirs);
    out.strength = out.correlation * std::sqrt(out.skin_mm2 / options.place_mm2);
    std::vector<std::optional<Tie>> found(places.size());
    std::vector<char> enough(places.size(), 0);
    cv::parallel_for_(cv::Range(0, static_cast<int>(places.size())), [&](const cv::Range& part) {
        for (int n = part.start; n < part.end; ++n) {
            const cv::Rect& place = places[static_cast<std::size_t>(n)];
            const double skin = cv::sum(w1(place))[0];
            if (skin / (s * s) < options.least_skin_mm2) continue;
            enough[static_cast<std::size_t>(n)] = 1;
            const cv::Rect wide(place.x + rim - reach, place.y + rim - reach, side + 2 * reach, side + 2 * reach);
            cv::Mat top, one, two, both;
            cv::matchTemplate(t2(wide), t1(place), top, cv::TM_CCORR);
            cv::matchTemplate(w2(wide), q1(place), one, cv::TM_CCORR);
            cv::matchTemplate(q2(wide), w1(place), two, cv::TM_CCORR);
            cv::matchTemplate(w2(wide), w1(place), both, cv::TM_CCORR);
            cv::Mat ncc(top.size(), CV_32FC1, cv::Scalar(-1));
            for (int j = 0; j < ncc.rows; ++j)
                for (int i = 0; i < ncc.cols; ++i) {
                    const float area = both.at<float>(j, i),
                                power = std::max(one.at<float>(j, i), 0.0f) * std::max(two.at<float>(j, i), 0.0f);
                    if (area > least_overlap * skin && power > 1e-6f)
                        ncc.at<float>(j, i) = top.at<float>(j, i) / std::sqrt(power);
                }
            double height = 0;
            cv::Point at;
            cv::minMaxLoc(ncc, nullptr, &height, nullptr, &at);
            if (height < least_correlation || at.x < 1 || at.y < 1 || at.x + 1 >= ncc.cols || at.y + 1 >= ncc.rows)
                continue;
            const auto v = [&](int dx, int dy) { return static_cast<double>(ncc.at<float>(at.y + dy, at.x + dx)); };
            if (v(-1, 0) <= -1 || v(1, 0) <= -1 || v(0, -1) <= -1 || v(0, 1) <= -1) continue;
            const double dx = at.x + vertex(v(-1, 0), v(0, 0), v(1, 0)) - reach,
                         dy = at.y + vertex(v(0, -1), v(0, 0), v(0, 1)) - reach;
            // Second differences, per mm2.
            const double xx = -(v(-1, 0) - 2 * v(0, 0) + v(1, 0)) * s * s,
                         yy = -(v(0, -1) - 2 * v(0, 0) + v(0, 1)) * s * s,
                         xy = -(v(1, 1) - v(-1, 1) - v(1, -1) + v(-1, -1)) / 4 * s * s;
            if (!(xx > 0) || !(yy > 0)) continue;
            const double bound = 0.95 * std::sqrt(xx * yy), held = std::clamp(xy, -bound, bound);
            const double places_here = both.at<float>(at) / (s * s) / options.place_mm2;
            const double certain = places_here * height / std::max(0.05, 1 - height * height);
            Tie tie;
            // The skin's own centre, where the patch is mostly masked.
            const cv::Moments m = cv::moments(w1(place));
            const cv::Point2d centre(place.x + m.m10 / m.m00, place.y + m.m01 / m.m00);
            tie.earlier_mm = e.mm(centre.x, centre.y);
            tie.later_mm = map(e.mm(centre.x + dx, centre.y + dy));
            const double c = std::cos(map.turn_rad), t = std::sin(map.turn_rad);
            const cv::Matx22d turn(c, -t, t, c);
            tie.information = turn * (cv::Matx22d(xx, held, held, yy) * certain) * turn.t();
            tie.correlation = height;
            found[static_cast<std::size_t>(n)] = tie;
        }
    });
    for (std::size_t n = 0; n < places.size(); ++n) {
        out.looked_for += enough[n];
        if (found[n]) out.ties.push_back(*found[n]);
    }
    return out;
}

}  // namespace kempt::align
