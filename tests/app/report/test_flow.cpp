#include <boost/test/unit_test.hpp>

#include "report/blocks.h"
#include "report/flow.h"

using namespace kempt::report;

namespace {

Block block(double height, bool keep = false, double before = 0) {
    Block out;
    out.height = height;
    out.keep_with_next = keep;
    out.space_before = before;
    return out;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(flow)

BOOST_AUTO_TEST_CASE(nothing_is_still_one_page) {
    BOOST_CHECK_EQUAL(paginate({}, 100).size(), 1u);
}

BOOST_AUTO_TEST_CASE(blocks_follow_each_other_and_space_is_left_out_at_the_head_of_a_page) {
    const Blocks blocks = {block(40, false, 7), block(40, false, 10), block(40, false, 10)};
    const Pages pages = paginate(blocks, 100);
    BOOST_REQUIRE_EQUAL(pages.size(), 2u);
    BOOST_CHECK_EQUAL(pages[0][0].top, 0);
    BOOST_CHECK_EQUAL(pages[0][1].top, 50);
    BOOST_CHECK_EQUAL(pages[1][0].top, 0);
}

BOOST_AUTO_TEST_CASE(a_heading_moves_on_with_the_block_that_it_heads) {
    const Blocks blocks = {block(70), block(10, true), block(30)};
    const Pages pages = paginate(blocks, 100);
    BOOST_REQUIRE_EQUAL(pages.size(), 2u);
    BOOST_CHECK_EQUAL(pages[0].size(), 1u);
    BOOST_CHECK_EQUAL(pages[1].size(), 2u);
}

BOOST_AUTO_TEST_CASE(a_chain_taller_than_a_page_is_broken_rather_than_lost) {
    const Blocks blocks = {block(60, true), block(60, true), block(60)};
    const Pages pages = paginate(blocks, 100);
    BOOST_CHECK_EQUAL(pages.size(), 3u);
}

BOOST_AUTO_TEST_CASE(a_block_taller_than_a_page_has_a_page_of_its_own) {
    const Pages pages = paginate({block(10), block(300), block(10)}, 100);
    BOOST_REQUIRE_EQUAL(pages.size(), 3u);
    BOOST_CHECK_EQUAL(pages[1].size(), 1u);
}

BOOST_AUTO_TEST_CASE(table_rows_are_whole_inside_the_page_under_a_head_and_none_stands_alone) {
    constexpr double width = 4000;
    for (int count = 1; count < 80; ++count) {
        QVector<TableRow> rows;
        for (int i = 0; i < count; ++i) {
            TableRow row;
            row.cells = {Cell{.text = QStringLiteral("row %1").arg(i)},
                         Cell{.text = QStringLiteral("words ").repeated(i % 23)}};
            row.across = i % 3 == 0 ? QStringLiteral("a sentence about the row") : QString();
            row.group = i < count / 2 ? QStringLiteral("first half") : QStringLiteral("second half");
            rows << row;
        }
        Blocks blocks;
        add_heading(blocks, QStringLiteral("Heading"), width);
        add_table(blocks, {{QStringLiteral("Name"), 1}, {QStringLiteral("Words"), 1}}, rows, width);
        constexpr double page_height = 2500;
        const Pages pages = paginate(blocks, page_height);
        std::size_t placed = 0;
        for (std::size_t p = 0; p < pages.size(); ++p) {
            double below = 0;
            for (const Placed& one : pages[p]) {
                BOOST_REQUIRE_GE(one.top, below - 1e-6);  // nothing overlaps
                below = one.top + one.block->height;
            }
            BOOST_REQUIRE_LE(below, page_height + 1e-6);
            BOOST_REQUIRE_GE(pages[p].size(), p == 0 ? 1u : 3u);  // a repeated head and two rows at least
            if (p > 0) BOOST_REQUIRE(pages[p].front().block == pages[p][1].block->head.get());
            placed += pages[p].size() - (p > 0 ? 1 : 0);
        }
        BOOST_REQUIRE_EQUAL(placed, blocks.size());
    }
}

BOOST_AUTO_TEST_CASE(a_row_taller_than_a_page_goes_on_over_the_next) {
    Blocks blocks;
    TableRow row;
    row.cells = {Cell{.text = QStringLiteral("long note ").repeated(800)}};
    add_table(blocks, {{QStringLiteral("Note"), 1}}, {row}, 2000);
    for (const Block& one : blocks) BOOST_CHECK_LE(one.height, 4000);
    BOOST_CHECK_GT(paginate(blocks, 5000).size(), 1u);
}

BOOST_AUTO_TEST_SUITE_END()
