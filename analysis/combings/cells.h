// What lies in each cell of a grid, kept in one piece of memory: a vector for each cell costs an allocation each and,
// over a photo of 12 megapixels, more page faults than the work on what lies in them.
#pragma once

#include <cstddef>
#include <vector>

#include "combings/roomy.h"

namespace kempt::combings {

template <class Item>
class Cells {
  public:
    // each(put) calls put(cell, item) for all items, the same ones in the same order both times that it is called.
    template <class Each>
    Cells(size_t cells, Each each) : start_(cells + 1, 0) {
        each([&](size_t cell, const Item&) { ++start_[cell + 1]; });
        for (size_t c = 1; c < start_.size(); ++c) start_[c] += start_[c - 1];
        items_.resize(static_cast<size_t>(start_.back()));
        // Each start moves on to the end of its cell, which is the start of the next.
        each([&](size_t cell, const Item& item) { items_[static_cast<size_t>(start_[cell]++)] = item; });
    }
    // In the order they were put.
    [[nodiscard]] const Item* begin(size_t cell) const { return items_.data() + (cell > 0 ? start_[cell - 1] : 0); }
    [[nodiscard]] const Item* end(size_t cell) const { return items_.data() + start_[cell]; }

  private:
    std::vector<int> start_;
    Roomy<Item> items_;
};

}  // namespace kempt::combings
