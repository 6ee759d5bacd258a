#include "combings/ridges.h"

#include <algorithm>
#include <cmath>

#include "combings/ridge_rows.h"
#include "core/rank.h"

namespace kempt::combings {
namespace {

constexpr int square_px = 32;  // of which the field is asked at once

// Rows of the picture smoothed by the binomial 1 4 6 4 1 (sigma 1) both ways, a few at a time.
class Smoothed {
  public:
    Smoothed(const Darkness& darkness, int from, int to) : darkness_(darkness), from_(from), n_(to - from) {
        const size_t n = static_cast<size_t>(n_ + row_spare);
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
        smooth_down(r, n_, to);
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
        smooth_across(raw_.data(), n_, across_[static_cast<size_t>((next_in_ + 50) % 5)].data());
        ++next_in_;
    }
    const Darkness& darkness_;
    int from_, n_, next_in_ = 0, next_out_ = 0;
    std::vector<float> raw_, across_[5], out_[3];
};

// SD of the second derivative on paper: from the 30 % quantile of its size, which lines hardly move. Windows of 24
// rows x 48 columns spread over the field.
float paper_noise(const Darkness& darkness, const Field& field, float& paper_sd) {
    constexpr int windows = 12;
    const cv::Rect box = field.bounds(darkness.size());
    struct Window {
        std::vector<float> sizes, steps;
    };
    std::vector<Window> of(windows * windows);
    cv::parallel_for_(cv::Range(0, windows * windows), [&](const cv::Range& range) {
        for (int w = range.start; w < range.end; ++w) {
            const int i = w % windows, j = w / windows;
            const int x0 = box.x + box.width * (2 * i + 1) / 24 - 24, y0 = box.y + box.height * (2 * j + 1) / 24 - 12;
            if (field.inside_mm({x0 + 24.0, y0 + 12.0}) < 3) continue;
            Window& out = of[static_cast<size_t>(w)];
            Smoothed rows(darkness, x0, x0 + 48);
            rows.start(y0);
            rows.next();
            rows.next();
            for (int y = 0; y < 22; ++y) {
                rows.next();
                const float *a = rows.last(2), *b = rows.last(1), *c = rows.last(0);
                for (int x = 2; x < 46; x += 2) {
                    const float xx = b[x - 1] - 2 * b[x] + b[x + 1], yy = a[x] - 2 * b[x] + c[x];
                    out.sizes.push_back(std::abs(xx));
                    out.sizes.push_back(std::abs(yy));
                    // Difference of places 7 px apart: farther than the smoothing reaches, nearer than the light
                    // changes.
                    if (x + 7 < 46) out.steps.push_back(std::abs(b[x + 7] - b[x]));
                }
            }
        }
    });
    std::vector<float> sizes, steps;
    for (const Window& one : of) {
        sizes.insert(sizes.end(), one.sizes.begin(), one.sizes.end());
        steps.insert(steps.end(), one.steps.begin(), one.steps.end());
    }
    if (sizes.empty() || steps.empty()) return 0;
    paper_sd = at_rank(steps, 0.3) / 0.3853f / std::sqrt(2.f);
    return at_rank(sizes, 0.3) / 0.3853f;  // of a normal value, 30 % lie within 0.3853 SD
}

// A strongly compressed photo's paper is flat inside each block of 8 x 8 pixels and steps by a code or two between
// them. A code at the brightness of paper (200 of 255) is 1.1 % of light, a step of it after smoothing by about a pixel
// has a second derivative of 0.24 x 0.011. With 2.5 times this noise, two codes are still paper (derived; a 0.07 mm
// hair at 10 px/mm reaches 0.02 to 0.1).
constexpr float least_noise = 0.0022f;

// Pixels [x0, x1) of rows; ask: not all of them lie inside the field.
struct Span {
    int x0, x1;
    bool ask;
};

// The columns [from, to), from the corner of the bounds, of a row of squares that do not lie outside.
std::vector<Span> spans_of(const uchar* squares, int from, int to) {
    std::vector<Span> out;
    for (int x = from; x < to;) {
        const int square = x / square_px, end = std::min(to, (square + 1) * square_px);
        const auto cell = static_cast<Field::Cell>(squares[square]);
        const bool ask = cell == Field::Cell::mixed;
        if (cell != Field::Cell::outside) {
            if (!out.empty() && out.back().x1 == x && out.back().ask == ask)
                out.back().x1 = end;
            else
                out.push_back({x, end, ask});
        }
        x = end;
    }
    return out;
}

// Points of the rows [y0, y1) of the bounds.
void find_in_strip(const Darkness& darkness, const Field& field, const cv::Mat1b& squares, cv::Rect bounds, int y0,
                   int y1, float least, Roomy<RidgePoint>& points) {
    constexpr int spare = 48;
    int from = darkness.size().width, to = 0;
    const int top = bounds.y + y0, end = bounds.y + y1;
    for (const int y : {top, (top + end) / 2, end - 1}) {  // the outline is convex
        const cv::Range columns = field.columns(y, darkness.size().width);
        if (!columns.empty()) from = std::min(from, columns.start), to = std::max(to, columns.end);
    }
    // A corner of the outline may lie between the three rows.
    from = std::max(bounds.x, from - spare) - bounds.x, to = std::min(bounds.x + bounds.width, to + spare) - bounds.x;
    if (from + 4 > to) return;
    const int first = y0 / square_px;
    std::vector<std::vector<Span>> spans;
    int left = to, right = from;
    for (int j = first; j <= (y1 - 1) / square_px; ++j) {
        spans.push_back(spans_of(squares[j], from + 1, to - 1));
        if (!spans.back().empty())
            left = std::min(left, spans.back().front().x0 - 1), right = std::max(right, spans.back().back().x1 + 1);
    }
    if (left >= right) return;
    // Room that is not used costs nothing, moving what is there does.
    points.reserve(static_cast<size_t>(right - left) * static_cast<size_t>(y1 - y0) / 16);
    Smoothed rows(darkness, bounds.x + left, bounds.x + right);
    bool ready = false;
    for (int y = y0; y < y1; ++y) {
        const std::vector<Span>& here = spans[static_cast<size_t>(y / square_px - first)];
        if (here.empty()) {
            ready = false;
            continue;
        }
        if (!ready) {
            rows.start(bounds.y + y - 1);
            rows.next();
            rows.next();
            ready = true;
        }
        rows.next();
        const RowOf row{rows.last(2), rows.last(1), rows.last(0), bounds.x + left, bounds.y + y, bounds.tl()};
        for (const Span& s : here) add_points(row, s.x0 - left, s.x1 - left, least, s.ask ? &field : nullptr, points);
    }
}

}  // namespace

Ridges find_ridges(const Darkness& darkness, const Field& field, double least_snr) {
    Ridges out;
    out.bounds = field.bounds(darkness.size());
    out.noise = std::max(least_noise, paper_noise(darkness, field, out.paper_sd));
    if (out.bounds.empty()) return out;
    const float least = std::max(1e-5f, static_cast<float>(least_snr) * out.noise);
    // Strips so high that the points of one fill large pages; enough of them that no thread waits for long.
    constexpr int pieces = 12;
    const int height = out.bounds.height;
    out.strip_rows = std::max(96, (height + pieces - 1) / pieces);
    out.strips.resize(static_cast<size_t>((height + out.strip_rows - 1) / out.strip_rows));
    const cv::Mat1b squares = field.squares(out.bounds, square_px);
    cv::parallel_for_(cv::Range(0, static_cast<int>(out.strips.size())), [&](const cv::Range& range) {
        for (int s = range.start; s < range.end; ++s)
            find_in_strip(darkness, field, squares, out.bounds, s * out.strip_rows,
                          std::min(height, (s + 1) * out.strip_rows), least, out.strips[static_cast<size_t>(s)]);
    });
    return out;
}

}  // namespace kempt::combings
