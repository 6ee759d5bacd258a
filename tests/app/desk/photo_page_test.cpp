#include <boost/test/unit_test.hpp>

#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/photo/readings_panel.h"
#include "desk/session/session.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "room.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

void click(PhotoCanvas* canvas, QPointF photo) {
    QTest::mouseClick(canvas, Qt::LeftButton, {}, canvas->map().window_from_photo(photo).toPoint());
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(photo_page, test::Desk)

BOOST_AUTO_TEST_CASE(drawing_a_line_shows_readings_and_keeps_marks_and_readings_by_itself) {
    go({Where::photo, book.client, book.first_visit, book.photo, View::left_temple});
    auto* photo = page<PhotoPage>();
    BOOST_TEST_REQUIRE(photo != nullptr);
    for (const double x : {60.0, 160.0, 260.0}) click(photo->canvas(), {x, 105});
    BOOST_TEST(wait_until([&] { return photo->readings()->shown("edge_coverage").startsWith("30"); }));
    BOOST_TEST(photo->readings()->shown("edge_strands").isEmpty());  // refused: no figure
    click(photo->canvas(), {330, 105});
    BOOST_TEST(wait_until([&] { return photo->readings()->shown("edge_coverage").startsWith("40"); }));
    BOOST_TEST(wait_until([this] { return settled(); }));
    const auto kept = book.marks_in_book(book.photo);
    BOOST_TEST_REQUIRE(kept.has_value());
    BOOST_TEST(kept->edge_line.size() == 4);
    const auto readings =
        read<QVector<ReadingRecord>>(book.path, [this](Book& b) { return work::readings_of(b, book.photo); });
    BOOST_TEST(!readings.isEmpty());
}

BOOST_AUTO_TEST_CASE(leaving_the_page_at_once_keeps_the_last_change_too) {
    go({Where::photo, book.client, book.first_visit, book.photo, View::left_temple});
    auto* canvas = page<PhotoPage>()->canvas();
    click(canvas, {60, 105});
    click(canvas, {300, 105});
    go({Where::client, book.client});
    BOOST_TEST(wait_until([this] { return settled(); }));
    BOOST_TEST_REQUIRE(book.marks_in_book(book.photo).has_value());
    BOOST_TEST(book.marks_in_book(book.photo)->edge_line.size() == 2);
}

BOOST_AUTO_TEST_CASE(closing_the_window_at_once_keeps_the_last_change_too) {
    go({Where::photo, book.client, book.first_visit, book.photo, View::left_temple});
    auto* canvas = page<PhotoPage>()->canvas();
    for (const double x : {60.0, 160.0, 260.0}) click(canvas, {x, 105});
    window->close();
    BOOST_TEST(wait_until([this] {
        return window->session()->records().unfinished() == 0 && book.marks_in_book(book.photo).has_value();
    }));
    BOOST_TEST(book.marks_in_book(book.photo)->edge_line.size() == 3);
}

BOOST_AUTO_TEST_CASE(one_point_is_no_line_and_is_said_not_hidden) {
    go({Where::photo, book.client, book.first_visit, book.photo, View::left_temple});
    click(page<PhotoPage>()->canvas(), {60, 105});
    window->book()->go({Where::client, book.client});
    BOOST_TEST(wait_until([this] { return settled(); }));
    BOOST_TEST(!book.marks_in_book(book.photo).has_value());
    BOOST_TEST(window->book()->place().client == book.client);
    BOOST_TEST(window->book()->notice()->isVisible());
    BOOST_TEST(window->book()->notice()->sentence().contains("not kept"));
}

BOOST_AUTO_TEST_CASE(the_window_goes_on_while_she_draws_on_a_slow_machine) {
    go({Where::photo, book.client, book.first_visit, book.photo, View::left_temple});
    auto* photo = page<PhotoPage>();
    analysis->slow_ms = 400;
    int ticks = 0;
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, &timer, [&] { ++ticks; });
    timer.start(5);
    for (const double x : {60.0, 160.0, 260.0}) click(photo->canvas(), {x, 105});
    BOOST_TEST(wait_until([&] { return photo->meter()->measuring(); }));
    const int before = ticks;
    BOOST_TEST(wait_until([&] { return !photo->readings()->shown("edge_coverage").isEmpty(); }));
    BOOST_TEST(ticks - before >= 10);
    analysis->slow_ms = 0;
}

BOOST_AUTO_TEST_SUITE_END()
