// What is entered on a visit's page while what was entered before it is being kept and read again.
#include <QCheckBox>
#include <QDateEdit>
#include <QPlainTextEdit>
#include <QSqlQuery>
#include <boost/test/unit_test.hpp>

#include "book/sql.h"
#include "desk/session/session.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "room.h"
#include "work/keep_records.h"
#include "work/open_book.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;

namespace {

// Between two entries: within the time that it takes to keep one and read it again.
constexpr int after_ms[] = {0, 3, 6, 9, 12, 16, 20, 26, 34};

struct Entries : test::Desk {
    Entries() { go({Where::visit, book.client, book.second_visit}); }
    [[nodiscard]] Visit visit() const {
        return read<Visit>(book.path, [this](Book& b) { return work::visit_of(b, book.second_visit); });
    }
    // Whether it is so all the time until everything is kept.
    [[nodiscard]] bool stays(const std::function<bool()>& so) const {
        bool stayed = true;
        const bool over = test::wait_until([&] {
            stayed = stayed && so();
            return settled();
        });
        return stayed && over && so();
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(visit_entries, Entries)

BOOST_AUTO_TEST_CASE(a_day_that_was_just_chosen_is_not_overwritten_by_the_one_before_it) {
    auto* day = page<VisitPage>()->findChild<QDateEdit*>();
    QDate last(2026, 4, 1);
    for (const int wait_ms : after_ms) {
        last = last.addDays(1);
        day->setDate(QDate(2026, 3, 10));
        QTest::qWait(VisitPage::pause_ms + wait_ms);  // it is being kept
        day->setDate(last);
        BOOST_TEST(stays([&] { return day->date() == last; }));
        BOOST_TEST((visit().date == last));
    }
}

BOOST_AUTO_TEST_CASE(a_day_that_is_half_typed_stays_while_the_page_is_read_again) {
    auto* day = page<VisitPage>()->findChild<QDateEdit*>();
    day->setFocus();
    day->setSelectedSection(QDateTimeEdit::YearSection);
    QTest::keyClicks(day, "20");
    const QString half = day->text();
    window->session()->changed(book.client, book.second_visit);  // as a photo that came in does
    QTest::qWait(1);
    BOOST_TEST(test::wait_until([this] { return settled(); }));
    BOOST_TEST(day->text().toStdString() == half.toStdString());
    QTest::keyClicks(day, "25");
    BOOST_TEST(test::wait_until([this] { return settled(); }));
    BOOST_TEST((visit().date == QDate(2025, 5, 4)));
}

BOOST_AUTO_TEST_CASE(a_box_that_was_just_ticked_is_not_cleared_by_the_one_before_it) {
    QCheckBox *wet = page<VisitPage>()->wet(), *styled = nullptr;
    for (auto* box : page<VisitPage>()->findChildren<QCheckBox*>())
        if (box->text() == "styled") styled = box;
    BOOST_TEST_REQUIRE(styled != nullptr);
    for (const int wait_ms : after_ms) {
        wet->click();
        QTest::qWait(wait_ms);
        styled->click();
        const bool now = styled->isChecked();
        BOOST_TEST(stays([&] { return styled->isChecked() == now; }));
        BOOST_TEST(visit().hair.styled == now);
        BOOST_TEST(visit().hair.wet == wet->isChecked());
    }
}

BOOST_AUTO_TEST_CASE(a_note_and_a_day_that_are_still_being_entered_are_kept_with_the_page_that_is_left) {
    auto* note = page<VisitPage>()->findChild<QPlainTextEdit*>();
    page<VisitPage>()->findChild<QDateEdit*>()->setDate(QDate(2026, 4, 9));
    note->setPlainText("softer ends");
    go({Where::client, book.client});
    BOOST_TEST((visit().date == QDate(2026, 4, 9)));
    BOOST_TEST(visit().note.toStdString() == "softer ends");
}

BOOST_AUTO_TEST_CASE(what_is_entered_before_a_visit_is_read_goes_to_no_other_visit) {
    const auto first = [this] {
        return read<Visit>(book.path, [this](Book& b) { return work::visit_of(b, book.first_visit); });
    };
    window->book()->go({Where::visit, book.client, book.first_visit});
    page<VisitPage>()->wet()->click();  // the fields still show the second visit
    page<VisitPage>()->findChild<QPlainTextEdit*>()->setPlainText("too early");
    BOOST_TEST(stays([] { return true; }));
    for (const Visit& one : {first(), visit()}) {
        BOOST_TEST(!one.hair.wet);
        BOOST_TEST(one.note.isEmpty());
    }
    BOOST_TEST((page<VisitPage>()->findChild<QDateEdit*>()->date() == first().date));
    BOOST_TEST(!page<VisitPage>()->wet()->isChecked());
}

BOOST_AUTO_TEST_CASE(a_change_from_elsewhere_shows_while_a_note_is_typed_and_is_not_written_over) {
    auto* note = page<VisitPage>()->findChild<QPlainTextEdit*>();
    Visit newer = visit();
    newer.hair.wet = true;
    (void)read<Done>(book.path, [&](Book& b) { return work::change_visit(b, newer); });
    note->setPlainText("softer");
    window->session()->changed(book.client, book.second_visit);
    BOOST_TEST(test::wait_until([this] { return settled(); }));
    BOOST_TEST(page<VisitPage>()->wet()->isChecked());
    BOOST_TEST(visit().hair.wet);
    BOOST_TEST(visit().note.toStdString() == "softer");
}

BOOST_AUTO_TEST_CASE(what_the_book_refuses_stays_in_its_field_and_is_kept_with_the_next_entry) {
    auto* note = page<VisitPage>()->findChild<QPlainTextEdit*>();
    const auto book_says = [this](const char* words) {
        const auto opened = work::open_book(book.path);
        BOOST_REQUIRE(opened.ok());
        BOOST_REQUIRE(QSqlQuery((*opened)->connection().database).exec(QString::fromUtf8(words)));
    };
    book_says("CREATE TRIGGER full BEFORE UPDATE ON visit BEGIN SELECT RAISE(ABORT, 'no room'); END");
    note->setPlainText("softer");
    BOOST_TEST(test::wait_until([this] { return settled() && window->book()->notice()->isVisible(); }));
    window->session()->changed(book.client, book.second_visit);
    BOOST_TEST(stays([&] { return note->toPlainText() == "softer"; }));
    BOOST_TEST(visit().note.isEmpty());
    book_says("DROP TRIGGER full");
    page<VisitPage>()->wet()->click();
    BOOST_TEST(stays([&] { return note->toPlainText() == "softer"; }));
    BOOST_TEST(visit().note.toStdString() == "softer");
    BOOST_TEST(visit().hair.wet);
}

BOOST_AUTO_TEST_SUITE_END()
