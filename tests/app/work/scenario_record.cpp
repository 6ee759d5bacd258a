// The demo's clients: what was done to their hair and what they told is read, and the book takes all of it.
#include <QDir>

#include "app/work/temporary_book.h"
#include "domain/words.h"
#include "work/care_freshness.h"
#include "work/care_state.h"
#include "work/keep_care.h"
#include "work/scenario.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

// Without the photos.
Id fill(TemporaryBook& in, const work::ScenarioClient& from) {
    const Client client = TemporaryBook::required(work::add_client(*in.book, from.client));
    for (const work::ScenarioVisit& one : from.visits) {
        Visit visit = one.visit;
        visit.client = client.id;
        visit = TemporaryBook::required(work::add_visit(*in.book, visit));
        for (Grade grade : one.grades) {
            grade.visit = visit.id;
            TemporaryBook::required(work::add_grade(*in.book, grade));
        }
    }
    for (Service service : from.services) {
        service.client = client.id;
        TemporaryBook::required(work::add_service(*in.book, service));
    }
    ClientProfile profile = from.profile.value_or(ClientProfile());
    profile.client = client.id;
    TemporaryBook::required(work::set_profile(*in.book, profile));
    for (DailyLife life : from.daily_life) {
        life.client = client.id;
        TemporaryBook::required(work::set_daily_life(*in.book, life));
    }
    QVector<ClientAnswer> answers = from.answers;
    for (ClientAnswer& answer : answers) answer.client = client.id;
    TemporaryBook::required(work::set_answers(*in.book, answers));
    return client.id;
}

std::string failure_of(const TemporaryBook& in, const char* record) {
    in.write(QStringLiteral("scenario.json"),
             R"({"today": "2026-09-01", "clients": [{"name": "Ada", "since": "2026-01-12", "visits": [],
                 "record": "record.json"}]})");
    if (record)
        in.write(QStringLiteral("record.json"), record);
    else
        QFile::remove(in.folder.filePath(QStringLiteral("record.json")));
    const auto read = work::read_scenario(in.folder.path());
    return read ? "" : read.error().sentence();
}

}  // namespace

BOOST_AUTO_TEST_SUITE(scenario_record)

BOOST_AUTO_TEST_CASE(every_client_of_the_demo_has_a_record_that_the_book_and_the_rules_take) {
    TemporaryBook in;
    const auto scenario = TemporaryBook::required(work::read_scenario(QStringLiteral(KEMPT_SAMPLES_FOLDER)));
    BOOST_REQUIRE(scenario.clients.size() == 4);
    for (const work::ScenarioClient& from : scenario.clients) {
        const std::string name = from.client.name.toStdString();
        BOOST_TEST((from.profile && !from.daily_life.isEmpty() && !from.answers.isEmpty()), name);
        BOOST_TEST(from.services.size() >= 3, name);
        for (const Service& service : from.services) BOOST_TEST((service.date <= scenario.today), name);
        const Id client = fill(in, from);
        const auto state = TemporaryBook::required(work::care_state(*in.book, client, scenario.today));
        BOOST_TEST(care::checked(state, {}).ok(), name);
        BOOST_TEST(state.history.services.size() == std::size_t(from.services.size()), name);
        BOOST_TEST((state.age_years && state.length_mm && state.texture && state.daily.heat), name);
        // Told at the consultation; after a week it is asked again.
        const QDate told = from.profile->history_told_on.value_or(QDate());
        BOOST_REQUIRE_MESSAGE(told.isValid(), name);
        BOOST_TEST(TemporaryBook::required(work::care_state(*in.book, client, told)).history.complete_since.has_value(),
                   name);
        BOOST_TEST(state.history.complete_since.has_value() == (told.daysTo(scenario.today) <= work::history_days),
                   name);
    }
}

BOOST_AUTO_TEST_CASE(the_demos_first_straightening_is_of_whole_hair_with_porous_ends) {
    TemporaryBook in;
    const auto scenario = TemporaryBook::required(work::read_scenario(QStringLiteral(KEMPT_SAMPLES_FOLDER)));
    const work::ScenarioClient& noor = scenario.clients.back();
    BOOST_TEST(noor.client.name.toStdString() == "Noor Abadi");
    BOOST_TEST(noor.visits.back().visit.note.contains("first straightening"));
    BOOST_TEST((noor.visits.back().visit.date == scenario.today));
    const Id client = fill(in, noor);
    const auto state = TemporaryBook::required(work::care_state(*in.book, client, scenario.today));
    BOOST_TEST((state.history.complete_since == care::whole_life));
    for (const care::PastService& service : state.history.services)
        BOOST_TEST(!care::belongs(*care::find_family("chemical"), service.kind));
    int ends = 4, rest = 4;
    for (const care::Graded& grade : state.grades)
        if (grade.quality == "porosity")
            (grade.zone == "ends" ? ends : rest) = std::min(grade.zone == "ends" ? ends : rest, grade.value);
    BOOST_TEST((ends == 1 && rest == 3));
    BOOST_TEST((state.answers.scalp_wound == false && state.answers.pregnant_or_breastfeeding == false));
}

BOOST_AUTO_TEST_CASE(a_record_that_cannot_be_read_names_the_client_and_the_member) {
    const TemporaryBook in;
    BOOST_TEST(failure_of(in, "{}") == "");
    const auto names = [&](const char* record, const char* word) {
        const std::string why = failure_of(in, record);
        BOOST_TEST(why.find("Ada") != std::string::npos, why);
        BOOST_TEST(why.find(word) != std::string::npos, why);
    };
    names(nullptr, "not there");
    names("[]", "no JSON object");
    names(R"({"services": [{"date": "2026-01-12", "kind": "gloss", "minutes": "ten"}]})", "\"minutes\"");
    names(R"({"services": [{"date": "soon", "kind": "gloss"}]})", "\"date\"");
    names(R"({"profile": {"born": 1990}})", "\"born\"");
    names(R"({"daily_life": [{"date": "2026-01-12", "heat": "iron"}]})", "\"heat\"");
    names(R"({"daily_life": [{"date": "2026-01-12", "heat": [{"name": 3}]}]})", "\"name\"");
    names(R"({"answers": [{"yes": ["scalp_pain"]}]})", "date");
    names(R"({"visits": [{"grades": []}]})", "date");
}

BOOST_AUTO_TEST_CASE(grades_of_the_record_join_the_visit_of_their_day) {
    const TemporaryBook in;
    in.write(QStringLiteral("scenario.json"), R"({"today": "2026-09-01", "clients": [{"name": "Ada",
        "visits": [{"date": "2026-03-01", "photos": [], "grades": [{"zone": "ends", "quality": "shine", "value": 1}]}],
        "services": [{"date": "2026-02-01", "kind": "gloss"}], "record": "record.json"}]})");
    in.write(QStringLiteral("record.json"), R"({"visits": [{"date": "2026-03-01", "grades": [{"zone": "ends",
        "quality": "porosity", "value": 2}]}, {"date": "2026-02-15", "grades": []}],
        "services": [{"date": "2026-01-01", "kind": "cut", "to_mm": 200}]})");
    const auto scenario = TemporaryBook::required(work::read_scenario(in.folder.path()));
    const work::ScenarioClient& ada = scenario.clients.front();
    BOOST_REQUIRE(ada.visits.size() == 2);
    BOOST_TEST((ada.visits[0].visit.date == QDate(2026, 2, 15)));
    BOOST_TEST(ada.visits[1].grades.size() == 2);
    BOOST_TEST(ada.services.size() == 2);
    const QByteArray digest = scenario.digest;
    in.write(QStringLiteral("record.json"), "{}");
    BOOST_TEST((TemporaryBook::required(work::read_scenario(in.folder.path())).digest != digest));
}

BOOST_AUTO_TEST_SUITE_END()
