// Marks of an earlier photo, proposed on a new one.
#include <QFile>
#include <QPushButton>
#include <boost/test/unit_test.hpp>

#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "domain/marks_json.h"
#include "room.h"
#include "work/import_photos.h"
#include "work/set_marks.h"

using namespace kempt;
using namespace kempt::desk;
using test::wait_until;

namespace {

const QString samples = QStringLiteral("sample-images/imani/");  // tests run in the root of the sources

QPushButton* offer(QWidget* page) {
    for (QPushButton* b : page->findChildren<QPushButton*>())
        if (b->isVisibleTo(page) && (b->text().startsWith("Bring the marks") || b->text().startsWith("Take over")))
            return b;
    return nullptr;
}

// The left temple of two visits, marked at the first.
struct TwoVisits : test::Desk {
    Id sample(Id visit, const QString& name, bool marked) {
        const auto open = work::open_book(book.path);
        BOOST_REQUIRE(open.ok());
        work::ImportOptions options;
        options.visit = visit;
        options.view = View::left_temple;
        options.paths = {samples + name + ".jpg"};
        const auto report = work::import_photos(**open, options);
        BOOST_REQUIRE(report.ok());
        BOOST_REQUIRE(report->imported == 1);
        const Id id = report->files.front().photo;
        if (!marked) return id;
        QFile file(samples + name + ".marks.json");
        BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
        const auto marks = marks_from_json(file.readAll());
        BOOST_REQUIRE(marks.ok());
        BOOST_REQUIRE(work::set_marks(**open, id, *marks).ok());
        return id;
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(carrying, TwoVisits)

BOOST_AUTO_TEST_CASE(the_marks_of_the_last_visit_are_proposed_in_one_step_with_how_far_off_they_may_be) {
    sample(book.first_visit, "01-left-temple-1", true);
    const Id later = sample(book.second_visit, "02-left-temple-1", false);
    go({Where::photo, book.client, book.second_visit, later, View::left_temple});
    auto* photo = page<PhotoPage>();
    QPushButton* bring = offer(photo);
    BOOST_TEST_REQUIRE(bring != nullptr);
    BOOST_TEST(bring->text().toStdString() == "Bring the marks from the last visit");
    // Anchors set before do not take the offer away.
    photo->canvas()->set_tool(Tool::anchor);
    QTest::keyClick(photo->canvas(), Qt::Key_A);
    BOOST_TEST(offer(photo) != nullptr);
    photo->canvas()->undo();
    QTest::mouseClick(bring, Qt::LeftButton);
    BOOST_TEST(wait_until([&] { return !photo->canvas()->marks().edge_line.isEmpty(); }));
    BOOST_TEST(photo->canvas()->marks().hair_side.has_value());
    BOOST_TEST(window->book()->notice()->sentence().contains(" mm"),
               window->book()->notice()->sentence().toStdString());
    BOOST_TEST(offer(photo) == nullptr);
    photo->canvas()->undo();
    BOOST_TEST(photo->canvas()->marks().edge_line.isEmpty());
    BOOST_TEST(photo->canvas()->marks().hair_taps.isEmpty());
    BOOST_TEST(offer(photo) != nullptr);
}

BOOST_AUTO_TEST_CASE(where_the_marks_cannot_be_carried_the_reason_is_told_and_nothing_is_drawn) {
    const auto open = work::open_book(book.path);
    BOOST_REQUIRE(open.ok());
    BOOST_REQUIRE(work::set_marks(**open, book.photo, test::some_marks()).ok());
    const Id later = book.add_photo(View::left_temple);  // neither photo shows a card
    go({Where::photo, book.client, book.second_visit, later, View::left_temple});
    auto* photo = page<PhotoPage>();
    QPushButton* bring = offer(photo);
    BOOST_TEST_REQUIRE(bring != nullptr);
    QTest::mouseClick(bring, Qt::LeftButton);
    BOOST_TEST(wait_until([&] { return window->book()->notice()->isVisible(); }));
    BOOST_TEST(photo->canvas()->marks().edge_line.isEmpty());
    BOOST_TEST(wait_until([&] { return bring->isEnabled(); }));
}

BOOST_AUTO_TEST_CASE(without_earlier_marks_of_the_view_nothing_is_offered) {
    const Id later = book.add_photo(View::nape);
    go({Where::photo, book.client, book.second_visit, later, View::nape});
    BOOST_TEST(offer(page<PhotoPage>()) == nullptr);
}

BOOST_AUTO_TEST_SUITE_END()
