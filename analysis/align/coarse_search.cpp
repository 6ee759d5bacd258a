#include "align/coarse_search.h"

#include <algorithm>
#include <cmath>
#include <mutex>
#include <opencv2/imgproc.hpp>

namespace kempt::align {

namespace {

constexpr double radian = CV_PI / 180;
// Area of one independent place in mm2: the square of the texture's correlation length, near 0.8 mm for the band used.
constexpr double place_mm2 = 0.6;
constexpr double least_overlap = 0.3;  // of the earlier skin
constexpr int peaks_a_turn = 3;
constexpr double apart_mm = 2, apart_rad = 2 * radian;

// In the later picture's pixels: a box about both, the earlier one turned about its middle by any angle up to the
// largest.
cv::Rect canvas(const Ground& earlier, const Ground& later, cv::Point2d middle_mm, double turn_rad) {
    cv::Rect box({0, 0}, later.weight.size());
    for (const double turn : {-turn_rad, -0.5 * turn_rad, 0.0, 0.5 * turn_rad, turn_rad})
        for (const cv::Point& corner : {cv::Point(0, 0), cv::Point(earlier.weight.cols, 0),
                                        cv::Point(0, earlier.weight.rows), cv::Point(earlier.weight.size())}) {
            const cv::Point2d d = earlier.mm(corner.x, corner.y) - middle_mm;
            const cv::Point2d px = later.px(middle_mm + cv::Point2d(std::cos(turn) * d.x - std::sin(turn) * d.y,
                                                                    std::sin(turn) * d.x + std::cos(turn) * d.y));
            box |= cv::Rect(cvFloor(px.x), cvFloor(px.y), 2, 2);
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

std::array<cv::Mat, 2> weighted(const Texture& from) {
    std::array<cv::Mat, 2> layers;
    cv::split(from.texture, layers.data());
    for (cv::Mat& layer : layers) layer = layer.mul(from.ground.weight);
    return layers;
}

}  // namespace

std::vector<Guess> search(const Texture& earlier, const Texture& later, cv::Point2d middle_mm,
                          const SearchOptions& options) {
    const double s = later.ground.px_per_mm;
    const int reach = static_cast<int>(std::ceil(options.shift_mm * s));
    const cv::Rect frame = canvas(earlier.ground, later.ground, middle_mm, options.turn_deg * radian);
    const cv::Point2d origin = later.ground.mm(frame.x, frame.y);
    // Round the back of the canvas, shifts come in from the other side: room for the largest.
    const cv::Size size(cv::getOptimalDFTSize(frame.width + reach), cv::getOptimalDFTSize(frame.height + reach));
    const std::array<cv::Mat, 2> later_layers = weighted(later), carried = weighted(earlier);
    const cv::Point place(-frame.x, -frame.y);
    const std::array<cv::Mat, 2> later_texture{spectrum(later_layers[0], place, size), spectrum(later_layers[1], place, size)};
    const cv::Mat later_weight = spectrum(later.ground.weight, place, size);
    const double all = cv::sum(earlier.ground.weight)[0] * std::pow(s / earlier.ground.px_per_mm, 2);
    std::vector<Guess> found;
    std::mutex guard;
    const int steps = std::max(1, static_cast<int>(std::ceil(options.turn_deg / options.turn_step_deg)));
    cv::parallel_for_(cv::Range(-steps, steps + 1), [&](const cv::Range& turns) {
        for (int k = turns.start; k < turns.end; ++k) {
            const double turn = k * options.turn_step_deg * radian, c = std::cos(turn), n = std::sin(turn);
            // Earlier pixel of a pixel of the later frame, for no shift.
            const cv::Matx23d earlier_from_frame = [&] {
                const double r = earlier.ground.px_per_mm / s;
                const cv::Point2d o = origin - middle_mm, e = middle_mm - earlier.ground.origin_mm;
                return cv::Matx23d(c * r, n * r, (c * o.x + n * o.y + e.x) * earlier.ground.px_per_mm, -n * r, c * r,
                                   (-n * o.x + c * o.y + e.y) * earlier.ground.px_per_mm);
            }();
            cv::Mat texture, weight, match;
            for (std::size_t layer = 0; layer < 2; ++layer) {
                cv::warpAffine(carried[layer], texture, earlier_from_frame, frame.size(),
                               cv::INTER_LINEAR | cv::WARP_INVERSE_MAP);
                add(match, later_texture[layer], spectrum(texture, {}, size));
            }
            cv::dft(match, match, cv::DFT_INVERSE | cv::DFT_SCALE | cv::DFT_REAL_OUTPUT);
            cv::warpAffine(earlier.ground.weight, weight, earlier_from_frame, frame.size(),
                           cv::INTER_LINEAR | cv::WARP_INVERSE_MAP);
            cv::Mat overlap;
            add(overlap, later_weight, spectrum(weight, {}, size));
            cv::dft(overlap, overlap, cv::DFT_INVERSE | cv::DFT_SCALE | cv::DFT_REAL_OUTPUT);
            overlap *= 2;  // both layers
            std::vector<Guess> best;
            cv::Mat strength(2 * reach + 1, 2 * reach + 1, CV_32FC1);
            for (int dy = -reach; dy <= reach; ++dy)
                for (int dx = -reach; dx <= reach; ++dx) {
                    const int x = (dx % size.width + size.width) % size.width,
                              y = (dy % size.height + size.height) % size.height;
                    const float o = overlap.at<float>(y, x);
                    const bool enough = o > least_overlap * 2 * all;
                    const double places = o / (2 * s * s) / place_mm2;
                    strength.at<float>(dy + reach, dx + reach) =
                        enough ? static_cast<float>(match.at<float>(y, x) / o * std::sqrt(places)) : -1e9f;
                }
            for (int p = 0; p < peaks_a_turn; ++p) {
                double top = 0;
                cv::Point at;
                cv::minMaxLoc(strength, nullptr, &top, nullptr, &at);
                if (top <= 0) break;
                const int dx = at.x - reach, dy = at.y - reach;
                const int x = (dx % size.width + size.width) % size.width,
                          y = (dy % size.height + size.height) % size.height;
                best.push_back({turn, cv::Vec2d(dx / s, dy / s), match.at<float>(y, x) / overlap.at<float>(y, x), top});
                cv::circle(strength, at, cvRound(apart_mm * s), cv::Scalar(-1e9), cv::FILLED);
            }
            const std::lock_guard lock(guard);
            found.insert(found.end(), best.begin(), best.end());
        }
    });
    std::sort(found.begin(), found.end(), [](const Guess& a, const Guess& b) {
        return std::tie(a.strength, a.turn_rad) > std::tie(b.strength, b.turn_rad);
    });
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
