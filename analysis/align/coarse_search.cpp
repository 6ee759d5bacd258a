#include "align/coarse_search.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/rank.h"

namespace kempt::align {

namespace {

constexpr double radian = CV_PI / 180;
constexpr double least_overlap = 0.3;  // of the earlier skin
constexpr int peaks_a_turn = 3;
// The right place has shoulders: neighbouring turns and shifts, out to the length of a blotch over half the line.
constexpr double apart_mm = 3, apart_rad = 4 * radian;

// In the later picture's pixels: a box about both, the earlier one turned about its middle by any angle up to the
// largest.
cv::Rect canvas(const Ground& earlier, const Ground& later, cv::Point2d middle_mm, const SearchOptions& options) {
    cv::Rect box({0, 0}, later.weight.size());
    const cv::Point2d base = middle_mm + cv::Point2d(options.base_shift_mm);
    for (const double part : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
        const double turn = options.base_turn_rad + part * options.turn_deg * radian;
        for (const cv::Point& corner : {cv::Point(0, 0), cv::Point(earlier.weight.cols, 0),
                                        cv::Point(0, earlier.weight.rows), cv::Point(earlier.weight.size())}) {
            const cv::Point2d d = earlier.mm(corner.x, corner.y) - middle_mm;
            const cv::Point2d px = later.px(base + cv::Point2d(std::cos(turn) * d.x - std::sin(turn) * d.y,
                                                               std::sin(turn) * d.x + std::cos(turn) * d.y));
            box |= cv::Rect(cvFloor(px.x), cvFloor(px.y), 2, 2);
        }
    }
    return box;
}

cv::Mat spectrum(const cv::Mat& field, cv::Point at, cv::Size size) {
    cv::Mat padded(size, CV_32FC1, cv::Scalar(0)), out;
    field.copyTo(padded(cv::Rect(at, field.size())));
    cv::dft(padded, out, 0, at.y + field.rows);
    return out;
}

// Adds the spectrum of the correlation.
void add(cv::Mat& sum, const cv::Mat& later, const cv::Mat& earlier) {
    cv::Mat product;
    cv::mulSpectrums(later, earlier, product, 0, true);
    if (sum.empty())
        sum = product;
    else
        sum += product;
}

}  // namespace

namespace {

// What stays the same for all turns.
struct Setting {
    const Texture& earlier;
    cv::Point2d middle_mm;
    cv::Vec2d base_shift_mm;
    cv::Rect frame;         // the canvas in the later picture's pixels
    cv::Point2d origin_mm;  // of its first pixel
    cv::Size size;          // of the spectra
    double px_per_mm = 0;
    int reach_px = 0;
    std::vector<cv::Mat> carried;        // the earlier bands, weighted
    std::vector<cv::Mat> later_spectra;  // of the later bands
    cv::Mat later_weight;                // spectrum
    double all_px = 0;                   // weight of the earlier skin in pixels of the canvas
};

// Earlier pixel of a pixel of the canvas, turned, without a shift but the base's.
cv::Matx23d earlier_from_canvas(const Setting& at, double turn_rad) {
    const Ground& e = at.earlier.ground;
    const double r = e.px_per_mm / at.px_per_mm, c = std::cos(turn_rad), n = std::sin(turn_rad);
    const cv::Point2d o = at.origin_mm - at.middle_mm - cv::Point2d(at.base_shift_mm), m = at.middle_mm - e.origin_mm;
    return {c * r,  n * r, (c * o.x + n * o.y + m.x) * e.px_per_mm,
            -n * r, c * r, (-n * o.x + c * o.y + m.y) * e.px_per_mm};
}

cv::Mat correlation(cv::Mat spectrum) {
    cv::dft(spectrum, spectrum, cv::DFT_INVERSE | cv::DFT_SCALE | cv::DFT_REAL_OUTPUT);
    return spectrum;
}

// Correlation over shifts in units of its own scatter: how far a shift stands out from all others of this turn. The
// scatter is a median, because the right place and its shoulders stand out too. -1e9 where too little overlaps.
cv::Mat standing_out(const cv::Mat& match, const cv::Mat& overlap, const Setting& at) {
    const int reach = at.reach_px;
    cv::Mat out(2 * reach + 1, 2 * reach + 1, CV_32FC1, cv::Scalar(-1e9));
    std::vector<float> size;
    for (int dy = -reach; dy <= reach; ++dy)
        for (int dx = -reach; dx <= reach; ++dx) {
            const cv::Point p((dx + at.size.width) % at.size.width, (dy + at.size.height) % at.size.height);
            const float o = overlap.at<float>(p);
            if (o <= least_overlap * at.all_px) continue;
            const float value = match.at<float>(p) / std::sqrt(o);
            out.at<float>(dy + reach, dx + reach) = value;
            size.push_back(std::abs(value));
        }
    if (size.size() < 50) return cv::Mat(out.size(), CV_32FC1, cv::Scalar(-1e9));
    return out * (0.6745 / std::max(at_rank(size, 0.5), 1e-9f));
}

// The strongest shifts for one turn. Each band alone and all together are asked: fine texture tells more where photos
// are sharp and lit alike, coarse texture and redness where light has changed.
std::vector<Guess> guesses_of(const Setting& at, double turn_rad) {
    const cv::Matx23d from = earlier_from_canvas(at, turn_rad);
    const auto brought = [&](const cv::Mat& field) {
        cv::Mat out;
        cv::warpAffine(field, out, from, at.frame.size(), cv::INTER_LINEAR | cv::WARP_INVERSE_MAP);
        return spectrum(out, {}, at.size);
    };
    cv::Mat overlap, all, strength;
    add(overlap, at.later_weight, brought(at.earlier.ground.weight));
    overlap = correlation(overlap);
    for (std::size_t band = 0; band < at.carried.size(); ++band) {
        cv::Mat one;
        add(one, at.later_spectra[band], brought(at.carried[band]));
        one = correlation(one);
        all = all.empty() ? one.clone() : cv::Mat(all + one);
        const cv::Mat alone = standing_out(one, overlap, at);
        strength = strength.empty() ? alone : cv::Mat(cv::max(strength, alone));
    }
    strength = cv::max(strength, standing_out(all, overlap, at));
    const int reach = at.reach_px;
    const double s = at.px_per_mm;
    std::vector<Guess> best;
    for (int peak = 0; peak < peaks_a_turn; ++peak) {
        double top = 0;
        cv::Point where;
        cv::minMaxLoc(strength, nullptr, &top, nullptr, &where);
        if (top <= 0) break;
        const cv::Point shift = where - cv::Point(reach, reach);
        best.push_back({turn_rad, at.base_shift_mm + cv::Vec2d(shift.x / s, shift.y / s), top});
        cv::circle(strength, where, cvRound(apart_mm * s), cv::Scalar(-1e9), cv::FILLED);
    }
    return best;
}

}  // namespace

std::vector<Guess> search(const Texture& earlier, const Texture& later, cv::Point2d middle_mm,
                          const SearchOptions& options) {
    const double s = later.ground.px_per_mm;
    Setting at{earlier,
               middle_mm,
               options.base_shift_mm,
               canvas(earlier.ground, later.ground, middle_mm, options),
               {},
               {},
               s,
               static_cast<int>(std::ceil(options.shift_mm * s)),
               weighted_bands(earlier),
               {},
               {},
               cv::sum(earlier.ground.weight)[0] * std::pow(s / earlier.ground.px_per_mm, 2)};
    at.origin_mm = later.ground.mm(at.frame.x, at.frame.y);
    // Round the back of the canvas, shifts come in from the other side: room for the largest.
    at.size = {cv::getOptimalDFTSize(at.frame.width + at.reach_px),
               cv::getOptimalDFTSize(at.frame.height + at.reach_px)};
    const cv::Point place(-at.frame.x, -at.frame.y);
    for (const cv::Mat& band : weighted_bands(later)) at.later_spectra.push_back(spectrum(band, place, at.size));
    at.later_weight = spectrum(later.ground.weight, place, at.size);
    const int steps = std::max(1, static_cast<int>(std::ceil(options.turn_deg / options.turn_step_deg)));
    std::vector<std::vector<Guess>> by_turn(static_cast<std::size_t>(2 * steps + 1));
    cv::parallel_for_(cv::Range(-steps, steps + 1), [&](const cv::Range& turns) {
        for (int k = turns.start; k < turns.end; ++k)
            by_turn[static_cast<std::size_t>(k + steps)] =
                guesses_of(at, options.base_turn_rad + k * options.turn_step_deg * radian);
    });
    std::vector<Guess> found;
    for (const auto& some : by_turn) found.insert(found.end(), some.begin(), some.end());
    std::stable_sort(found.begin(), found.end(),
                     [](const Guess& a, const Guess& b) { return a.strength > b.strength; });
    std::vector<Guess> kept;
    for (const Guess& guess : found) {
        const auto near = [&](const Guess& other) {
            return cv::norm(guess.shift_mm - other.shift_mm) < apart_mm &&
                   std::abs(guess.turn_rad - other.turn_rad) < apart_rad;
        };
        if (std::none_of(kept.begin(), kept.end(), near)) kept.push_back(guess);
        if (static_cast<int>(kept.size()) == options.guesses) break;
    }
    return kept;
}

}  // namespace kempt::align
