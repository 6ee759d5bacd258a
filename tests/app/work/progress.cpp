#include "work/progress_of.h"

#include <QCryptographicHash>
#include <QJsonArray>

#include "app/work/temporary_book.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "core/version.h"
#include "domain/words.h"
#include "work/chart_of.h"
#include "work/progress_json.h"
#include "work/series_points.h"
#include "work/series_words.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

struct Stored {
    double value = 0;
    bool refused = false;
    QString source = QStringLiteral("card");
    int version = analysis_version;
    double half = 2;  // of the interval
};

// Readings straight into the book: what is under test here is what is made of them.
void keep(TemporaryBook& in, const Visit& visit, View view, const QVector<Stored>& shots,
          const QString& name = QStringLiteral("edge_coverage")) {
    static int number = 0;
    for (const Stored& stored : shots) {
        const QByteArray bytes = "photo " + QByteArray::number(++number);
        PhotoRecord photo;
        photo.visit = visit.id;
        photo.view = view;
        photo.shot = TemporaryBook::required(store::next_shot(*in.book, visit.id, view));
        photo.file_name = QStringLiteral("x.jpg");
        photo.format = QStringLiteral("jpeg");
        photo.size = QSize(100, 100);
        const Id id = TemporaryBook::required(store::add_photo(*in.book, photo, bytes));
        Marks marks;
        marks.photo = id;
        marks.view = view;
        marks.edge_line = {QPointF(1, 1), QPointF(90, 1)};
        marks.hair_side = QPointF(50, 50);
        const Id marks_id = TemporaryBook::required(store::add_marks(*in.book, marks));
        ReadingRecord reading;
        reading.photo = id;
        reading.marks = marks_id;
        reading.name = name;
        reading.unit = name == u"edge_coverage" ? QStringLiteral("%")
                       : name == u"tone_spread" ? QStringLiteral("dE00")
                                                : QStringLiteral("mm");
        reading.value = stored.value;
        reading.low = stored.value - stored.half;
        reading.high = stored.value + stored.half;
        reading.refused = stored.refused;
        if (stored.refused) {
            reading.refusal_code = QStringLiteral("blurred");
            reading.refusal_text = QStringLiteral("The photo is blurred.");
        }
        reading.analysis_version = stored.version;
        reading.options = QStringLiteral("{}");
        reading.card = QStringLiteral("{\"source\":\"%1\"}").arg(stored.source);
        reading.photo_sha256 = QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
        reading.measured_at = QDateTime(QDate(2026, 8, 1), QTime(12, 0), Qt::UTC);
        TemporaryBook::required(store::add_readings(*in.book, {reading}));
    }
}

work::ClientProgress compared(TemporaryBook& in) {
    return TemporaryBook::required(work::progress_of(*in.book, {in.client.id, std::nullopt, std::nullopt}));
}

const work::Series& coverage(const work::ClientProgress& progress, View view = View::left_temple) {
    const work::Series* series = progress.find(view, QStringLiteral("edge_coverage"));
    BOOST_REQUIRE(series);
    return *series;
}

std::string verdict(const work::Series& series, Id from, Id to) {
    const work::PairVerdict* pair = series.verdict(from, to);
    BOOST_REQUIRE(pair);
    return work::word_of(pair->judgement.verdict).toStdString();
}

}  // namespace

BOOST_AUTO_TEST_SUITE(progress)

BOOST_AUTO_TEST_CASE(a_large_rise_is_improved_and_a_small_one_is_no_detectable_change) {
    TemporaryBook in;
    const Visit second = in.add_visit(QDate(2026, 2, 12)), third = in.add_visit(QDate(2026, 3, 12));
    keep(in, in.visit, View::left_temple, {{30}, {31}, {29.5}});
    keep(in, second, View::left_temple, {{30.5}, {31.5}, {30}});
    keep(in, third, View::left_temple, {{55}, {56}, {54}});
    const auto progress = compared(in);
    const work::Series& series = coverage(progress);
    BOOST_TEST(verdict(series, in.visit.id, second.id) == "no detectable change");
    BOOST_TEST(verdict(series, in.visit.id, third.id) == "improved");
    BOOST_TEST(verdict(series, second.id, third.id) == "improved");
    BOOST_TEST(series.first_to_last()->to == third.id);
    BOOST_TEST(series.spread.sd > 0);
    for (const work::VisitPoint& point : series.visits) {
        BOOST_TEST(point.low < *point.mean);
        BOOST_TEST(point.high > *point.mean);
        BOOST_TEST(point.in_trend);
    }
}

BOOST_AUTO_TEST_CASE(fewer_than_four_visits_give_no_trend_and_four_do) {
    TemporaryBook in;
    keep(in, in.visit, View::nape, {{30}, {31}});
    for (int month = 2; month <= 3; ++month)
        keep(in, in.add_visit(QDate(2026, month, 12)), View::nape, {{30.0 + month}});
    BOOST_TEST(!coverage(compared(in), View::nape).trend.has_value());
    BOOST_TEST(!coverage(compared(in), View::nape).trend_text.isEmpty());
    keep(in, in.add_visit(QDate(2026, 4, 12)), View::nape, {{40}});
    const auto progress = compared(in);
    const work::Series& series = coverage(progress, View::nape);
    BOOST_REQUIRE(series.trend.has_value());
    BOOST_TEST(series.trend->slope > 0);
    BOOST_TEST((series.trend_origin == QDate(2026, 1, 12)));
}

BOOST_AUTO_TEST_CASE(visits_with_another_hair_state_are_not_compared_and_the_reason_names_both) {
    TemporaryBook in;
    const Visit wet = in.add_visit(QDate(2026, 2, 12), {true, false, false});
    keep(in, in.visit, View::left_temple, {{30}, {31}});
    keep(in, wet, View::left_temple, {{60}, {61}});
    const auto progress = compared(in);
    const work::Series& series = coverage(progress);
    BOOST_TEST(verdict(series, in.visit.id, wet.id) == "not comparable");
    const std::string reason = series.verdict(in.visit.id, wet.id)->judgement.reason;
    BOOST_TEST(reason.find("wet") != std::string::npos);
    BOOST_TEST(reason.find("dry") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_scale_from_two_points_is_not_compared_with_the_cards) {
    TemporaryBook in;
    const Visit second = in.add_visit(QDate(2026, 2, 12));
    keep(in, in.visit, View::left_temple, {{30}, {31}});
    keep(in, second, View::left_temple, {{60, false, QStringLiteral("points")}});
    BOOST_TEST(verdict(coverage(compared(in)), in.visit.id, second.id) == "not comparable");
}

BOOST_AUTO_TEST_CASE(readings_of_another_version_of_the_method_are_not_compared) {
    TemporaryBook in;
    const Visit second = in.add_visit(QDate(2026, 2, 12));
    keep(in, in.visit, View::left_temple, {{30, false, QStringLiteral("card"), analysis_version + 1}});
    keep(in, second, View::left_temple, {{60}});
    BOOST_TEST(verdict(coverage(compared(in)), in.visit.id, second.id) == "not comparable");
}

BOOST_AUTO_TEST_CASE(refused_shots_are_left_out_with_their_reason_and_a_visit_of_them_is_not_comparable) {
    TemporaryBook in;
    const Visit second = in.add_visit(QDate(2026, 2, 12)), third = in.add_visit(QDate(2026, 3, 12));
    keep(in, in.visit, View::left_temple, {{30}, {31}});
    keep(in, second, View::left_temple, {{0, true}, {0, true}});
    keep(in, third, View::left_temple, {{50}, {0, true}, {51}});
    const auto progress = compared(in);
    const work::Series& series = coverage(progress);
    BOOST_TEST(verdict(series, in.visit.id, second.id) == "not comparable");
    BOOST_TEST(series.verdict(in.visit.id, second.id)->judgement.reason.find("blurred") != std::string::npos);
    BOOST_TEST(verdict(series, in.visit.id, third.id) == "improved");
    BOOST_TEST(series.visits[2].shots.size() == 2u);
    BOOST_TEST(series.visits[2].left_out.size() == 1);
    BOOST_TEST(*series.visits[2].mean == 50.5);
}

BOOST_AUTO_TEST_CASE(a_shot_whose_line_was_drawn_anew_is_left_out_until_it_is_measured) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    keep(in, in.visit, View::left_temple, {{50}, {51}});
    keep(in, later, View::left_temple, {{80}, {81}});
    const Id photo = coverage(compared(in)).visits[1].shots[1].photo;
    Marks anew = *TemporaryBook::required(store::latest_marks(*in.book, photo));
    anew.edge_line[0].ry() += 20;
    TemporaryBook::required(store::add_marks(*in.book, anew));
    const auto progress = compared(in);
    const work::VisitPoint& point = coverage(progress).visits[1];
    BOOST_REQUIRE_EQUAL(point.shots.size(), 1U);
    BOOST_TEST(point.shots[0].value == 80);
    BOOST_REQUIRE_EQUAL(point.left_out.size(), 1);
    BOOST_TEST(point.left_out[0].toStdString() == "Shot 2: The line was drawn anew and is not measured yet.");
    BOOST_TEST(coverage(progress).spread_from.contains(QStringLiteral("1 repeat shot of this client")));
    anew = *TemporaryBook::required(store::latest_marks(*in.book, point.shots[0].photo));
    anew.edge_line[0].ry() += 20;
    TemporaryBook::required(store::add_marks(*in.book, anew));
    BOOST_TEST(verdict(coverage(compared(in)), in.visit.id, later.id) == "not comparable");
}

BOOST_AUTO_TEST_CASE(the_sentence_on_noise_names_only_what_the_noise_comes_from) {
    const auto words = [](double client, double book) {
        return work::spread_sentence({1, client, 0}, {1, book, 0}, 3, {}).toStdString();
    };
    BOOST_TEST(words(1, 0) ==
               "How far shots scatter is known from 1 repeat shot of this client and the documented default.");
    BOOST_TEST(words(2, 8) ==
               "How far shots scatter is known from 2 repeat shots of this client, filled up from "
               "the other repeat shots in the book.");
    BOOST_TEST(words(0, 7).ends_with("from the other repeat shots in the book and the documented default."));
    BOOST_TEST(words(0, 8).ends_with("from the other repeat shots in the book."));
    BOOST_TEST(words(0, 0).ends_with("how far shots scatter is known from the documented default."));
}

BOOST_AUTO_TEST_CASE(the_way_to_the_target_and_its_forecast) {
    TemporaryBook in;
    TemporaryBook::required(
        work::set_target(*in.book, {0, in.client.id, View::left_temple, QStringLiteral("edge_coverage"), 70}));
    const double values[] = {30, 34, 39, 43, 48, 50};
    for (int i = 0; i < 6; ++i) {
        const Visit visit = i == 0 ? in.visit : in.add_visit(QDate(2026, 1 + i, 12));
        keep(in, visit, View::left_temple, {{values[i] - 0.5}, {values[i] + 0.5}});
    }
    const auto progress = compared(in);
    const work::Series& series = coverage(progress);
    BOOST_REQUIRE(series.target.has_value());
    BOOST_TEST(*series.target->share == 0.5, boost::test_tools::tolerance(1e-9));
    BOOST_REQUIRE(series.target->earliest.has_value());
    BOOST_TEST((*series.target->earliest > QDate(2026, 6, 12)));
    if (series.target->latest) BOOST_TEST((*series.target->latest >= *series.target->earliest));
    BOOST_TEST(!series.target->forecast_text.isEmpty());
    const charts::ChartData chart = work::chart_of(series, progress.services);
    BOOST_TEST(chart.points.size() == 6);
    BOOST_REQUIRE(chart.trend.has_value());
    BOOST_TEST(chart.trend->per_day == series.trend->slope);
    // The line through the pivot is the line of the trend.
    const double at_pivot =
        series.trend->intercept +
        series.trend->slope * static_cast<double>(series.trend_origin.daysTo(chart.trend->pivot_date));
    BOOST_TEST(chart.trend->pivot_value == at_pivot, boost::test_tools::tolerance(1e-9));
    const QJsonObject json = work::json_of_progress(progress);
    BOOST_TEST(json["series"].toArray().size() == 1);
    BOOST_TEST(json["series"].toArray()[0].toObject()["verdicts"].toArray().size() == 15);
}

BOOST_AUTO_TEST_CASE(spread_and_noise_band_carry_what_repeat_shots_cannot_show) {
    TemporaryBook in;
    keep(in, in.visit, View::left_temple, {{30}, {31}, {29}});
    keep(in, in.add_visit(QDate(2026, 2, 12)), View::left_temple, {{33}, {35}});
    keep(in, in.visit, View::nape, {{50}, {51}});
    const auto progress = compared(in);
    const work::Series& series = coverage(progress);
    const change::Spread expected = change::spread_for(
        "edge_coverage", change::pooled_within_sd({{30, 31, 29}, {33, 35}}), change::pooled_within_sd({{50, 51}}));
    BOOST_TEST(series.spread.sd == expected.sd, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(series.spread.df == expected.df);
    BOOST_TEST(series.spread.setup_sd == change::default_setup_sd("edge_coverage"));
    // However many shots, the band never gets narrower than what lies between visits.
    std::vector<work::VisitPoint> points(1);
    for (int shot = 0; shot < 100; ++shot) points[0].shots.push_back({0, shot, 50, 49, 51});
    work::add_noise(points, {0.5, 1e9, 1.5}, QStringLiteral("edge_coverage"), QStringLiteral("%"));
    BOOST_TEST(points[0].high - 50 == 1.96 * std::hypot(0.05, 1.5), boost::test_tools::tolerance(1e-3));
}

BOOST_AUTO_TEST_CASE(tone_asks_for_more_change_where_its_photos_leave_more_open_and_says_why) {
    TemporaryBook in;
    const auto keep_tone = [&](const Visit& visit, double value, double half) {
        Stored shot{value};
        shot.half = half;
        keep(in, visit, View::lengths, {shot, shot}, QStringLiteral("tone_spread"));
    };
    const Visit open = in.add_visit(QDate(2026, 2, 12)), last = in.add_visit(QDate(2026, 3, 12));
    const QString why = QStringLiteral("strands of mixed colour");
    keep_tone(in.visit, 14, 2);
    keep_tone(last, 9, 2);
    BOOST_TEST(!compared(in).series.front().spread_from.contains(why));
    keep_tone(open, 9, 6);
    const auto progress = compared(in);
    const work::Series& series = progress.series.front();
    BOOST_TEST_REQUIRE(series.visits.size() == 3u);
    BOOST_TEST(verdict(series, in.visit.id, open.id) == "no detectable change");
    BOOST_TEST(verdict(series, in.visit.id, last.id) == "improved");  // the visit between says nothing about these
    BOOST_TEST(series.visits[1].high > series.visits[2].high);
    BOOST_TEST(series.spread_from.contains(why), series.spread_from.toStdString());
}

BOOST_AUTO_TEST_CASE(sentences_use_the_words_of_the_trade_and_the_unit_asked_for) {
    TemporaryBook in;
    TemporaryBook::required(
        work::set_target(*in.book, {0, in.client.id, View::left_temple, QStringLiteral("fill_depth"), 2}));
    const double depths[] = {8.2, 7.4, 6.9, 6.1, 5.2};
    for (int i = 0; i < 5; ++i) {
        const Visit visit = i == 0 ? in.visit : in.add_visit(QDate(2026, 1 + i, 12));
        keep(in, visit, View::left_temple, {{depths[i]}, {depths[i] + 0.2}}, QStringLiteral("fill_depth"));
    }
    const auto in_unit = [&](LengthUnit length) {
        return TemporaryBook::required(work::progress_of(*in.book, {in.client.id, {}, {}, length}));
    };
    const auto metric = in_unit(LengthUnit::millimetres), imperial = in_unit(LengthUnit::inches);
    const work::Series &mm = metric.series.front(), &inch = imperial.series.front();
    BOOST_TEST(mm.first_to_last()->judgement.difference == inch.first_to_last()->judgement.difference);
    const QString mm_reason = QString::fromStdString(mm.first_to_last()->judgement.reason);
    const QString reason = QString::fromStdString(inch.first_to_last()->judgement.reason);
    BOOST_TEST(mm_reason.startsWith(QStringLiteral("Fill depth fell by 3.0 mm, from 8.3 to 5.3 mm")),
               mm_reason.toStdString());
    BOOST_TEST(reason.startsWith(QStringLiteral("Fill depth fell by 0.12 in, from 0.33 to 0.21 in")),
               reason.toStdString());
    for (const QString& words : {reason, inch.trend_text, inch.target->forecast_text, inch.spread_from})
        BOOST_TEST(!words.contains(QStringLiteral("mm")), words.toStdString());
    BOOST_TEST(inch.trend_text.contains(QStringLiteral(" in a month")), inch.trend_text.toStdString());
    BOOST_TEST(mm.trend_text.contains(QStringLiteral(" mm a month")), mm.trend_text.toStdString());
    for (const work::Series& series : metric.series)
        for (const work::PairVerdict& pair : series.verdicts)
            BOOST_TEST(pair.judgement.reason.starts_with(
                work::sentence_start(title_of_reading(series.reading)).toStdString()));
}

// p of five visits that rise all the way is 2 / 5! = 0.017; of 40 it is smaller than anything worth printing. A trend
// that may be chance is not given a direction, and no figure has more decimals than its interval can bear.
BOOST_AUTO_TEST_CASE(a_trend_is_told_with_no_more_figures_than_it_can_bear) {
    const auto told = [](const std::vector<double>& values) {
        TemporaryBook in;
        int months = 0;
        for (const double value : values) {
            const Visit visit = months == 0 ? in.visit : in.add_visit(QDate(2026, 1, 12).addMonths(months));
            keep(in, visit, View::nape, {{value}, {value + 0.4}});
            ++months;
        }
        return coverage(compared(in), View::nape).trend_text.toStdString();
    };
    std::vector<double> rising, flat;
    for (int i = 0; i < 40; ++i) rising.push_back(10 + 0.61 * i + (i % 3) * 0.2);
    for (int i = 0; i < 9; ++i) flat.push_back(20 + (i * 5 % 9) * 0.3);
    BOOST_TEST(told(rising).find("; p < 0.001): more than chance.") != std::string::npos, told(rising));
    BOOST_TEST(told(rising).find("e-") == std::string::npos, told(rising));
    BOOST_TEST(told(flat).find("shows no sure rise or fall: \u2212") != std::string::npos, told(flat));
    BOOST_TEST(told(flat).find("fell by") == std::string::npos, told(flat));
}

BOOST_AUTO_TEST_CASE(noise_bands_stay_within_what_a_share_can_be) {
    TemporaryBook in;
    keep(in, in.visit, View::nape, {{2.5}, {6}, {2}});
    keep(in, in.add_visit(QDate(2026, 2, 12)), View::nape, {{98}, {94}, {98}});
    const auto progress = compared(in);
    BOOST_TEST(coverage(progress, View::nape).visits[0].low >= 0.0);
    BOOST_TEST(coverage(progress, View::nape).visits[1].high <= 100.0);
}

BOOST_AUTO_TEST_CASE(both_temples_of_one_visit_give_the_asymmetry) {
    TemporaryBook in;
    keep(in, in.visit, View::left_temple, {{30}, {32}});
    keep(in, in.visit, View::right_temple, {{45}});
    const auto progress = compared(in);
    BOOST_REQUIRE_EQUAL(progress.asymmetry.size(), 1u);
    BOOST_TEST(progress.asymmetry[0].difference == -14.0);
}

BOOST_AUTO_TEST_CASE(an_unknown_client_or_reading_is_an_error) {
    TemporaryBook in;
    BOOST_TEST(!work::progress_of(*in.book, {999, std::nullopt, std::nullopt}).ok());
    BOOST_TEST(!work::progress_of(*in.book, {in.client.id, std::nullopt, QStringLiteral("beauty")}).ok());
    const auto stopped = work::progress_of(*in.book, {in.client.id, std::nullopt, std::nullopt},
                                           [](double, std::string_view) { return Go::stop; });
    BOOST_REQUIRE(!stopped.ok());
    BOOST_TEST(static_cast<int>(stopped.error().kind) == static_cast<int>(ErrorKind::cancelled));
}

BOOST_AUTO_TEST_SUITE_END()
