// Ridge points for walks along lines: those of 16 x 8 pixels lie beside each other in memory, and one line of the cache
// tells which of these pixels hold a point that no line has taken yet. A walk over points by rows of the photo waits
// for memory at each step.
#pragma once

#include <bit>
#include <cstdint>
#include <span>
#include <vector>

#include "combings/ridges.h"
#include "combings/roomy.h"
#include "core/twice.h"

namespace kempt::combings {

// Numbers points anew, tile by tile, by rows within each. A tile beyond the bounds on all sides holds no points, so
// that nobody has to ask where the bounds end.
class PointTiles {
  public:
    // least_lean: of the points that a walk may step on.
    PointTiles(const Ridges& ridges, float least_lean);

    struct Way {
        float x, y, tx, ty;  // as of a RidgePoint
    };
    struct Place {
        uint16_t column, row;  // its pixel, beyond the corner of tiles
    };
    [[nodiscard]] int size() const { return static_cast<int>(ways_.size()); }
    [[nodiscard]] KEMPT_WITHIN const Way& way(int k) const { return ways_[static_cast<size_t>(k)]; }
    [[nodiscard]] KEMPT_WITHIN Place place(int k) const { return places_[static_cast<size_t>(k)]; }
    [[nodiscard]] KEMPT_WITHIN bool is_free(int k) const { return free_[static_cast<size_t>(k)] != 0; }
    // Of its ridge: below 0 brighter than paper.
    [[nodiscard]] KEMPT_WITHIN float signed_strength(int k) const { return strengths_[static_cast<size_t>(k)]; }
    [[nodiscard]] KEMPT_WITHIN float lean(int k) const { return leans_[static_cast<size_t>(k)]; }
    // act(k) for all points by rows of the photo, then columns.
    template <class Act>
    void by_rows(const Act& act) const {
        for (size_t band = across_; band + across_ < tiles_.size(); band += across_)
            for (unsigned v = 0; v < height; ++v)
                for (const Tile* t = tiles_.data() + band; t != tiles_.data() + band + across_; ++t) {
                    const int end = v + 1 < height ? t->first + t->before[v + 1] : t[1].first;
                    for (int k = t->first + t->before[v]; k < end; ++k) act(k);
                }
    }

    // The free points of the 5 x 5 pixels around one as bits, row by row from the upper left: all, and those dark and
    // leant enough for a step.
    static constexpr int reach = 2, around = 2 * reach + 1;
    struct Free {
        uint32_t all = 0, dark = 0;
    };
    [[nodiscard]] KEMPT_WITHIN Free free_around(Place p) const {
        Free out;
        const unsigned x = static_cast<unsigned>(p.column) - reach, shift = x % width;
        for (unsigned j = 0; j < around; ++j) {
            const unsigned y = p.row - reach + j, v = y % height;
            const Tile* tile = &at(x / width, y / height);
            uint32_t all = tile->free[v], dark = tile->dark[v];
            if (shift > width - around) {
                all |= static_cast<uint32_t>(tile[1].free[v]) << width;
                dark |= static_cast<uint32_t>(tile[1].dark[v]) << width;
            }
            all = all >> shift & row_bits;
            out.all |= all << (around * j);
            out.dark |= (dark >> shift & all) << (around * j);
        }
        return out;
    }
    // The pixel and the point at one of those bits.
    [[nodiscard]] static KEMPT_WITHIN Place place_at(Place p, unsigned bit) {
        return {static_cast<uint16_t>(p.column - reach + bit % around),
                static_cast<uint16_t>(p.row - reach + bit / around)};
    }
    [[nodiscard]] KEMPT_WITHIN int point_at(Place p) const {
        const Tile& tile = tile_of(p);
        const unsigned v = p.row % height;
        return tile.first + tile.before[v] + std::popcount(tile.has[v] & ((1U << p.column % width) - 1));
    }
    KEMPT_WITHIN void take(int k, Place p) {
        tile_of(p).free[p.row % height] &= static_cast<uint16_t>(~(1U << p.column % width));
        free_[static_cast<size_t>(k)] = 0;
    }
    void release(int k) {
        const Place p = place(k);
        tile_of(p).free[p.row % height] |= static_cast<uint16_t>(1U << p.column % width);
        free_[static_cast<size_t>(k)] = 1;
    }
    // Has the tile of a pixel (it may lie outside) or, when that is there, the points of its row read into the cache.
    KEMPT_WITHIN void expect_tile(int column, int row) const {
        if (is_within(column, row))
            __builtin_prefetch(&at(static_cast<unsigned>(column) / width, static_cast<unsigned>(row) / height));
    }
    KEMPT_WITHIN void expect_points(int column, int row) const {
        if (!is_within(column, row)) return;
        const Tile& tile = at(static_cast<unsigned>(column) / width, static_cast<unsigned>(row) / height);
        __builtin_prefetch(ways_.data() + tile.first + tile.before[static_cast<unsigned>(row) % height]);
    }

  private:
    static constexpr unsigned width = 16, height = 8, row_bits = (1U << around) - 1;
    struct alignas(64) Tile {
        int first;                                         // of its points
        uint8_t before[height];                            // of them before each row
        uint16_t has[height], free[height], dark[height];  // bits of the pixels of each row
    };
    [[nodiscard]] bool is_within(int column, int row) const {
        return column >= 0 && row >= 0 && column < columns_ && row < rows_;
    }
    [[nodiscard]] const Tile& at(unsigned i, unsigned j) const { return tiles_[j * across_ + i]; }
    [[nodiscard]] const Tile& tile_of(Place p) const { return at(p.column / width, p.row / height); }
    [[nodiscard]] Tile& tile_of(Place p) { return tiles_[p.row / height * across_ + p.column / width]; }
    KEMPT_TWICE void put_band(const std::vector<std::span<const RidgePoint>>& points, size_t band, size_t first,
                              float least_lean);

    int columns_, rows_;
    size_t across_;
    Roomy<Tile> tiles_;
    Roomy<Way> ways_;
    Roomy<Place> places_;
    Roomy<float> strengths_, leans_;
    Roomy<uint8_t> free_;
};

}  // namespace kempt::combings
