#include "combings/ridges.h"

#include <algorithm>
#include <cmath>
#include <cstring>

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

// Which pixels of row b, between rows a and c, may be points: a sum of curvatures of at least `least` the right way.
// Nine in ten are not, and this loop is worked on several pixels at a time.
void mark_candidates(const float* __restrict a, const float* __restrict b, const float* __restrict c, int n,
                     float least, uchar* __restrict marks) {
    const float bright = bright_factor * least;
    for (int x = 1; x + 1 < n; ++x) {
        const float m = b[x], sum = (b[x - 1] - 2 * m + b[x + 1]) + (a[x] - 2 * m + c[x]);
        // The curvature along a line is small, so the sum is near that across.
        const int dark = (sum <= -least) & (m > 0), light = (sum >= bright) & (m < 0);
        marks[x] = static_cast<uchar>(dark | light);
    }
}

struct RowOf {
    const float *a, *b, *c;  // the rows above, at and below
    int from = 0, y = 0;     // photo's place of their first pixel
    cv::Point corner;        // of the bounds
};

// Half a pixel would do; a little more leaves no holes between neighbours.
constexpr float most_aside = 0.6f;

void add_point(const RowOf& row, int x, float least, const Field& field, Roomy<RidgePoint>& points) {
    const float *a = row.a, *b = row.b, *c = row.c;
    float xx = b[x - 1] - 2 * b[x] + b[x + 1], yy = a[x] - 2 * b[x] + c[x];
    const float sign = xx + yy < 0 ? 1.f : -1.f;
    xx *= sign, yy *= sign;
    const float xy = 0.25f * sign * (c[x + 1] - c[x - 1] - a[x + 1] + a[x - 1]);
    const float mean = 0.5f * (xx + yy), half = 0.5f * (xx - yy), root = std::sqrt(half * half + xy * xy);
    const float across = mean - root, along = mean + root;
    if (-across < least) return;
    // Unit vector across: eigenvector of the smaller eigenvalue.
    float nx = xy, ny = across - xx;
    if (std::abs(across - yy) > std::abs(ny)) nx = across - yy, ny = xy;
    const float gx = 0.5f * sign * (b[x + 1] - b[x - 1]), gy = 0.5f * sign * (c[x] - a[x]);
    const float square = nx * nx + ny * ny;
    // Most lie between pixels or are none: told before anything is divided, a little more freely than below.
    const float far = std::abs(gx * nx + gy * ny) * std::max(std::abs(nx), std::abs(ny));
    if (far > 1.001f * most_aside * square * -across) return;
    const float norm = std::sqrt(square);
    if (norm < 1e-12f)
        nx = 1, ny = 0;
    else
        nx /= norm, ny /= norm;
    const float t = -(gx * nx + gy * ny) / across;
    if (std::abs(t * nx) > most_aside || std::abs(t * ny) > most_aside) return;
    const cv::Point2f at(static_cast<float>(row.from + x) + t * nx, static_cast<float>(row.y) + t * ny);
    if (!field.inside(at)) return;
    const float lean = (std::abs(across) - std::abs(along)) / (std::abs(across) + std::abs(along));
    points.push_back({at.x, at.y, -ny, nx, -across, sign, std::clamp(lean, 0.f, 1.f),
                      static_cast<uint16_t>(row.from + x - row.corner.x), static_cast<uint16_t>(row.y - row.corner.y)});
}

// marks: room for the row, a multiple of eight, cleared behind its end.
void points_of_row(const RowOf& row, int n, float least, const Field& field, std::vector<uchar>& marks,
                   Roomy<RidgePoint>& points) {
    mark_candidates(row.a, row.b, row.c, n, least, marks.data());
    for (int block = 0; block < n; block += 8) {
        uint64_t any = 0;
        std::memcpy(&any, marks.data() + block, 8);
        if (any == 0) continue;
        for (int x = std::max(1, block); x < block + 8; ++x)
            if (marks[static_cast<size_t>(x)]) add_point(row, x, least, field, points);
    }
}

// The points of all strips of `strip` rows, with their index.
void put_together(std::vector<Roomy<RidgePoint>>& points, int strip, Ridges& out) {
    std::vector<size_t> before(points.size() + 1, 0);
    for (size_t s = 0; s < points.size(); ++s) before[s + 1] = before[s] + points[s].size();
    out.points.resize(before.back());
    const size_t pieces = static_cast<size_t>(out.pieces()), rows = static_cast<size_t>(out.bounds.height);
    out.start.resize(rows * pieces + 1);
    out.start.back() = static_cast<int>(before.back());
    cv::parallel_for_(cv::Range(0, static_cast<int>(points.size())), [&](const cv::Range& range) {
        for (size_t s = static_cast<size_t>(range.start); s < static_cast<size_t>(range.end); ++s) {
            std::copy(points[s].begin(), points[s].end(), out.points.begin() + static_cast<std::ptrdiff_t>(before[s]));
            const size_t last = std::min(rows, (s + 1) * static_cast<size_t>(strip)) * pieces;
            size_t piece = s * static_cast<size_t>(strip) * pieces, at = before[s];  // the first piece not set yet
            for (const RidgePoint& p : points[s]) {
                const size_t own = p.row * pieces + p.column / Ridges::piece_px;
                for (; piece <= own; ++piece) out.start[piece] = static_cast<int>(at);
                ++at;
            }
            for (; piece < last; ++piece) out.start[piece] = static_cast<int>(at);
            Roomy<RidgePoint>().swap(points[s]);
        }
    });
}

}  // namespace

Ridges find_ridges(const Darkness& darkness, const Field& field, double least_snr) {
    Ridges out;
    out.bounds = field.bounds(darkness.size());
    out.noise = std::max(least_noise, paper_noise(darkness, field, out.paper_sd));
    if (out.bounds.empty()) return out;
    const float least = std::max(1e-5f, static_cast<float>(least_snr) * out.noise);
    // Strips so high that the points of one fill large pages; enough of them that no thread waits for long.
    constexpr int spare = 48, pieces = 12;
    const int strip = std::max(96, (out.bounds.height + pieces - 1) / pieces);
    const int strips = (out.bounds.height + strip - 1) / strip;
    std::vector<Roomy<RidgePoint>> points(static_cast<size_t>(strips));
    cv::parallel_for_(cv::Range(0, strips), [&](const cv::Range& range) {
        for (int s = range.start; s < range.end; ++s) {
            const int y0 = out.bounds.y + s * strip, y1 = std::min(out.bounds.y + out.bounds.height, y0 + strip);
            int from = darkness.size().width, to = 0;
            for (const int y : {y0, (y0 + y1) / 2, y1 - 1}) {  // the outline is convex
                const cv::Range columns = field.columns(y, darkness.size().width);
                if (!columns.empty()) from = std::min(from, columns.start), to = std::max(to, columns.end);
            }
            // A corner of the outline may lie between the three rows.
            from = std::max(out.bounds.x, from - spare), to = std::min(out.bounds.x + out.bounds.width, to + spare);
            if (from + 4 > to) continue;
            std::vector<uchar> marks(static_cast<size_t>(to - from) + 8, 0);
            // Room that is not used costs nothing, moving what is there does.
            points[static_cast<size_t>(s)].reserve(static_cast<size_t>(to - from) * static_cast<size_t>(strip) / 16);
            Smoothed rows(darkness, from, to);
            rows.start(y0 - 1);
            rows.next();
            rows.next();
            for (int y = y0; y < y1; ++y) {
                rows.next();
                points_of_row({rows.last(2), rows.last(1), rows.last(0), from, y, out.bounds.tl()}, to - from, least,
                              field, marks, points[static_cast<size_t>(s)]);
            }
        }
    });
    put_together(points, strip, out);
    return out;
}

}  // namespace kempt::combings
