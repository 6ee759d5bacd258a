// What can this hair take, through the real book and the command line: what the trade knows, as checks.
#include <QJsonArray>

#include "app/command/program.h"
#include "care/rules.h"

using namespace kempt;
using tests::Program;
using tests::words;

namespace {

const QStringList questions{"pregnant_or_breastfeeding",
                            "takes_medication",
                            "scratched_scalp",
                            "washed_scalp",
                            "scalp_wound",
                            "scalp_pain",
                            "scalp_pustules",
                            "tingling_with_thinning",
                            "face_rash",
                            "sudden_loss",
                            "patchy_loss",
                            "smooth_edges",
                            "eyebrow_loss",
                            "loss_goes_on",
                            "swelling_or_breathing",
                            "dye_reaction",
                            "black_henna_reaction",
                            "straightener_burn"};

// A client of whom everything is known and against whom nothing speaks, on 2026-06-01.
struct Known : Program {
    Known() {
        (void)json({"client", "add", "b.kempt", "--name", "Ada Lindqvist", "--new"});
        profile("medium");
        (void)json({"client", "answers", "b.kempt", "--client", "1", "--date", "2026-06-01", "--no",
                    questions.join(u',') + ",uneven_colour", "--pull-test-hairs", "1", "--comb-count", "10"});
        (void)json(
            words("client daily b.kempt --client 1 --date 2026-06-01 --heat none --minutes-a-day 20 "
                  "--washes-a-week 1 --swims-a-week 0 --hard-water no --covers-hair no --tight-headwear no "
                  "--covers-at-night yes --tight-styles no --style-hurts no --added-hair no --style-weeks 2"));
        (void)json(words("visit add b.kempt --client 1 --date 2026-06-01"));
        for (const char* quality : {"breakage", "porosity", "elasticity", "scalp", "edges"})
            grade("whole head", quality, 4);
    }
    void profile(const char* texture) const {
        (void)json({"client", "profile", "b.kempt", "--client", "1", "--age", "34", "--length-mm", "300", "--texture",
                    texture, "--hair-group", "african", "--history", "whole", "--date", "2026-06-01"});
    }
    void grade(const char* zone, const char* quality, int value) const {
        (void)json({"grade", "add", "b.kempt", "--visit", "1", "--zone", zone, "--quality", quality, "--value",
                    QString::number(value)});
    }
    void service(const char* kind, const char* day, const QStringList& more = {}) const {
        (void)json(QStringList{"service", "add", "b.kempt", "--client", "1", "--kind", kind, "--date", day} + more);
    }
    [[nodiscard]] QJsonObject plan(const char* kind, const QStringList& more = {}) const {
        return json(QStringList{"plan",
                                "b.kempt",
                                "--client",
                                "1",
                                "--today",
                                "2026-06-01",
                                "--service",
                                kind,
                                "--strength",
                                "mild",
                                "--at-home",
                                "no",
                                "--touches-scalp",
                                "no",
                                "--formaldehyde",
                                "no",
                                "--data-sheet",
                                "yes",
                                "--strand-test",
                                "passed",
                                "--minutes",
                                "15",
                                "--most-minutes",
                                "22"} +
                    more);
    }
    static QJsonObject finding(const QJsonObject& plan, const char* rule) {
        for (const QJsonValue& value : plan["findings"].toArray())
            if (value.toObject()["rule"] == QLatin1String(rule) && value.toObject()["sort"] == "speaks against")
                return value.toObject();
        return {};
    }
};

const QStringList four_sections{
    "--strand-minutes", "16",
    "--hands",          "2",
    "--apply",          "nape=0.75/1/0.75,crown=0.75/1/0.75,left-temple=0.75/1/0.75,right temple=0.75/1/0.75"};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(plan, Known)

// Common practice, no source: scalp heat about doubles the speed; mid-shaft first, stopping short of the ends; roots
// and ends late.
BOOST_AUTO_TEST_CASE(a_first_straightening_on_porous_ends_is_mid_shaft_first_then_ends_and_roots) {
    grade("ends", "porosity", 2);
    const QJsonObject planned = plan("hydroxide straightener without lye", four_sections);
    BOOST_TEST(!planned["stopped"].toBool());
    const QJsonObject service = planned["services"].toArray()[0].toObject();
    const QJsonArray on = service["put_on"].toArray();
    BOOST_REQUIRE(on.size() == 3);
    BOOST_TEST((on[1].toObject()["part"] == "mid-shaft" && on[1].toObject()["to_mm"] == 250));
    const QJsonObject timeline = service["timeline"].toObject();
    BOOST_TEST(timeline["works"].toBool());
    const QJsonArray order = timeline["order"].toArray();
    BOOST_REQUIRE(order.size() == 12);
    BOOST_TEST((order.first().toObject()["part"] == "mid-shaft"));
    BOOST_TEST((order.last().toObject()["part"] == "roots"));
    double last_mid = 0, first_ends = 1e9, roots = 0, lengths = 0;
    for (const QJsonValue& value : order) {
        const QJsonObject step = value.toObject();
        const double middle = (step["least_minutes"].toDouble() + step["most_minutes"].toDouble()) / 2;
        if (step["part"] == "mid-shaft") {
            last_mid = std::max(last_mid, step["start_minutes"].toDouble());
            lengths += middle;
        } else if (step["part"] == "ends") {
            first_ends = std::min(first_ends, step["start_minutes"].toDouble());
        } else {
            roots += middle;
        }
    }
    BOOST_TEST(first_ends >= last_mid);  // porous ends are not started first
    BOOST_TEST(roots / lengths == 0.5, boost::test_tools::tolerance(0.15));
    BOOST_TEST(!finding(planned, "porous-straightening").isEmpty());
}

// "New growth only, never on already relaxed hair" (dermatologists' public tips; hairdressing curriculum).
BOOST_AUTO_TEST_CASE(a_retouch_never_covers_relaxed_lengths) {
    service("hydroxide straightener without lye", "2026-03-01");
    const QJsonObject retouch = plan("hydroxide straightener without lye", QStringList{"--new-growth"} + four_sections);
    const QJsonObject growth = retouch["growth"].toObject()["since"].toArray()[0].toObject();
    // Loussouarn 2005: 280 um a day, SD 50; 92 days: 25.8 mm, and at the low end of 95 % 16.7 mm.
    BOOST_TEST(growth["mm"].toDouble() == 25.76, boost::test_tools::tolerance(1e-3));
    BOOST_TEST(growth["low"].toDouble() == 92 * (280 - 1.959964 * 50) / 1000, boost::test_tools::tolerance(1e-3));
    const QJsonObject service = retouch["services"].toArray()[0].toObject();
    for (const QJsonValue& value : service["put_on"].toArray())
        BOOST_TEST(value.toObject()["to_mm"].toDouble() <= growth["low"].toDouble() + 1e-3);
    for (const QJsonValue& value : service["timeline"].toObject()["order"].toArray())
        BOOST_TEST((value.toObject()["part"] == "roots"));
    const QJsonObject whole = plan("hydroxide straightener without lye", four_sections);
    BOOST_TEST((finding(whole, "hydroxide-overlap")["level"] == "stop"));
    BOOST_TEST(whole["services"].toArray()[0].toObject()["timeline"].isNull());
    BOOST_TEST(!whole["services"].toArray()[0].toObject()["keep_off"].toArray().isEmpty());
}

// Two weeks before permanent colour: dermatology leaflet; the choice itself common practice, no source.
BOOST_AUTO_TEST_CASE(uneven_colour_on_freshly_straightened_fine_hair_leads_to_demi_permanent_with_the_reason) {
    profile("fine");
    (void)json(words("client answers b.kempt --client 1 --date 2026-06-01 --yes uneven_colour"));
    service("permanent colour", "2025-11-01");
    service("hydroxide straightener without lye", "2026-05-28");
    const QJsonObject planned = plan("permanent colour", {"--patch-test", "passed", "--patch-test-hours", "72"});
    const QJsonObject found = finding(planned, "even-out-fresh-fine");
    BOOST_TEST((found["choose"] == "demi-permanent colour"));
    for (const char* word : {"lift", "peroxide", "porous", "tone on tone"})
        BOOST_TEST(found["reason"].toString().contains(QLatin1String(word)), word);
    const QJsonObject wait = finding(planned, "colour-after-straightening");
    BOOST_TEST((wait["level"] == "stop" && wait["wait_until"] == "2026-06-11"));
    BOOST_TEST(planned["stopped"].toBool());
}

BOOST_AUTO_TEST_CASE(incompatible_chemistries_are_stopped_where_they_would_meet) {
    service("thioglycolate perm", "2026-01-10");
    const QJsonObject planned = plan("hydroxide straightener with lye");
    const QJsonObject found = finding(planned, "hydroxide-on-thioglycolate");
    BOOST_TEST((found["level"] == "stop"));
    QStringList parts;
    for (const QJsonValue& value : found["where"].toArray()) parts.append(value.toObject()["part"].toString());
    BOOST_TEST((parts.contains("mid-shaft") && parts.contains("ends")));
}

// McDonald 2017, J Am Acad Dermatol: two or fewer hairs in 97.2 %. Sishi 2019, S Afr Med J 109:941-6: median pH 12.36.
BOOST_AUTO_TEST_CASE(published_figures_reach_the_chair) {
    BOOST_TEST(finding(plan("gloss"), "doctor-pull-test").isEmpty());
    (void)json(words("client answers b.kempt --client 1 --date 2026-06-01 --pull-test-hairs 3"));
    const QJsonObject pulled = finding(plan("gloss"), "doctor-pull-test");
    BOOST_TEST(pulled["source"].toString().contains("McDonald 2017"));
    const QJsonObject ph = finding(plan("hydroxide straightener with lye"), "hydroxide-is-corrosive");
    BOOST_TEST(ph["reason"].toString().contains("12.36"));
    BOOST_TEST(ph["source"].toString().contains("Sishi 2019"));
}

BOOST_AUTO_TEST_CASE(every_output_ends_with_the_standing_cautions_and_no_advice_lacks_its_source) {
    service("hydroxide straightener without lye", "2026-03-01");
    service("cut", "2026-04-01");
    const auto& always = care::built_in_rules()->always;
    const QStringList all[] = {words("plan b.kempt --client 1 --today 2026-06-01"),
                               {"plan", "b.kempt", "--client", "1", "--today", "2026-06-01", "--service", "gloss"},
                               {"plan", "b.kempt", "--client", "1", "--today", "2026-06-01", "--service", "lightening",
                                "--strand-test", "failed"}};
    for (const QStringList& call : all) {
        const QList<QByteArray> lines = done(call).out.trimmed().split('\n');
        for (std::size_t i = 0; i < always.size(); ++i)
            BOOST_TEST(lines[lines.size() - static_cast<qsizetype>(always.size() - i)].trimmed().toStdString() ==
                       always[i].text);
        const QJsonObject planned = json(call);
        BOOST_TEST(planned["cautions"].toArray().size() == static_cast<qsizetype>(always.size()));
        for (const char* list : {"findings", "dates"})
            for (const QJsonValue& value : planned[QLatin1String(list)].toArray())
                BOOST_TEST(!value.toObject()["source"].toString().isEmpty());
        for (const QJsonValue& value : planned["home_care"].toObject()["tips"].toArray())
            BOOST_TEST(!value.toObject()["source"].toString().isEmpty());
        BOOST_TEST(planned["dates"].toArray().size() == 2);
    }
    // Stops come first.
    const QByteArray out = done(all[2]).out;
    BOOST_TEST(out.indexOf("Stop: The strand test failed.") > 0);
    BOOST_TEST(out.indexOf("Stop: The strand test failed.") < out.indexOf("Check first"));
    BOOST_TEST(out.indexOf("Check first") < out.indexOf("Next dates"));
}

BOOST_AUTO_TEST_CASE(a_patch_test_that_was_written_down_is_known_to_the_plan) {
    const auto missing = [&] { return !finding(plan("gloss"), "patch-test-missing").isEmpty(); };
    const auto asked = [&](const char* rule) {
        for (const QJsonValue& value : plan("gloss")["findings"].toArray())
            if (value.toObject()["rule"] == QLatin1String(rule)) return value.toObject()["sort"].toString();
        return QString();
    };
    BOOST_TEST((!missing() && asked("patch-test-missing") == "check first"));
    service("gloss", "2026-06-01", {"--patch-test-on", "2026-05-30"});
    BOOST_TEST((!missing() && asked("patch-test-missing").isEmpty()));
    BOOST_TEST((asked("patch-test-too-short") == "check first"));  // two days may be less than 48 hours
    (void)json(words("service change b.kempt --service 1 --patch-test-on 2026-05-29 --patch-test failed"));
    BOOST_TEST(asked("patch-test-too-short").isEmpty());
    BOOST_TEST((asked("patch-test-reacted") == "speaks against"));
    // One of an earlier use says nothing: a patch test belongs to one use of the dye.
    (void)json(words("service change b.kempt --service 1 --date 2026-05-30 --patch-test passed"));
    BOOST_TEST((asked("patch-test-missing") == "check first"));
}

// The state that a plan prints is one that a plan can be made of.
BOOST_AUTO_TEST_CASE(a_plan_is_made_from_a_state_without_a_book) {
    service("hydroxide straightener without lye", "2026-03-20");
    (void)json({"service", "change", "b.kempt", "--service", "1", "--line-mm", "15", "--line-on", "2026-05-20"});
    grade("ends", "porosity", 1);
    (void)json(
        words("client profile b.kempt --client 1 --age 30 --texture fine --hair-group african --length-mm 300 "
              "--history 2020-01-01 --date 2026-05-30"));
    (void)json(
        {"client", "daily", "b.kempt", "--client", "1", "--date", "2026-05-30", "--heat", "flat iron,200,3,wet"});
    (void)json(
        words("client answers b.kempt --client 1 --date 2026-06-01 --no scalp_wound,scalp_pain --yes dye_reaction "
              "--comb-count 12"));
    const QStringList asked = words("--today 2026-06-01 --service gloss --from-mm 20");
    const QJsonObject planned = json(words("plan b.kempt --client 1") + asked);
    write("state.json", QJsonDocument(planned["state"].toObject()).toJson());
    QJsonObject again = json(words("plan --state state.json --service gloss --from-mm 20"));
    BOOST_TEST(!again.contains("client"));
    BOOST_TEST((again["state"] == planned["state"]));
    // Photographs are of the book; all else says the same.
    for (const char* member : {"today", "stopped", "findings", "questions", "services", "hair", "growth", "home_care"})
        BOOST_TEST((again[QLatin1String(member)] == planned[QLatin1String(member)]), member);
    BOOST_TEST((again["growth"].toObject()["since"].toArray()[0].toObject()["by_tape"] == true));
    BOOST_TEST(done(words("plan --state state.json")).out.contains("measured by tape at its line of demarcation"));

    write("bare.json", R"({"today": "2026-06-01"})");
    BOOST_TEST(json(words("plan --state bare.json --service gloss"))["questions"].toArray().size() > 10);
    for (const auto& [state, word] :
         {std::pair(R"({"grades": [{"quality": "porosity", "zone": "elbow", "value": 1}]})", "front hairline"),
          {R"({"grades": [{"quality": "porosity", "value": 7}]})", "0 to 4"},
          {R"({"services": [{"kind": "magic", "date": "2026-01-01"}]})", "magic"},
          {R"({"services": [{"kind": "gloss"}]})", "date"},
          {R"({"services": [{"kind": "gloss", "date": "2026-01-01", "sections": ["chin"]}]})", "chin"},
          {R"({"record_from": "always"})", "record_from"},
          {R"({"answers": {"scalp_wond": true}})", "scalp_wond"},
          {R"({"daily": {"hard_water": "yes"}})", "hard_water"},
          {R"({"age": 30})", "age"},
          {"[]", "no JSON object"}}) {
        write("wrong.json", state);
        fails(1, words("plan --state wrong.json"), word);
    }
    fails(1, words("plan --state none.json"), "none.json");
    fails(2, words("plan b.kempt --client 1 --state state.json"), "not from both");
    fails(2, words("plan --service gloss"), "a state");
}

BOOST_AUTO_TEST_CASE(several_services_come_from_a_file) {
    write("plan.json", R"({"services": [{"kind": "hydroxide straightener without lye"}, {"kind": "lightening"}]})");
    const QJsonObject planned = json(words("plan b.kempt --client 1 --today 2026-06-01 --request plan.json"));
    BOOST_TEST(planned["services"].toArray().size() == 2);
    BOOST_TEST((finding(planned, "straightener-and-colour-today")["level"] == "stop"));
    (void)json(words("report b.kempt --client 1 --today 2026-06-01 --plan plan.json --out r.pdf"));
    BOOST_TEST(read("r.pdf").startsWith("%PDF"));
    write("bad.json", R"({"services": [{"kind": "gloss", "minuts": 3}]})");
    fails(1, words("plan b.kempt --client 1 --request bad.json"), "minuts");
    fails(1, words("plan b.kempt --client 1 --request none.json"), "none.json");
    fails(2, words("plan b.kempt --client 1 --request plan.json --minutes 3"), "not both");
    fails(2, words("plan b.kempt --client 1 --minutes 3"), "--service");
    fails(2, words("plan b.kempt --client 1 --service gloss --apply nape"), "nape");
    fails(2, words("plan b.kempt --client 1 --service magic"), "magic");
    fails(2, words("plan b.kempt"), "the client");
    fails(1, words("plan b.kempt --client 7"), "7");
    fails(1, words("plan b.kempt --client 1 --today 2026-06-01 --service gloss --from-mm 900"), "beyond");
    fails(1, words("report b.kempt --client 1 --plan bad.json --out r.pdf"), "minuts");
}

BOOST_AUTO_TEST_CASE(an_order_of_work_for_other_sections_than_the_service_or_in_no_time_is_refused) {
    const QStringList call = words("plan b.kempt --client 1 --today 2026-06-01 --service gloss --strand-minutes 9");
    const auto refused = [&](const char* apply, const char* word) {
        fails(2, call + QStringList{"--apply", apply}, word);
    };
    refused("chin=1/1/1", "'chin', which is no section of the head: front hairline");
    refused("nape=1/1/1,Nape=1/1/1", "'nape' twice");
    fails(2, call + words("--sections crown --apply nape=1/1/1"), "'nape', on which the service does not go");
    fails(2, call + words("--sections chin"), "chin");
    for (const char* minutes : {"nan", "inf", "-1", "-inf", "1e999", "soon"})
        refused((std::string("nape=1/") + minutes + "/1").c_str(), "is not like nape=0.5/1/0.5");
    fails(2, call + words("--sections crown,nape --apply nape=1/1/1"), "'crown', which the order of work leaves out");
    const QJsonObject fits = json(call + words("--sections left-temple --apply Left-Temple=1/1/1"));
    BOOST_TEST(fits["services"].toArray().size() == 1);
    const auto file = [&](const char* sections, const char* word) {
        write("order.json",
              QByteArray(R"({"services": [{"kind": "gloss", "sections": ["nape"], "timeline": {"sections": [)") +
                  sections + "]}}]}");
        fails(1, words("plan b.kempt --client 1 --request order.json"), word);
    };
    file(R"({"name": "crown"})", "'crown', on which");
    file(R"({"name": "nape", "roots": -2})", "no time");
    file(R"({"name": "nape"}, {"name": "nape, first half"})", "twice");
    file(R"({"name": "nape, first half"}, {"name": "nape"})", "twice");
    write("order.json", R"({"services": [{"kind": "gloss", "sections": ["nape"], "timeline": {"sections": [
        {"name": "nape, first half"}, {"name": "nape, second half"}]}}]})");
    (void)json(words("plan b.kempt --client 1 --today 2026-06-01 --request order.json"));
}

BOOST_AUTO_TEST_CASE(who_is_due_is_listed_and_written_as_a_calendar) {
    service("cut", "2026-04-01");
    service("hydroxide straightener without lye", "2026-03-20");
    service("permanent colour", "2026-06-20");  // planned
    const QJsonObject due = json(words("due b.kempt --today 2026-06-01 --within 30 --calendar due.ics"));
    QStringList sorts;
    for (const QJsonValue& value : due["due"].toArray()) {
        sorts.append(value.toObject()["what"].toString());
        BOOST_TEST((value.toObject()["client"].toObject()["name"] == "Ada Lindqvist"));
        BOOST_TEST(!value.toObject()["source"].toString().isEmpty());
    }
    sorts.sort();
    BOOST_TEST((sorts == QStringList{"patch test", "retouch", "trim"}), sorts.join(u' ').toStdString());
    const QByteArray calendar = read("due.ics");
    BOOST_TEST(calendar.count("BEGIN:VEVENT\r\n") == 3);
    BOOST_TEST(calendar.contains("SUMMARY:Client 1: patch test\r\n"));
    BOOST_TEST(calendar.contains("DTSTART;VALUE=DATE:20260613\r\nDTEND;VALUE=DATE:20260619\r\n"));
    BOOST_TEST(!calendar.contains("Ada"));
    (void)done(words("due b.kempt --today 2026-06-01 --within 30 --calendar names.ics --names"));
    BOOST_TEST(read("names.ics").contains("SUMMARY:Ada Lindqvist: patch test\r\n"));
    BOOST_TEST(done(words("due b.kempt --today 2026-04-02")).out.contains("Nobody is due"));
    fails(2, words("due b.kempt --within -3"), "--within");
    fails(2, words("due b.kempt --within 1.5"), "whole number");
    fails(1, words("due b.kempt --calendar none/due.ics"), "there is no folder");
    BOOST_TEST(!QFileInfo::exists(folder.filePath("none")));
    fails(1, words("due b.kempt --calendar b.kempt"), "is a book");
    fails(1, words("due none.kempt"), "none.kempt");
    // A patch test that was made needs no reminder.
    (void)json(words("service change b.kempt --service 3 --patch-test-on 2026-06-16"));
    BOOST_TEST(json(words("due b.kempt --today 2026-06-01 --within 30"))["due"].toArray().size() == 2);
}

BOOST_AUTO_TEST_SUITE_END()
