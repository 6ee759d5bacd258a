// Convolutions of one row or of four rows at once, for the network alone. Every picture is kept as planes: a row holds
// its channels one after another, each with row_margin zeros on its left, its cells, and zeros up to whole lanes.
#pragma once

#include <cstddef>
#include <vector>

namespace kempt::edges {

// A vector of the widest machine; no tap reaches further.
inline constexpr int row_margin = 16;
inline constexpr int most_taps = 16;

// Floats of one channel in a row of that many cells.
[[nodiscard]] constexpr std::ptrdiff_t channel_step_of(int cells) {
    return row_margin + (cells + row_margin - 1) / row_margin * row_margin;
}

// Weights in the order that a machine reads them: blocks of output channels, in each block [input][tap][output].
struct Layer {
    int in = 0, out = 0, taps = 0;
    const float* weights = nullptr;  // of a Winograd layer: six such, one after another
    const float* bias = nullptr;     // one an output channel
};
struct Packed {
    int in = 0, out = 0, taps = 0;
    std::vector<float> weights, bias;
    [[nodiscard]] Layer layer() const { return {in, out, taps, weights.data(), bias.data()}; }
};

// out(o, x) = bias(o) + sum over i, t of weights(o, i, t) * tap[t](i, x); below 0 becomes 0 where relu is set.
struct DirectRow {
    Layer layer;
    const float* tap[most_taps] = {};          // where tap t of cell 0, channel 0 lies: row and shift
    std::ptrdiff_t in_step = 0, out_step = 0;  // floats from channel to channel
    float* out = nullptr;                      // cell 0, channel 0
    int cells = 0;
    bool relu = false;
};

// Four rows of a 3 x 3 convolution with the transform F(4, 3) down the rows (Winograd 1980; Lavin and Gray 2016, points
// 0, 1, -1, 2, -2): 18 products instead of 36. Always ends with relu, then adds `add` where it is given.
struct WinogradRows {
    Layer layer;
    const float* in[6] = {};                   // cell 0, channel 0 of the six rows (with their margins)
    const float* add[4] = {};                  // rows to add, or none
    float* out[4] = {};                        // nullptr where the picture has no such row
    std::ptrdiff_t in_step = 0, out_step = 0;  // `add` lies as `out` does
    int cells = 0, spread = 1;                 // distance of the taps
    float* scratch = nullptr;                  // 6 * (in_step * layer.in + 2 * row_margin) floats
};
// Output channels of any layer.
inline constexpr int most_channels = 40;

// One machine's way; all results agree but for rounding, and each is the same from run to run.
struct Convolver {
    const char* name;
    int (*block)(int channels);  // output channels that are worked on together
    void (*direct)(const DirectRow&);
    void (*winograd)(const WinogradRows&);
    // Two rows of one channel from one, even and odd cells; and back, with relu and then `add` (may be nullptr).
    void (*part)(const float* from, float* even, float* odd, int cells_each);
    void (*join)(const float* even, const float* odd, const float* add, float* to, int cells_each);
};

// The best one that this machine can run.
[[nodiscard]] const Convolver& convolver();
// All that it can run; the first is the portable one.
[[nodiscard]] std::vector<const Convolver*> convolvers();

// weights: [out][in][taps].
[[nodiscard]] Packed pack(const Convolver& by, int in, int out, int taps, const std::vector<float>& weights,
                          const std::vector<float>& bias);
// weights: [out][in][3][3], rows first.
[[nodiscard]] Packed pack_winograd(const Convolver& by, int in, int out, const std::vector<float>& weights,
                                   const std::vector<float>& bias);

}  // namespace kempt::edges
