// Services along the hair, and what a client told: every field comes back, nonsense is refused, erasure takes all.
#include <limits>

#include "book/check.h"
#include "book/client_store.h"
#include "book/profile_store.h"
#include "book/service_store.h"
#include "book/sql.h"
#include "domain/questions.h"
#include "domain/words.h"
#include "room.h"

using namespace kempt;
using namespace kempt::test;

namespace {

struct Open : Room {
    Book book = must(Book::create(path("a.kempt")));
    Filled f = fill(book);
    void reopen() {
        const QString where = book.path();
        { Book closing = std::move(book); }
        book = must(Book::open(where));
    }
    [[nodiscard]] qint64 rows(const QString& table) {
        auto query = must(sql::select(book.connection(), "SELECT COUNT(*) FROM " + table));
        BOOST_REQUIRE(query.next());
        return query.value(0).toLongLong();
    }
};

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

}  // namespace

BOOST_FIXTURE_TEST_SUITE(told, Open)

BOOST_AUTO_TEST_CASE(a_service_keeps_where_on_the_hair_how_and_with_what_result) {
    Service bare{0, f.client, {}, QDate(2025, 4, 1), "cut", ""};
    bare.id = must(store::add_service(book, bare));
    Service full = sample_service(f.client, {});
    full.date = QDate(2025, 4, 2);
    full.sections = head_sections();
    full.reaction = true;
    full.at_home = false;
    full.id = must(store::add_service(book, full));
    reopen();
    BOOST_TEST((must(store::get_service(book, bare.id)) == bare));
    BOOST_TEST((must(store::get_service(book, full.id)) == full));
    // Later all of it can be changed, and unset again.
    full.strand_test.clear();
    full.to_mm.reset();
    full.sections.clear();
    full.reaction.reset();
    full.patch_test_on.reset();
    full.result = "";
    full.done = false;
    must(store::update_service(book, full));
    BOOST_TEST((must(store::get_service(book, full.id)) == full));
}

BOOST_AUTO_TEST_CASE(a_service_that_cannot_have_been_is_refused_and_changes_nothing) {
    const QStringList before = listing(book);
    const auto refused = [&](const char* code, const std::function<void(Service&)>& spoil) {
        Service service = sample_service(f.client, f.visit);
        spoil(service);
        const Error added = must_fail(store::add_service(book, service));
        BOOST_TEST(added.code == code, added.sentence());
        BOOST_TEST((added.kind == ErrorKind::invalid));
        service.id = f.service;
        BOOST_TEST(must_fail(store::update_service(book, service)).code == code);
        BOOST_TEST((listing(book) == before));
    };
    refused("number-impossible", [](Service& s) { s.from_mm = -1; });
    refused("number-impossible", [](Service& s) { s.from_mm = not_a_number; });
    refused("number-impossible", [](Service& s) { s.to_mm = 6001; });
    refused("number-impossible", [](Service& s) { s.minutes = 24 * 60 + 1; });
    refused("number-impossible", [](Service& s) { s.most_minutes = -0.5; });
    refused("number-impossible", [](Service& s) { s.temperature_c = 1001; });
    refused("number-impossible", [](Service& s) { s.passes = -1; });
    refused("service-stretch", [](Service& s) { s.from_mm = *s.to_mm + 1; });
    refused("word-unknown", [](Service& s) { s.strength = "strong"; });
    refused("word-unknown", [](Service& s) { s.strand_test = "fine"; });
    refused("word-unknown", [](Service& s) { s.patch_test = "perhaps"; });
    refused("word-unknown", [](Service& s) { s.sections = {"crown", "ends"}; });
    refused("word-unknown", [](Service& s) { s.sections = {""}; });
    refused("patch-test-late", [](Service& s) { s.patch_test_on = s.date.addDays(1); });
    refused("date-missing", [](Service& s) { s.patch_test_on = QDate(); });
    refused("day-missing", [](Service& s) { s.line_on.reset(); });
    refused("day-missing", [](Service& s) { s.line_mm.reset(); });
    refused("number-impossible", [](Service& s) { s.line_mm = -1; });
    refused("line-early", [](Service& s) { s.line_on = s.date.addDays(-1); });
}

BOOST_AUTO_TEST_CASE(what_a_client_told_of_herself_comes_back_and_is_replaced_whole) {
    reopen();
    BOOST_TEST((must(store::profile_of(book, f.client)) == sample_profile(f.client)));
    ClientProfile other;
    other.client = f.client;
    other.whole_history = true;
    must(store::put_profile(book, other));
    BOOST_TEST((must(store::profile_of(book, f.client)) == other));
    BOOST_TEST(rows("client_profile") == 1);
    const Id stranger = must(store::add_client(book, {0, "New", "", QDate(2025, 1, 1), false, {}}));
    BOOST_TEST(
        (must(store::profile_of(book, stranger)) == ClientProfile{stranger, {}, {}, {}, {}, {}, {}, {}, false, {}}));
    other.client = 99;
    BOOST_TEST((must_fail(store::put_profile(book, other)).kind == ErrorKind::not_found));
}

BOOST_AUTO_TEST_CASE(a_profile_that_cannot_be_is_refused_and_the_old_one_stays) {
    const auto refused = [&](const char* code, const std::function<void(ClientProfile&)>& spoil) {
        ClientProfile profile = sample_profile(f.client);
        spoil(profile);
        const Error error = must_fail(store::put_profile(book, profile));
        BOOST_TEST(error.code == code, error.sentence());
        BOOST_TEST((must(store::profile_of(book, f.client)) == sample_profile(f.client)));
    };
    refused("number-impossible", [](ClientProfile& p) { p.age_years = 131; });
    refused("number-impossible", [](ClientProfile& p) { p.length_mm = 0; });
    refused("number-impossible", [](ClientProfile& p) { p.length_mm = not_a_number; });
    refused("day-missing", [](ClientProfile& p) { p.length_on.reset(); });
    refused("day-missing", [](ClientProfile& p) { p.age_years.reset(); });
    refused("date-missing", [](ClientProfile& p) { p.born = QDate(); });
    refused("word-unknown", [](ClientProfile& p) { p.texture = "thick"; });
    refused("word-unknown", [](ClientProfile& p) { p.hair_group = "other"; });
}

BOOST_AUTO_TEST_CASE(daily_life_is_kept_by_day_with_its_heat_tools) {
    DailyLife first = sample_daily_life(f.client);
    first.id = f.daily;
    DailyLife later;
    later.client = f.client;
    later.date = QDate(2025, 9, 1);
    later.heat.emplace();  // asked, and none is used
    later.id = must(store::put_daily_life(book, later));
    reopen();
    BOOST_TEST((must(store::daily_life_of_client(book, f.client)) == QVector<DailyLife>{first, later}));
    // The same day again: the later word replaces the earlier one, tools and all.
    later.heat.reset();
    later.minutes_a_day = 5;
    later.id = must(store::put_daily_life(book, later));
    first.heat = QVector<HeatTool>{{"tongs", 160, 1, true}};
    first.id = must(store::put_daily_life(book, first));
    BOOST_TEST((must(store::daily_life_of_client(book, f.client)) == QVector<DailyLife>{first, later}));
    BOOST_TEST(rows("heat_tool") == 1);
    must(store::erase_daily_life(book, first.id));
    BOOST_TEST(rows("heat_tool") == 0);
}

BOOST_AUTO_TEST_CASE(a_daily_life_that_cannot_be_is_refused) {
    const QStringList before = listing(book);
    const auto refused = [&](const char* code, const std::function<void(DailyLife&)>& spoil) {
        DailyLife life = sample_daily_life(f.client);
        spoil(life);
        BOOST_TEST(must_fail(store::put_daily_life(book, life)).code == code);
        BOOST_TEST((listing(book) == before));
    };
    refused("date-missing", [](DailyLife& d) { d.date = QDate(); });
    refused("number-impossible", [](DailyLife& d) { d.minutes_a_day = 1441; });
    refused("number-impossible", [](DailyLife& d) { d.washes_a_week = -1; });
    refused("number-impossible", [](DailyLife& d) { (*d.heat)[0].temperature_c = 1e9; });
    refused("number-impossible", [](DailyLife& d) { (*d.heat)[1].times_a_week = not_a_number; });
    refused("heat-tool-name", [](DailyLife& d) { (*d.heat)[1].name = " "; });
    DailyLife stranger = sample_daily_life(99);
    BOOST_TEST((must_fail(store::put_daily_life(book, stranger)).kind == ErrorKind::not_found));
}

BOOST_AUTO_TEST_CASE(every_question_takes_its_answers_one_for_each_day) {
    for (const Question& question : questions()) {
        const int value = question.sort == AnswerSort::count ? 120 : 1;
        must(store::put_answer(book, {0, f.client, QDate(2025, 5, 1), question.name, 0}));
        must(store::put_answer(book, {0, f.client, QDate(2025, 5, 1), question.name, value}));
        must(store::put_answer(book, {0, f.client, QDate(2025, 5, 2), question.name, 0}));
        if (question.sort == AnswerSort::yes_or_no)
            BOOST_TEST(must_fail(store::put_answer(book, {0, f.client, QDate(2025, 5, 1), question.name, 2})).code ==
                       "number-impossible");
    }
    const auto answers = must(store::answers_of_client(book, f.client));
    BOOST_TEST(answers.size() == 2 * questions().size() + 1);  // and the one of the room
    for (const ClientAnswer& answer : answers)
        if (answer.date == QDate(2025, 5, 1)) BOOST_TEST(answer.value > 0);
    BOOST_TEST(must_fail(store::put_answer(book, {0, f.client, QDate(2025, 5, 1), "mood", 1})).code ==
               "question-unknown");
    BOOST_TEST(must_fail(store::put_answer(book, {0, f.client, QDate(), "scalp_pain", 1})).code == "date-missing");
    BOOST_TEST(
        (must_fail(store::put_answer(book, {0, 99, QDate(2025, 5, 1), "scalp_pain", 1})).kind == ErrorKind::not_found));
    must(store::erase_answer(book, f.answer));
    BOOST_TEST((must_fail(store::erase_answer(book, f.answer)).kind == ErrorKind::not_found));
}

BOOST_AUTO_TEST_CASE(erasing_a_client_takes_all_that_she_told_out_of_the_file) {
    ClientAnswer answer{0, f.client, QDate(2025, 5, 1), "pregnant_or_breastfeeding", 1};
    must(store::put_answer(book, answer));
    const Id other = must(store::add_client(book, {0, "Stays", "", QDate(2025, 1, 1), false, {}}));
    must(store::put_profile(book, sample_profile(other)));
    must(store::erase_client(book, f.client));
    BOOST_TEST(rows("client_profile") == 1);
    for (const char* table : {"service", "daily_life", "heat_tool", "answer"}) BOOST_TEST(rows(table) == 0, table);
    const QString where = book.path();
    { Book closing = std::move(book); }
    const QByteArray file = content_of(where);
    for (const char* words : {"behind the left ear", "even, a little warm", "flat iron", "takes_medication"})
        BOOST_TEST(!file.contains(words), words);
    book = must(Book::open(where));
}

BOOST_AUTO_TEST_CASE(the_database_itself_refuses_what_the_stores_would_not_write) {
    const QStringList before = listing(book);
    for (const char* statement :
         {"UPDATE service SET to_mm = 5, from_mm = 10", "UPDATE service SET strength = 'strong'",
          "UPDATE service SET sections = 'crown'", "UPDATE service SET reaction = 2", "UPDATE service SET minutes = -1",
          "UPDATE service SET line_on = NULL", "UPDATE service SET done = 2", "UPDATE service SET done = NULL",
          "UPDATE client_profile SET history_told_on = 'lately'", "UPDATE client_profile SET length_on = NULL",
          "UPDATE client_profile SET age_years = NULL", "UPDATE client_profile SET texture = 'thick'",
          "UPDATE daily_life SET hard_water = 3", "UPDATE heat_tool SET name = ''", "UPDATE answer SET value = -1"}) {
        auto changed = sql::change(book.connection(), statement);
        BOOST_TEST(!changed.ok(), statement);
        if (!changed) BOOST_TEST(changed.error().code == "out-of-range", statement);
    }
    BOOST_TEST((listing(book) == before));
}

BOOST_AUTO_TEST_CASE(the_check_names_every_word_that_it_does_not_know_and_every_day_that_is_none) {
    const auto at = [&](const QString& statement) { must(sql::change(book.connection(), statement)); };
    BOOST_TEST(must(check(book)).unknown.isEmpty());
    at("UPDATE service SET kind = 'steam bath' WHERE id = 1");
    at("UPDATE answer SET question = 'favourite_song'");
    at("UPDATE grade SET zone = 'behind the ear', quality = 'bounce'");
    CheckReport report = must(check(book));
    BOOST_TEST(report.sound());  // Kempt keeps them and copes
    BOOST_TEST(report.unknown.join("|").toStdString() ==
               "Service 1 holds a kind that is unknown, \"steam bath\".|Answer 1 holds a question that is unknown, "
               "\"favourite_song\".|Grade 1 holds a zone that is unknown, \"behind the ear\".|Grade 1 holds a quality "
               "that is unknown, \"bounce\".");
    at("UPDATE service SET sections = '[\"left ear\"]', done_on = '2025-13-41' WHERE id = 1");
    at("UPDATE client_profile SET history_told_on = '2025-02-30'");
    at("UPDATE daily_life SET told_on = '20XX-01-01'");
    report = must(check(book));
    BOOST_TEST(!report.sound());
    for (const char* said : {"Service 1 holds a day that is none, \"2025-13-41\".",
                             "Service 1 holds a head section that is none, \"left ear\".",
                             "The profile of client 1 holds a day that is none, \"2025-02-30\".",
                             "Daily life 1 holds a day that is none, \"20XX-01-01\"."})
        BOOST_TEST(report.problems.contains(QLatin1String(said)), said);
    BOOST_TEST(report.problems.size() == 4);
}

BOOST_AUTO_TEST_CASE(a_section_that_nobody_knows_is_damage_and_never_left_out_in_silence) {
    must(sql::change(book.connection(), "UPDATE service SET sections = '[\"left ear\"]'"));
    BOOST_TEST((must_fail(store::get_service(book, f.service)).kind == ErrorKind::damaged));
}

BOOST_AUTO_TEST_SUITE_END()
