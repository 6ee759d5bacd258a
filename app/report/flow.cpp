#include "report/flow.h"

namespace kempt::report {
namespace {

// Height of the chain that starts at index: the block and all that must stay with it.
double chain_height(const Blocks& blocks, std::size_t index, bool at_head) {
    double height = 0;
    for (std::size_t i = index; i < blocks.size(); ++i) {
        if (i > index || !at_head) height += blocks[i].space_before;
        height += blocks[i].height;
        if (!blocks[i].keep_with_next) break;
    }
    return height;
}

}  // namespace

Pages paginate(const Blocks& blocks, double page_height) {
    constexpr double rounding = 1e-6;
    Pages pages(1);
    double y = 0;
    bool kept = false;  // the block before this one asked to stay with it, and its whole chain was found to fit
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const Block& block = blocks[i];
        const bool at_head = pages.back().empty();
        const double chain = chain_height(blocks, i, at_head);
        const double own = block.height + (at_head ? 0 : block.space_before);
        const double head_height = block.head ? block.head->height : 0;
        const bool chain_can_fit = chain_height(blocks, i, true) + head_height <= page_height + rounding;
        const double needed = chain_can_fit && !kept ? chain : own;
        if (!at_head && y + needed > page_height + rounding) {
            pages.emplace_back();
            y = 0;
        }
        if (pages.back().empty() && block.head) {
            pages.back().push_back({block.head.get(), 0});
            y = block.head->height;
        } else if (!pages.back().empty()) {
            y += block.space_before;
        }
        pages.back().push_back({&block, y});
        y += block.height;
        kept = block.keep_with_next && chain_can_fit;
    }
    return pages;
}

}  // namespace kempt::report
