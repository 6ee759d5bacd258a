// Every record comes back as it went in, and the book refuses what makes no sense.
#include <algorithm>
#include <limits>

#include "book/client_store.h"
#include "book/grade_store.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/service_store.h"
#include "book/setting_store.h"
#include "book/target_store.h"
#include "book/visit_store.h"
#include "domain/words.h"
#include "room.h"

using namespace kempt;
using namespace kempt::test;

namespace {

struct Open : Room {
    Book book = must(Book::create(path("a.kempt")));
    Filled f = fill(book);
    QString sha256 = must(store::get_photo(book, f.photo)).sha256;
    void reopen() {
        const QString where = book.path();
        { Book closing = std::move(book); }
        book = must(Book::open(where));
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(records, Open)

BOOST_AUTO_TEST_CASE(every_record_survives_closing_and_opening) {
    reopen();
    BOOST_TEST((must(store::get_client(book, f.client)) == Client{f.client, "Zoë Example", "Edges after tight styles",
                                                                  QDate(2025, 1, 2), true, QDate(2025, 1, 3)}));
    BOOST_TEST((must(store::get_visit(book, f.visit)) ==
                Visit{f.visit, f.client, QDate(2025, 3, 4), {true, false, true}, "first"}));
    PhotoRecord photo = sample_photo(f.visit);
    photo.id = f.photo;
    photo.sha256 = sha256;
    photo.taken = QDateTime(QDate(2025, 3, 4), QTime(9, 30), Qt::OffsetFromUTC, 2 * 3600);
    photo.quality_level = "usable";
    photo.quality_findings = "[]";
    BOOST_TEST((must(store::get_photo(book, f.photo)) == photo));
    BOOST_TEST((must(store::photo_bytes(book, f.photo)) == f.bytes));
    Marks marks = sample_marks(f.photo);
    marks.id = f.marks;
    BOOST_TEST((must(store::get_marks(book, f.marks)) == marks));
    const auto readings = must(store::latest_readings(book, f.photo));
    auto expected = sample_readings(f.photo, f.marks, sha256);
    BOOST_REQUIRE(readings.size() == 2);
    for (int i = 0; i < 2; ++i) {
        expected[i].id = readings[i].id;
        BOOST_TEST((readings[i] == expected[i]));
    }
    BOOST_TEST((must(store::get_grade(book, f.grade)) == Grade{f.grade, f.visit, "left temple", "edges", 2, 1}));
    Service service = sample_service(f.client, f.visit);
    service.id = f.service;
    BOOST_TEST((must(store::get_service(book, f.service)) == service));
    BOOST_TEST((must(store::get_target(book, f.target)) ==
                Target{f.target, f.client, View::left_temple, "edge_coverage", 80}));
    BOOST_TEST((must(store::get_setting(book, "paper")) == std::optional<QString>("a4")));
    BOOST_TEST(!must(store::get_setting(book, "units")).has_value());
}

BOOST_AUTO_TEST_CASE(every_view_and_kind_of_capture_time_comes_back) {
    const QVector<std::optional<QDateTime>> times{
        std::nullopt, QDateTime(QDate(2025, 5, 6), QTime(7, 8, 9)),
        QDateTime(QDate(2025, 5, 6), QTime(7, 8, 9, 10), Qt::UTC),
        QDateTime(QDate(2025, 5, 6), QTime(7, 8, 9), Qt::OffsetFromUTC, -5 * 3600)};
    unsigned seed = 100;
    for (const View view : all_views())
        for (int i = 0; i < times.size(); ++i) {
            PhotoRecord photo = sample_photo(f.visit, view, i + 10);
            photo.taken = times[i];
            photo.id = must(store::add_photo(book, photo, noise(50, ++seed)));
            const PhotoRecord back = must(store::get_photo(book, photo.id));
            photo.sha256 = back.sha256;
            BOOST_TEST((back == photo));
        }
}

BOOST_AUTO_TEST_CASE(long_and_foreign_names_come_back_and_are_found) {
    const QStringList names{"李小龍",     "نورا الأمثلة",       "דוגמה בת־שבע",
                            "Łucja Żółć", "José Ñandú-O'Brien", QString("Anna ").repeated(20000) + "Ende",
                            "a%b_c!",     "🙂 Smile",         "Bobby'); DROP TABLE client;--"};
    for (const QString& name : names) {
        const Id id = must(store::add_client(book, {0, name, name, QDate(2024, 2, 29), false, {}}));
        BOOST_TEST((must(store::get_client(book, id)).name == name));
        const auto found = must(store::list_clients(book, name.right(6)));
        BOOST_TEST(std::any_of(found.begin(), found.end(), [&](const auto& row) { return row.client.id == id; }));
    }
    const auto finds = [&](const QString& letters) {
        QStringList list;
        for (const auto& row : must(store::list_clients(book, letters))) list << row.client.name;
        return list;
    };
    BOOST_TEST((finds("JOSE nandu") == QStringList{"José Ñandú-O'Brien"}));
    BOOST_TEST((finds("lucja zolc") == QStringList{"Łucja Żółć"}));
    BOOST_TEST((finds("ŁUCJA") == QStringList{"Łucja Żółć"}));
    BOOST_TEST((finds("%") == QStringList{"a%b_c!"}));
    BOOST_TEST((finds("zoe") == QStringList{"Zoë Example"}));
    BOOST_TEST(finds("nobody").isEmpty());
}

BOOST_AUTO_TEST_CASE(clients_are_listed_by_name_with_last_visit_and_counts) {
    const Id other = must(store::add_client(book, {0, "Ágnes Sample", "", QDate(2025, 1, 1), false, {}}));
    must(store::add_visit(book, {0, f.client, QDate(2025, 6, 1), {}, ""}));
    must(store::add_visit(book, {0, f.client, QDate(2025, 5, 1), {}, ""}));
    const auto rows = must(store::list_clients(book));
    BOOST_REQUIRE(rows.size() == 2);
    BOOST_TEST(rows[0].client.id == other);
    BOOST_TEST(!rows[0].last_visit.has_value());
    BOOST_TEST(rows[0].visits == 0);
    BOOST_TEST((rows[1].last_visit == QDate(2025, 6, 1)));
    BOOST_TEST(rows[1].visits == 3);
    BOOST_TEST(rows[1].photos == 1);
    const auto visits = must(store::visits_of_client(book, f.client));
    BOOST_REQUIRE(visits.size() == 3);
    BOOST_TEST((visits[1].date == QDate(2025, 5, 1)));
    BOOST_TEST(must(store::visits_between(book, QDate(2025, 5, 1), QDate(2025, 6, 1))).size() == 2);
}

BOOST_AUTO_TEST_CASE(records_can_be_changed_and_erased) {
    must(store::update_client(book, {f.client, "New Name", "n", QDate(2024, 1, 1), false, {}}));
    BOOST_TEST(must(store::list_clients(book, "new")).size() == 1);
    must(store::update_visit(book, {f.visit, 0, QDate(2025, 3, 5), {}, "moved"}));
    BOOST_TEST((must(store::get_visit(book, f.visit)) == Visit{f.visit, f.client, QDate(2025, 3, 5), {}, "moved"}));
    must(store::update_grade(book, {f.grade, 0, "nape", "edges", 4, 2}));
    BOOST_TEST((must(store::get_grade(book, f.grade)) == Grade{f.grade, f.visit, "nape", "edges", 4, 2}));
    must(store::update_service(book, {f.service, 0, {}, QDate(2025, 3, 6), "trim", ""}));
    BOOST_TEST(
        (must(store::get_service(book, f.service)) == Service{f.service, f.client, {}, QDate(2025, 3, 6), "trim", ""}));
    BOOST_TEST(must(store::put_target(book, {0, f.client, View::left_temple, "edge_coverage", 85})) == f.target);
    BOOST_TEST(must(store::get_target(book, f.target)).value == 85);
    must(store::set_photo_quality(book, f.photo, "refused", "[1]"));
    PhotoRecord photo = must(store::get_photo(book, f.photo));
    BOOST_TEST((photo.quality_level == "refused"));
    photo.view = View::nape;
    must(store::update_photo(book, photo));
    BOOST_TEST((must(store::get_photo(book, f.photo)) == photo));
    must(store::erase_grade(book, f.grade));
    must(store::erase_service(book, f.service));
    must(store::erase_target(book, f.target));
    must(store::erase_marks(book, f.marks));
    must(store::erase_photo(book, f.photo));
    must(store::erase_setting(book, "paper"));
    for (const Error& error :
         {must_fail(store::get_grade(book, f.grade)), must_fail(store::get_service(book, f.service)),
          must_fail(store::get_target(book, f.target)), must_fail(store::get_marks(book, f.marks)),
          must_fail(store::photo_bytes(book, f.photo)), must_fail(store::erase_photo(book, f.photo)),
          must_fail(store::update_visit(book, {99, 0, QDate(2025, 1, 1), {}, ""}))}) {
        BOOST_TEST((error.kind == ErrorKind::not_found));
        BOOST_TEST(!error.what.empty());
        BOOST_TEST(!error.remedy.empty());
    }
    BOOST_TEST(must(store::all_readings(book, f.photo)).isEmpty());
    BOOST_TEST(must(store::list_settings(book)).isEmpty());
}

BOOST_AUTO_TEST_CASE(the_same_file_dropped_twice_is_recognised) {
    const Error twice = must_fail(store::add_photo(book, sample_photo(f.visit, View::nape), f.bytes));
    BOOST_TEST(twice.code == "photo-already-kept");
    BOOST_TEST(must(store::find_photo_by_sha256(book, sha256.toUpper())).value().id == f.photo);
    BOOST_TEST(!must(store::find_photo_by_sha256(book, QString(64, '0'))).has_value());
    BOOST_TEST(must(store::photos_of_visit(book, f.visit)).size() == 1);
    BOOST_TEST(must_fail(store::add_photo(book, sample_photo(f.visit), noise(9, 9))).code == "shot-taken");
    PhotoRecord wrong = sample_photo(f.visit, View::nape);
    wrong.sha256 = QString(64, 'a');
    BOOST_TEST(must_fail(store::add_photo(book, wrong, noise(9, 9))).code == "photo-hash");
    BOOST_TEST(must(store::next_shot(book, f.visit, View::left_temple)) == 2);
    BOOST_TEST(must(store::next_shot(book, f.visit, View::nape)) == 1);
}

BOOST_AUTO_TEST_CASE(photos_of_a_visit_come_by_view_and_shot) {
    must(store::add_photo(book, sample_photo(f.visit, View::nape, 1), noise(9, 1)));
    must(store::add_photo(book, sample_photo(f.visit, View::left_temple, 3), noise(9, 2)));
    must(store::add_photo(book, sample_photo(f.visit, View::left_temple, 2), noise(9, 3)));
    must(store::add_photo(book, sample_photo(f.visit, View::front_hairline, 5), noise(9, 4)));
    QStringList order;
    for (const auto& p : must(store::photos_of_visit(book, f.visit)))
        order << word_of(p.view) + QString::number(p.shot);
    BOOST_TEST((order == QStringList{"front hairline5", "left temple1", "left temple2", "left temple3", "nape1"}));
    BOOST_TEST(must(store::photos_of_visit(book, f.visit, View::nape)).size() == 1);
}

BOOST_AUTO_TEST_CASE(measuring_again_adds_a_run_and_keeps_the_earlier_one) {
    const auto before = must(store::latest_readings(book, f.photo));
    must(store::add_readings(book, sample_readings(f.photo, f.marks, sha256, 70)));
    BOOST_TEST(must(store::latest_readings(book, f.photo))[0].value == 70);
    const auto all = must(store::all_readings(book, f.photo));
    BOOST_REQUIRE(all.size() == 4);
    BOOST_TEST((all[0] == before[0]));
    const auto history = must(store::readings_of_client(book, f.client, View::left_temple, "edge_coverage"));
    BOOST_REQUIRE(history.size() == 1);
    BOOST_TEST(history[0].reading.value == 70);
    BOOST_TEST((history[0].date == QDate(2025, 3, 4)));
    BOOST_TEST((history[0].hair == HairState{true, false, true}));
    BOOST_TEST(history[0].shot == 1);
    BOOST_TEST((history[0].quality_level == "usable"));
    BOOST_TEST(history[0].client == f.client);
    BOOST_TEST(must(store::readings_of_client(book, f.client, View::nape, "edge_coverage")).isEmpty());
    BOOST_TEST(must(store::readings_of_book(book, "edge_strands")).size() == 1);
    const auto newest = must(store::newest_values_of_book(book, "edge_coverage", 1));
    BOOST_REQUIRE(newest.size() == 1);
    BOOST_TEST(newest[0].value == 70);
    BOOST_TEST(newest[0].client == f.client);
    BOOST_TEST((newest[0].view == View::left_temple));
    BOOST_TEST(must(store::newest_values_of_book(book, "edge_coverage", 0)).isEmpty());
}

BOOST_AUTO_TEST_CASE(what_is_kept_of_the_newest_values_holds_until_something_is_measured_drawn_or_erased) {
    QString last;
    const auto moved = [&] {
        const QString now = must(store::state_of_newest_values(book, "edge_coverage", 100));
        return std::exchange(last, now) != now;
    };
    const auto values = [&] { return must(store::newest_values_of_book(book, "edge_coverage", 100)); };
    BOOST_TEST(moved());
    BOOST_TEST(!moved());
    BOOST_REQUIRE(values().size() == 1);
    must(store::add_visit(book, {0, f.client, QDate(2026, 1, 2), {}, "written meanwhile"}));
    must(store::put_setting(book, "paper", "letter"));
    BOOST_TEST(!moved());
    must(store::add_readings(book, sample_readings(f.photo, f.marks, sha256, 70)));
    BOOST_TEST(moved());
    BOOST_REQUIRE(values().size() == 1);
    BOOST_TEST(values()[0].value == 70);
    Marks fresh;
    fresh.photo = f.photo;
    fresh.view = View::left_temple;
    fresh.id = must(store::add_marks(book, fresh));
    BOOST_TEST(moved());
    BOOST_TEST(values().isEmpty());  // drawn anew
    must(store::add_readings(book, sample_readings(f.photo, fresh.id, sha256, 60)));
    BOOST_TEST(moved());
    BOOST_TEST(values().size() == 1);
    must(store::set_photo_quality(book, f.photo, "refused", "[]"));
    BOOST_TEST(values().isEmpty());
    must(store::erase_photo(book, f.photo));
    BOOST_TEST(moved());
    BOOST_TEST(values().isEmpty());
}

BOOST_AUTO_TEST_CASE(marks_that_were_measured_stay_as_they_are) {
    Marks marks = sample_marks(f.photo);
    marks.id = f.marks;
    BOOST_TEST(must_fail(store::update_marks(book, marks)).code == "marks-measured");
    Marks fresh;
    fresh.photo = f.photo;
    fresh.view = View::left_temple;
    fresh.id = must(store::add_marks(book, fresh));
    BOOST_TEST((must(store::latest_marks(book, f.photo)).value() == fresh));
    fresh.edge_line = {{1, 1}, {2, 2}};
    must(store::update_marks(book, fresh));
    BOOST_TEST((must(store::marks_of_photo(book, f.photo))[1] == fresh));
}

BOOST_AUTO_TEST_CASE(readings_that_contradict_themselves_are_refused) {
    const auto refused = [&](auto spoil) {
        auto readings = sample_readings(f.photo, f.marks, sha256);
        spoil(readings);
        const Error error = must_fail(store::add_readings(book, readings));
        BOOST_TEST(error.kept == "Nothing in the book was changed.");
        return error.code;
    };
    BOOST_TEST(refused([](auto& r) { r.clear(); }) == "readings-missing");
    BOOST_TEST(refused([](auto& r) { r[1].options = "{}"; }) == "readings-mixed");
    BOOST_TEST(refused([](auto& r) { r[0].unit = "mm"; }) == "reading-unit");
    BOOST_TEST(refused([](auto& r) { r[0].low = 99; }) == "reading-interval");
    BOOST_TEST(refused([](auto& r) { r[0].high = std::numeric_limits<double>::quiet_NaN(); }) == "not-a-number");
    BOOST_TEST(refused([](auto& r) { r[0].value = r[0].high = 101; }) == "reading-range");
    BOOST_TEST(refused([](auto& r) { r[1].refusal_text.clear(); }) == "refusal-reason");
    BOOST_TEST(refused([](auto& r) { r[0].name = "score"; }) == "reading-unknown");
    BOOST_TEST(refused([](auto& r) { r[0].photo_sha256 = r[1].photo_sha256 = "x"; }) == "photo-hash");
    BOOST_TEST(refused([](auto& r) { r[0].marks = r[1].marks = 99; }) == "marks-missing");
    BOOST_TEST(must(store::all_readings(book, f.photo)).size() == 2);
}

BOOST_AUTO_TEST_CASE(entries_that_make_no_sense_are_refused_with_a_sentence) {
    BOOST_TEST(must_fail(store::add_client(book, {0, " - ", "", QDate(2025, 1, 1), false, {}})).code == "name-missing");
    BOOST_TEST(must_fail(store::add_client(book, {0, "A", "", QDate(), false, {}})).code == "date-missing");
    BOOST_TEST((must_fail(store::add_visit(book, {0, 99, QDate(2025, 1, 1), {}, ""})).kind == ErrorKind::not_found));
    BOOST_TEST(must_fail(store::add_grade(book, {0, f.visit, "nape", "edges", 5, 1})).code == "grade-value");
    BOOST_TEST(must_fail(store::add_grade(book, {0, f.visit, "left temple", "edges", 3, 1})).code == "already-graded");
    BOOST_TEST(must_fail(store::add_target(book, {0, f.client, View::nape, "beauty", 1})).code == "reading-unknown");
    BOOST_TEST(must_fail(store::add_target(book, {0, f.client, View::left_temple, "edge_coverage", 1})).code ==
               "target-already-set");
    for (const double impossible : {101.0, -1.0, std::nan("")})
        BOOST_TEST((must_fail(store::add_target(book, {0, f.client, View::nape, "edge_coverage", impossible})).kind ==
                    ErrorKind::invalid));
    BOOST_TEST(
        must_fail(store::update_target(book, {f.target, f.client, View::left_temple, "edge_coverage", 101})).what ==
        "A target for this reading cannot be below 0 % or above 100 %.");
    must(store::add_target(book, {0, f.client, View::nape, "edge_strands", 101}));
    const Id other = must(store::add_client(book, {0, "Other", "", QDate(2025, 1, 1), false, {}}));
    const Error stranger = must_fail(store::add_service(book, {0, other, f.visit, QDate(2025, 1, 1), "trim", ""}));
    BOOST_TEST(stranger.code == "visit-missing");
    Marks marks = sample_marks(f.photo);
    marks.scale_points.removeLast();
    BOOST_TEST(must_fail(store::add_marks(book, marks)).code == "mark-scale");
    PhotoRecord photo = sample_photo(f.visit, View::nape);
    photo.format = "gif";
    BOOST_TEST(must_fail(store::add_photo(book, photo, noise(9, 1))).code == "photo-format");
}

BOOST_AUTO_TEST_CASE(services_are_found_by_date_and_kind) {
    must(store::add_service(book, {0, f.client, {}, QDate(2024, 12, 1), "gloss", "before"}));
    BOOST_TEST((must(store::services_of_client(book, f.client)).first().date == QDate(2024, 12, 1)));
    BOOST_TEST(must(store::last_service(book, f.client, "gloss")).value().id == f.service);
    BOOST_TEST(!must(store::last_service(book, f.client, "trim")).has_value());
    QVector<Id> all;
    must(store::each_service(book, [&](Service&& one) { all.append(one.id); }));
    std::sort(all.begin(), all.end());
    QVector<Id> of_clients;
    for (const auto& row : must(store::list_clients(book)))
        for (const Service& one : must(store::services_of_client(book, row.client.id))) of_clients.append(one.id);
    std::sort(of_clients.begin(), of_clients.end());
    BOOST_TEST(!all.isEmpty());
    BOOST_TEST((all == of_clients));
    must(store::erase_visit(book, f.visit));
    BOOST_TEST(!must(store::get_service(book, f.service)).visit.has_value());
}

BOOST_AUTO_TEST_SUITE_END()
