// Services with all their fields, and what a client told, by commands alone.
#include <QJsonArray>

#include "app/command/program.h"

using namespace kempt;
using tests::Program;
using tests::words;

namespace {

struct WithClient : Program {
    WithClient() { (void)json({"client", "add", "b.kempt", "--name", "Ada Lindqvist", "--new"}); }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(told, WithClient)

BOOST_AUTO_TEST_CASE(a_service_takes_every_field_and_gives_it_back) {
    const QJsonObject bare =
        json({"service", "add", "b.kempt", "--client", "1", "--date", "2026-02-01", "--kind", "cut"});
    for (const char* name : {"to_mm", "strength", "minutes", "most_minutes", "temperature_c", "passes", "strand_test",
                             "patch_test", "patch_test_on", "result", "reaction", "at_home", "line_mm", "line_on"})
        BOOST_TEST((bare.contains(name) && bare[name].isNull()), name);
    BOOST_TEST((bare["from_mm"].toDouble() == 0 && bare["sections"].toArray().isEmpty()));
    const QJsonObject full = json({"service",
                                   "add",
                                   "b.kempt",
                                   "--client",
                                   "1",
                                   "--date",
                                   "2026-03-01",
                                   "--kind",
                                   "hydroxide straightener without lye",
                                   "--from-mm",
                                   "0",
                                   "--to-mm",
                                   "22.5",
                                   "--sections",
                                   "left-temple, nape",
                                   "--strength",
                                   "mild",
                                   "--minutes",
                                   "13",
                                   "--most-minutes",
                                   "18",
                                   "--temperature-c",
                                   "21",
                                   "--passes",
                                   "1",
                                   "--strand-test",
                                   "passed",
                                   "--patch-test",
                                   "passed",
                                   "--patch-test-on",
                                   "2026-02-26",
                                   "--patch-test-where",
                                   "inner elbow",
                                   "--result",
                                   "left a little curl",
                                   "--at-home",
                                   "no",
                                   "--reaction",
                                   "no",
                                   "--note",
                                   "retouch"});
    BOOST_TEST(full["to_mm"].toDouble() == 22.5);
    BOOST_TEST((full["sections"].toArray() == QJsonArray{"left temple", "nape"}));
    BOOST_TEST((full["strength"] == "mild" && full["minutes"] == 13 && full["most_minutes"] == 18));
    BOOST_TEST((full["temperature_c"] == 21 && full["passes"] == 1 && full["strand_test"] == "passed"));
    BOOST_TEST((full["patch_test"] == "passed" && full["patch_test_on"] == "2026-02-26"));
    BOOST_TEST((full["patch_test_where"] == "inner elbow" && full["result"] == "left a little curl"));
    BOOST_TEST((full["reaction"] == false && full["at_home"] == false && full["note"] == "retouch"));
    BOOST_TEST((json(words("service show b.kempt --service 2")) == full));
    const QByteArray line = done(words("service list b.kempt --client 1")).out;
    for (const char* part : {"from the scalp to 22.5 mm, left temple and nape", "13 of at most 18 min",
                             "patch test inner elbow on 26 Feb 2026 passed", "no reaction", "left a little curl"})
        BOOST_TEST(line.contains(part), line.toStdString() + " lacks " + part);
}

BOOST_AUTO_TEST_CASE(what_is_known_later_is_changed_and_the_rest_stays) {
    (void)json({"service", "add", "b.kempt", "--client", "1", "--date", "2026-03-01", "--kind", "permanent colour",
                "--minutes", "30", "--result", "even"});
    const QJsonObject changed =
        json({"service", "change", "b.kempt", "--service", "1", "--reaction", "yes", "--result", ""});
    const QJsonObject measured = json(words("service change b.kempt --service 1 --line-mm 18 --line-on 2026-05-01"));
    BOOST_TEST((measured["line_mm"] == 18 && measured["line_on"] == "2026-05-01" && measured["reaction"] == true));
    fails(1, words("service change b.kempt --service 1 --line-mm 18 --line-on 2026-02-01"), "before the service");
    BOOST_TEST((changed["reaction"] == true && changed["minutes"] == 30 && changed["result"].isNull()));
    BOOST_TEST((json(words("service show b.kempt --service 1")) == measured));
    fails(1, words("service change b.kempt --service 9 --minutes 3"), "no service 9");
}

BOOST_AUTO_TEST_CASE(a_service_that_cannot_be_is_refused_with_the_field) {
    const QStringList add = words("service add b.kempt --client 1 --date 2026-03-01 --kind gloss");
    fails(2, add + words("--strength strong"), "mild, regular, super");
    fails(2, add + words("--sections crown,ends"), "'ends' is no section");
    fails(2, add + words("--passes 1.5"), "whole number");
    fails(2, add + words("--reaction perhaps"), "yes, no");
    fails(2, add + words("--from-mm 50 --to-mm 20"), "before it begins");
    fails(2, add + words("--minutes 5000"), "minutes");
    fails(1, add + words("--patch-test-on 2026-03-02"), "after the service");
    BOOST_TEST(json(words("service list b.kempt --client 1"))["services"].toArray().isEmpty());
}

BOOST_AUTO_TEST_CASE(the_profile_is_set_part_by_part) {
    const QJsonObject none = json(words("client profile b.kempt --client 1"));
    BOOST_TEST((none["age_years"].isNull() && none["texture"].isNull() && none["whole_history"] == false));
    (void)json(words("client profile b.kempt --client 1 --age 34 --length-mm 230 --date 2026-03-03"));
    (void)json(words("client profile b.kempt --client 1 --texture fine --hair-group african --history whole"));
    const QJsonObject both = json(words("client profile b.kempt --client 1"));
    BOOST_TEST((both["age_years"] == 34 && both["age_on"] == "2026-03-03" && both["length_mm"] == 230));
    BOOST_TEST((both["length_on"] == "2026-03-03" && both["texture"] == "fine" && both["hair_group"] == "african"));
    BOOST_TEST((both["whole_history"] == true && both["history_from"].isNull()));
    const QJsonObject since =
        json(words("client profile b.kempt --client 1 --history 2020-05-01 --hair-group unknown"));
    BOOST_TEST(
        (since["whole_history"] == false && since["history_from"] == "2020-05-01" && since["hair_group"].isNull()));
    fails(2, words("client profile b.kempt --client 1 --history always"), "whole, unknown or a date");
    fails(2, words("client profile b.kempt --client 1 --age 200"), "age");
    fails(1, words("client profile b.kempt --client 2"), "no client 2");
    BOOST_TEST((json(words("client profile b.kempt --client 1")) == since));
}

BOOST_AUTO_TEST_CASE(her_wishes_of_what_leaves_the_book_are_set_beside_the_profile) {
    const QJsonObject none = json(words("client profile b.kempt --client 1"));
    BOOST_TEST((none["face"].toString() == "unknown" && none["report_language"].isNull()));
    (void)json(words("client profile b.kempt --client 1 --face hidden --report-language es"));
    const QJsonObject both = json(words("client profile b.kempt --client 1 --age 34"));
    BOOST_TEST((both["face"].toString() == "hidden" && both["report_language"].toString() == "es"));
    const QJsonObject back = json(words("client profile b.kempt --client 1 --face unknown --report-language none"));
    BOOST_TEST((back["face"].toString() == "unknown" && back["report_language"].isNull()));
    fails(2, words("client profile b.kempt --client 1 --face open"), "must be one of: hidden");
    fails(2, words("client profile b.kempt --client 1 --report-language fr"), "must be one of: en, es");
    fails(1, words("client profile b.kempt --client 2 --face hidden"), "no client 2");
}

BOOST_AUTO_TEST_CASE(daily_life_goes_on_from_what_she_told_before) {
    BOOST_TEST(json(words("client daily b.kempt --client 1"))["date"].isNull());
    const QJsonObject first =
        json({"client", "daily", "b.kempt", "--client", "1", "--date", "2026-03-03", "--minutes-a-day", "15", "--heat",
              "flat iron,200,3,dry; dryer,,4", "--tight-styles", "yes"});
    const QJsonArray heat = first["heat"].toArray();
    BOOST_REQUIRE(heat.size() == 2);
    BOOST_TEST(
        (heat[0].toObject() ==
         QJsonObject{{"name", "flat iron"}, {"temperature_c", 200}, {"times_a_week", 3}, {"on_wet_hair", false}}));
    BOOST_TEST((heat[1].toObject()["temperature_c"].isNull() && heat[1].toObject()["on_wet_hair"].isNull()));
    const QJsonObject later = json({"client", "daily", "b.kempt", "--client", "1", "--date", "2026-06-03", "--heat",
                                    "none", "--tight-styles", "no"});
    BOOST_TEST((later["minutes_a_day"] == 15 && later["heat"].toArray().isEmpty() && later["heat"].isArray()));
    BOOST_TEST((later["tight_styles"] == false && later["hard_water"].isNull()));
    BOOST_TEST((json(words("client daily b.kempt --client 1 --date 2026-04-01")) == first));
    BOOST_TEST((json(words("client daily b.kempt --client 1 --date 2026-07-01")) == later));
    fails(2, {"client", "daily", "b.kempt", "--client", "1", "--heat", "flat iron,hot,3"}, "flat iron,hot,3");
    fails(2, {"client", "daily", "b.kempt", "--client", "1", "--heat", "flat iron"}, "times a week");
}

BOOST_AUTO_TEST_CASE(answers_are_kept_by_day_and_say_when_they_are_too_old) {
    const QStringList on = words("client answers b.kempt --client 1 --date 2026-03-03");
    const QJsonArray given =
        json(on + words("--yes takes_medication,scalp-pain --no dye_reaction --pull-test-hairs 3"))["answers"]
            .toArray();
    BOOST_TEST(given.size() == 4);
    for (const QJsonValue& value : given) BOOST_TEST(value.toObject()["counts"].toBool());
    const QJsonArray later = json(words("client answers b.kempt --client 1 --date 2026-03-10"))["answers"].toArray();
    for (const QJsonValue& value : later) {
        const QJsonObject one = value.toObject();
        BOOST_TEST(one["counts"].toBool() == (one["question"] != "scalp_pain"),
                   one["question"].toString().toStdString());
        if (one["question"] == "pull_test_hairs") BOOST_TEST(one["value"].toInt() == 3);
        if (one["question"] == "dye_reaction") BOOST_TEST((one["value"] == false));
    }
    BOOST_TEST(done(words("client answers b.kempt --client 1 --date 2026-03-10")).out.contains("ask again"));
    fails(2, on + words("--yes mood"), "takes_medication");
    fails(2, on + words("--yes scalp_pain --no scalp_pain"), "yes and no");
    fails(2, on + words("--yes comb_count"), "must be one of");
    fails(2, on + words("--comb-count 1.5"), "hairs");
    const int id = given[0].toObject()["id"].toInt();
    (void)json({"client", "forget", "b.kempt", "--answer", QString::number(id)});
    BOOST_TEST(json(on)["answers"].toArray().size() == 3);
}

// One record from the plan to what was done.
BOOST_AUTO_TEST_CASE(a_planned_service_is_asked_for_after_its_day_and_done_with_one_word) {
    const QDate today = Clock().today();
    const auto day = [&](int days) { return today.addDays(days).toString(Qt::ISODate); };
    const QStringList add = words("service add b.kempt --client 1 --kind") + QStringList{"hydroxide straightener"};
    QJsonObject service = json(add + QStringList{"--planned", "--date", day(-3)});
    BOOST_TEST((service["state"] == "planned"));
    // Written ahead without the word: planned all the same.
    BOOST_TEST((json(add + QStringList{"--date", day(5)})["state"] == "planned"));
    BOOST_TEST((json(add + QStringList{"--date", day(-90)})["state"] == "done"));
    BOOST_TEST(json(words("service list b.kempt --client 1 --planned"))["services"].toArray().size() == 2);
    BOOST_TEST(done(words("service list b.kempt --client 1")).out.contains("planned"));

    const QJsonArray asked = json(words("due b.kempt"))["was_it_done"].toArray();
    BOOST_REQUIRE(asked.size() == 1);
    BOOST_TEST((asked[0].toObject()["service"].toObject()["id"] == service["id"]));
    BOOST_TEST(done(words("due b.kempt")).out.contains("was it done? hydroxide straightener"));
    QJsonObject plan = json({"plan", "b.kempt", "--client", "1"});
    BOOST_TEST(plan["was_it_done"].toArray().size() == 1);
    BOOST_TEST(done(words("plan b.kempt --client 1")).out.startsWith("Ada Lindqvist"));
    BOOST_TEST(done(words("plan b.kempt --client 1")).out.contains("Was it done? hydroxide straightener"));

    service = json(words("service change b.kempt --service 1 --done"));
    BOOST_TEST((service["state"] == "done" && service["date"] == day(-3)));
    BOOST_TEST(json(words("due b.kempt"))["was_it_done"].toArray().isEmpty());
    BOOST_TEST(json({"plan", "b.kempt", "--client", "1"})["was_it_done"].toArray().isEmpty());
    // One that was planned for later was done today, or on the day that is given.
    service = json(words("service change b.kempt --service 2 --done"));
    BOOST_TEST((service["state"] == "done" && service["date"] == day(0)));
    service = json(QStringList(words("service change b.kempt --service 2 --done --date")) << day(-1));
    BOOST_TEST((service["date"] == day(-1)));
    BOOST_TEST((json(words("service change b.kempt --service 2 --planned"))["state"] == "planned"));

    fails(2, words("service change b.kempt --service 1 --done --planned"), "not both");
    fails(2, QStringList(words("service change b.kempt --service 1 --date")) << day(2), "still to come");
    (void)json(words("export b.kempt --out planned"));
    BOOST_TEST(read("planned/services.csv").contains(",planned\r\n"));
    BOOST_TEST(read("planned/services.csv").contains(",done\r\n"));
}

BOOST_AUTO_TEST_CASE(what_was_written_down_is_taken_back_with_the_word_none) {
    (void)json(words("visit add b.kempt --client 1 --date 2026-03-01"));
    (void)json({"service",
                "add",
                "b.kempt",
                "--client",
                "1",
                "--date",
                "2026-03-01",
                "--kind",
                "permanent colour",
                "--from-mm",
                "5",
                "--to-mm",
                "80",
                "--sections",
                "nape",
                "--strength",
                "mild",
                "--minutes",
                "20",
                "--most-minutes",
                "30",
                "--temperature-c",
                "30",
                "--passes",
                "1",
                "--strand-test",
                "failed",
                "--patch-test",
                "failed",
                "--patch-test-on",
                "2026-02-27",
                "--reaction",
                "yes",
                "--at-home",
                "no",
                "--line-mm",
                "9",
                "--line-on",
                "2026-04-01",
                "--visit",
                "1"});
    QStringList change = words("service change b.kempt --service 1");
    for (const char* option : {"--from-mm", "--to-mm", "--sections", "--strength", "--minutes", "--most-minutes",
                               "--temperature-c", "--passes", "--strand-test", "--patch-test", "--patch-test-on",
                               "--reaction", "--at-home", "--line-mm", "--visit"})
        change << QString::fromLatin1(option) << QStringLiteral("none");
    const QJsonObject bare = json(change);
    for (const char* member : {"to_mm", "strength", "minutes", "most_minutes", "temperature_c", "passes", "strand_test",
                               "patch_test", "patch_test_on", "reaction", "at_home", "line_mm", "line_on", "visit"})
        BOOST_TEST(bare[QLatin1String(member)].isNull(), member);
    BOOST_TEST((bare["from_mm"] == 0 && bare["sections"].toArray().isEmpty()));

    (void)json(words("client profile b.kempt --client 1 --age 30 --length-mm 250 --texture fine --born 1996-01-01"));
    const QJsonObject profile =
        json(words("client profile b.kempt --client 1 --age none --length-mm none --texture none --born none"));
    for (const char* member : {"born", "age_years", "age_on", "length_mm", "length_on", "texture"})
        BOOST_TEST(profile[QLatin1String(member)].isNull(), member);
    (void)json(words("client daily b.kempt --client 1 --minutes-a-day 10 --hard-water yes"));
    const QJsonObject days = json(words("client daily b.kempt --client 1 --minutes-a-day none --hard-water none"));
    BOOST_TEST((days["minutes_a_day"].isNull() && days["hard_water"].isNull()));
    fails(2, words("service change b.kempt --service 1 --minutes nothing"), "a number or none");
}

BOOST_AUTO_TEST_CASE(values_out_of_their_range_are_wrong_usage_wherever_they_are_given) {
    (void)json(words("visit add b.kempt --client 1 --date 2026-03-01"));
    const QStringList add = words("service add b.kempt --client 1 --date 2026-03-01 --kind gloss");
    for (const char* wrong :
         {"--from-mm -1", "--to-mm 6001", "--minutes -5", "--most-minutes 5000", "--temperature-c -3",
          "--temperature-c 2000", "--passes 1.5", "--passes -1", "--from-mm 50 --to-mm 20"})
        fails(2, add + words(wrong), "kempt help service");
    for (const char* wrong : {"--age 200", "--age -1", "--length-mm 0", "--length-mm 7000"})
        fails(2, words("client profile b.kempt --client 1") + words(wrong), "kempt help client");
    for (const char* wrong : {"--minutes-a-day 2000", "--swims-a-week 101", "--washes-a-week -1", "--style-weeks 6000"})
        fails(2, words("client daily b.kempt --client 1") + words(wrong), "kempt help client");
    fails(2, words("client answers b.kempt --client 1 --comb-count 1001"), "comb-count");
    fails(2, words("target add b.kempt --client 1 --view nape --reading edge_coverage --value 101"),
          "kempt help target");
    for (const char* wrong : {"--from-mm -1", "--minutes 5000", "--most-minutes -1", "--temperature-c 2000",
                              "--patch-test-hours -2", "--from-mm 50 --to-mm 20"})
        fails(2, words("plan b.kempt --client 1 --service gloss") + words(wrong), "kempt help plan");
    fails(2, words("grade add b.kempt --visit 1 --zone nape --quality edges --value 7"), "--value");
    fails(2, words("grade add b.kempt --visit 1 --zone temple --quality edges --value 1"),
          "Zones: front hairline, left temple, right temple, crown, nape, roots, mid-shaft, ends, whole head.");
    BOOST_TEST((json(words("grade add b.kempt --visit 1 --zone Lengths --quality porosity --value 1"))["zone"] ==
                "mid-shaft"));
}

BOOST_AUTO_TEST_CASE(that_all_is_in_the_record_is_dated_and_asked_again) {
    const QString today = Clock().today().toString(Qt::ISODate),
                  long_ago = Clock().today().addDays(-8).toString(Qt::ISODate);
    const QJsonObject told = json(words("client profile b.kempt --client 1 --history whole"));
    BOOST_TEST((told["history_told_on"] == today));
    BOOST_TEST((json(words("plan b.kempt --client 1"))["ask_history_again"] == false));
    (void)json(QStringList(words("client profile b.kempt --client 1 --history whole --date")) << long_ago);
    BOOST_TEST((json(words("plan b.kempt --client 1"))["ask_history_again"] == true));
    BOOST_TEST(done(words("plan b.kempt --client 1")).out.contains("Ask again whether every service is in it"));
    BOOST_TEST(json(words("client profile b.kempt --client 1 --history unknown"))["history_told_on"].isNull());
    BOOST_TEST((json(words("plan b.kempt --client 1"))["ask_history_again"] == false));  // the rules ask by themselves
}

BOOST_AUTO_TEST_CASE(a_no_never_takes_the_place_of_a_yes_that_is_kept_for_good) {
    const QStringList on = words("client answers b.kempt --client 1 --date 2026-03-03");
    const QJsonObject yes = json(on + words("--yes dye_reaction,scalp_pain"));
    fails(1, on + words("--no dye_reaction"), "client forget");
    BOOST_TEST((json(on) == yes));
    (void)json(on + words("--no scalp_pain"));  // of the day alone
    (void)json(words("client answers b.kempt --client 1 --date 2026-03-04 --no dye_reaction"));
    for (const QJsonValue& one :
         json(words("client answers b.kempt --client 1 --date 2026-03-05"))["answers"].toArray())
        BOOST_TEST((one["value"] == (one["question"] == "dye_reaction")));
}

BOOST_AUTO_TEST_CASE(a_day_that_is_still_to_come_is_refused) {
    fails(2, words("client answers b.kempt --client 1 --date 2362-11-25 --no scalp_pain"),
          "2362-11-25, is still to come");
    fails(2, words("client daily b.kempt --client 1 --date 2330-01-01 --minutes-a-day 5"), "still to come");
    for (const char* profile : {"--born 2330-01-01", "--date 2330-01-01 --age 30", "--date 2330-01-01 --length-mm 200",
                                "--history 2330-01-01"})
        fails(2, words("client profile b.kempt --client 1") + words(profile), "still to come");
    BOOST_TEST(json(words("client show b.kempt --client 1"))["answers"].toArray().isEmpty());
    BOOST_TEST(json(words("client daily b.kempt --client 1"))["date"].isNull());
}

BOOST_AUTO_TEST_CASE(what_she_told_too_long_ago_is_not_dated_anew) {
    (void)json(words("client daily b.kempt --client 1 --date 2025-03-03 --minutes-a-day 15 --tight-styles yes"));
    const QJsonObject shown = json(words("client daily b.kempt --client 1 --date 2026-03-03"));
    BOOST_TEST((shown["date"] == "2025-03-03" && shown["minutes_a_day"] == 15));
    const QJsonObject later = json(words("client daily b.kempt --client 1 --date 2026-03-03 --washes-a-week 2"));
    BOOST_TEST((later["minutes_a_day"].isNull() && later["tight_styles"].isNull() && later["washes_a_week"] == 2));
    BOOST_TEST((json(words("client daily b.kempt --client 1 --date 2025-04-03"))["minutes_a_day"] == 15));
}

BOOST_AUTO_TEST_CASE(all_of_it_is_shown_exported_and_erased_with_the_client) {
    (void)json({"service", "add", "b.kempt", "--client", "1", "--date", "2026-03-01", "--kind", "henna", "--sections",
                "crown,nape"});
    (void)json(words("client profile b.kempt --client 1 --texture coarse"));
    (void)json(
        {"client", "daily", "b.kempt", "--client", "1", "--date", "2026-03-03", "--heat", "flat iron,200,3,wet"});
    (void)json(words("client answers b.kempt --client 1 --date 2026-03-03 --no scalp_pain"));
    const QJsonObject shown = json(words("client show b.kempt --client 1"));
    BOOST_TEST((shown["profile"].toObject()["texture"] == "coarse"));
    BOOST_TEST(shown["daily_life"].toObject()["heat"].toArray().size() == 1);
    BOOST_TEST(shown["answers"].toArray().size() == 1);
    (void)json(words("export b.kempt --out out"));
    BOOST_TEST(read("out/services.csv").contains("henna,,0,,crown; nape,"));
    BOOST_TEST(read("out/profiles.csv").contains("1,,,,,,coarse,,no,,\r\n"));
    BOOST_TEST(read("out/daily_life.csv").contains("\"flat iron, 200 C, 3 a week, wet\""));
    BOOST_TEST(read("out/answers.csv").contains("2026-03-03,scalp_pain,no\r\n"));
    const QJsonObject client =
        QJsonDocument::fromJson(read("out/book.json")).object()["clients"].toArray()[0].toObject();
    BOOST_TEST((client["profile"].toObject()["texture"] == "coarse" && client["daily_life"].toArray().size() == 1));
    BOOST_TEST((client["answers"].toArray()[0].toObject()["question"] == "scalp_pain"));
    BOOST_TEST((client["services"].toArray()[0].toObject()["kind"] == "henna"));
    (void)done(words("client erase b.kempt --client 1 --yes"));
    (void)json(words("export b.kempt --out after"));
    for (const char* table : {"services", "profiles", "daily_life", "answers"})
        BOOST_TEST(read(QStringLiteral("after/%1.csv").arg(QLatin1String(table))).count("\r\n") == 1, table);
    BOOST_TEST(json(words("check b.kempt"))["sound"].toBool());
}

BOOST_AUTO_TEST_SUITE_END()
