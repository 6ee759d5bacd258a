#include <boost/test/unit_test.hpp>

#include "desk/photo/mark_parts.h"
#include "desk/photo/marks_editor.h"
#include "desk/photo/view_map.h"
#include "room.h"

using namespace kempt;
using namespace kempt::desk;

namespace {

MarksEditor started(const Marks& marks = {}) {
    MarksEditor editor;
    editor.start(marks, {400, 300});
    return editor;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(marks_editor)

BOOST_AUTO_TEST_CASE(points_join_the_nearer_end) {
    MarksEditor e = started();
    for (const double x : {100.0, 150.0, 200.0, 50.0}) e.place(MarkKind::edge_point, {x, 100});
    BOOST_TEST_REQUIRE(e.marks().edge_line.size() == 4);
    BOOST_TEST(e.marks().edge_line.first().x() == 50);
    BOOST_TEST(e.marks().edge_line.last().x() == 200);
}

BOOST_AUTO_TEST_CASE(second_point_gives_a_hair_side_above_the_line_and_flipping_puts_it_below) {
    MarksEditor e = started();
    e.place(MarkKind::edge_point, {100, 150});
    BOOST_TEST(!e.marks().hair_side.has_value());
    BOOST_TEST(!ready_to_measure(e.marks()));
    e.place(MarkKind::edge_point, {300, 150});
    BOOST_TEST_REQUIRE(e.marks().hair_side.has_value());
    BOOST_TEST(e.marks().hair_side->y() < 150);
    BOOST_TEST(ready_to_measure(e.marks()));
    BOOST_TEST(e.turn(MarkKind::edge_point));
    BOOST_TEST(e.marks().hair_side->y() > 150);
    BOOST_TEST(e.undo());
    BOOST_TEST(e.marks().hair_side->y() < 150);
}

BOOST_AUTO_TEST_CASE(points_never_leave_the_photo) {
    MarksEditor e = started(test::some_marks());
    BOOST_TEST(e.move({MarkKind::edge_point, 0}, {-40, 900}));
    BOOST_TEST(e.marks().edge_line[0].x() == 0);
    BOOST_TEST(e.marks().edge_line[0].y() == 299);
}

BOOST_AUTO_TEST_CASE(a_drag_is_one_step_and_a_second_finger_takes_it_back) {
    MarksEditor e = started(test::some_marks());
    const QPointF before = e.marks().edge_line[1];
    e.begin_gesture();
    for (int i = 1; i <= 5; ++i) e.move({MarkKind::edge_point, 1}, before + QPointF(i, i));
    e.end_gesture();
    BOOST_TEST((e.marks().edge_line[1] == before + QPointF(5, 5)));
    e.begin_gesture();
    e.move({MarkKind::edge_point, 1}, before + QPointF(50, 50));
    e.cancel_gesture();
    BOOST_TEST((e.marks().edge_line[1] == before + QPointF(5, 5)));
    BOOST_TEST(e.undo());
    BOOST_TEST((e.marks().edge_line[1] == before));
    BOOST_TEST(!e.can_undo());
    BOOST_TEST(e.redo());
    BOOST_TEST((e.marks().edge_line[1] == before + QPointF(5, 5)));
}

BOOST_AUTO_TEST_CASE(a_new_change_ends_what_could_be_done_again) {
    MarksEditor e = started(test::some_marks());
    e.remove({MarkKind::edge_point, 0});
    e.undo();
    BOOST_TEST(e.can_redo());
    e.place(MarkKind::scalp_tap, {10, 10});
    BOOST_TEST(!e.can_redo());
}

BOOST_AUTO_TEST_CASE(insertion_keeps_the_order_and_removal_names_the_next_point) {
    MarksEditor e = started(test::some_marks(3));
    const auto made = e.place(MarkKind::edge_point, {90, 103}, 6);
    BOOST_TEST_REQUIRE(made.has_value());
    BOOST_TEST(made->index == 1);
    BOOST_TEST(e.marks().edge_line[1].x() == 90);
    BOOST_TEST(e.remove(*made)->index == 1);
    const auto last = e.remove({MarkKind::edge_point, 2});
    BOOST_TEST_REQUIRE(last.has_value());
    BOOST_TEST(last->index == 1);
    BOOST_TEST(!e.stretch_near(MarkKind::edge_point, {90, 160}, 6).has_value());
}

BOOST_AUTO_TEST_CASE(keyboard_adds_beyond_an_end_and_between_two_points) {
    MarksEditor e = started(test::some_marks(3));  // x 60 120 180
    const QRectF shown(0, 0, 400, 300);
    const auto by_key = [&](int picked) {
        return e.place_by_key(MarkKind::edge_point, Handle{MarkKind::edge_point, picked}, 30, shown);
    };
    const auto beyond = by_key(2);
    BOOST_TEST((e.at(*beyond) == QPointF(210, 100)));
    const auto between = by_key(1);
    BOOST_TEST((e.at(*between) == QPointF(150, 100)));
    const auto before = by_key(0);
    BOOST_TEST(before->index == 0);
    BOOST_TEST((e.at(*before) == QPointF(30, 100)));
    MarksEditor empty = started();
    empty.place_by_key(MarkKind::edge_point, std::nullopt, 30, shown);
    BOOST_TEST((empty.marks().edge_line.first() == QPointF(200, 150)));
}

BOOST_AUTO_TEST_CASE(a_third_ruler_point_replaces_the_first) {
    MarksEditor e = started();
    for (const double x : {10.0, 20.0, 30.0}) e.place(MarkKind::scale_point, {x, 5});
    BOOST_TEST_REQUIRE(e.marks().scale_points.size() == 2);
    BOOST_TEST(e.marks().scale_points[0].x() == 20);
    e.set_scale_mm(50);
    BOOST_TEST(e.undo());
    BOOST_TEST(e.marks().scale_mm == 0);
}

BOOST_AUTO_TEST_CASE(a_region_takes_four_corners_in_any_order_and_keeps_its_first_side) {
    // Left to right, line by line, as one reads: the third and fourth would cross.
    for (const MarkKind kind : {MarkKind::shine_corner, MarkKind::region_corner}) {
        MarksEditor e = started();
        for (const QPointF p : {QPointF(100, 50), QPointF(200, 50), QPointF(100, 150), QPointF(200, 150)})
            BOOST_TEST(e.place(kind, p, 0, "hem").has_value());
        const auto& corners = kind == MarkKind::shine_corner ? e.marks().shine_region : e.marks().region;
        BOOST_TEST_REQUIRE(corners.size() == 4);
        BOOST_TEST(!crosses_itself(corners));
        BOOST_TEST((corners[0] == QPointF(100, 50)));
        BOOST_TEST((corners[1] == QPointF(200, 50)));
        BOOST_TEST(!e.place(kind, {300, 200}, 0, "hem").has_value());  // a fifth one changes nothing
        BOOST_TEST(corners.size() == 4);
        BOOST_TEST(e.turn(kind));
        BOOST_TEST((corners[0] == QPointF(200, 50)));
        e.undo();
        // A corner that was removed goes back to where it was.
        e.remove({kind, 1});
        BOOST_TEST(corners.size() == 3);
        BOOST_TEST(e.place(kind, {210, 55}, 0, "hem")->index == 1);
        BOOST_TEST(!crosses_itself(corners));
    }
}

BOOST_AUTO_TEST_CASE(a_region_on_the_sheet_says_which_kind_of_sheet_and_the_last_corner_takes_it_along) {
    MarksEditor e = started();
    e.place(MarkKind::region_corner, {100, 50}, 0, "hem");
    BOOST_TEST(e.marks().sheet.toStdString() == "hem");
    e.remove({MarkKind::region_corner, 0});
    BOOST_TEST(e.marks().sheet.isEmpty());
    e.undo();
    BOOST_TEST(e.clear(MarkKind::region_corner));
    BOOST_TEST(e.marks().sheet.isEmpty());
    BOOST_TEST(e.marks().region.isEmpty());
}

BOOST_AUTO_TEST_CASE(the_tone_line_grows_away_from_the_scalp_and_can_be_turned) {
    MarksEditor e = started();
    for (const double y : {40.0, 100.0, 200.0}) e.place(MarkKind::strand_point, {150, y}, 5);
    e.place(MarkKind::strand_point, {152, 150}, 5);  // on the line: between
    BOOST_TEST_REQUIRE(e.marks().strand_line.size() == 4);
    BOOST_TEST(e.marks().strand_line[2].y() == 150);
    e.place(MarkKind::strand_point, {150, 10}, 5);  // nearer to the scalp end, and yet the next point of the line
    BOOST_TEST(e.marks().strand_line.last().y() == 10);
    e.undo();
    BOOST_TEST(e.turn(MarkKind::strand_point));
    BOOST_TEST(e.marks().strand_line.first().y() == 200);
}

BOOST_AUTO_TEST_CASE(every_kind_of_mark_is_drawn_moved_and_removed_by_the_keyboard) {
    using enum MarkKind;
    const QRectF shown(0, 0, 400, 300);
    for (const MarkKind kind :
         {edge_point, hair_tap, scalp_tap, shine_corner, strand_point, region_corner, anchor, scale_point}) {
        MarksEditor e = started();
        std::optional<Handle> picked;
        const int wanted = kind == shine_corner || kind == region_corner ? 4 : 2;
        for (int i = 0; i < wanted; ++i) {
            picked = e.place_by_key(kind, picked, 30, shown, "hem");
            BOOST_TEST_REQUIRE(picked.has_value());
        }
        std::vector<QPointF> points;
        for (const Handle& handle : e.handles())
            if (handle.kind == kind) points.push_back(*e.at(handle));
        BOOST_TEST_REQUIRE(static_cast<int>(points.size()) == wanted);
        for (std::size_t i = 0; i < points.size(); ++i)
            for (std::size_t j = 0; j < i; ++j) BOOST_TEST((points[i] != points[j]));  // none lies on another
        if (wanted == 4) BOOST_TEST(all_finished(e.marks()));
        BOOST_TEST(e.move(*picked, {17, 23}));
        BOOST_TEST((e.at(*picked) == QPointF(17, 23)));
        e.undo();
        for (std::optional<Handle> next = picked; next; next = e.remove(*next)) {
        }
        for (const Handle& handle : e.handles()) BOOST_TEST((handle.kind != kind));
        BOOST_TEST(e.undo());
    }
}

BOOST_AUTO_TEST_CASE(a_point_of_the_chosen_tool_is_taken_before_a_nearer_one_of_another) {
    Marks marks = test::some_marks(2);
    marks.strand_line = {{64, 100}, {64, 200}};
    MarksEditor e = started(marks);
    BOOST_TEST((e.handle_near({60, 100}, 8)->kind == MarkKind::edge_point));
    BOOST_TEST((e.handle_near({60, 100}, 8, MarkKind::strand_point)->kind == MarkKind::strand_point));
}

BOOST_AUTO_TEST_CASE(corrections_of_strands_are_steps_and_go_with_the_comb_out) {
    Marks marks;
    marks.sheet = "combings";
    MarksEditor e = started(marks);
    e.place(MarkKind::not_hair, {50, 60});
    e.join({100, 100}, {120, 100});
    e.join({200, 100}, {220, 100});
    BOOST_TEST(e.marks().joined.size() == 4);
    e.undo();
    BOOST_TEST(e.marks().joined.size() == 2);
    e.redo();
    e.place(MarkKind::whole, {300, 60});
    BOOST_TEST((e.handle_near({300, 60}, 8)->kind == MarkKind::whole));
    // One end of a join takes the other along.
    e.remove({MarkKind::join_point, 3});
    BOOST_TEST((e.marks().joined == QVector<QPointF>{{100, 100}, {120, 100}}));
    e.set_sheet("strand");  // other strands are asked for
    BOOST_TEST(e.marks().not_hair.isEmpty());
    BOOST_TEST(e.marks().joined.isEmpty());
    BOOST_TEST(e.marks().whole.isEmpty());
    e.undo();
    BOOST_TEST(e.marks().whole.size() == 1);
    BOOST_TEST(e.clear_corrections());
    BOOST_TEST(!e.clear_corrections());
    BOOST_TEST(e.marks().sheet.toStdString() == "combings");
    e.undo();
    BOOST_TEST(e.marks().not_hair.size() == 1);
}

BOOST_AUTO_TEST_CASE(what_is_half_drawn_is_left_out_and_the_rest_can_be_measured) {
    Marks marks = test::some_marks(3);
    marks.shine_region = {{10, 10}, {50, 10}, {50, 50}};
    marks.strand_line = {{10, 10}};
    marks.sheet = "combings";
    BOOST_TEST(!all_finished(marks));
    const Marks whole = finished_part(marks);
    BOOST_TEST(whole.edge_line.size() == 3);
    BOOST_TEST(whole.shine_region.isEmpty());
    BOOST_TEST(whole.strand_line.isEmpty());
    BOOST_TEST(whole.sheet.toStdString() == "combings");  // the whole sheet
    BOOST_TEST(half_drawn_words(marks).contains("shine"));
    marks.region = {{10, 10}, {50, 10}};
    BOOST_TEST(finished_part(marks).sheet.isEmpty());  // a part was begun: not the whole sheet meanwhile
    marks.region = {{10, 10}, {50, 50}, {50, 10}, {10, 50}};
    BOOST_TEST(crosses_itself(marks.region));
    BOOST_TEST(finished_part(marks).region.isEmpty());
    Marks hem;
    hem.sheet = "hem";
    BOOST_TEST(!ready_to_measure(hem));  // ends need their region
    hem.region = {{10, 10}, {50, 10}, {50, 50}, {10, 50}};
    BOOST_TEST(ready_to_measure(hem));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(view_map)

BOOST_AUTO_TEST_CASE(zooming_keeps_the_place_under_the_pointer) {
    ViewMap map;
    map.set_window({800, 600});
    map.set_photo({4000, 3000});
    BOOST_TEST(map.zoom() == 0.2, boost::test_tools::tolerance(1e-12));
    const QPointF pointer(200, 450), held = map.photo_from_window(pointer);
    map.zoom_about(pointer, 8);
    BOOST_TEST(QLineF(map.photo_from_window(pointer), held).length() < 1e-6);
    BOOST_TEST(QLineF(map.window_from_photo(held), pointer).length() < 1e-6);
}

BOOST_AUTO_TEST_CASE(zooming_out_ends_at_the_whole_photo_and_panning_at_its_border) {
    ViewMap map;
    map.set_window({800, 600});
    map.set_photo({4000, 3000});
    map.zoom_about({400, 300}, 10);
    map.pan({1e6, 1e6});
    BOOST_TEST(QLineF(map.photo_from_window({0, 0}), {0, 0}).length() < 1e-6);
    map.zoom_about({400, 300}, 0.001);
    BOOST_TEST(map.fitted());
    BOOST_TEST(map.zoom() == 0.2, boost::test_tools::tolerance(1e-12));
    map.zoom_about({400, 300}, 1e9);
    BOOST_TEST(map.zoom() == ViewMap::greatest_zoom, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_point_is_brought_into_view_with_room_round_it) {
    ViewMap map;
    map.set_window({800, 600});
    map.set_photo({4000, 3000});
    map.zoom_about({400, 300}, 10);
    map.bring_into_view({3000, 2000}, 60);
    const QPointF at = map.window_from_photo({3000, 2000});
    BOOST_TEST(at.x() <= 740 + 1e-6);
    BOOST_TEST(at.y() <= 540 + 1e-6);
}

BOOST_AUTO_TEST_SUITE_END()
