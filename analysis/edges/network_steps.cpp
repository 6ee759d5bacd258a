#include "edges/network_steps.h"

#include <cstring>

namespace kempt::edges {

namespace {

// Rows that a thread takes at once: few, so that what it works on stays in its second cache (1 MB there, 0.5 MB on
// smaller machines), and a multiple of the four rows of convolve.h.
constexpr int rows_at_once = 8;

template <class Work>
void by_groups(int rows, Work work) {
    cv::parallel_for_(cv::Range(0, (rows + rows_at_once - 1) / rows_at_once), [&](const cv::Range& groups) {
        for (int group = groups.start; group < groups.end; ++group)
            work(group * rows_at_once, std::min(rows, (group + 1) * rows_at_once));
    });
}

std::ptrdiff_t winograd_floats(const Layer& layer, std::ptrdiff_t step) {
    return 6 * (layer.in * step + 2 * row_margin);
}

void set_taps_of_two(DirectRow& job, int tap_rows, const float* const* even, const float* const* odd) {
    // Cell x of the result looks at cells 2x - 1, 2x, 2x + 1 and, of four, 2x + 2.
    for (int y = 0, t = 0; y < tap_rows; ++y) {
        job.tap[t++] = odd[y] - 1;
        job.tap[t++] = even[y];
        job.tap[t++] = odd[y];
        if (tap_rows == 4) job.tap[t++] = even[y] + 1;
    }
}

// The pixels of a row of the band as six planes: even ones' three channels, then the odd ones'.
void part_pixels(const cv::Mat& band, int y, float* planes, std::ptrdiff_t step) {
    const int cells = band.cols / 2;
    if (y < 0 || y >= band.rows) {
        for (int c = 0; c < 6; ++c) std::fill(planes + c * step, planes + c * step + cells, 0.f);
        return;
    }
    const float* in = band.ptr<float>(y);
    float *a = planes, *b = a + step, *c = b + step, *d = c + step, *e = d + step, *f = e + step;
    for (int x = 0; x < cells; ++x, in += 6)
        a[x] = in[0], b[x] = in[1], c[x] = in[2], d[x] = in[3], e[x] = in[4], f[x] = in[5];
}

}  // namespace

void begin(const Convolver& by, const Layer& stem, const Layer& fine, const cv::Mat& band, Planes& out) {
    const int cells = out.cells();
    constexpr int ring = 4;
    by_groups(out.rows(), [&](int first, int end) {
        const std::ptrdiff_t pixels = Strip::floats(6, ring, cells),
                             half = Strip::floats(stem.out, rows_at_once + 2, cells);
        Bench::reserve(pixels + half + winograd_floats(fine, out.step()));
        Bench bench;
        const Strip seen(bench.take(pixels), 6, ring, cells),
            started(bench.take(half), stem.out, rows_at_once + 2, cells);
        float* scratch = bench.take(winograd_floats(fine, out.step()));
        DirectRow job{.layer = stem, .in_step = seen.step, .out_step = started.step, .cells = cells, .relu = true};
        const auto slot = [&](int y) { return seen.row((y + ring) % ring); };
        for (int y = 2 * (first - 1) - 1; y < 2 * (first - 1) + 1; ++y) part_pixels(band, y, slot(y), seen.step);
        for (int y = first - 1; y < first + rows_at_once + 1; ++y) {
            part_pixels(band, 2 * y + 1, slot(2 * y + 1), seen.step);
            part_pixels(band, 2 * y + 2, slot(2 * y + 2), seen.step);
            job.out = started.row(y - first + 1);
            if (y < 0 || y >= out.rows()) {
                std::fill(job.out, job.out + stem.out * started.step, 0.f);
                continue;
            }
            const float *even[4], *odd[4];
            for (int k = 0; k < 4; ++k) even[k] = slot(2 * y - 1 + k), odd[k] = even[k] + 3 * seen.step;
            set_taps_of_two(job, 4, even, odd);
            by.direct(job);
        }
        for (int y = first; y < end; y += 4) {
            WinogradRows rows{
                .layer = fine, .in_step = started.step, .out_step = out.step(), .cells = cells, .scratch = scratch};
            for (int k = 0; k < 6; ++k) rows.in[k] = started.row(y - first + k);
            for (int k = 0; k < 4; ++k) rows.out[k] = out.own_row(y + k);
            by.winograd(rows);
        }
    });
}

void halve(const Convolver& by, const Layer& layer, const Planes& in, Planes& out) {
    constexpr int ring = 3;
    by_groups(out.rows(), [&](int first, int end) {
        const int cells = out.cells(), channels = in.channels();
        Bench::reserve(Strip::floats(2 * channels, ring, cells));
        Bench bench;
        const Strip parted(bench.take(Strip::floats(2 * channels, ring, cells)), 2 * channels, ring, cells);
        const auto slot = [&](int y) { return parted.row((y + ring) % ring); };
        const auto part = [&](int y) {
            for (int c = 0; c < channels; ++c) {
                float* even = slot(y) + c * parted.step;
                by.part(in.row(y) + c * in.step(), even, even + channels * parted.step, cells);
            }
        };
        DirectRow job{.layer = layer, .in_step = parted.step, .out_step = out.step(), .cells = cells, .relu = true};
        part(2 * first - 1);
        for (int y = first; y < end; ++y) {
            part(2 * y);
            part(2 * y + 1);
            const float *even[3], *odd[3];
            for (int k = 0; k < 3; ++k) even[k] = slot(2 * y - 1 + k), odd[k] = even[k] + channels * parted.step;
            set_taps_of_two(job, 3, even, odd);
            job.out = out.own_row(y);
            by.direct(job);
        }
    });
}

void refine(const Convolver& by, const Layer& layer, int spread, const Planes& in, Planes& out) {
    by_groups(out.rows(), [&](int first, int) {
        Bench::reserve(winograd_floats(layer, in.step()));
        Bench bench;
        WinogradRows rows{.layer = layer,
                          .in_step = in.step(),
                          .out_step = out.step(),
                          .cells = out.cells(),
                          .spread = spread,
                          .scratch = bench.take(winograd_floats(layer, in.step()))};
        // Twice four rows: side by side, or every other one.
        for (int half = 0; half < 2; ++half) {
            const int start = first + (spread == 1 ? 4 * half : half);
            if (start >= out.rows()) break;
            for (int k = 0; k < 6; ++k) rows.in[k] = in.row(start + (k - 1) * spread);
            for (int k = 0; k < 4; ++k) {
                rows.out[k] = out.own_row(start + k * spread);
                rows.add[k] = in.row(start + k * spread);
            }
            by.winograd(rows);
        }
    });
}

namespace {

// Rows [first - 1, first + rows_at_once] of relu(up(in)) + beside.
void raise_rows(const Convolver& by, const Layer (&up)[4], const Planes& in, const Planes& beside, int first,
                const Strip& raised, float* two) {
    const int channels = beside.channels();
    const std::ptrdiff_t step = channel_step_of(in.cells());
    DirectRow job{.layer = {}, .in_step = in.step(), .out_step = step, .cells = in.cells()};
    for (int y = first - 1; y < first + rows_at_once + 1; ++y) {
        float* row = raised.row(y - first + 1);
        if (y < 0 || y >= beside.rows()) {
            std::fill(row, row + channels * raised.step, 0.f);
            continue;
        }
        job.tap[0] = in.row(y / 2);
        for (int side = 0; side < 2; ++side) {
            job.layer = up[2 * (y % 2) + side];
            job.out = two + side * channels * step;
            by.direct(job);
        }
        for (int c = 0; c < channels; ++c)
            by.join(two + c * step, two + (channels + c) * step, beside.row(y) + c * beside.step(),
                    row + c * raised.step, in.cells());
    }
}

std::ptrdiff_t doubling_floats(const Doubling& layers, const Planes& in, const Planes& beside) {
    return Strip::floats(beside.channels(), rows_at_once + 2, beside.cells()) +
           2 * beside.channels() * channel_step_of(in.cells()) + winograd_floats(layers.join, beside.step());
}

}  // namespace

void enlarge(const Convolver& by, const Doubling& layers, const Planes& in, const Planes& beside, Planes& out) {
    by_groups(out.rows(), [&](int first, int end) {
        Bench::reserve(doubling_floats(layers, in, beside));
        Bench bench;
        const int channels = beside.channels(), cells = beside.cells();
        const Strip raised(bench.take(Strip::floats(channels, rows_at_once + 2, cells)), channels, rows_at_once + 2,
                           cells);
        raise_rows(by, layers.up, in, beside, first, raised, bench.take(2 * channels * channel_step_of(in.cells())));
        WinogradRows rows{.layer = layers.join,
                          .in_step = raised.step,
                          .out_step = out.step(),
                          .cells = cells,
                          .scratch = bench.take(winograd_floats(layers.join, beside.step()))};
        for (int y = first; y < end; y += 4) {
            for (int k = 0; k < 6; ++k) rows.in[k] = raised.row(y - first + k);
            for (int k = 0; k < 4; ++k) rows.out[k] = out.own_row(y + k);
            by.winograd(rows);
        }
    });
}

void finish(const Convolver& by, const Doubling& layers, const Layer& last, const Planes& in, const Planes& beside,
            const std::vector<cv::Mat>& maps) {
    by_groups(beside.rows(), [&](int first, int end) {
        const int channels = beside.channels(), cells = beside.cells();
        const std::ptrdiff_t four = Strip::floats(channels, 4, cells), step = channel_step_of(cells);
        Bench::reserve(doubling_floats(layers, in, beside) + four + last.out * step);
        Bench bench;
        const Strip raised(bench.take(Strip::floats(channels, rows_at_once + 2, cells)), channels, rows_at_once + 2,
                           cells);
        raise_rows(by, layers.up, in, beside, first, raised, bench.take(2 * channels * channel_step_of(in.cells())));
        const Strip joined(bench.take(four), channels, 4, cells);
        float* mapped = bench.take(last.out * step);
        WinogradRows rows{.layer = layers.join,
                          .in_step = raised.step,
                          .out_step = joined.step,
                          .cells = cells,
                          .scratch = bench.take(winograd_floats(layers.join, beside.step()))};
        for (int k = 0; k < 4; ++k) rows.out[k] = joined.row(k);
        DirectRow job{.layer = last, .in_step = joined.step, .out_step = step, .out = mapped, .cells = cells};
        for (int y = first; y < end; y += 4) {
            for (int k = 0; k < 6; ++k) rows.in[k] = raised.row(y - first + k);
            by.winograd(rows);
            for (int k = 0; k < std::min(4, end - y); ++k) {
                job.tap[0] = joined.row(k);
                by.direct(job);
                for (int c = 0; c < last.out; ++c)
                    std::memcpy(const_cast<float*>(maps[static_cast<size_t>(c)].ptr<float>(y + k)), mapped + c * step,
                                static_cast<size_t>(cells) * sizeof(float));
            }
        }
    });
}

}  // namespace kempt::edges
