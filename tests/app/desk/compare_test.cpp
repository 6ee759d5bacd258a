#include <QComboBox>
#include <QFile>
#include <QPushButton>
#include <QScrollArea>
#include <boost/test/unit_test.hpp>

#include "desk/compare/compare_page.h"
#include "desk/compare/eye_bands.h"
#include "desk/compare/eyes_dialog.h"
#include "desk/compare/one_over_other.h"
#include "desk/compare/side_by_side.h"
#include "desk/compare/strip_filler.h"
#include "desk/compare/strip_panel.h"
#include "desk/compare/time_strip.h"
#include "desk/look/look.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "room.h"
#include "work/face_keep.h"
#include "work/import_photos.h"
#include "work/keep_records.h"
#include "work/set_marks.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

PairOnShow a_pair() {
    PairOnShow pair;
    pair.before = QImage(400, 300, QImage::Format_RGB888);
    pair.before.fill(QColor(150, 110, 90));
    pair.after = pair.before;
    pair.before_date = QDate(2026, 3, 2);
    pair.after_date = QDate(2026, 5, 4);
    pair.px_per_mm = 10;
    return pair;
}

// Both visits of the seeded book have a photo of the left temple with a scale from two points.
struct Compared : test::Desk {
    Id later = 0;
    Compared() {
        Marks marks = test::some_marks(5);
        marks.scale_points = {{20, 280}, {380, 280}};
        marks.scale_mm = 18;  // 20 px a mm
        later = book.add_photo(View::left_temple, marks);
        (void)read<Marks>(book.path, [&](Book& b) { return work::set_marks(b, book.photo, marks); });
        go({Where::compare, book.client, 0, 0, View::left_temple});
    }
    ComparePage* compare() const { return page<ComparePage>(); }
    void settle() {
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
        QTest::qWait(20);
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
    }
    void agree(bool yes) {
        (void)read<Done>(book.path, [&](Book& b) -> Result<Done> {
            auto client = work::client_of(b, book.client);
            client->photo_consent = yes;
            return work::change_client(b, client.value());
        });
    }
};

}  // namespace

BOOST_AUTO_TEST_SUITE(side_by_side)

BOOST_AUTO_TEST_CASE(keys_go_nearer_and_move_both_and_never_leave_the_picture) {
    SideBySide both;
    both.resize(800, 400);
    both.set_pair(a_pair());
    both.show();
    QTest::keyClick(&both, Qt::Key_Plus);
    QTest::keyClick(&both, Qt::Key_Plus);
    BOOST_TEST(both.zoom() > 1.5);
    const QPointF middle = both.middle();
    QTest::keyClick(&both, Qt::Key_Right);
    BOOST_TEST(both.middle().x() > middle.x());
    for (int i = 0; i < 60; ++i) QTest::keyClick(&both, Qt::Key_Right, Qt::ShiftModifier);
    BOOST_TEST(both.middle().x() < 1);  // the pane stays full
    QTest::keyClick(&both, Qt::Key_0);
    BOOST_TEST(both.zoom() == 1);
    for (int i = 0; i < 60; ++i) QTest::keyClick(&both, Qt::Key_Plus);
    const double nearest = both.zoom();
    QTest::keyClick(&both, Qt::Key_Plus);
    BOOST_TEST(both.zoom() == nearest);
    QTest::keyClick(&both, Qt::Key_Minus);
    BOOST_TEST(both.zoom() < nearest);
}

BOOST_AUTO_TEST_CASE(what_lies_under_the_pointer_stays_there) {
    SideBySide both;
    both.resize(804, 300);
    both.set_pair(a_pair());
    both.zoom_by(2, {100, 150});  // a quarter from the left of the left picture
    // whole: 400 px wide from 0; the place at 100 px is 0.25 of the picture; at zoom 2 it is 0.25 * 800 from its left
    // end
    const double left = 200 - both.middle().x() * 800;
    BOOST_TEST(left + 0.25 * 800 == 100, boost::test_tools::tolerance(0.02));
}

BOOST_AUTO_TEST_CASE(turns_can_be_stopped_and_stepped) {
    OneOverOther over;
    over.resize(400, 300);
    over.set_pair(a_pair());
    over.set_show(OneOverOther::Show::turns);
    over.show();
    BOOST_TEST(wait_until([&] { return over.running(); }));
    QTest::keyClick(&over, Qt::Key_Space);
    BOOST_TEST(!over.running());
    QTest::keyClick(&over, Qt::Key_Right);
    BOOST_TEST(over.later_shown());
    QTest::keyClick(&over, Qt::Key_Left);
    BOOST_TEST(!over.later_shown());
    QTest::keyClick(&over, Qt::Key_Space);
    BOOST_TEST(over.running());
    over.hide();
    BOOST_TEST(!over.running());
}

BOOST_AUTO_TEST_CASE(the_edges_way_is_told_with_its_limit) {
    PairOnShow pair = a_pair();
    BOOST_TEST(OneOverOther::edge_words(pair).contains("cannot be told"));
    pair.shift = work::EdgeShift{{0, 1}, {1.2, 2.0}, 1.6, 2.0, 1.2};
    pair.laid_to_mm = 0.4;
    BOOST_TEST(OneOverOther::edge_words(pair).contains("1.6 mm further forward"));
    pair.shift->mean_mm = 0.3;
    BOOST_TEST(OneOverOther::edge_words(pair).contains("where it stood"));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(strip)

BOOST_AUTO_TEST_CASE(what_is_told_beneath_a_photo_stands_whole) {
    TimeStrip strip;
    strip.resize(1000, 600);
    QVector<TimeStrip::Cell> cells(3);
    strip.set_cells(cells, {360, 200});
    strip.show();
    const int lines = strip.told_lines();
    cells[0].told = QString("Laid over each other by the skin beside the edge line. ").repeated(4);
    strip.set_cell(0, cells[0]);
    BOOST_TEST(strip.told_lines() > lines);
    cells[0].told.clear();
    strip.set_cell(0, cells[0]);
    BOOST_TEST(strip.told_lines() == lines);
}

BOOST_AUTO_TEST_CASE(sixty_visits_are_walked_by_keys_and_scrolled_into_sight) {
    TimeStrip strip;
    strip.resize(1000, 600);
    QVector<TimeStrip::Cell> cells(60);
    for (int i = 0; i < 60; ++i) cells[i].date = QString::number(i);
    strip.set_cells(cells, {360, 200});
    strip.show();
    BOOST_TEST(strip.current() == 59);  // the newest
    QTest::keyClick(&strip, Qt::Key_Home);
    BOOST_TEST(strip.current() == 0);
    BOOST_TEST(strip.accessibleDescription().contains("1 of 60"));
    QTest::keyClick(&strip, Qt::Key_Right);
    QTest::keyClick(&strip, Qt::Key_Down);
    BOOST_TEST(strip.current() > 2);
    int opened = -1;
    QObject::connect(&strip, &TimeStrip::opened, [&](int at) { opened = at; });
    QTest::keyClick(&strip, Qt::Key_Return);
    BOOST_TEST(opened == strip.current());
    QTest::keyClick(&strip, Qt::Key_End);
    BOOST_TEST(strip.current() == 59);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_FIXTURE_TEST_SUITE(compare_page, Compared)

BOOST_AUTO_TEST_CASE(all_visits_are_laid_in_jobs_and_kept_for_the_next_time) {
    compare()->set_mode(ComparePage::Mode::all_visits);
    settle();
    StripPanel* panel = compare()->strip();
    BOOST_REQUIRE_EQUAL(panel->strip()->cells().size(), 2);
    for (const TimeStrip::Cell& cell : panel->strip()->cells()) {
        BOOST_TEST(!cell.told.isEmpty());
        BOOST_TEST(!cell.picture.isNull());
        BOOST_TEST((cell.state != TimeStrip::Cell::State::waiting));
    }
    // The scale comes from two points: no skin can be laid, and the reason stands beneath.
    BOOST_TEST(panel->strip()->cells()[0].told.contains("gauge card"));
    const int made = panel->filler()->made();
    BOOST_TEST(made == 2);
    compare()->set_mode(ComparePage::Mode::parting);
    settle();
    compare()->set_mode(ComparePage::Mode::all_visits);
    settle();
    BOOST_TEST(panel->filler()->made() == made);
    // Enter compares that visit with the one that leads.
    panel->strip()->set_current(0);
    QTest::keyClick(panel->strip(), Qt::Key_Return);
    settle();
    BOOST_TEST((compare()->mode() == ComparePage::Mode::parting));
}

BOOST_AUTO_TEST_CASE(with_words_twice_as_large_the_picture_keeps_half_of_the_window_and_no_button_is_cut) {
    agree(true);
    LookChoice large;
    large.text_scale = 2.0;
    look().apply(large);
    window->resize(1280, 800);
    BOOST_REQUIRE(wait_until([this] { return settled(); }));
    go({Where::client, book.client});
    go({Where::compare, book.client, 0, 0, View::left_temple});
    settle();
    const auto cut = [this](QWidget* widget) {
        compare()->area()->ensureWidgetVisible(widget);
        QCoreApplication::processEvents();
        return widget->visibleRegion().boundingRect() != widget->rect();
    };
    for (const ComparePage::Mode mode : {ComparePage::Mode::beside, ComparePage::Mode::all_visits}) {
        compare()->set_mode(mode);
        settle();
        QWidget* shown = mode == ComparePage::Mode::beside ? static_cast<QWidget*>(compare()->beside())
                                                           : static_cast<QWidget*>(compare()->strip());
        BOOST_TEST(2 * shown->height() >= window->height());
        BOOST_TEST(!cut(shown));
        if (mode == ComparePage::Mode::beside) BOOST_TEST(!cut(compare()->save_button()));
    }
    look().apply({});
}

BOOST_AUTO_TEST_CASE(leaving_the_page_stops_the_strip) {
    compare()->set_mode(ComparePage::Mode::all_visits);
    StripFiller* filler = compare()->strip()->filler();
    go({Where::client, book.client});
    BOOST_TEST(filler->stopped());
    BOOST_TEST(filler->settled());
}

BOOST_AUTO_TEST_CASE(photos_of_lengths_stand_side_by_side_and_say_why_not_over_each_other) {
    for (const Id visit : {book.first_visit, book.second_visit}) {
        (void)read<work::ImportReport>(book.path, [&](Book& b) {
            work::ImportOptions options;
            options.visit = visit;
            options.view = View::lengths;
            options.paths = {book.picture_file(static_cast<int>(60 + visit))};
            return work::import_photos(b, options);
        });
    }
    go({Where::client, book.client});
    go({Where::compare, book.client, 0, 0, View::lengths});
    BOOST_TEST((compare()->mode() == ComparePage::Mode::beside));
    BOOST_TEST(compare()->beside()->isVisible());
    compare()->set_mode(ComparePage::Mode::edge);
    settle();
    BOOST_TEST((compare()->mode() == ComparePage::Mode::beside));
}

BOOST_AUTO_TEST_CASE(eyes_are_hidden_by_the_keyboard_and_remembered) {
    EyesDialog* dialog = compare()->open_eyes();
    BOOST_REQUIRE(dialog != nullptr);
    BOOST_REQUIRE(wait_until([&] { return dialog->settled() && settled(); }));
    EyeBands* canvas = dialog->canvas();
    BOOST_TEST(canvas->bands().isEmpty());  // no face in a flat picture
    canvas->setFocus();
    QTest::keyClick(canvas, Qt::Key_Insert);
    BOOST_REQUIRE_EQUAL(canvas->bands().size(), 1);
    QTest::keyClick(canvas, Qt::Key_Delete);
    BOOST_TEST(canvas->bands().isEmpty());
    QTest::keyClick(canvas, Qt::Key_A);
    BOOST_REQUIRE_EQUAL(canvas->bands().size(), 1);
    const work::EyeBand first = canvas->bands().front();
    QTest::keyClick(canvas, Qt::Key_Right);
    QTest::keyClick(canvas, Qt::Key_Plus);
    QTest::keyClick(canvas, Qt::Key_BracketRight);
    const work::EyeBand moved = canvas->bands().front();
    BOOST_TEST(moved.middle.x() > first.middle.x());
    BOOST_TEST(moved.length > first.length);
    BOOST_TEST(moved.turn_deg > 0);
    for (QPushButton* b : dialog->findChildren<QPushButton*>())
        if (b->property("kind") == "primary") b->click();
    BOOST_REQUIRE(wait_until([this] {
        return read<std::optional<QVector<work::EyeBand>>>(book.path,
                                                           [this](Book& b) { return work::kept_bands(b, book.photo); })
            .has_value();
    }));
    settle();
    dialog->reject();
    settle();
    const auto kept = read<std::optional<QVector<work::EyeBand>>>(
        book.path, [this](Book& b) { return work::kept_bands(b, book.photo); });
    BOOST_REQUIRE_EQUAL(kept->size(), 1);
    BOOST_TEST(std::abs(kept->front().middle.x() - moved.middle.x()) < 1e-6);
}

BOOST_AUTO_TEST_CASE(nothing_leaves_before_she_has_looked_when_the_face_is_to_be_hidden) {
    agree(true);
    (void)read<Done>(book.path, [&](Book& b) { return work::keep_face_wish(b, book.client, work::FaceWish::hidden); });
    go({Where::client, book.client});
    go({Where::compare, book.client, 0, 0, View::left_temple});
    const QString path = book.folder.filePath("pair.png");
    compare()->save_to(path);
    BOOST_TEST(wait_until([this] { return window->book()->notice()->isVisible() && settled(); }));
    BOOST_TEST(!QFile::exists(path));
    BOOST_TEST(window->book()->notice()->sentence().contains("looked at"));
    for (const Id photo : {book.photo, later})
        (void)read<Done>(book.path, [&](Book& b) { return work::keep_bands(b, photo, {}); });
    compare()->save_to(path);
    BOOST_TEST(wait_until([&] { return QFile::exists(path) && settled(); }));
}

BOOST_AUTO_TEST_SUITE_END()
