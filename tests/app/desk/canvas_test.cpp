#include <QSignalSpy>
#include <QWheelEvent>
#include <boost/test/unit_test.hpp>

#include "desk/photo/mark_parts.h"
#include "desk/photo/photo_canvas.h"
#include "room.h"

using namespace kempt;
using namespace kempt::desk;

namespace {

// A canvas of 800 x 600 on a photo of 400 x 300: two window pixels for a photo pixel.
struct Canvas {
    Canvas() {
        QImage image(400, 300, QImage::Format_RGB32);
        image.fill(Qt::gray);
        canvas.resize(800, 600);
        canvas.show();
        canvas.set_picture(picture_from(image));
        canvas.set_marks({});
        canvas.activateWindow();
        canvas.setFocus();
    }
    PhotoCanvas canvas;

    [[nodiscard]] QPoint on(QPointF photo) const { return canvas.map().window_from_photo(photo).toPoint(); }
    void click(QPointF photo) { QTest::mouseClick(&canvas, Qt::LeftButton, {}, on(photo)); }
    void drag(QPointF from, QPointF to) {
        QTest::mousePress(&canvas, Qt::LeftButton, {}, on(from));
        for (int i = 1; i <= 4; ++i) move(from + (to - from) * i / 4.0);
        QTest::mouseRelease(&canvas, Qt::LeftButton, {}, on(to));
    }
    // With the button held, as a hand does it.
    void move(QPointF to) {
        const QPoint at = on(to);
        QMouseEvent event(QEvent::MouseMove, at, canvas.mapToGlobal(at), Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(&canvas, &event);
    }
    void key(Qt::Key k, Qt::KeyboardModifiers with = {}) { QTest::keyClick(&canvas, k, with); }
    [[nodiscard]] const QVector<QPointF>& line() const { return canvas.marks().edge_line; }
};

bool near(QPointF a, QPointF b, double within = 0.75) {
    return QLineF(a, b).length() <= within;
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(canvas, Canvas)

BOOST_AUTO_TEST_CASE(clicks_draw_the_line_and_a_click_on_it_adds_a_point_between) {
    for (const double x : {50.0, 150.0, 250.0}) click({x, 100});
    BOOST_TEST_REQUIRE(line().size() == 3);
    click({100, 101});
    BOOST_TEST_REQUIRE(line().size() == 4);
    BOOST_TEST(near(line()[1], {100, 101}));
    BOOST_TEST(canvas.picked()->index == 1);
}

BOOST_AUTO_TEST_CASE(dragging_a_point_moves_it_tells_while_it_moves_and_is_one_undo) {
    canvas.set_marks(test::some_marks());
    QSignalSpy told(&canvas, &PhotoCanvas::marks_changed);
    drag({120, 100}, {130, 70});
    BOOST_TEST(near(line()[1], {130, 70}));
    BOOST_TEST_REQUIRE(told.size() >= 2);
    BOOST_TEST(told.first().first().toBool());  // still in the hand
    BOOST_TEST(!told.last().first().toBool());  // let go
    key(Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(near(line()[1], {120, 100}));
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    BOOST_TEST(near(line()[1], {130, 70}));
}

BOOST_AUTO_TEST_CASE(dragging_beside_the_marks_pans_and_draws_nothing) {
    canvas.set_marks(test::some_marks());
    canvas.zoom_by(4);
    const QRectF before = canvas.map().shown_photo();
    drag(before.center() + QPointF(0, 20), before.center() + QPointF(-20, 0));
    BOOST_TEST(line().size() == 4);
    BOOST_TEST(canvas.map().shown_photo().left() > before.left());
}

BOOST_AUTO_TEST_CASE(a_double_click_is_not_two_points) {
    QTest::mouseClick(&canvas, Qt::LeftButton, {}, on({50, 50}));
    QTest::mouseDClick(&canvas, Qt::LeftButton, {}, on({200, 100}));
    BOOST_TEST(line().size() <= 2);
}

BOOST_AUTO_TEST_CASE(keys_pick_nudge_add_and_remove) {
    canvas.set_marks(test::some_marks(3));
    key(Qt::Key_N);
    key(Qt::Key_N);
    BOOST_TEST(canvas.picked()->index == 1);
    key(Qt::Key_Up);
    key(Qt::Key_Up);
    key(Qt::Key_Right, Qt::ShiftModifier);
    // Two window pixels for a photo pixel: up by 2, right by 10 on the screen.
    BOOST_TEST(near(line()[1], {125, 99}, 1e-6));
    key(Qt::Key_Z, Qt::ControlModifier);
    BOOST_TEST(near(line()[1], {120, 100}, 1e-6));  // nudges in a row are one step
    key(Qt::Key_A);
    BOOST_TEST(line().size() == 4);
    key(Qt::Key_Delete);
    BOOST_TEST(line().size() == 3);
    key(Qt::Key_Escape);
    BOOST_TEST(!canvas.picked().has_value());
    key(Qt::Key_P);
    BOOST_TEST((canvas.picked()->kind == MarkKind::hair_side));
}

BOOST_AUTO_TEST_CASE(the_whole_line_can_be_drawn_without_a_mouse) {
    for (int i = 0; i < 3; ++i) key(Qt::Key_A);
    BOOST_TEST(line().size() == 3);
    BOOST_TEST(ready_to_measure(canvas.marks()));
    const QPointF side = *canvas.marks().hair_side;
    key(Qt::Key_F);
    BOOST_TEST((*canvas.marks().hair_side != side));
}

BOOST_AUTO_TEST_CASE(the_wheel_zooms_where_the_pointer_is) {
    const QPointF at(200, 150), held = canvas.map().photo_from_window(at);
    QWheelEvent wheel(at, canvas.mapToGlobal(at), {}, {0, 360}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&canvas, &wheel);
    BOOST_TEST(canvas.map().zoom() > canvas.map().fit_zoom());
    BOOST_TEST(near(canvas.map().photo_from_window(at), held, 1e-6));
    key(Qt::Key_0);
    BOOST_TEST(canvas.map().fitted());
}

BOOST_AUTO_TEST_CASE(two_fingers_zoom_and_draw_nothing) {
    QPointingDevice* screen = QTest::createTouchDevice();
    const auto fingers = [&](int apart, bool first) {
        const QPoint one(400 - apart, 300), two(400 + apart, 300);
        if (first)
            QTest::touchEvent(&canvas, screen).press(0, one, &canvas).press(1, two, &canvas);
        else
            QTest::touchEvent(&canvas, screen).move(0, one, &canvas).move(1, two, &canvas);
    };
    fingers(60, true);
    for (int apart = 80; apart <= 200; apart += 20) fingers(apart, false);
    QTest::touchEvent(&canvas, screen).release(0, QPoint(200, 300), &canvas).release(1, QPoint(600, 300), &canvas);
    BOOST_TEST(canvas.map().zoom() > 1.5 * canvas.map().fit_zoom());
    BOOST_TEST(line().isEmpty());
}

BOOST_AUTO_TEST_CASE(taps_and_ruler_points_go_where_their_tool_says) {
    canvas.set_tool(Tool::hair_tap);
    click({100, 200});
    canvas.set_tool(Tool::scalp_tap);
    click({100, 50});
    canvas.set_tool(Tool::ruler);
    click({20, 20});
    click({120, 20});
    BOOST_TEST(line().isEmpty());
    BOOST_TEST(near(canvas.marks().hair_taps[0], {100, 200}));
    BOOST_TEST(near(canvas.marks().scalp_taps[0], {100, 50}));
    BOOST_TEST(canvas.marks().scale_points.size() == 2);
}

BOOST_AUTO_TEST_CASE(what_is_picked_is_told_in_words) {
    canvas.set_marks(test::some_marks(3));
    key(Qt::Key_N);
    BOOST_TEST(canvas.accessibleDescription().contains("3 points"));
    BOOST_TEST(canvas.accessibleDescription().contains("Point 1 is picked"));
}

BOOST_AUTO_TEST_SUITE_END()
