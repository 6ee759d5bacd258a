#include "combings/point_tiles.h"

#include <algorithm>

namespace kempt::combings {

PointTiles::PointTiles(const Ridges& ridges, float least_lean)
    : columns_((ridges.bounds.width + static_cast<int>(width) - 1) / static_cast<int>(width) * static_cast<int>(width) +
               2 * static_cast<int>(width)),
      rows_((ridges.bounds.height + static_cast<int>(height) - 1) / static_cast<int>(height) *
                static_cast<int>(height) +
            2 * static_cast<int>(height)),
      across_(static_cast<size_t>(columns_) / width) {
    std::vector<size_t> before{0};  // points of the strips before each
    for (const auto& strip : ridges.strips) before.push_back(before.back() + strip.size());
    const size_t n = before.back(), bands = static_cast<size_t>(rows_) / height;
    tiles_.resize(bands * across_, Tile{});
    ways_.resize(n);
    places_.resize(n);
    strengths_.resize(n);
    leans_.resize(n);
    free_.resize(n, 1);
    tiles_[(bands - 1) * across_].first = static_cast<int>(n);  // by_rows() asks where the last tile's points end
    cv::parallel_for_(cv::Range(1, static_cast<int>(bands) - 1), [&](const cv::Range& range) {
        for (int band = range.start; band < range.end; ++band) {
            const int y0 = (band - 1) * static_cast<int>(height), y1 = y0 + static_cast<int>(height);
            size_t first = 0;
            std::vector<std::span<const RidgePoint>> points;
            for (int s = y0 / ridges.strip_rows;
                 s < static_cast<int>(ridges.strips.size()) && s * ridges.strip_rows < y1; ++s) {
                const auto& strip = ridges.strips[static_cast<size_t>(s)];
                const auto from = [&](int y) {
                    return std::partition_point(strip.data(), strip.data() + strip.size(),
                                                [&](const RidgePoint& p) { return p.row < y; });
                };
                if (points.empty())
                    first = before[static_cast<size_t>(s)] + static_cast<size_t>(from(y0) - strip.data());
                points.emplace_back(from(y0), from(y1));
            }
            put_band(points, static_cast<size_t>(band), first, least_lean);
        }
    });
}

KEMPT_TWICE void PointTiles::put_band(const std::vector<std::span<const RidgePoint>>& points, size_t band, size_t first,
                                      float least_lean) {
    Tile* tiles = tiles_.data() + band * across_;
    for (const auto some : points)
        for (const RidgePoint& p : some)
            tiles[p.column / width + 1].has[p.row % height] |= static_cast<uint16_t>(1U << p.column % width);
    for (size_t t = 0; t < across_; ++t) {
        Tile& tile = tiles[t];
        tile.first = static_cast<int>(first);
        for (unsigned v = 0, before = 0; v < height; ++v) {
            tile.before[v] = static_cast<uint8_t>(before);
            tile.free[v] = tile.has[v];
            before += static_cast<unsigned>(std::popcount(tile.has[v]));
            first += static_cast<size_t>(std::popcount(tile.has[v]));
        }
    }
    for (const auto some : points)
        for (const RidgePoint& p : some) {
            const Place place{static_cast<uint16_t>(p.column + width), static_cast<uint16_t>(p.row + height)};
            const size_t k = static_cast<size_t>(point_at(place));
            ways_[k] = {p.x, p.y, p.tx, p.ty};
            places_[k] = place;
            strengths_[k] = p.sign * p.strength;
            leans_[k] = p.lean;
            if (p.sign > 0 && !(p.lean < least_lean))
                tile_of(place).dark[place.row % height] |= static_cast<uint16_t>(1U << place.column % width);
        }
}

}  // namespace kempt::combings
