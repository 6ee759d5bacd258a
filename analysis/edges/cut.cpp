// The band out of the photo. It is worked on in tiles, so that only the pixels below the band are turned into light and
// everything that a tile needs stays in the cache.
#include <algorithm>
#include <cmath>
#include <opencv2/core/hal/hal.hpp>
#include <opencv2/imgproc.hpp>

#include "edges/band.h"
#include "edges/reference_colours.h"

namespace kempt::edges {

namespace {

// Band pixels of a tile: in a photo of twice the band's scale a slanted tile then lies over some 30 000 pixels.
constexpr int tile_rows = 32, tile_columns = 64, tile_cells = tile_rows * tile_columns;

// Weights of the four neighbours at each 32nd of a pixel (Keys 1981, a = -0.75, as in OpenCV's remap).
constexpr int parts = 32, neighbours = 4;
struct CubicWeights {
    float of[parts][neighbours];
    CubicWeights() {
        constexpr float a = -0.75f;
        for (int i = 0; i < parts; ++i) {
            const float x = static_cast<float>(i) / parts, y = 1 - x;
            of[i][0] = ((a * (x + 1) - 5 * a) * (x + 1) + 8 * a) * (x + 1) - 4 * a;
            of[i][1] = ((a + 2) * x - (a + 3)) * x * x + 1;
            of[i][2] = ((a + 2) * y - (a + 3)) * y * y + 1;
            of[i][3] = 1 - of[i][0] - of[i][1] - of[i][2];
        }
    }
};

const CubicWeights& cubic() {
    static const CubicWeights weights;
    return weights;
}

// A place in 32nds of a pixel.
struct Place {
    int x, y;
};

typedef float Four __attribute__((vector_size(16)));

Four four(const float* from) {
    Four out;
    __builtin_memcpy(&out, from, sizeof(out));
    return out;
}

// light: CV_32FC3. Four pixels are twelve floats, which three vectors take whole.
void interpolate(const cv::Mat& light, Place at, float* out) {
    const float *across = cubic().of[at.x % parts], *down = cubic().of[at.y % parts];
    const int x = at.x / parts - 1, y = at.y / parts - 1;
    if (x >= 0 && y >= 0 && x + neighbours <= light.cols && y + neighbours <= light.rows) {
        Four a{}, b{}, c{};
        for (int k = 0; k < neighbours; ++k) {
            const float* row = light.ptr<float>(y + k) + 3 * x;
            a += down[k] * four(row), b += down[k] * four(row + 4), c += down[k] * four(row + 8);
        }
        a *= Four{across[0], across[0], across[0], across[1]};
        b *= Four{across[1], across[1], across[2], across[2]};
        c *= Four{across[2], across[3], across[3], across[3]};
        out[0] = a[0] + a[3] + b[2] + c[1];
        out[1] = a[1] + b[0] + b[3] + c[2];
        out[2] = a[2] + b[1] + c[0] + c[3];
        return;
    }
    // At the photo's edge its outermost pixels are repeated.
    out[0] = out[1] = out[2] = 0;
    for (int k = 0; k < neighbours; ++k)
        for (int l = 0; l < neighbours; ++l) {
            const auto& p =
                light.at<cv::Vec3f>(std::clamp(y + k, 0, light.rows - 1), std::clamp(x + l, 0, light.cols - 1));
            for (int channel = 0; channel < 3; ++channel) out[channel] += down[k] * across[l] * p[channel];
        }
}

// What all tiles share.
struct Band {
    const Photo& photo;
    const card::LightMap& light;
    const EdgeLine& line;
    cv::Matx33d px_from_plane;
    std::vector<cv::Point2f> card;  // its corners in the photo, or none
    cv::Rect card_box;
    int first;
    double from_mm;
    const std::array<float, 3>& skin;
};

struct Tile {
    float x[tile_cells], y[tile_cells];  // in the photo
    bool good[tile_cells];
    float light[3 * tile_cells];
};

// Where the cells of the tile lie in the photo and whether they show scalp or hair; returns the box of those that do.
cv::Rect find_places(const Band& band, const cv::Rect& cells, Tile& tile) {
    const cv::Matx33d& h = band.px_from_plane;
    const EdgeLine& line = band.line;
    const int last = static_cast<int>(line.at_mm.size()) - 1;
    const float right = static_cast<float>(band.photo.pixels.cols - 1),
                bottom = static_cast<float>(band.photo.pixels.rows - 1);
    float x0 = right, y0 = bottom, x1 = -1, y1 = -1;
    for (int j = 0, n = 0; j < cells.height; ++j) {
        const double depth = band.from_mm + (cells.y + j + 0.5) * line.step_mm;
        for (int i = 0; i < cells.width; ++i, ++n) {
            const auto k = static_cast<size_t>(std::clamp(band.first + cells.x + i, 0, last));
            const double x = line.at_mm[k].x + depth * line.inward_mm[k].x,
                         y = line.at_mm[k].y + depth * line.inward_mm[k].y;
            const double w = 1 / (h(2, 0) * x + h(2, 1) * y + h(2, 2));
            const auto u = static_cast<float>((h(0, 0) * x + h(0, 1) * y + h(0, 2)) * w),
                       v = static_cast<float>((h(1, 0) * x + h(1, 1) * y + h(1, 2)) * w);
            bool good = u >= 0 && v >= 0 && u <= right && v <= bottom;
            if (good && band.card_box.contains(cv::Point(static_cast<int>(u), static_cast<int>(v))))
                good = cv::pointPolygonTest(band.card, {u, v}, false) < 0;
            tile.x[n] = u, tile.y[n] = v;
            tile.good[n] = good;
            if (!good) continue;
            x0 = std::min(x0, u), x1 = std::max(x1, u);
            y0 = std::min(y0, v), y1 = std::max(y1, v);
        }
    }
    if (x1 < x0) return {};
    // One neighbour before and two after, and what rounding to a 32nd may add.
    const cv::Rect box(cv::Point(static_cast<int>(x0) - 1, static_cast<int>(y0) - 1),
                       cv::Point(static_cast<int>(x1) + 4, static_cast<int>(y1) + 4));
    return box & cv::Rect({}, band.photo.pixels.size());
}

void cut_tile(const Band& band, const cv::Rect& cells, BandPiece& piece) {
    Tile tile;
    const cv::Rect box = find_places(band, cells, tile);
    cv::Mat light;
    if (!box.empty()) light = band.light.linear(band.photo.pixels(box));
    const int count = cells.area();
    for (int n = 0; n < count; ++n) {
        float* out = tile.light + 3 * n;
        if (!tile.good[n]) {
            out[0] = out[1] = out[2] = 1;
            continue;
        }
        interpolate(light, {cvRound(tile.x[n] * parts) - box.x * parts, cvRound(tile.y[n] * parts) - box.y * parts},
                    out);
        for (int channel = 0; channel < 3; ++channel) out[channel] = std::max(out[channel], 0.f) + light_floor;
    }
    cv::hal::log32f(tile.light, tile.light, 3 * count);
    const std::array<float, 3> skin = band.skin;
    for (int j = 0, n = 0; j < cells.height; ++j) {
        auto* to = piece.log_light.ptr<cv::Vec3f>(cells.y + j) + cells.x;
        auto* valid = piece.valid.ptr<uchar>(cells.y + j) + cells.x;
        for (int i = 0; i < cells.width; ++i, ++n) {
            const float* log = tile.light + 3 * n;
            valid[i] = tile.good[n] ? 255 : 0;
            to[i] = tile.good[n] ? cv::Vec3f(log[0] - skin[0], log[1] - skin[1], log[2] - skin[2]) : cv::Vec3f();
        }
    }
}

}  // namespace

BandPiece cut(const Photo& photo, const card::LightMap& light, const card::Calibration& calibration,
              const EdgeLine& line, int first, int count, double from_mm, int rows, const std::array<float, 3>& skin) {
    Band band{photo, light, line, calibration.mm_from_px.inv(), {}, {}, first, from_mm, skin};
    if (calibration.card_found) {
        for (const auto& p : calibration.card_corners_px)
            band.card.emplace_back(static_cast<float>(p.x), static_cast<float>(p.y));
        band.card_box = cv::boundingRect(band.card);
    }
    BandPiece piece{cv::Mat(rows, count, CV_32FC3), cv::Mat(rows, count, CV_8UC1)};
    const int across = (count + tile_columns - 1) / tile_columns, down = (rows + tile_rows - 1) / tile_rows;
    cv::parallel_for_(cv::Range(0, across * down), [&](const cv::Range& tiles) {
        for (int t = tiles.start; t < tiles.end; ++t) {
            const cv::Rect cells =
                cv::Rect(t % across * tile_columns, t / across * tile_rows, tile_columns, tile_rows) &
                cv::Rect(0, 0, count, rows);
            cut_tile(band, cells, piece);
        }
    });
    return piece;
}

}  // namespace kempt::edges
