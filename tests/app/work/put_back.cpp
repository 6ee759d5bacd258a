// Undo of single entries: exactly what was there before, and never over something newer.
#include "work/put_back.h"

#include "app/work/temporary_book.h"
#include "work/keep_care.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

struct Entries : TemporaryBook {
    QDate today = Clock().today();
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(put_back, Entries)

BOOST_AUTO_TEST_CASE(a_visit_goes_back_and_forth_and_not_over_something_newer) {
    const Visit before = visit;
    Visit now = before;
    now.hair.wet = true;
    now.note = "came wet";
    required(work::change_visit(*book, now));
    required(work::put_back(*book, now, before));
    BOOST_TEST(required(work::visit_of(*book, visit.id)).note.isEmpty());
    BOOST_TEST(!required(work::visit_of(*book, visit.id)).hair.wet);
    required(work::put_back(*book, before, now));
    BOOST_TEST(required(work::visit_of(*book, visit.id)).hair.wet);
    Visit newer = now;
    newer.note = "came wet, and late";
    required(work::change_visit(*book, newer));
    BOOST_TEST(work::put_back(*book, now, before).error().code == "changed-since");
    BOOST_TEST((required(work::visit_of(*book, visit.id)).note == newer.note));
    required(work::erase_visit(*book, visit.id));
    BOOST_TEST((work::put_back(*book, newer, before).error().kind == ErrorKind::not_found));
}

BOOST_AUTO_TEST_CASE(a_grade_that_was_not_there_goes_and_a_changed_one_has_its_value_again) {
    const Grade at{0, visit.id, "left temple", "edges", 0, 1};
    const work::GradeEntry none{at, {}}, two{at, 2}, four{at, 4};
    required(work::put_back(*book, none, two));
    required(work::put_back(*book, two, four));
    BOOST_TEST(work::put_back(*book, two, none).error().code == "changed-since");
    const auto grades = required(work::list_grades(*book, visit.id));
    BOOST_REQUIRE(grades.size() == 1);
    BOOST_TEST(grades[0].value == 4);
    required(work::put_back(*book, four, two));
    BOOST_TEST(required(work::list_grades(*book, visit.id))[0].value == 2);
    required(work::put_back(*book, two, none));
    BOOST_TEST(required(work::list_grades(*book, visit.id)).isEmpty());
}

BOOST_AUTO_TEST_CASE(a_target_likewise) {
    const Target at{0, client.id, View::nape, "edge_coverage", 0};
    const work::TargetEntry none{at, {}}, low{at, 40.0}, high{at, 60.5};
    required(work::put_back(*book, none, low));
    required(work::put_back(*book, low, high));
    BOOST_TEST(required(work::list_targets(*book, client.id))[0].value == 60.5);
    required(work::put_back(*book, high, low));
    required(work::put_back(*book, low, none));
    BOOST_TEST(required(work::list_targets(*book, client.id)).isEmpty());
    BOOST_TEST(work::put_back(*book, low, none).error().code == "changed-since");
}

BOOST_AUTO_TEST_CASE(consent_and_the_wish_about_her_face_go_back_together) {
    const work::ClientEntry before = required(work::client_entry_of(*book, client.id));
    work::ClientEntry now = before;
    now.client.photo_consent = false;
    now.client.consent_on = {};
    now.wish = work::FaceWish::hidden;
    required(work::change_client_entry(*book, now));
    now = required(work::client_entry_of(*book, client.id));
    required(work::put_back(*book, now, before));
    const work::ClientEntry again = required(work::client_entry_of(*book, client.id));
    BOOST_TEST(again.client.photo_consent);
    BOOST_TEST((again.client.consent_on == before.client.consent_on));
    BOOST_TEST((again.wish == before.wish));
}

BOOST_AUTO_TEST_CASE(what_she_told_goes_back_with_days_and_answers_that_were_not_there_before) {
    const QDate earlier = today.addDays(-20);
    DailyLife life;
    life.client = client.id;
    life.date = earlier;
    life.washes_a_week = 2;
    required(work::set_daily_life(*book, life));
    required(work::correct_answer(*book, {0, client.id, earlier, "scalp_pain", 0}));
    const work::ToldEntry before = required(work::told_entry_of(*book, client.id));
    ClientProfile profile = before.profile;
    profile.texture = "fine";
    required(work::set_profile(*book, profile));
    life.date = today;
    life.washes_a_week = 5;
    life.heat = QVector<HeatTool>{{"flat iron", 180.0, 3, false}};
    required(work::set_daily_life(*book, life));
    required(work::correct_answer(*book, {0, client.id, today, "scalp_pain", 1}));
    const work::ToldEntry now = required(work::told_entry_of(*book, client.id));
    required(work::put_back(*book, now, before));
    const work::ToldEntry there = required(work::told_entry_of(*book, client.id));
    BOOST_TEST((there.profile == before.profile));
    BOOST_TEST((there.days == before.days));
    BOOST_TEST((there.answers == before.answers));
    required(work::put_back(*book, before, now));
    const work::ToldEntry again = required(work::told_entry_of(*book, client.id));
    BOOST_REQUIRE(again.days.size() == 2);
    BOOST_TEST((again.days.last().heat == now.days.last().heat));
    BOOST_TEST(again.answers.size() == 2);
    BOOST_TEST(again.profile.texture.toStdString() == "fine");
    BOOST_TEST(work::put_back(*book, before, now).error().code == "changed-since");
}

BOOST_AUTO_TEST_SUITE_END()
