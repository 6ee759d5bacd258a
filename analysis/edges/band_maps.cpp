#include "edges/band_maps.h"

#include <algorithm>
#include <cmath>

#include "colour/colour.h"

namespace kempt::edges {

namespace {

// Columns of one look, and how far neighbouring looks overlap: the network's reach is about 40 band pixels to a side.
// A line of ordinary length is looked at in one piece; longer ones in pieces that keep the memory flat.
constexpr int look_columns = 1024, overlap = 48;
// The band is looked at from this far outside the line, so that the line itself lies inside the network's reach.
constexpr double look_from_mm = -1.5;
// Zones of the reference colours (the training generator uses the same).
constexpr double outer_from_mm = -4, outer_to_mm = -0.5, deep_from_mm = 10, deep_to_mm = 20;

using Triples = std::vector<std::array<float, 3>>;

// Log light of a zone, thinned to some thousands of samples.
Triples zone(const Photo& photo, const card::LightMap& light, const card::Calibration& calibration,
             const EdgeLine& line, double from_mm, double to_mm) {
    EdgeLine thin = line;
    const int stride = std::max(2, static_cast<int>(line.at_mm.size() / 600));
    thin.at_mm.clear();
    thin.inward_mm.clear();
    for (size_t i = 0; i < line.at_mm.size(); i += static_cast<size_t>(stride)) {
        thin.at_mm.push_back(line.at_mm[i]);
        thin.inward_mm.push_back(line.inward_mm[i]);
    }
    thin.step_mm = 2.5 * line.step_mm;
    const BandPiece piece = cut(photo, light, calibration, thin, 0, static_cast<int>(thin.at_mm.size()), from_mm,
                                static_cast<int>((to_mm - from_mm) / thin.step_mm));
    Triples out;
    out.reserve(piece.log_light.total());
    for (int j = 0; j < piece.log_light.rows; ++j)
        for (int i = 0; i < piece.log_light.cols; ++i)
            if (piece.valid.at<uchar>(j, i)) {
                const auto& v = piece.log_light.at<cv::Vec3f>(j, i);
                out.push_back({v[0], v[1], v[2]});
            }
    return out;
}

Triples taps(const Photo& photo, const card::LightMap& light, const std::vector<cv::Point2d>& points) {
    Triples out;
    const cv::Rect frame(0, 0, photo.pixels.cols, photo.pixels.rows);
    for (const auto& p : points) {
        const cv::Rect spot =
            cv::Rect(static_cast<int>(std::lround(p.x)) - 1, static_cast<int>(std::lround(p.y)) - 1, 3, 3) & frame;
        if (spot.empty()) continue;
        const cv::Scalar mean = cv::mean(light.linear(photo.pixels(spot)));
        out.push_back({});
        for (int c = 0; c < 3; ++c)
            out.back()[static_cast<size_t>(c)] = std::log(std::max(0.f, static_cast<float>(mean[c])) + light_floor);
    }
    return out;
}

int round_up(int value, int to) {
    return (value + to - 1) / to * to;
}

}  // namespace

int BandMaps::row_of(double depth_mm) const {
    return std::clamp(static_cast<int>(std::lround((depth_mm - from_mm) / cell_mm)), 0, cover.rows);
}

Result<BandMaps> look_at_band(const Photo& photo, const card::Calibration& calibration, const EdgeLine& line,
                              const EdgeMarks& marks, double depth_mm, const Progress& progress) {
    const card::LightMap light(photo, calibration);
    const Triples outer = zone(photo, light, calibration, line, outer_from_mm, outer_to_mm);
    const Triples deep = zone(photo, light, calibration, line, deep_from_mm, deep_to_mm);
    const Triples hair_taps = taps(photo, light, marks.hair_taps_px),
                  scalp_taps = taps(photo, light, marks.scalp_taps_px);
    if (outer.size() < 50 && scalp_taps.empty())
        return Error{ErrorKind::refused, "no-bare-skin",
                     "Too little bare skin can be seen outside the edge line to know its colour.",
                     "The photo and the marks are kept.",
                     "Leave a few millimetres of skin beside the line free, or tap bare scalp twice."};
    const ReferenceColours reference = reference_colours(outer, deep, hair_taps, scalp_taps, line.px_per_mm);

    const int rows = round_up(static_cast<int>((depth_mm + 0.5 - look_from_mm) / line.step_mm), 8);
    const int columns = static_cast<int>(line.at_mm.size());
    BandMaps maps;
    maps.cell_mm = 2 * line.step_mm;
    maps.from_mm = look_from_mm;
    const cv::Size size(columns / 2, rows / 2);
    // One piece of memory for the three: a large page or two instead of some hundred small ones.
    const cv::Mat three(3 * size.height, size.width, CV_32F);
    maps.cover = three.rowRange(0, size.height);
    maps.cross_edge = three.rowRange(size.height, 2 * size.height);
    maps.cross_mean = three.rowRange(2 * size.height, 3 * size.height);
    maps.valid.create(size, CV_8UC1);
    Network network;
    BandPiece piece;
    HairMaps hair;
    double sure_hair = 0, sure_skin = 0;
    cv::Vec3d hair_sum, skin_sum;
    // Pieces of one size: the network then sets itself up once.
    const int whole = 2 * size.width, inner = look_columns - 2 * overlap, pieces = (whole + inner - 1) / inner;
    const int each = round_up((whole + pieces - 1) / pieces, 2), width = round_up(each + 2 * overlap, 8);
    for (int from = 0; from < whole; from += each) {
        if (tell(progress, 0.1 + 0.8 * from / columns, "looking at the edge") == Go::stop)
            return Error{ErrorKind::cancelled, "cancelled", "Measuring was stopped.", "Nothing was changed.", ""};
        const int take = std::min(each, whole - from);
        cut(photo, light, calibration, line, from - overlap, width, look_from_mm, rows, reference.log_skin, piece);
        network.look(piece.log_light, reference.context, hair);
        const cv::Rect source(overlap / 2, 0, take / 2, rows / 2), target(from / 2, 0, take / 2, rows / 2);
        hair.cover(source).copyTo(maps.cover(target));
        hair.cross_edge(source).convertTo(maps.cross_edge(target), CV_32F, 1 / line.step_mm);
        hair.cross_mean(source).convertTo(maps.cross_mean(target), CV_32F, 1 / line.step_mm);
        cv::Mat valid;
        cv::resize(piece.valid, valid, cv::Size(width / 2, rows / 2), 0, 0, cv::INTER_NEAREST);
        valid(source).copyTo(maps.valid(target));
        // Colours where the maps are sure.
        for (int j = 0; j < rows / 2; ++j)
            for (int i = 0; i < take / 2; ++i) {
                const int si = i + overlap / 2;
                if (!valid.at<uchar>(j, si)) continue;
                const float a = hair.cover.at<float>(j, si);
                if (a > 0.15f && a < 0.75f) continue;
                const auto& v = piece.log_light.at<cv::Vec3f>(2 * j, 2 * si);
                (a >= 0.75f ? hair_sum : skin_sum) += cv::Vec3d(v[0], v[1], v[2]);
                (a >= 0.75f ? sure_hair : sure_skin) += 1;
            }
    }
    // A cell in a thousand is enough to know the hair's colour; less is a stray pixel.
    auto light_of = [&](const cv::Vec3d& sum, double n) {
        cv::Vec3d out;
        for (int c = 0; c < 3; ++c)
            out[c] = std::max(0.0, std::exp(sum[c] / n + reference.log_skin[static_cast<size_t>(c)]) - light_floor);
        return out;
    };
    maps.hair_share = sure_hair / std::max(1.0, static_cast<double>(size.area()));
    if (sure_skin > 0) maps.skin_light = light_of(skin_sum, sure_skin);
    if (maps.hair_share > 1e-3) {
        maps.hair_light = light_of(hair_sum, sure_hair);
        // Seen as the eye would in the same picture: skin brought to its usual lightness first.
        const double level = 0.35 / std::max(0.02, sure_skin > 0 ? maps.skin_light[1] : 0.35);
        const double scale = std::clamp(level, 0.5, 2.0);
        const cv::Vec3d skin = sure_skin > 0
                                   ? maps.skin_light
                                   : cv::Vec3d(std::exp(reference.log_skin[0]), std::exp(reference.log_skin[1]),
                                               std::exp(reference.log_skin[2]));
        maps.contrast = colour::ciede2000(colour::lab_from_linear_srgb(skin * scale),
                                          colour::lab_from_linear_srgb(maps.hair_light * scale));
    }
    return maps;
}

}  // namespace kempt::edges
