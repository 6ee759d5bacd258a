// What is entered on a visit's page while what was entered before it is being kept and read again.
#include <QCheckBox>
#include <QDateEdit>
#include <QPlainTextEdit>
#include <boost/test/unit_test.hpp>

#include "desk/session/session.h"
#include "desk/visit/visit_page.h"
#include "room.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;

namespace {

constexpr int longest_ms = 40, step_ms = 2;  // between two entries: as long as it takes to keep one and read it again

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
    for (int wait_ms = 0; wait_ms <= longest_ms; wait_ms += step_ms) {
        const QDate last(2026, 4, 1 + wait_ms / step_ms);
        day->setDate(QDate(2026, 3, 10));
        QTest::qWait(wait_ms);
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
    for (int wait_ms = 0; wait_ms <= longest_ms; wait_ms += step_ms) {
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

BOOST_AUTO_TEST_SUITE_END()
