#include "edges/network.h"

#include <algorithm>

#include "edges/model_bytes.h"
#include "edges/network_steps.h"
#include "edges/weights.h"

namespace kempt::edges {

namespace {

// Channels at a half, a quarter and an eighth of the band's resolution, and inside the part that reads the context
// (tests/render/train/train.py).
constexpr int at_half = 14, at_quarter = 28, at_eighth = 40, inside_context = 32;

using Name = const std::string&;

std::vector<float> values(Name name, std::initializer_list<int> shape) {
    return weights_of(edge_net_bytes, edge_net_size, name, shape).values;
}

Packed strided(const Convolver& by, Name name, int in, int out, int side) {
    return pack(by, in, out, side * side, values(name + "_w", {out, in, side, side}), values(name + "_b", {out}));
}

Packed even(const Convolver& by, Name name, int channels) {
    return pack_winograd(by, channels, channels, values(name + "_w", {channels, channels, 3, 3}),
                         values(name + "_b", {channels}));
}

// ONNX keeps a transposed convolution as [in][out][row][column].
struct PackedUp {
    Packed cell[4];
};
PackedUp transposed(const Convolver& by, Name name, int in, int out) {
    const std::vector<float> all = values(name + "_w", {in, out, 2, 2}), bias = values(name + "_b", {out});
    PackedUp up;
    for (size_t cell = 0; cell < 4; ++cell) {
        std::vector<float> one;
        for (size_t o = 0; o < static_cast<size_t>(out); ++o)
            for (size_t i = 0; i < static_cast<size_t>(in); ++i)
                one.push_back(all[(i * static_cast<size_t>(out) + o) * 4 + cell]);
        up.cell[cell] = pack(by, in, out, 1, one, bias);
    }
    return up;
}

// Cover, crossings along the edge, and the mean of all directions' instead of each one's: the layer is linear.
Packed last_layer(const Convolver& by) {
    const std::vector<float> weights = values("last_w", {1 + test_directions, at_half, 1, 1}),
                             bias = values("last_b", {1 + test_directions});
    std::vector<float> fewer(weights.begin(), weights.begin() + 2 * at_half),
        fewer_bias(bias.begin(), bias.begin() + 2);
    for (int i = 0; i <= at_half; ++i) {
        double sum = 0;
        for (int k = 1; k <= test_directions; ++k)
            sum += i < at_half ? weights[static_cast<size_t>(k * at_half + i)] : bias[static_cast<size_t>(k)];
        (i < at_half ? fewer : fewer_bias).push_back(static_cast<float>(sum / test_directions));
    }
    return pack(by, at_half, 3, 1, fewer, fewer_bias);
}

std::vector<float> times(const std::vector<float>& weights, const std::vector<float>& bias, const float* in,
                         size_t count) {
    std::vector<float> out = bias;
    for (size_t o = 0; o < out.size(); ++o)
        for (size_t i = 0; i < count; ++i) out[o] += weights[o * count + i] * in[i];
    return out;
}

Doubling layers_of(const PackedUp& up, const Packed& join) {
    return {{up.cell[0].layer(), up.cell[1].layer(), up.cell[2].layer(), up.cell[3].layer()}, join.layer()};
}

}  // namespace

struct Network::Inside {
    explicit Inside(const Convolver& machine) : by(machine) {}

    const Convolver& by;
    Packed stem = strided(by, "stem", 3, at_half, 4), fine = even(by, "fine", at_half),
           down1 = strided(by, "down1", at_half, at_quarter, 3), mid1 = even(by, "mid1", at_quarter),
           mid2 = even(by, "mid2", at_quarter), down2 = strided(by, "down2", at_quarter, at_eighth, 3),
           deep1 = even(by, "deep1", at_eighth), deep2 = even(by, "deep2", at_eighth),
           deep3 = even(by, "deep3", at_eighth), join2 = even(by, "join2", at_quarter),
           join1 = even(by, "join1", at_half), last = last_layer(by);
    PackedUp up2 = transposed(by, "up2", at_eighth, at_quarter), up1 = transposed(by, "up1", at_quarter, at_half);
    std::vector<float> context1 = values("ctx1_w", {inside_context, context_size, 1, 1}),
                       context1_bias = values("ctx1_b", {inside_context}),
                       context2 = values("ctx2_w", {at_quarter, inside_context, 1, 1}),
                       context2_bias = values("ctx2_b", {at_quarter});
    Planes half, quarter, other_quarter, eighth, other_eighth;
};

Network::Network(const Convolver& by) : inside_(std::make_unique<Inside>(by)) {}

Network::~Network() = default;

void Network::look(const cv::Mat& band, const Context& context, HairMaps& maps) {
    CV_Assert(band.type() == CV_32FC3 && band.rows % 8 == 0 && band.cols % 8 == 0 && !band.empty());
    Inside& in = *inside_;
    const Convolver& by = in.by;
    in.half.shape(at_half, band.rows / 2, band.cols / 2);
    for (Planes* planes : {&in.quarter, &in.other_quarter}) planes->shape(at_quarter, band.rows / 4, band.cols / 4);
    for (Planes* planes : {&in.eighth, &in.other_eighth}) planes->shape(at_eighth, band.rows / 8, band.cols / 8);

    // The context is the same everywhere, so that what it adds is a bias.
    std::vector<float> inner = times(in.context1, in.context1_bias, context.data(), context.size());
    for (float& value : inner) value = std::max(0.f, value);
    std::vector<float> told = times(in.context2, in.context2_bias, inner.data(), inner.size());
    for (size_t o = 0; o < told.size(); ++o) told[o] += in.down1.bias[o];
    Layer down1 = in.down1.layer();
    down1.bias = told.data();

    begin(by, in.stem.layer(), in.fine.layer(), band, in.half);
    halve(by, down1, in.half, in.quarter);
    refine(by, in.mid1.layer(), 1, in.quarter, in.other_quarter);
    refine(by, in.mid2.layer(), 1, in.other_quarter, in.quarter);
    halve(by, in.down2.layer(), in.quarter, in.eighth);
    refine(by, in.deep1.layer(), 1, in.eighth, in.other_eighth);
    refine(by, in.deep2.layer(), 2, in.other_eighth, in.eighth);
    refine(by, in.deep3.layer(), 1, in.eighth, in.other_eighth);
    enlarge(by, layers_of(in.up2, in.join2), in.other_eighth, in.quarter, in.other_quarter);
    const int rows = in.half.rows(), cells = in.half.cells();
    if (maps.cover.size() != cv::Size(cells, rows)) {
        // One piece of memory: large pages then serve it.
        const cv::Mat all(3 * rows, cells, CV_32F);
        maps.cover = all.rowRange(0, rows);
        maps.cross_edge = all.rowRange(rows, 2 * rows);
        maps.cross_mean = all.rowRange(2 * rows, 3 * rows);
    }
    const std::vector<cv::Mat> three{maps.cover, maps.cross_edge, maps.cross_mean};
    finish(by, layers_of(in.up1, in.join1), in.last.layer(), in.other_quarter, in.half, three);
}

}  // namespace kempt::edges
