// The steps of a visit, and that each leads where it says.
#include <QLabel>
#include <QPushButton>
#include <boost/test/unit_test.hpp>

#include "desk/session/session.h"
#include "desk/visit/steps_panel.h"
#include "desk/visit/visit_page.h"
#include "desk/window/book_view.h"
#include "room.h"
#include "work/keep_care.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using What = VisitStep::What;
using State = VisitStep::State;

namespace {

const QDate day(2026, 5, 4);

work::PhotoRow shot(View view, int number, bool marked, const QTime& taken = {}) {
    work::PhotoRow row;
    row.photo.id = number + 10 * static_cast<int>(view);
    row.photo.view = view;
    row.photo.shot = number;
    row.has_marks = marked;
    if (taken.isValid()) row.photo.taken = QDateTime(day, taken);
    if (marked) {
        row.readings.append(ReadingRecord());
        row.readings.last().name = "edge_coverage";
    }
    return row;
}

const VisitStep& step(const QVector<VisitStep>& steps, What what) {
    for (const VisitStep& one : steps)
        if (one.what == what) return one;
    BOOST_FAIL("no such step");
    return steps.first();
}

VisitFacts facts() {
    VisitFacts f;
    f.day = day;
    f.followed = {View::nape};
    return f;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(visit_steps)

BOOST_AUTO_TEST_CASE(a_visit_that_was_just_opened_has_everything_before_it) {
    const auto steps = steps_of(facts());
    BOOST_TEST_REQUIRE(steps.size() == 8);
    for (const What what : {What::told, What::scalp, What::photos, What::grades, What::readings})
        BOOST_TEST((step(steps, what).state == State::open));
    for (const What what : {What::services, What::after, What::dates})
        BOOST_TEST((step(steps, what).state == State::optional));
    BOOST_TEST_REQUIRE(step(steps, What::photos).missing.size() == 1);
    BOOST_TEST(step(steps, What::readings).photo == 0);
}

BOOST_AUTO_TEST_CASE(photographs_are_done_with_two_shots_of_every_view_and_readings_with_their_lines) {
    VisitFacts f = facts();
    f.photos = {shot(View::nape, 1, false)};
    auto steps = steps_of(f);
    BOOST_TEST((step(steps, What::photos).state == State::begun));
    BOOST_TEST((step(steps, What::readings).state == State::open));
    BOOST_TEST(step(steps, What::readings).photo == f.photos[0].photo.id);
    f.photos.append(shot(View::nape, 2, true));
    steps = steps_of(f);
    BOOST_TEST((step(steps, What::photos).state == State::done));
    BOOST_TEST((step(steps, What::readings).state == State::begun));
    BOOST_TEST(step(steps, What::readings).photo == f.photos[0].photo.id);  // the one that waits
    f.photos[0] = shot(View::nape, 1, true);
    BOOST_TEST((step(steps_of(f), What::readings).state == State::done));
}

BOOST_AUTO_TEST_CASE(the_scalp_has_a_step_of_its_own_and_no_part_in_the_grades) {
    VisitFacts f = facts();
    f.grades = {{1, 1, "whole head", "scalp", 4, 1}};
    BOOST_TEST((step(steps_of(f), What::scalp).state == State::done));
    BOOST_TEST((step(steps_of(f), What::grades).state == State::open));
    f.grades.append({2, 1, "nape", "edges", 2, 1});
    BOOST_TEST((step(steps_of(f), What::grades).state == State::done));
}

BOOST_AUTO_TEST_CASE(after_a_service_the_views_are_wanted_again_and_a_later_sitting_is_them) {
    VisitFacts f = facts();
    f.photos = {shot(View::nape, 1, true, QTime(10, 0)), shot(View::nape, 2, true, QTime(10, 4))};
    f.services = {Service()};
    BOOST_TEST((step(steps_of(f), What::after).state == State::open));
    f.photos.append(shot(View::nape, 3, true, QTime(12, 30)));
    BOOST_TEST((step(steps_of(f), What::after).state == State::done));
    BOOST_TEST(step(steps_of(f), What::after).words.contains("1 photo "));
    for (work::PhotoRow& row : f.photos) row.photo.taken.reset();
    BOOST_TEST((step(steps_of(f), What::after).state == State::open));
    BOOST_TEST(step(steps_of(f), What::after).words.contains("not known"));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_FIXTURE_TEST_SUITE(visit_round, test::Desk)

BOOST_AUTO_TEST_CASE(each_step_is_one_press_away_and_the_visit_is_gone_on_with_where_it_was_left) {
    const Place visit{Where::visit, book.client, book.second_visit};
    const auto press = [this](What what) {
        QPushButton* button = page<VisitPage>()->steps()->press_of(what);
        BOOST_REQUIRE(button != nullptr);
        QTest::mouseClick(button, Qt::LeftButton);
        BOOST_REQUIRE(test::wait_until([this] { return settled(); }));
    };
    const QVector<QPair<What, Where>> ways{{What::told, Where::profile},
                                           {What::scalp, Where::grades},
                                           {What::grades, Where::grades},
                                           {What::dates, Where::plan}};
    for (const auto& [what, where] : ways) {
        go(visit);
        press(what);
        BOOST_TEST((window->book()->place().where == where));
        BOOST_TEST(window->book()->place().client == book.client);
    }
    // A grade of the scalp given on the way is there when she comes back.
    (void)read<Grade>(book.path, [this](Book& b) {
        return work::set_grade(b, {0, book.second_visit, "whole head", "scalp", 4, 1});
    });
    go(visit);
    QStringList words;
    for (const QLabel* label : page<VisitPage>()->steps()->findChildren<QLabel*>()) words.append(label->text());
    BOOST_TEST(words.contains("Scalp check: done"));
    BOOST_TEST(words.contains("Consultation: still to do"));
    // A photo brings the step of readings to it.
    const Id photo = book.add_photo(View::left_temple);
    go({Where::client, book.client});
    go(visit);
    press(What::readings);
    BOOST_TEST(window->book()->place().photo == photo);
}

BOOST_AUTO_TEST_SUITE_END()
