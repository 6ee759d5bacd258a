#include "combings/ridges.h"

#include <algorithm>
#include <cmath>
#include <mutex>

#include <opencv2/imgproc.hpp>

namespace kempt::combings {
namespace {

// Bright lines are rarer, so more is asked of them.
constexpr float bright_factor = 1.6f;

// Rows of the picture smoothed by the binomial 1 4 6 4 1 (sigma 1) both ways, a few at a time.
class Smoothed {
  public:
    Smoothed(const Darkness& darkness, int from, int to) : darkness_(darkness), from_(from), n_(to - from) {
        const size_t n = static_cast<size_t>(n_);
        raw_.resize(n + 4);
        for (auto& r : across_) r.resize(n);
        for (auto& r : out_) r.resize(n);
    }
    void start(int y) {  // next() then gives rows y, y + 1, ...
        next_in_ = y - 2;
        next_out_ = y;
        for (int i = 0; i < 4; ++i) take();
    }
    const float* next() {
        take();
        const float* r[5];
        for (int i = 0; i < 5; ++i) r[i] = across_[static_cast<size_t>((next_in_ - 5 + i + 50) % 5)].data();
        float* to = out_[static_cast<size_t>((next_out_ + 30) % 3)].data();
        for (int x = 0; x < n_; ++x) to[x] = (r[0][x] + r[4][x] + 4 * (r[1][x] + r[3][x]) + 6 * r[2][x]) * (1 / 256.f);
        ++next_out_;
        return to;
    }
    // The row smoothed `back` rows ago (0 the last one, up to 2).
    [[nodiscard]] const float* last(int back) const {
        return out_[static_cast<size_t>((next_out_ - 1 - back + 30) % 3)].data();
    }

  private:
    void take() {
        const int y = std::clamp(next_in_, 0, darkness_.size().height - 1);
        darkness_.row(y, from_ - 2, from_ + n_ + 2, raw_.data());
        float* to = across_[static_cast<size_t>((next_in_ + 50) % 5)].data();
        const float* p = raw_.data();
        for (int x = 0; x < n_; ++x) to[x] = p[x] + p[x + 4] + 4 * (p[x + 1] + p[x + 3]) + 6 * p[x + 2];
        ++next_in_;
    }
    const Darkness& darkness_;
    int from_, n_, next_in_ = 0, next_out_ = 0;
    std::vector<float> raw_, across_[5], out_[3];
};

// SD of the second derivative on paper: from the 30 % quantile of its size, which lines hardly move. Windows of 24
// rows x 48 columns spread over the field.
float paper_noise(const Darkness& darkness, const Field& field, float& paper_sd) {
    const cv::Rect box = field.bounds(darkness.size());
    std::vector<float> sizes, steps;
    for (int j = 0; j < 12; ++j)
        for (int i = 0; i < 12; ++i) {
            const int x0 = box.x + box.width * (2 * i + 1) / 24 - 24, y0 = box.y + box.height * (2 * j + 1) / 24 - 12;
            if (field.inside_mm({x0 + 24.0, y0 + 12.0}) < 3) continue;
            Smoothed rows(darkness, x0, x0 + 48);
            rows.start(y0);
            rows.next();
            rows.next();
            for (int y = 0; y < 22; ++y) {
                rows.next();
                const float *a = rows.last(2), *b = rows.last(1), *c = rows.last(0);
                for (int x = 2; x < 46; x += 2) {
                    const float xx = b[x - 1] - 2 * b[x] + b[x + 1], yy = a[x] - 2 * b[x] + c[x];
                    sizes.push_back(std::abs(xx));
                    sizes.push_back(std::abs(yy));
                    // Difference of places 7 px apart: farther than the smoothing reaches, nearer than the light
                    // changes.
                    if (x + 7 < 46) steps.push_back(std::abs(b[x + 7] - b[x]));
                }
            }
        }
    if (sizes.empty() || steps.empty()) return 0;
    const auto step = steps.begin() + static_cast<std::ptrdiff_t>(0.3 * static_cast<double>(steps.size()));
    std::nth_element(steps.begin(), step, steps.end());
    paper_sd = *step / 0.3853f / std::sqrt(2.f);
    const auto at = sizes.begin() + static_cast<std::ptrdiff_t>(0.3 * static_cast<double>(sizes.size()));
    std::nth_element(sizes.begin(), at, sizes.end());
    return *at / 0.3853f;  // of a normal value, 30 % lie within 0.3853 SD
}

// A strongly compressed photo's paper is flat inside each block of 8 x 8 pixels and steps by a code or two between
// them. A code at the brightness of paper (200 of 255) is 1.1 % of light, a step of it after smoothing by about a pixel
// has a second derivative of 0.24 x 0.011. With 2.5 times this noise, two codes are still paper (derived; a 0.07 mm
// hair at 10 px/mm reaches 0.02 to 0.1).
constexpr float least_noise = 0.0022f;

void points_of_row(const float* a, const float* b, const float* c, int from, int n, int y, float least,
                   const Field& field, std::vector<RidgePoint>& points, std::vector<cv::Point>& pixel) {
    for (int x = 1; x + 1 < n; ++x) {
        float m = b[x], xx = b[x - 1] - 2 * m + b[x + 1], yy = a[x] - 2 * m + c[x];
        // The curvature along a line is small, so the sum is near that across.
        if (std::abs(xx + yy) < least) continue;
        const float sign = xx + yy < 0 ? 1.f : -1.f;
        m *= sign, xx *= sign, yy *= sign;
        if (m <= 0 || (sign < 0 && -(xx + yy) < bright_factor * least)) continue;
        const float xy = 0.25f * sign * (c[x + 1] - c[x - 1] - a[x + 1] + a[x - 1]);
        const float mean = 0.5f * (xx + yy), half = 0.5f * (xx - yy), root = std::sqrt(half * half + xy * xy);
        const float across = mean - root, along = mean + root;
        if (-across < least) continue;
        // Unit vector across: eigenvector of the smaller eigenvalue.
        float nx = xy, ny = across - xx;
        if (std::abs(across - yy) > std::abs(ny)) nx = across - yy, ny = xy;
        const float norm = std::sqrt(nx * nx + ny * ny);
        if (norm < 1e-12f)
            nx = 1, ny = 0;
        else
            nx /= norm, ny /= norm;
        const float gx = 0.5f * sign * (b[x + 1] - b[x - 1]), gy = 0.5f * sign * (c[x] - a[x]);
        const float t = -(gx * nx + gy * ny) / across;
        // Half a pixel would do; a little more leaves no holes between neighbours.
        if (std::abs(t * nx) > 0.6f || std::abs(t * ny) > 0.6f) continue;
        const RidgePoint p{
            static_cast<float>(from + x) + t * nx,
            static_cast<float>(y) + t * ny,
            -ny,
            nx,
            -across,
            sign,
            std::clamp((std::abs(across) - std::abs(along)) / (std::abs(across) + std::abs(along)), 0.f, 1.f)};
        if (!field.inside({p.x, p.y})) continue;
        points.push_back(p);
        pixel.push_back({from + x, y});
    }
}

}  // namespace

Ridges find_ridges(const Darkness& darkness, const Field& field, double least_snr) {
    Ridges out;
    out.bounds = field.bounds(darkness.size());
    out.noise = std::max(least_noise, paper_noise(darkness, field, out.paper_sd));
    if (out.bounds.empty()) return out;
    const float least = std::max(1e-5f, static_cast<float>(least_snr) * out.noise);
    constexpr int strip = 48;
    const int strips = (out.bounds.height + strip - 1) / strip;
    std::vector<std::vector<RidgePoint>> points(static_cast<size_t>(strips));
    std::vector<std::vector<cv::Point>> pixel(static_cast<size_t>(strips));
    cv::parallel_for_(cv::Range(0, strips), [&](const cv::Range& range) {
        for (int s = range.start; s < range.end; ++s) {
            const int y0 = out.bounds.y + s * strip, y1 = std::min(out.bounds.y + out.bounds.height, y0 + strip);
            int from = darkness.size().width, to = 0;
            for (const int y : {y0, (y0 + y1) / 2, y1 - 1}) {  // the outline is convex
                const cv::Range columns = field.columns(y, darkness.size().width);
                if (!columns.empty()) from = std::min(from, columns.start), to = std::max(to, columns.end);
            }
            // A corner of the outline may lie between the three rows.
            from = std::max(out.bounds.x, from - strip), to = std::min(out.bounds.x + out.bounds.width, to + strip);
            if (from + 4 > to) continue;
            Smoothed rows(darkness, from, to);
            rows.start(y0 - 1);
            rows.next();
            rows.next();
            for (int y = y0; y < y1; ++y) {
                rows.next();
                points_of_row(rows.last(2), rows.last(1), rows.last(0), from, to - from, y, least, field,
                              points[static_cast<size_t>(s)], pixel[static_cast<size_t>(s)]);
            }
        }
    });
    out.index = cv::Mat1i(out.bounds.height, out.bounds.width, -1);
    for (size_t s = 0; s < points.size(); ++s)
        for (size_t i = 0; i < points[s].size(); ++i) {
            const cv::Point p = pixel[s][i];
            out.index(p.y - out.bounds.y, p.x - out.bounds.x) = static_cast<int>(out.points.size());
            out.points.push_back(points[s][i]);
            out.pixel.push_back(p);
        }
    return out;
}

}  // namespace kempt::combings
