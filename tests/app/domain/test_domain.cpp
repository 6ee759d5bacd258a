#include <QJsonDocument>
#include <boost/test/unit_test.hpp>

#include "domain/marks_json.h"
#include "domain/measure_units.h"
#include "domain/questions.h"
#include "domain/service_words.h"
#include "domain/words.h"

using namespace kempt;

BOOST_TEST_DONT_PRINT_LOG_VALUE(QString)
BOOST_TEST_DONT_PRINT_LOG_VALUE(QPointF)
BOOST_TEST_DONT_PRINT_LOG_VALUE(QVector<QPointF>)

namespace {

std::string error_of(const char* json) {
    const Result<Marks> marks = marks_from_json(json);
    BOOST_REQUIRE(!marks.ok());
    BOOST_TEST((marks.error().kind == ErrorKind::invalid));
    return marks.error().what;
}

void names(const char* json, const std::string& member) {
    const std::string what = error_of(json);
    BOOST_TEST(what.find("\"" + member + "\"") != std::string::npos, json << " gave: " << what);
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_view_has_a_word_that_leads_back_to_it) {
    BOOST_TEST(all_views().size() == 7);
    for (View view : all_views()) {
        const QString word = word_of(view);
        BOOST_TEST((view_from_word(word) == view));
        BOOST_TEST((view_from_word(QString(word).replace(' ', '-').toUpper()) == view));
    }
    BOOST_TEST(!view_from_word("fringe").has_value());
    BOOST_TEST(!view_from_word("").has_value());
}

BOOST_AUTO_TEST_CASE(every_grade_has_five_different_anchors_and_no_sixth) {
    for (const QString& quality : grade_qualities()) {
        QStringList seen;
        for (int step = 0; step <= 4; ++step) {
            const QString anchor = grade_anchor(quality, step);
            BOOST_TEST(anchor.startsWith(QString::number(step) + ": "));
            BOOST_TEST(anchor.size() > 15);
            BOOST_TEST(!seen.contains(anchor.mid(3)));
            seen.append(anchor.mid(3));
        }
        BOOST_TEST(grade_anchor(quality, 5).isEmpty());
        BOOST_TEST(grade_anchor(quality, -1).isEmpty());
    }
    BOOST_TEST(grade_anchor("mood", 1).isEmpty());
}

BOOST_AUTO_TEST_CASE(words_are_complete_and_not_repeated) {
    for (const QString& name : edge_reading_names()) {
        BOOST_TEST(!title_of_reading(name).contains('_'));
        BOOST_TEST(meaning_of_reading(name).endsWith('.'));
    }
    BOOST_TEST(edge_reading_names().size() == 5);
    BOOST_TEST((title_of_reading("curve_diameter") == "curve diameter"));
    QStringList kinds = service_kinds();
    BOOST_TEST(kinds.removeDuplicates() == 0);
    BOOST_TEST(kinds.contains("gloss"));
}

BOOST_AUTO_TEST_CASE(a_service_is_told_in_words_with_only_what_is_known) {
    Service service;
    service.kind = "permanent colour";
    BOOST_TEST(details_of(service).isEmpty());
    service.to_mm = 22.5;
    service.sections = {"crown", "left temple", "nape"};
    BOOST_TEST((place_of(service) == "from the scalp to 22.5 mm, crown, left temple and nape"));
    BOOST_TEST((place_of(service, LengthUnit::inches) == "from the scalp to 0.9 in, crown, left temple and nape"));
    service.from_mm = 60;
    service.to_mm.reset();
    service.sections.clear();
    service.minutes = 30;
    service.most_minutes = 35;
    service.patch_test = "passed";
    service.patch_test_on = QDate(2026, 3, 14);
    service.patch_test_where = "inner elbow";
    service.reaction = false;
    BOOST_TEST((details_of(service) == QStringList{"from 60 mm to the ends", "30 of at most 35 min",
                                                   "patch test inner elbow on 14 Mar 2026 passed", "no reaction"}));
    service = {};
    service.kind = "cut";
    service.to_mm = 250;
    BOOST_TEST((details_of(service) == QStringList{"left 250 mm"}));
}

BOOST_AUTO_TEST_CASE(what_she_told_is_told_in_words_with_only_what_is_known) {
    BOOST_TEST(details_of(ClientProfile()).isEmpty());
    BOOST_TEST(details_of(DailyLife()).isEmpty());
    DailyLife life;
    life.heat.emplace();
    life.tight_styles = false;
    BOOST_TEST((details_of(life) == QStringList{"no heat", "no tight styles"}));
    ClientProfile profile;
    profile.history_from = QDate(2020, 1, 1);
    BOOST_TEST((details_of(profile) == QStringList{"every service since 1 Jan 2020 is in the record"}));
}

BOOST_AUTO_TEST_CASE(questions_have_names_of_their_own_and_are_found_by_them) {
    QStringList names;
    for (const Question& question : questions()) {
        names.append(question.name);
        BOOST_TEST((find_question(question.name) == &question));
    }
    BOOST_TEST(names.removeDuplicates() == 0);
    BOOST_TEST(find_question("mood") == nullptr);
    BOOST_TEST(!still_counts({0, 0, QDate(2026, 1, 1), "mood", 1}, QDate(2026, 1, 1)));
}

BOOST_AUTO_TEST_CASE(marks_of_the_contract_are_read_member_by_member) {
    const QByteArray json = R"({"view": "left temple", "edge_line": [[1, 2], [3.5, 4], [5, 6]], "hair_side": [7, 8],
        "shine_region": [[0,0],[1,0],[1,1],[0,1]], "strand_line": [[9, 10], [11, 12]],
        "scale": {"points": [[0, 0], [100, 0]], "mm": 50}, "sheet": "hem", "region": [[0,0],[2,0],[2,2],[0,2]],
        "anchors": [[4, 4]], "hair_taps": [[1, 1]], "scalp_taps": [[2, 2], [3, 3]], "a_later_member": {"x": 1},
        "not_hair": [[5, 5]], "joined": [[[1, 2], [3, 4]], [[5, 6], [7, 8]]],
        "whole": [[6, 6], [7, 7]]})";
    const Result<Marks> read = marks_from_json(json);
    BOOST_REQUIRE(read.ok());
    const Marks& marks = read.value();
    BOOST_TEST((marks.view == View::left_temple));
    BOOST_TEST((marks.edge_line == QVector<QPointF>{{1, 2}, {3.5, 4}, {5, 6}}));
    BOOST_TEST((marks.hair_side == QPointF(7, 8)));
    BOOST_TEST(marks.shine_region.size() == 4);
    BOOST_TEST(marks.strand_line.size() == 2);
    BOOST_TEST(marks.scale_points.size() == 2);
    BOOST_TEST(marks.scale_mm == 50);
    BOOST_TEST((marks.sheet == "hem"));
    BOOST_TEST(marks.region.size() == 4);
    BOOST_TEST(marks.anchors.size() == 1);
    BOOST_TEST(marks.hair_taps.size() == 1);
    BOOST_TEST(marks.scalp_taps.size() == 2);
    BOOST_TEST(marks.not_hair.size() == 1);
    BOOST_TEST((marks.joined == QVector<QPointF>{{1, 2}, {3, 4}, {5, 6}, {7, 8}}));
    BOOST_TEST((marks.whole == QVector<QPointF>{{6, 6}, {7, 7}}));

    const QJsonObject written = json_of_marks(marks);
    const Result<Marks> again = marks_from_json(QJsonDocument(written).toJson());
    BOOST_REQUIRE(again.ok());
    BOOST_TEST((json_of_marks(again.value()) == written));
    BOOST_TEST((again.value().edge_line == marks.edge_line));
    BOOST_TEST((again.value().scalp_taps == marks.scalp_taps));
}

BOOST_AUTO_TEST_CASE(absent_and_null_members_are_simply_not_set) {
    const Result<Marks> read = marks_from_json(R"({"view": "nape", "edge_line": null})");
    BOOST_REQUIRE(read.ok());
    BOOST_TEST(read->edge_line.isEmpty());
    BOOST_TEST(!read->hair_side.has_value());
    BOOST_TEST(json_of_marks(read.value()).size() == 1);
}

BOOST_AUTO_TEST_CASE(wrong_members_are_named) {
    names(R"({"view": "moon"})", "view");
    names(R"({"view": 3})", "view");
    names(R"({"edge_line": [[1, 2]]})", "edge_line");
    names(R"({"edge_line": "no"})", "edge_line");
    names(R"({"edge_line": [[1, 2], [3]]})", "edge_line[1]");
    names(R"({"edge_line": [[1, 2], [3, "4"]]})", "edge_line[1]");
    names(R"({"edge_line": [[1, 2], [3, 1e300]]})", "edge_line[1]");
    names(R"({"hair_side": [[1, 2]]})", "hair_side");
    names(R"({"shine_region": [[0,0],[1,0],[1,1]]})", "shine_region");
    names(R"({"region": []})", "region");
    names(R"({"not_hair": [1, 2]})", "not_hair[0]");
    names(R"({"whole": [1, 2]})", "whole[0]");
    names(R"({"joined": [[1, 2], [3, 4]]})", "joined[0][0]");
    names(R"({"joined": [[[1, 2]]]})", "joined[0]");
    names(R"({"scale": 5})", "scale");
    names(R"({"scale": {"mm": 5}})", "scale.points");
    names(R"({"scale": {"points": [[0, 0]], "mm": 5}})", "scale.points");
    names(R"({"scale": {"points": [[0, 0], [0, 0]], "mm": 5}})", "scale.points");
    names(R"({"scale": {"points": [[0, 0], [9, 0]], "mm": 0}})", "scale.mm");
    names(R"({"scale": {"points": [[0, 0], [9, 0]]}})", "scale.mm");
    names(R"({"sheet": "bed"})", "sheet");
    BOOST_TEST(error_of("[1, 2]").find("list") != std::string::npos);
    BOOST_TEST(error_of("{\"view\": ").find("byte") != std::string::npos);
    error_of("");
}

BOOST_AUTO_TEST_CASE(values_are_shown_no_finer_than_their_interval_bears) {
    for (const double nothing : {0.0, -0.0, -0.004, 0.004}) BOOST_TEST((whole_percent(nothing) == "0 %"));
    BOOST_TEST((whole_percent(-0.2) == "-20 %"));
    BOOST_TEST((with_interval(62.34, 59.1, 65.2, "%") == "62 % (59-65)"));
    BOOST_TEST((with_interval(3.456, 3.11, 3.81, "mm") == "3.5 mm (3.1-3.8)"));
    BOOST_TEST((with_interval(0.1234, 0.1134, 0.1334, "mm/mm2") == "0.12 mm/mm\u00b2 (0.11-0.13)"));
    BOOST_TEST((with_interval(62, 38.4, 85.9, "%") == "62 % (38-86)"));
    BOOST_TEST((with_interval(-0.2, -1.4, 1.1, "%") == "0 % (-1 to 1)"));
    BOOST_TEST((with_interval(0.2, 0.1, 0.3, "-") == "0.2 (0.1-0.3)"));
    BOOST_TEST((plain_value(70, 0, "%") == "70 %"));
    BOOST_TEST((plain_value(2.5, 0, "mm") == "2.5 mm"));
    BOOST_TEST((plain_value(12.345, 0.2, "mm") == "12.3 mm"));
    BOOST_TEST((plain_value(0, 0, "mm") == "0 mm"));
}

BOOST_AUTO_TEST_CASE(inches_are_exact_conversions) {
    const auto in = LengthUnit::inches;
    BOOST_TEST((plain_value(25.4, 0.254, "mm", in) == "1.00 in"));
    BOOST_TEST((with_interval(50.8, 48.26, 53.34, "mm", in) == "2.0 in (1.9-2.1)"));
    BOOST_TEST((plain_value(10, 1, "1/cm", in) == "25 1/in"));
    BOOST_TEST((plain_value(2, 0.05, "mm/mm2", in) == "51 in/in\u00b2"));
    BOOST_TEST((plain_value(62, 3, "%", in) == "62 %"));
}
