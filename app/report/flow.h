// Blocks of known height, set one under the other and broken into pages. Pure arithmetic: nothing is painted here.
#pragma once

#include <QRectF>
#include <functional>
#include <memory>
#include <vector>

QT_BEGIN_NAMESPACE
class QPainter;
QT_END_NAMESPACE

namespace kempt::report {

struct Block {
    double height = 0;
    double space_before = 0;            // left out at the head of a page
    bool keep_with_next = false;        // never the last on a page (unless the chain is taller than a page)
    std::shared_ptr<const Block> head;  // set again above this block when it comes first on a page
    std::function<void(QPainter&, const QRectF&)> paint;  // the rectangle is as wide as the text, as high as the block
};
using Blocks = std::vector<Block>;

struct Placed {
    const Block* block = nullptr;  // lives as long as the blocks given to paginate
    double top = 0;                // from the head of the page
};
using Pages = std::vector<std::vector<Placed>>;

// At least one page, even of nothing. A block is never split; one taller than a page gets a page of its own.
[[nodiscard]] Pages paginate(const Blocks& blocks, double page_height);

}  // namespace kempt::report
