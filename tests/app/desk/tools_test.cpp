// Each tool of the photo page, by mouse and by keyboard, from its button to the book.
#include <QAction>
#include <QMenu>
#include <QPushButton>
#include <boost/test/unit_test.hpp>

#include "desk/photo/hint_box.h"
#include "desk/photo/line_geometry.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/photo/readings_panel.h"
#include "desk/photo/strand_box.h"
#include "desk/photo/strand_list.h"
#include "desk/photo/tool_row.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "room.h"

using namespace kempt;
using namespace kempt::desk;
using test::wait_until;

namespace {

struct OnPhoto : test::Desk {
    PhotoPage* at(View view) {
        photo = book.add_photo(view);
        go({Where::photo, book.client, book.second_visit, photo, view});
        return page<PhotoPage>();
    }
    void click(QPointF p) {
        auto* canvas = page<PhotoPage>()->canvas();
        QTest::mouseClick(canvas, Qt::LeftButton, {}, canvas->map().window_from_photo(p).toPoint());
    }
    void key(Qt::Key k) { QTest::keyClick(page<PhotoPage>()->canvas(), k); }
    [[nodiscard]] Marks kept() {
        BOOST_TEST(wait_until([this] { return settled(); }));
        const auto marks = book.marks_in_book(photo);
        BOOST_REQUIRE(marks.has_value());
        return *marks;
    }
    Id photo = 0;
};

void press(QAbstractButton* button) {
    QTest::mouseClick(button, Qt::LeftButton);
}

QPushButton* button_with(QWidget* in, const QString& words) {
    for (QPushButton* b : in->findChildren<QPushButton*>())
        if (b->isVisibleTo(in) && b->text() == words) return b;
    return nullptr;
}

const QVector<QPointF> four = {{80, 60}, {300, 60}, {300, 240}, {80, 240}};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(tools, OnPhoto)

BOOST_AUTO_TEST_CASE(the_row_has_what_the_view_is_for_and_the_menu_the_rest) {
    PhotoPage* p = at(View::left_temple);
    const auto in_row = [&](Tool tool) { return p->tools()->button_of(tool)->isVisibleTo(p); };
    BOOST_TEST(in_row(Tool::edge_line));
    BOOST_TEST(!in_row(Tool::shine));
    BOOST_TEST(!in_row(Tool::ruler));
    QMenu* menu = p->tools()->more_button()->menu();
    QStringList waiting;
    for (const QAction* action : menu->actions())
        if (action->isVisible()) waiting.append(action->text());
    BOOST_TEST(waiting.join("|").toStdString() == "Shine|Tone|Ends|Comb-out|Pattern|Anchors|Ruler");
    menu->actions()[static_cast<qsizetype>(Tool::shine)]->trigger();
    BOOST_TEST(in_row(Tool::shine));
    BOOST_TEST((p->canvas()->tool() == Tool::shine));
    // Chosen and left without a mark it goes back into the menu.
    press(p->tools()->button_of(Tool::edge_line));
    BOOST_TEST(!in_row(Tool::shine));
    p = at(View::lengths);
    BOOST_TEST((p->canvas()->tool() == Tool::shine));
    BOOST_TEST(in_row(Tool::tone));
    BOOST_TEST(!in_row(Tool::edge_line));
    p = at(View::ends);
    BOOST_TEST(in_row(Tool::hem));
    BOOST_TEST(in_row(Tool::combings));
    BOOST_TEST(in_row(Tool::strand));
    BOOST_TEST(!p->tools()->turn_button()->isEnabled());  // nothing to turn yet
}

BOOST_AUTO_TEST_CASE(a_shine_region_by_mouse_is_measured_and_kept) {
    PhotoPage* p = at(View::lengths);
    BOOST_TEST(p->hint()->sentence().contains("four corners"));
    for (int i = 0; i < 3; ++i) click(four[i]);
    BOOST_TEST(p->hint()->sentence().toStdString() == "One more corner.");
    BOOST_TEST(analysis->measured == 0);  // not before it is whole
    click(four[3]);
    BOOST_TEST(wait_until([&] { return analysis->measured > 0; }));
    const Marks marks = kept();
    BOOST_TEST_REQUIRE(marks.shine_region.size() == 4);
    press(p->tools()->turn_button());
    BOOST_TEST((p->canvas()->marks().shine_region[0] == marks.shine_region[1]));
    BOOST_TEST((kept().shine_region[0] == marks.shine_region[1]));
}

BOOST_AUTO_TEST_CASE(a_tone_line_by_keyboard_is_measured_turned_and_kept) {
    PhotoPage* p = at(View::lengths);
    p->tools()->button_of(Tool::tone)->setFocus();
    QTest::keyClick(p->tools()->button_of(Tool::tone), Qt::Key_Space);
    BOOST_TEST(p->canvas()->hasFocus());  // straight on with the keys of the photo
    for (int i = 0; i < 3; ++i) key(Qt::Key_A);
    const Marks marks = kept();
    BOOST_TEST_REQUIRE(marks.strand_line.size() == 3);
    BOOST_TEST(marks.strand_line[0].y() < marks.strand_line[2].y());  // from the scalp down
    key(Qt::Key_F);
    BOOST_TEST((kept().strand_line[0] == marks.strand_line[2]));
    key(Qt::Key_Delete);
    BOOST_TEST(kept().strand_line.size() == 2);
}

BOOST_AUTO_TEST_CASE(ends_ask_for_their_region_and_a_comb_out_for_the_whole_sheet) {
    PhotoPage* p = at(View::ends);
    for (const QPointF& corner : four) click(corner);
    Marks marks = kept();
    BOOST_TEST(marks.sheet.toStdString() == "hem");
    BOOST_TEST(marks.region.size() == 4);
    // Choosing another tool changes nothing by itself.
    press(p->tools()->button_of(Tool::combings));
    BOOST_TEST(p->canvas()->marks().sheet.toStdString() == "hem");
    QPushButton* ask = button_with(p->hint(), "Measure the comb-out here");
    BOOST_TEST_REQUIRE(ask != nullptr);
    press(ask);
    marks = kept();
    BOOST_TEST(marks.sheet.toStdString() == "combings");
    BOOST_TEST(marks.region.size() == 4);
    press(button_with(p->hint(), "Do not measure this"));
    BOOST_TEST(kept().sheet.isEmpty());
    press(button_with(p->hint(), "Measure the whole sheet"));
    marks = kept();
    BOOST_TEST(marks.sheet.toStdString() == "combings");
    BOOST_TEST(marks.region.isEmpty());
}

BOOST_AUTO_TEST_CASE(a_strand_that_is_no_hair_is_taken_out_from_the_list_and_that_is_kept) {
    PhotoPage* p = at(View::ends);
    press(p->tools()->button_of(Tool::combings));
    press(button_with(p->hint(), "Measure the whole sheet"));
    StrandBox* box = p->readings()->strands(ReadingGroup::combings);
    BOOST_TEST(wait_until([&] { return box->list()->count() == 12; }));
    box->list()->setCurrentRow(3);
    BOOST_TEST(p->canvas()->strand() == 3);
    press(button_with(box, "Not hair"));
    Marks marks = kept();
    BOOST_TEST_REQUIRE(marks.not_hair.size() == 1);
    const QPolygonF& path = p->canvas()->overlay().combings->strands[3].path;
    BOOST_TEST(nearest_stretch(path, marks.not_hair[0]).distance < 0.01);
    box->list()->setCurrentRow(0);
    press(button_with(box, "Join with another"));
    box->list()->setCurrentRow(5);
    BOOST_TEST(kept().joined.size() == 2);
    box->list()->setCurrentRow(8);
    press(button_with(box, "A hair of its own"));
    BOOST_TEST(kept().whole.size() == 1);
    press(button_with(box, "Take all corrections back"));
    marks = kept();
    BOOST_TEST(marks.not_hair.isEmpty());
    BOOST_TEST(marks.joined.isEmpty());
    BOOST_TEST(marks.whole.isEmpty());
    BOOST_TEST(marks.sheet.toStdString() == "combings");
}

BOOST_AUTO_TEST_CASE(every_tool_draws_by_keyboard_alone) {
    PhotoPage* p = at(View::ends);
    QMenu* menu = p->tools()->more_button()->menu();
    for (const Tool tool : {Tool::hem, Tool::shine, Tool::tone, Tool::edge_line, Tool::hair_tap, Tool::scalp_tap,
                            Tool::anchor, Tool::ruler}) {
        if (QToolButton* b = p->tools()->button_of(tool); b->isVisibleTo(p)) {
            b->setFocus();
            QTest::keyClick(b, Qt::Key_Space);
        } else {
            menu->actions()[static_cast<qsizetype>(tool)]->trigger();
        }
        BOOST_TEST((p->canvas()->tool() == tool));
        const bool corners = tool == Tool::hem || tool == Tool::shine;
        for (int i = 0; i < (corners ? 4 : 2); ++i) key(Qt::Key_A);
        BOOST_TEST(has_drawn(tool, p->canvas()->marks()), name_of(tool).toStdString());
        BOOST_TEST(p->tools()->button_of(tool)->isVisibleTo(p));
        key(Qt::Key_N);
        BOOST_TEST(p->canvas()->picked().has_value());
        key(Qt::Key_Escape);
    }
    const Marks& m = p->canvas()->marks();
    BOOST_TEST(m.region.size() == 4);
    BOOST_TEST(m.shine_region.size() == 4);
    BOOST_TEST(m.strand_line.size() == 2);
    BOOST_TEST(m.edge_line.size() == 2);
    BOOST_TEST(m.anchors.size() == 2);
    BOOST_TEST(m.scale_points.size() == 2);
    // One after the other they can all be taken back.
    while (p->canvas()->editor().can_undo()) p->canvas()->undo();
    BOOST_TEST(p->canvas()->marks().region.isEmpty());
    BOOST_TEST(p->canvas()->marks().sheet.isEmpty());
}

BOOST_AUTO_TEST_CASE(leaving_with_a_half_drawn_region_keeps_the_rest_and_says_so) {
    PhotoPage* p = at(View::lengths);
    press(p->tools()->button_of(Tool::tone));
    click({150, 40});
    click({150, 200});
    press(p->tools()->button_of(Tool::shine));
    click(four[0]);
    click(four[1]);
    window->book()->go({Where::client, book.client});
    BOOST_TEST(wait_until([this] { return settled() && window->book()->place().where == Where::client; }));
    BOOST_TEST(window->book()->notice()->sentence().contains("shine"));
    const Marks marks = kept();
    BOOST_TEST(marks.strand_line.size() == 2);
    BOOST_TEST(marks.shine_region.isEmpty());
}

BOOST_AUTO_TEST_CASE(clearing_everything_is_kept_too) {
    PhotoPage* p = at(View::lengths);
    for (const QPointF& corner : four) click(corner);
    BOOST_TEST(kept().shine_region.size() == 4);
    press(button_with(p->hint(), "Remove the region"));
    BOOST_TEST(kept().shine_region.isEmpty());
}

BOOST_AUTO_TEST_CASE(what_was_measured_is_shown_where_it_is_looked_at_and_her_switch_is_remembered) {
    PhotoPage* p = at(View::left_temple);
    BOOST_TEST(!p->canvas()->overlay_shown());  // the tint would hide the edge that is being drawn
    p = at(View::lengths);
    BOOST_TEST(p->canvas()->overlay_shown());
    QToolButton* measured = nullptr;
    for (QToolButton* b : p->findChildren<QToolButton*>())
        if (b->accessibleName() == "Show what was measured") measured = b;
    BOOST_TEST_REQUIRE(measured != nullptr);
    press(measured);
    BOOST_TEST(!p->canvas()->overlay_shown());
    p = at(View::ends);
    BOOST_TEST(!p->canvas()->overlay_shown());
}

BOOST_AUTO_TEST_SUITE_END()
