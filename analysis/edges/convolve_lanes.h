// The body of the convolutions, compiled once for each kind of machine: a source sets LANES, BIG_BLOCK and the target,
// then includes this inside its own namespace. Nothing of the standard library may be used here: an inline function
// compiled for a newer machine could be taken by the linker for all others.
// No include guard is wanted; convolve.h must have been included before.

typedef float Lane __attribute__((vector_size(LANES * 4)));
typedef float LooseLane __attribute__((vector_size(LANES * 4), aligned(4), may_alias));

inline Lane load(const float* from) {
    return *reinterpret_cast<const LooseLane*>(from);
}
inline void store(float* to, Lane value) {
    *reinterpret_cast<LooseLane*>(to) = value;
}
inline Lane all(float value) {
    return value - Lane{};
}
inline Lane at_least_0(Lane value) {
    return value > Lane{} ? value : Lane{};
}

// OUT channels of WIDE lanes: all sums stay in registers.
template <int OUT, int WIDE>
inline void tile(const float* const* taps, int tap_count, std::ptrdiff_t in_step, int channels, const float* weights,
                 const float* bias, std::ptrdiff_t at, float* out, std::ptrdiff_t out_step, bool relu) {
    Lane sum[OUT][WIDE];
#pragma GCC unroll 16
    for (int o = 0; o < OUT; ++o)
#pragma GCC unroll 4
        for (int v = 0; v < WIDE; ++v) sum[o][v] = bias ? all(bias[o]) : Lane{};
    for (int c = 0; c < channels; ++c)
        for (int t = 0; t < tap_count; ++t, weights += OUT) {
            const float* from = taps[t] + c * in_step + at;
            Lane in[WIDE];
#pragma GCC unroll 4
            for (int v = 0; v < WIDE; ++v) in[v] = load(from + v * LANES);
#pragma GCC unroll 16
            for (int o = 0; o < OUT; ++o) {
                const Lane weight = all(weights[o]);
#pragma GCC unroll 4
                for (int v = 0; v < WIDE; ++v) sum[o][v] += weight * in[v];
            }
        }
#pragma GCC unroll 16
    for (int o = 0; o < OUT; ++o)
#pragma GCC unroll 4
        for (int v = 0; v < WIDE; ++v) store(out + o * out_step + v * LANES, relu ? at_least_0(sum[o][v]) : sum[o][v]);
}

template <int WIDE>
inline void tile_of(int block, const float* const* taps, int tap_count, std::ptrdiff_t in_step, int channels,
                    const float* weights, const float* bias, std::ptrdiff_t at, float* out, std::ptrdiff_t out_step,
                    bool relu) {
    switch (block) {
#if BIG_BLOCK
        case 8:
            return tile<8, WIDE>(taps, tap_count, in_step, channels, weights, bias, at, out, out_step, relu);
        case 7:
            return tile<7, WIDE>(taps, tap_count, in_step, channels, weights, bias, at, out, out_step, relu);
#endif
        case 4:
            return tile<4, WIDE>(taps, tap_count, in_step, channels, weights, bias, at, out, out_step, relu);
        case 3:
            return tile<3, WIDE>(taps, tap_count, in_step, channels, weights, bias, at, out, out_step, relu);
        case 2:
            return tile<2, WIDE>(taps, tap_count, in_step, channels, weights, bias, at, out, out_step, relu);
        default:
            return tile<1, WIDE>(taps, tap_count, in_step, channels, weights, bias, at, out, out_step, relu);
    }
}

int block(int channels) {
#if BIG_BLOCK
    if (channels % 7 == 0) return 7;
    if (channels % 8 == 0) return 8;
#endif
    return channels < 4 ? channels : 4;
}

// All output channels of one stretch of up to three lanes.
inline void stretch(const Layer& layer, const float* weights, const float* bias, const float* const* taps,
                    int tap_count, std::ptrdiff_t in_step, std::ptrdiff_t at, int lanes, float* out,
                    std::ptrdiff_t out_step, bool relu) {
    const int each = block(layer.out);
    for (int o = 0; o < layer.out; o += each) {
        const int now = layer.out - o < each ? layer.out - o : each;
        const float* from = weights + static_cast<std::ptrdiff_t>(o) * layer.in * tap_count;
        const float* less = bias ? bias + o : nullptr;
        float* to = out + o * out_step;
        if (lanes >= 3)
            tile_of<3>(now, taps, tap_count, in_step, layer.in, from, less, at, to, out_step, relu);
        else if (lanes == 2)
            tile_of<2>(now, taps, tap_count, in_step, layer.in, from, less, at, to, out_step, relu);
        else
            tile_of<1>(now, taps, tap_count, in_step, layer.in, from, less, at, to, out_step, relu);
    }
}

// Cells past the last one up to whole lanes are read as zeros by the next layer.
inline void clear_tail(float* row, int cells) {
    for (int x = cells; x % row_margin != 0; ++x) row[x] = 0;
}

void direct(const DirectRow& job) {
    const Layer& layer = job.layer;
    const int lanes = (job.cells + LANES - 1) / LANES;
    for (int v = 0; v < lanes; v += 3) {
        const std::ptrdiff_t at = static_cast<std::ptrdiff_t>(v) * LANES;
        stretch(layer, layer.weights, layer.bias, job.tap, layer.taps, job.in_step, at, lanes - v, job.out + at,
                job.out_step, job.relu);
    }
    for (int o = 0; o < layer.out; ++o) clear_tail(job.out + o * job.out_step, job.cells);
}

// The six transformed rows of all channels at once, margins included.
inline void transform(const float* const* in, std::ptrdiff_t first, std::ptrdiff_t count, float* to,
                      std::ptrdiff_t to_step) {
    // Kept in registers: a store of lanes might change `in` for all that the compiler knows.
    const float *in0 = in[0], *in1 = in[1], *in2 = in[2], *in3 = in[3], *in4 = in[4], *in5 = in[5];
    for (std::ptrdiff_t i = first; i < first + count; i += LANES) {
        const Lane a = load(in0 + i), b = load(in1 + i), c = load(in2 + i), d = load(in3 + i), e = load(in4 + i),
                   f = load(in5 + i);
        const Lane even = e - 4 * c, odd = d - 4 * b, near = 2 * (d - b), far = e - c;
        store(to + i, 4 * a - 5 * c + e);
        store(to + to_step + i, even + odd);
        store(to + 2 * to_step + i, even - odd);
        store(to + 3 * to_step + i, far + near);
        store(to + 4 * to_step + i, far - near);
        store(to + 5 * to_step + i, 4 * b - 5 * d + f);
    }
}

void winograd(const WinogradRows& job) {
    const Layer& layer = job.layer;
    const std::ptrdiff_t plane = layer.in * job.in_step + 2 * row_margin,
                         matrix = static_cast<std::ptrdiff_t>(3) * layer.in * layer.out;
    float* rows = job.scratch + row_margin;
    transform(job.in, -row_margin, layer.in * job.in_step + row_margin, rows, plane);
    float* const out[4] = {job.out[0], job.out[1], job.out[2], job.out[3]};
    const float* const add[4] = {job.add[0], job.add[1], job.add[2], job.add[3]};
    const std::ptrdiff_t out_step = job.out_step;
    constexpr int wide = 3 * LANES;
    float part[6][most_channels * wide];
    const int lanes = (job.cells + LANES - 1) / LANES;
    for (int v = 0; v < lanes; v += 3) {
        const std::ptrdiff_t at = static_cast<std::ptrdiff_t>(v) * LANES;
        const int now = lanes - v < 3 ? lanes - v : 3;
        for (int k = 0; k < 6; ++k) {
            const float* row = rows + k * plane;
            const float* taps[3] = {row - job.spread, row, row + job.spread};
            stretch(layer, layer.weights + k * matrix, nullptr, taps, 3, job.in_step, at, now, part[k], wide, false);
        }
        for (int o = 0; o < layer.out; ++o) {
            const Lane bias = all(layer.bias[o]);
            for (int l = 0; l < now; ++l) {
                const int i = o * wide + l * LANES;
                const Lane a = load(part[0] + i), b = load(part[1] + i), c = load(part[2] + i), d = load(part[3] + i),
                           e = load(part[4] + i), f = load(part[5] + i);
                const Lane near = b + c, near_odd = b - c, far = d + e, far_odd = d - e;
                const Lane sums[4] = {a + near + far, near_odd + 2 * far_odd, near + 4 * far,
                                      near_odd + 8 * far_odd + f};
                const std::ptrdiff_t to = o * out_step + at + l * LANES;
#pragma GCC unroll 4
                for (int r = 0; r < 4; ++r) {
                    if (!out[r]) continue;
                    Lane value = at_least_0(sums[r] + bias);
                    if (add[r]) value += load(add[r] + to);
                    store(out[r] + to, value);
                }
            }
        }
    }
    for (int r = 0; r < 4; ++r)
        if (job.out[r])
            for (int o = 0; o < layer.out; ++o) clear_tail(job.out[r] + o * job.out_step, job.cells);
}

void part(const float* from, float* even, float* odd, int cells_each) {
    for (int x = 0; x < cells_each; ++x) even[x] = from[2 * x], odd[x] = from[2 * x + 1];
}

void join(const float* __restrict even, const float* __restrict odd, const float* __restrict add, float* __restrict to,
          int cells_each) {
    if (add) {
        for (int x = 0; x < cells_each; ++x) {
            to[2 * x] = (even[x] > 0 ? even[x] : 0) + add[2 * x];
            to[2 * x + 1] = (odd[x] > 0 ? odd[x] : 0) + add[2 * x + 1];
        }
        return;
    }
    for (int x = 0; x < cells_each; ++x) {
        to[2 * x] = even[x] > 0 ? even[x] : 0;
        to[2 * x + 1] = odd[x] > 0 ? odd[x] : 0;
    }
}
