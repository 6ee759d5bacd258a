#include <boost/test/unit_test.hpp>

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
    e.extend({100, 100});
    e.extend({150, 100});
    e.extend({200, 100});
    e.extend({50, 100});
    BOOST_TEST_REQUIRE(e.marks().edge_line.size() == 4);
    BOOST_TEST(e.marks().edge_line.first().x() == 50);
    BOOST_TEST(e.marks().edge_line.last().x() == 200);
}

BOOST_AUTO_TEST_CASE(second_point_gives_a_hair_side_above_the_line_and_flipping_puts_it_below) {
    MarksEditor e = started();
    e.extend({100, 150});
    BOOST_TEST(!e.marks().hair_side.has_value());
    BOOST_TEST(!e.ready_to_measure());
    e.extend({300, 150});
    BOOST_TEST_REQUIRE(e.marks().hair_side.has_value());
    BOOST_TEST(e.marks().hair_side->y() < 150);
    BOOST_TEST(e.ready_to_measure());
    BOOST_TEST(e.flip_side());
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
    e.tap(MarkKind::scalp_tap, {10, 10});
    BOOST_TEST(!e.can_redo());
}

BOOST_AUTO_TEST_CASE(insertion_keeps_the_order_and_removal_names_the_next_point) {
    MarksEditor e = started(test::some_marks(3));
    const auto stretch = e.stretch_near({90, 103}, 6);
    BOOST_TEST_REQUIRE(stretch.has_value());
    const auto made = e.insert(*stretch, {90, 103});
    BOOST_TEST_REQUIRE(made.has_value());
    BOOST_TEST(made->index == 1);
    BOOST_TEST(e.marks().edge_line[1].x() == 90);
    BOOST_TEST(e.remove(*made)->index == 1);
    const auto last = e.remove({MarkKind::edge_point, 2});
    BOOST_TEST_REQUIRE(last.has_value());
    BOOST_TEST(last->index == 1);
    BOOST_TEST(!e.stretch_near({90, 160}, 6).has_value());
}

BOOST_AUTO_TEST_CASE(keyboard_adds_beyond_an_end_and_between_two_points) {
    MarksEditor e = started(test::some_marks(3));  // x 60 120 180
    const auto beyond = e.add_beside(Handle{MarkKind::edge_point, 2}, 30, {0, 0});
    BOOST_TEST((e.at(*beyond) == QPointF(210, 100)));
    const auto between = e.add_beside(Handle{MarkKind::edge_point, 1}, 30, {0, 0});
    BOOST_TEST((e.at(*between) == QPointF(150, 100)));
    const auto before = e.add_beside(Handle{MarkKind::edge_point, 0}, 30, {0, 0});
    BOOST_TEST(before->index == 0);
    BOOST_TEST((e.at(*before) == QPointF(30, 100)));
    MarksEditor empty = started();
    empty.add_beside(std::nullopt, 30, {200, 150});
    BOOST_TEST((empty.marks().edge_line.first() == QPointF(200, 150)));
}

BOOST_AUTO_TEST_CASE(a_third_ruler_point_replaces_the_first) {
    MarksEditor e = started();
    for (const double x : {10.0, 20.0, 30.0}) e.tap(MarkKind::scale_point, {x, 5});
    BOOST_TEST_REQUIRE(e.marks().scale_points.size() == 2);
    BOOST_TEST(e.marks().scale_points[0].x() == 20);
    e.set_scale_mm(50);
    BOOST_TEST(e.undo());
    BOOST_TEST(e.marks().scale_mm == 0);
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
