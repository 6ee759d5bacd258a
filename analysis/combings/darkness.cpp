#include "combings/darkness.h"

#include <algorithm>
#include <cmath>

#include <opencv2/imgproc.hpp>

#include "card/sampler.h"
#include "core/rank.h"
#include "core/twice.h"

namespace kempt::combings {
namespace {

constexpr int cell = 32;  // px; 2-3 mm: light changes little over it, and hair leaves paper free in it
// Near luma, so that the chroma that JPEG halves and the sensor's mosaic add little: green counts double.
// (Weights fitted to each photo's own hair came out the same within a few hundredths, for that very reason.)
constexpr std::array<float, 3> near_luma{0.25f, 0.5f, 0.25f};

// Pixels of a cell that are looked at for its paper, and which of them in order is taken for it: hair takes a fifth of
// a cell at most where strands can be told apart, so that this is its paper's median.
constexpr int apart = 4, each_way = cell / apart, seen_of_cell = each_way * each_way;
constexpr double paper_rank = 0.58;

// The samples of eight cells beside each other.
constexpr int lanes = 8;
typedef float Samples[seen_of_cell][lanes];
typedef float Eight __attribute__((vector_size(4 * lanes)));

// The places that Batcher's merging network compares one after the other, whatever lies in them, to sort the samples
// (K. E. Batcher, Sorting networks and their applications, 1968).
struct Pair {
    uint8_t low, high;
};
const std::vector<Pair>& network() {
    static const std::vector<Pair> pairs = [] {
        std::vector<Pair> out;
        for (int p = 1; p < seen_of_cell; p *= 2)
            for (int k = p; k > 0; k /= 2)
                for (int j = k % p; j + k < seen_of_cell; j += 2 * k)
                    for (int i = j; i < std::min(j + k, seen_of_cell - k); ++i)
                        if (i / (2 * p) == (i + k) / (2 * p))
                            out.push_back({static_cast<uint8_t>(i), static_cast<uint8_t>(i + k)});
        return out;
    }();
    return pairs;
}

// Sorts those of each cell.
KEMPT_TWICE void sort_each(Samples& v, const std::vector<Pair>& pairs) {
    for (const Pair pair : pairs) {
        Eight x, y;
        std::memcpy(&x, v[pair.low], sizeof(x));
        std::memcpy(&y, v[pair.high], sizeof(y));
        const Eight least = y < x ? y : x, most = y < x ? x : y;
        std::memcpy(v[pair.low], &least, sizeof(least));
        std::memcpy(v[pair.high], &most, sizeof(most));
    }
}

KEMPT_TWICE void look_up(const uchar* codes, int n, const float* pairs, const float* blue, float* __restrict out) {
    for (int x = 0; x < n; ++x, codes += 3) {
        uint16_t pair = 0;
        std::memcpy(&pair, codes, sizeof(pair));
        out[x] = pairs[pair] + blue[codes[2]];
    }
}

// Light of the columns [from, to) to darkness, 1 / paper being base + step * column.
KEMPT_TWICE void against_paper(float* __restrict of, int from, int to, float base, float step) {
    for (int k = from; k < to; ++k)
        of[k - from] = 1 - of[k - from] * (base + step * static_cast<float>(std::max(k, cell / 2)));
}

}  // namespace

Darkness::Darkness(const Photo& photo, const Field& field)
    : pixels_(photo.pixels), wide_(photo.pixels.depth() == CV_16U) {
    const auto tables = card::code_tables(photo);
    for (size_t c = 0; c < 3; ++c) {
        table_[c] = tables[c];
        for (float& v : table_[c]) v *= near_luma[c];
    }
    if (!wide_) {
        pairs_.resize(size_t{1} << 16);
        for (size_t first = 0; first < table_[0].size(); ++first)
            for (size_t second = 0; second < table_[1].size(); ++second) {
                const uchar codes[2] = {static_cast<uchar>(first), static_cast<uchar>(second)};
                pairs_[pair_at(codes)] = table_[0][first] + table_[1][second];
            }
    }
    find_paper(field.bounds(pixels_.size()));
}

// Of a cell that the photo's edge cuts.
float Darkness::paper_of(cv::Point at) const {
    std::vector<float> sample;
    for (int y = at.y * cell + apart / 2; y < std::min(pixels_.rows, (at.y + 1) * cell); y += apart) {
        const Row row = row_of(y);
        for (int x = at.x * cell + apart / 2; x < std::min(pixels_.cols, (at.x + 1) * cell); x += apart)
            sample.push_back(row(x));
    }
    if (sample.empty()) return 1;
    return at_rank(sample, paper_rank);
}

void Darkness::find_paper(cv::Rect box) {
    cv::Mat1f paper((pixels_.rows + cell - 1) / cell + 1, (pixels_.cols + cell - 1) / cell + 1, 1.f);
    const int first = box.x / cell, last = std::min(paper.cols, (box.x + box.width) / cell + 1);
    cv::parallel_for_(
        cv::Range(box.y / cell, std::min(paper.rows, (box.y + box.height) / cell + 1)), [&](const cv::Range& rows) {
            Samples samples{};
            for (int j = rows.start; j < rows.end; ++j) {
                const int whole = (j + 1) * cell <= pixels_.rows ? std::min(last, pixels_.cols / cell) : first;
                for (int i = first; i < whole; i += lanes) {
                    const int n = std::min(lanes, whole - i);
                    for (int v = 0; v < each_way; ++v) {
                        const Row row = row_of(j * cell + apart / 2 + v * apart);
                        for (int l = 0; l < n; ++l)
                            for (int u = 0; u < each_way; ++u)
                                samples[v * each_way + u][l] = row((i + l) * cell + apart / 2 + u * apart);
                    }
                    sort_each(samples, network());
                    std::copy_n(samples[static_cast<int>(paper_rank * seen_of_cell)], n, paper[j] + i);
                }
                for (int i = std::max(first, whole); i < last; ++i) paper(j, i) = paper_of({i, j});
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
        look_up(pixels_.ptr<uchar>(y) + 3 * first, last - first, pairs_.data(), table_[2].data(), out + first - from);
    }
    // Per paper, linear between the middles of cells.
    for (int x = first; x < last;) {
        const int i = std::clamp((x - cell / 2 + cell) / cell - 1, 0, per_paper_.cols - 2);
        const int end = std::min(last, i + 2 >= per_paper_.cols ? last : (i + 1) * cell + cell / 2);
        const float left = p[i] * (1 - b) + q[i] * b, right = p[i + 1] * (1 - b) + q[i + 1] * b;
        const float step = (right - left) / cell, base = left + step * (0.5f - static_cast<float>(i * cell + cell / 2));
        against_paper(out + x - from, x, std::max(end, x + 1), base, step);
        x = std::max(end, x + 1);
    }
    for (int x = from; x < first; ++x) out[x - from] = 0;
    for (int x = std::max(last, from); x < to; ++x) out[x - from] = 0;
}

float Darkness::at(double x, double y) const {
    if (!(x >= 0 && y >= 0 && x < pixels_.cols - 1.001 && y < pixels_.rows - 1.001)) return 0;
    const int i = static_cast<int>(x), j = static_cast<int>(y);
    const float a = static_cast<float>(x - i), b = static_cast<float>(y - j);
    const auto mean_of = [&](const auto* codes, size_t step) {
        // By the channels' own tables: hair has more pairs of codes than the nearest cache holds.
        const float *red = table_[0].data(), *green = table_[1].data(), *blue = table_[2].data();
        const auto* above = codes + static_cast<size_t>(j) * step + 3 * i;
        const auto light = [&](const auto* code) { return red[code[0]] + green[code[1]] + blue[code[2]]; };
        const auto* below = above + step;
        return (light(above) * (1 - a) + light(above + 3) * a) * (1 - b) +
               (light(below) * (1 - a) + light(below + 3) * a) * b;
    };
    const float mean = wide_ ? mean_of(pixels_.ptr<ushort>(), pixels_.step[0] / sizeof(ushort))
                             : mean_of(pixels_.ptr<uchar>(), pixels_.step[0]);
    const int u = std::clamp(i / cell, 0, per_paper_.cols - 1), v = std::clamp(j / cell, 0, per_paper_.rows - 1);
    return 1 - mean * per_paper_(v, u);
}

}  // namespace kempt::combings
