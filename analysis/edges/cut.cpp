// The band out of the photo. It is worked on in tiles, so that only the pixels below the band are turned into light and
// everything that a tile needs stays in the cache.
#include <algorithm>
#include <cmath>
#include <opencv2/core/hal/hal.hpp>
#include <opencv2/imgproc.hpp>

#include "core/twice.h"
#include "edges/band.h"
#include "edges/reference_colours.h"

namespace kempt::edges {

namespace {

// Band pixels of a tile: in a photo of twice the band's scale a slanted tile then lies over some 30 000 pixels.
constexpr int tile_rows = 32, tile_columns = 64, tile_cells = tile_rows * tile_columns;

typedef float Eight __attribute__((vector_size(32)));
typedef float Four __attribute__((vector_size(16)));
typedef int FourInts __attribute__((vector_size(16)));

Four four(const float* from) {
    Four out;
    __builtin_memcpy(&out, from, sizeof(out));
    return out;
}
Four all(float value) {
    return Four{value, value, value, value};
}

// Weights of the four neighbours at each 32nd of a pixel (Keys 1981, a = -0.75, as in OpenCV's remap): plain, and three
// times each for the channels of four pixels.
constexpr int parts = 32, neighbours = 4;
struct CubicWeights {
    float of[parts][neighbours], thrice[parts][3 * neighbours];
    CubicWeights() {
        constexpr float a = -0.75f;
        for (int i = 0; i < parts; ++i) {
            const float x = static_cast<float>(i) / parts, y = 1 - x;
            of[i][0] = ((a * (x + 1) - 5 * a) * (x + 1) + 8 * a) * (x + 1) - 4 * a;
            of[i][1] = ((a + 2) * x - (a + 3)) * x * x + 1;
            of[i][2] = ((a + 2) * y - (a + 3)) * y * y + 1;
            of[i][3] = 1 - of[i][0] - of[i][1] - of[i][2];
            for (int k = 0; k < 3 * neighbours; ++k) thrice[i][k] = of[i][k / 3];
        }
    }
};

// A place in 32nds of a pixel.
struct Place {
    int x, y;
};

// light: CV_32FC3. The first three of the result are the interpolated light. Four pixels are twelve floats, which a
// vector of eight and one of four take whole.
KEMPT_WITHIN Four interpolate(const CubicWeights& cubic, const cv::Mat& light, Place at) {
    const float* down = cubic.of[at.y % parts];
    const int x = at.x / parts - 1, y = at.y / parts - 1;
    if (x >= 0 && y >= 0 && x + neighbours <= light.cols && y + neighbours <= light.rows) {
        Eight ab{}, eight;
        Four c{};
        const float* row = light.ptr<float>(y) + 3 * x;
        const size_t step = light.step[0] / sizeof(float);
        for (int k = 0; k < neighbours; ++k, row += step) {
            __builtin_memcpy(&eight, row, sizeof(eight));
            ab += down[k] * eight, c += down[k] * four(row + 8);
        }
        const float* across = cubic.thrice[at.x % parts];
        __builtin_memcpy(&eight, across, sizeof(eight));
        ab *= eight, c *= four(across + 8);
        const Four a = __builtin_shufflevector(ab, ab, 0, 1, 2, 3), b = __builtin_shufflevector(ab, ab, 4, 5, 6, 7);
        return (a + __builtin_shufflevector(a, b, 3, 4, 5, 5)) +
               (__builtin_shufflevector(b, c, 2, 3, 4, 4) + __builtin_shufflevector(c, c, 1, 2, 3, 3));
    }
    const float* across = cubic.of[at.x % parts];
    // At the photo's edge its outermost pixels are repeated.
    Four sum{};
    for (int k = 0; k < neighbours; ++k)
        for (int l = 0; l < neighbours; ++l) {
            const auto& p =
                light.at<cv::Vec3f>(std::clamp(y + k, 0, light.rows - 1), std::clamp(x + l, 0, light.cols - 1));
            sum += down[k] * across[l] * Four{p[0], p[1], p[2], 0};
        }
    return sum;
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
    CubicWeights cubic;
    std::array<float, 3 * tile_columns> skin;  // as often as a tile has columns
};

// Rows of tile_columns cells, whatever the tile's own width.
struct Tile {
    float x[tile_cells], y[tile_cells];  // in the photo
    int good[tile_cells];                // -1: shows scalp or hair; 0
    float light[3 * tile_cells + 1];     // vectors of four are written from three to three
};

// Places in the photo. Columns beyond the tile's width are its last one's again.
void find_places(const Band& band, const cv::Rect& cells, Tile& tile) {
    const cv::Matx33d& h = band.px_from_plane;
    const EdgeLine& line = band.line;
    const int last = static_cast<int>(line.at_mm.size()) - 1;
    // x = (base + depth * slope) over the same of w.
    double base[3][tile_columns], slope[3][tile_columns];
    for (int i = 0; i < tile_columns; ++i) {
        const auto k = static_cast<size_t>(std::clamp(band.first + cells.x + std::min(i, cells.width - 1), 0, last));
        const cv::Point2d at = line.at_mm[k], in = line.inward_mm[k];
        for (int r = 0; r < 3; ++r) {
            base[r][i] = h(r, 0) * at.x + h(r, 1) * at.y + h(r, 2);
            slope[r][i] = h(r, 0) * in.x + h(r, 1) * in.y;
        }
    }
    for (int j = 0; j < cells.height; ++j) {
        const double depth = band.from_mm + (cells.y + j + 0.5) * line.step_mm;
        float *x = tile.x + j * tile_columns, *y = tile.y + j * tile_columns;
        for (int i = 0; i < tile_columns; ++i) {
            const double w = 1 / (base[2][i] + depth * slope[2][i]);
            x[i] = static_cast<float>((base[0][i] + depth * slope[0][i]) * w);
            y[i] = static_cast<float>((base[1][i] + depth * slope[1][i]) * w);
        }
    }
}

// Marks the cells that lie in the photo and not on the card; returns the box of the pixels that they need.
cv::Rect find_good(const Band& band, int cells, Tile& tile) {
    const Four right = all(static_cast<float>(band.photo.pixels.cols - 1)),
               bottom = all(static_cast<float>(band.photo.pixels.rows - 1)), none{};
    Four x0 = right, y0 = bottom, x1 = none, y1 = none;
    FourInts any{};
    for (int n = 0; n < cells; n += 4) {
        const Four x = four(tile.x + n), y = four(tile.y + n);
        const FourInts good = (x >= none) & (y >= none) & (x <= right) & (y <= bottom);
        __builtin_memcpy(tile.good + n, &good, sizeof(good));
        any |= good;
        x0 = (good & (x < x0)) ? x : x0, x1 = (good & (x > x1)) ? x : x1;
        y0 = (good & (y < y0)) ? y : y0, y1 = (good & (y > y1)) ? y : y1;
    }
    if ((any[0] | any[1] | any[2] | any[3]) == 0) return {};
    const auto least = [](Four v) { return static_cast<int>(std::min({v[0], v[1], v[2], v[3]})); };
    const auto most = [](Four v) { return static_cast<int>(std::max({v[0], v[1], v[2], v[3]})); };
    // One neighbour before and two after, and what rounding to a 32nd may add.
    const cv::Rect box = cv::Rect(cv::Point(least(x0) - 1, least(y0) - 1), cv::Point(most(x1) + 4, most(y1) + 4)) &
                         cv::Rect({}, band.photo.pixels.size());
    if ((box & band.card_box).empty()) return box;
    for (int n = 0; n < cells; ++n)
        if (tile.good[n] && cv::pointPolygonTest(band.card, {tile.x[n], tile.y[n]}, false) >= 0) tile.good[n] = 0;
    return box;
}

// The tile's light, at least light_floor; `corner`: of `light` in the photo.
KEMPT_TWICE void sample(const CubicWeights& cubic, const cv::Mat& light, const cv::Point& corner, int count,
                        Tile& tile) {
    const Four none{}, floor = all(light_floor);
    for (int n = 0; n < count; ++n) {
        Four seen = none;
        if (tile.good[n]) {
            const int x = cvRound(tile.x[n] * parts), y = cvRound(tile.y[n] * parts);
            seen = interpolate(cubic, light, {x - corner.x * parts, y - corner.y * parts});
        }
        seen = (seen > none ? seen : none) + floor;
        __builtin_memcpy(tile.light + 3 * n, &seen, sizeof(seen));
    }
}

void cut_tile(const Band& band, const cv::Rect& cells, BandPiece& piece) {
    Tile tile;
    const int count = cells.height * tile_columns;
    find_places(band, cells, tile);
    const cv::Rect box = find_good(band, count, tile);
    cv::Mat light;
    if (!box.empty()) light = band.light.linear(band.photo.pixels(box));
    sample(band.cubic, light, box.tl(), count, tile);
    cv::hal::log32f(tile.light, tile.light, 3 * count);
    for (int j = 0; j < cells.height; ++j) {
        const float* log = tile.light + 3 * j * tile_columns;
        auto* to = piece.log_light.ptr<float>(cells.y + j) + 3 * cells.x;
        for (int i = 0; i < 3 * cells.width; ++i) to[i] = log[i] - band.skin[static_cast<size_t>(i)];
        const int* good = tile.good + j * tile_columns;
        uchar* valid = piece.valid.ptr<uchar>(cells.y + j) + cells.x;
        for (int i = 0; i < cells.width; ++i) valid[i] = static_cast<uchar>(good[i] & 255);
        for (int i = 0; i < cells.width; ++i)
            if (!good[i]) to[3 * i] = to[3 * i + 1] = to[3 * i + 2] = 0;
    }
}

}  // namespace

void cut(const Photo& photo, const card::LightMap& light, const card::Calibration& calibration, const EdgeLine& line,
         int first, int count, double from_mm, int rows, const std::array<float, 3>& skin, BandPiece& piece) {
    Band band{photo, light, line, calibration.mm_from_px.inv(), {}, {}, first, from_mm, {}, {}};
    for (size_t i = 0; i < band.skin.size(); ++i) band.skin[i] = skin[i % 3];
    if (calibration.card_found) {
        for (const auto& p : calibration.card_corners_px)
            band.card.emplace_back(static_cast<float>(p.x), static_cast<float>(p.y));
        band.card_box = cv::boundingRect(band.card);
    }
    piece.log_light.create(rows, count, CV_32FC3);
    piece.valid.create(rows, count, CV_8UC1);
    const int across = (count + tile_columns - 1) / tile_columns, down = (rows + tile_rows - 1) / tile_rows;
    cv::parallel_for_(cv::Range(0, across * down), [&](const cv::Range& tiles) {
        for (int t = tiles.start; t < tiles.end; ++t) {
            const cv::Rect cells =
                cv::Rect(t % across * tile_columns, t / across * tile_rows, tile_columns, tile_rows) &
                cv::Rect(0, 0, count, rows);
            cut_tile(band, cells, piece);
        }
    });
}

BandPiece cut(const Photo& photo, const card::LightMap& light, const card::Calibration& calibration,
              const EdgeLine& line, int first, int count, double from_mm, int rows) {
    BandPiece piece;
    cut(photo, light, calibration, line, first, count, from_mm, rows, {}, piece);
    return piece;
}

}  // namespace kempt::edges
