#include "combings/ridges.h"

#include <algorithm>
#include <cmath>
#include <mutex>

#include <opencv2/imgproc.hpp>

#include "card/sampler.h"

namespace kempt::combings {
namespace {

constexpr int cell = 32;  // px; 2-3 mm: light changes little over it, and hair leaves paper free in it
// Near luma, so that the chroma that JPEG halves and the sensor's mosaic adds little: green counts double.
constexpr double weights[3] = {0.25, 0.5, 0.25};

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
float paper_noise(const Darkness& darkness, const Field& field) {
    const cv::Rect box = field.bounds(darkness.size());
    std::vector<float> sizes;
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
                }
            }
        }
    if (sizes.empty()) return 0;
    const auto at = sizes.begin() + static_cast<std::ptrdiff_t>(0.3 * static_cast<double>(sizes.size()));
    std::nth_element(sizes.begin(), at, sizes.end());
    return *at / 0.3853f;  // of a normal value, 30 % lie within 0.3853 SD
}

void points_of_row(const float* a, const float* b, const float* c, int from, int n, int y, float least,
                   const Field& field, std::vector<RidgePoint>& points, std::vector<cv::Point>& pixel) {
    for (int x = 1; x + 1 < n; ++x) {
        const float m = b[x], xx = b[x - 1] - 2 * m + b[x + 1], yy = a[x] - 2 * m + c[x];
        if (-(xx + yy) < least) continue;  // the curvature along a line is small, so the sum is near that across
        const float xy = 0.25f * (c[x + 1] - c[x - 1] - a[x + 1] + a[x - 1]);
        const float mean = 0.5f * (xx + yy), half = 0.5f * (xx - yy), root = std::sqrt(half * half + xy * xy);
        const float across = mean - root, along = mean + root;
        if (-across < least || m <= 0) continue;
        // Unit vector across: eigenvector of the smaller eigenvalue.
        float nx = xy, ny = across - xx;
        if (std::abs(across - yy) > std::abs(ny)) nx = across - yy, ny = xy;
        const float norm = std::sqrt(nx * nx + ny * ny);
        if (norm < 1e-12f)
            nx = 1, ny = 0;
        else
            nx /= norm, ny /= norm;
        const float gx = 0.5f * (b[x + 1] - b[x - 1]), gy = 0.5f * (c[x] - a[x]);
        const float t = -(gx * nx + gy * ny) / across;
        // Half a pixel would do; a little more leaves no holes between neighbours.
        if (std::abs(t * nx) > 0.6f || std::abs(t * ny) > 0.6f) continue;
        const RidgePoint p{
            static_cast<float>(from + x) + t * nx,
            static_cast<float>(y) + t * ny,
            -ny,
            nx,
            -across,
            std::clamp((std::abs(across) - std::abs(along)) / (std::abs(across) + std::abs(along)), 0.f, 1.f)};
        if (field.inside_mm({p.x, p.y}) < 0) continue;
        points.push_back(p);
        pixel.push_back({from + x, y});
    }
}

}  // namespace

Darkness::Darkness(const Photo& photo, const Field& field)
    : pixels_(photo.pixels), wide_(photo.pixels.depth() == CV_16U) {
    const auto tables = card::code_tables(photo);
    for (size_t c = 0; c < 3; ++c) {
        table_[c] = tables[c];
        for (float& v : table_[c]) v *= static_cast<float>(weights[c]);
    }
    const cv::Rect box = field.bounds(pixels_.size());
    cv::Mat1f paper((pixels_.rows + cell - 1) / cell + 1, (pixels_.cols + cell - 1) / cell + 1, 1.f);
    cv::parallel_for_(
        cv::Range(box.y / cell, std::min(paper.rows, (box.y + box.height) / cell + 1)), [&](const cv::Range& rows) {
            std::vector<float> sample;
            for (int j = rows.start; j < rows.end; ++j)
                for (int i = box.x / cell; i < std::min(paper.cols, (box.x + box.width) / cell + 1); ++i) {
                    sample.clear();
                    float sum = 0;
                    for (int y = j * cell; y < std::min(pixels_.rows, (j + 1) * cell); y += 2)
                        for (int x = i * cell; x < std::min(pixels_.cols, (i + 1) * cell); x += 2)
                            sample.push_back(light(x, y)), sum += sample.back();
                    if (sample.empty()) continue;
                    // Paper is the brighter part.
                    const float mean = sum / static_cast<float>(sample.size());
                    float bright = 0;
                    int n = 0;
                    for (const float v : sample)
                        if (v >= mean) bright += v, ++n;
                    paper(j, i) = n > 0 ? bright / static_cast<float>(n) : mean;
                }
        });
    // A cell that print or hair fills takes its light from around it.
    cv::Mat1f steady;
    cv::medianBlur(paper, steady, 5);
    cv::GaussianBlur(steady, steady, {}, 1);
    per_paper_ = 1 / cv::max(steady, 0.01f);
}

float Darkness::light(int x, int y) const {
    if (wide_) {
        const ushort* p = pixels_.ptr<ushort>(y) + 3 * x;
        return table_[0][p[0]] + table_[1][p[1]] + table_[2][p[2]];
    }
    const uchar* p = pixels_.ptr<uchar>(y) + 3 * x;
    return table_[0][p[0]] + table_[1][p[1]] + table_[2][p[2]];
}

void Darkness::row(int y, int from, int to, float* out) const {
    const float v =
        std::clamp((static_cast<float>(y) + 0.5f) / cell - 0.5f, 0.f, static_cast<float>(per_paper_.rows) - 1.001f);
    const int j = static_cast<int>(v);
    const float b = v - static_cast<float>(j);
    const float *p = per_paper_[j], *q = per_paper_[j + 1];
    const int first = std::clamp(from, 0, pixels_.cols), last = std::clamp(to, first, pixels_.cols);
    if (wide_) {
        for (int x = first; x < last; ++x) out[x - from] = light(x, y);
    } else {
        const uchar* code = pixels_.ptr<uchar>(y) + 3 * first;
        const float *r = table_[0].data(), *g = table_[1].data(), *bl = table_[2].data();
        for (int x = first; x < last; ++x, code += 3) out[x - from] = r[code[0]] + g[code[1]] + bl[code[2]];
    }
    // Per paper, linear between the middles of cells.
    for (int x = first; x < last;) {
        const int i = std::clamp((x - cell / 2 + cell) / cell - 1, 0, per_paper_.cols - 2);
        const int end = std::min(last, i + 2 >= per_paper_.cols ? last : (i + 1) * cell + cell / 2);
        const float left = p[i] * (1 - b) + q[i] * b, right = p[i + 1] * (1 - b) + q[i + 1] * b;
        const float step = (right - left) / cell, base = left + step * (0.5f - static_cast<float>(i * cell + cell / 2));
        for (int k = x; k < std::max(end, x + 1); ++k)
            out[k - from] = 1 - out[k - from] * (base + step * static_cast<float>(std::max(k, cell / 2)));
        x = std::max(end, x + 1);
    }
    for (int x = from; x < first; ++x) out[x - from] = 0;
    for (int x = std::max(last, from); x < to; ++x) out[x - from] = 0;
}

float Darkness::at(double x, double y) const {
    if (!(x >= 0 && y >= 0 && x < pixels_.cols - 1.001 && y < pixels_.rows - 1.001)) return 0;
    const int i = static_cast<int>(x), j = static_cast<int>(y);
    const float a = static_cast<float>(x - i), b = static_cast<float>(y - j);
    const float mean = (light(i, j) * (1 - a) + light(i + 1, j) * a) * (1 - b) +
                       (light(i, j + 1) * (1 - a) + light(i + 1, j + 1) * a) * b;
    const int u = std::clamp(i / cell, 0, per_paper_.cols - 1), v = std::clamp(j / cell, 0, per_paper_.rows - 1);
    return 1 - mean * per_paper_(v, u);
}

Ridges find_ridges(const Darkness& darkness, const Field& field, double least_snr) {
    Ridges out;
    out.bounds = field.bounds(darkness.size());
    out.noise = paper_noise(darkness, field);
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
