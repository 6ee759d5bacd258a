#include "combings/darkness.h"

#include <algorithm>
#include <cmath>

#include <opencv2/imgproc.hpp>

#include "card/sampler.h"

namespace kempt::combings {
namespace {

constexpr int cell = 32;  // px; 2-3 mm: light changes little over it, and hair leaves paper free in it
// Near luma, so that the chroma that JPEG halves and the sensor's mosaic add little: green counts double.
// (Weights fitted to each photo's own hair came out the same within a few hundredths, for that very reason.)
constexpr std::array<float, 3> near_luma{0.25f, 0.5f, 0.25f};
}  // namespace

Darkness::Darkness(const Photo& photo, const Field& field)
    : pixels_(photo.pixels), wide_(photo.pixels.depth() == CV_16U) {
    const auto tables = card::code_tables(photo);
    for (size_t c = 0; c < 3; ++c) {
        table_[c] = tables[c];
        for (float& v : table_[c]) v *= near_luma[c];
    }
    const cv::Rect box = field.bounds(pixels_.size());
    cv::Mat1f paper((pixels_.rows + cell - 1) / cell + 1, (pixels_.cols + cell - 1) / cell + 1, 1.f);
    constexpr int apart = 4;  // px between the pixels that are looked at
    const int first = box.x / cell, last = std::min(paper.cols, (box.x + box.width) / cell + 1);
    cv::parallel_for_(
        cv::Range(box.y / cell, std::min(paper.rows, (box.y + box.height) / cell + 1)), [&](const cv::Range& rows) {
            // By rows, as they lie in memory: the samples of each cell of a row of cells.
            std::vector<std::vector<float>> samples(static_cast<size_t>(std::max(0, last - first)));
            for (int j = rows.start; j < rows.end; ++j) {
                for (auto& sample : samples) sample.clear();
                for (int y = j * cell + 2; y < std::min(pixels_.rows, (j + 1) * cell); y += apart) {
                    const Row row = row_of(y);
                    for (int i = first; i < last; ++i)
                        for (int x = i * cell + 2; x < std::min(pixels_.cols, (i + 1) * cell); x += apart)
                            samples[static_cast<size_t>(i - first)].push_back(row(x));
                }
                for (int i = first; i < last; ++i) {
                    std::vector<float>& sample = samples[static_cast<size_t>(i - first)];
                    if (sample.empty()) continue;
                    // Hair takes a fifth of a cell at most where strands can be told apart: its paper's median.
                    const auto at =
                        sample.begin() + static_cast<std::ptrdiff_t>(0.58 * static_cast<double>(sample.size()));
                    std::nth_element(sample.begin(), at, sample.end());
                    paper(j, i) = *at;
                }
            }
        });
    // A cell that print or hair fills takes its light from around it; those that were not looked at, from the nearest.
    const cv::Rect seen = cv::Rect(cv::Point(box.x / cell, box.y / cell),
                                   cv::Point((box.x + box.width - 1) / cell + 1, (box.y + box.height - 1) / cell + 1)) &
                          cv::Rect(0, 0, (pixels_.cols - 3) / cell + 1, (pixels_.rows - 3) / cell + 1);
    cv::Mat1f steady;
    if (seen.empty()) {
        per_paper_ = cv::Mat1f(paper.size(), 1.f);
        return;
    }
    cv::medianBlur(paper(seen).clone(), steady, 5);
    cv::GaussianBlur(steady, steady, {}, 1, 0, cv::BORDER_REPLICATE);
    cv::copyMakeBorder(1 / cv::max(steady, 0.01f), per_paper_, seen.y, paper.rows - seen.y - seen.height, seen.x,
                       paper.cols - seen.x - seen.width, cv::BORDER_REPLICATE);
}

void Darkness::row(int y, int from, int to, float* out) const {
    const float v =
        std::clamp((static_cast<float>(y) + 0.5f) / cell - 0.5f, 0.f, static_cast<float>(per_paper_.rows) - 1.001f);
    const int j = static_cast<int>(v);
    const float b = v - static_cast<float>(j);
    const float *p = per_paper_[j], *q = per_paper_[j + 1];
    const int first = std::clamp(from, 0, pixels_.cols), last = std::clamp(to, first, pixels_.cols);
    if (wide_) {
        const Row codes = row_of(y);
        for (int x = first; x < last; ++x) out[x - from] = codes(x);
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
    const Row above = row_of(j), below = row_of(j + 1);
    const float mean = (above(i) * (1 - a) + above(i + 1) * a) * (1 - b) + (below(i) * (1 - a) + below(i + 1) * a) * b;
    const int u = std::clamp(i / cell, 0, per_paper_.cols - 1), v = std::clamp(j / cell, 0, per_paper_.rows - 1);
    return 1 - mean * per_paper_(v, u);
}

}  // namespace kempt::combings
