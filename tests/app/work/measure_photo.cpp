#include "work/measure_photo.h"

#include <QCryptographicHash>
#include <QJsonDocument>
#include <boost/test/unit_test.hpp>

#include "app/work/card_photo.h"
#include "domain/words.h"
#include "work/measure_json.h"

using namespace kempt;

namespace {
const Quantity* find(const std::vector<Quantity>& readings, const std::string& name) {
    for (const Quantity& reading : readings)
        if (reading.name == name) return &reading;
    return nullptr;
}
}  // namespace

BOOST_AUTO_TEST_SUITE(measure_photo)

BOOST_AUTO_TEST_CASE(a_photo_with_the_card_gives_scale_and_readings_inside_their_intervals) {
    const tests::CardPhoto what;
    const auto result = work::measure_photo(tests::photo_bytes_of(what), tests::marks_for(what));
    BOOST_REQUIRE_MESSAGE(result.ok(), (result.ok() ? "" : result.error().sentence()));
    BOOST_TEST(result->calibration.card_found);
    BOOST_TEST(result->px_per_mm == 20.0, boost::test_tools::tolerance(0.01));
    BOOST_TEST_MESSAGE(result->quality.level);
    for (const Finding& finding : result->quality.findings) BOOST_TEST_MESSAGE(finding.code + ": " + finding.text);
    BOOST_REQUIRE(find(result->readings, "edge_coverage"));
    for (const Quantity& reading : result->readings) {
        BOOST_TEST_MESSAGE(reading.name << " " << reading.value << " " << reading.low << " " << reading.high);
        BOOST_TEST(reading.low <= reading.value);
        BOOST_TEST(reading.value <= reading.high);
    }
    BOOST_TEST(result->readings.size() + result->refused.size() ==
               static_cast<std::size_t>(edge_reading_names().size()));
}

BOOST_AUTO_TEST_CASE(without_card_and_points_every_reading_is_refused_for_want_of_a_scale) {
    tests::CardPhoto what;
    what.with_card = false;
    const auto result = work::measure_photo(tests::photo_bytes_of(what), tests::marks_for(what));
    BOOST_REQUIRE(result.ok());
    BOOST_TEST(result->readings.empty());
    BOOST_REQUIRE_EQUAL(result->refused.size(), static_cast<std::size_t>(edge_reading_names().size()));
    for (const Refusal& refusal : result->refused) BOOST_TEST(!refusal.text.empty());
}

BOOST_AUTO_TEST_CASE(two_points_give_the_scale_where_there_is_no_card) {
    tests::CardPhoto what;
    what.with_card = false;
    Marks marks = tests::marks_for(what);
    marks.scale_points = {QPointF(100, 100), QPointF(1100, 100)};
    marks.scale_mm = 50;
    const auto result = work::measure_photo(tests::photo_bytes_of(what), marks);
    BOOST_REQUIRE_MESSAGE(result.ok(), (result.ok() ? "" : result.error().sentence()));
    BOOST_TEST(result->calibration.two_points);
    BOOST_TEST(result->px_per_mm == 20.0, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_soft_photo_keeps_its_coverage_and_refuses_counts_with_the_gates_sentence) {
    tests::CardPhoto what;
    what.px_per_mm = 24;
    what.size = QSize(2400, 1900);
    what.edge_y = 1000;
    for (const double blur : {0.9, 2.4}) {
        what.blur_px = blur;
        const auto result = work::measure_photo(tests::photo_bytes_of(what), tests::marks_for(what));
        BOOST_REQUIRE(result.ok());
        BOOST_TEST_CONTEXT("blur " << blur << " px, rise " << result->calibration.edge_rise_mm << " mm") {
            BOOST_TEST(result->quality.level != "refused");
            BOOST_TEST((find(result->readings, "edge_coverage") != nullptr));
            const Finding* finding = card::against_counts(result->quality);
            BOOST_TEST((finding != nullptr) == (blur > 2));
            for (const char* name : {"edge_strands", "length_density"}) {
                BOOST_TEST((find(result->readings, name) != nullptr) == (blur < 2));
                for (const Refusal& refusal : result->refused)
                    if (refusal.name == name) {
                        BOOST_TEST(refusal.code == "too-soft-for-counts");
                        BOOST_TEST(refusal.text == finding->text);
                    }
            }
            BOOST_TEST(result->readings.size() + result->refused.size() ==
                       static_cast<std::size_t>(edge_reading_names().size()));
        }
    }
}

BOOST_AUTO_TEST_CASE(gate_and_edges_agree_on_the_scale_that_counts_need) {
    for (const double px_per_mm : {19.6, 20.0}) {
        tests::CardPhoto what;
        what.px_per_mm = px_per_mm;
        const auto result = work::measure_photo(tests::photo_bytes_of(what), tests::marks_for(what));
        BOOST_REQUIRE(result.ok());
        BOOST_TEST_CONTEXT(result->px_per_mm) {
            const Finding* finding = card::against_counts(result->quality);
            BOOST_TEST((finding != nullptr) == (px_per_mm < 19.8));
            BOOST_TEST((find(result->readings, "edge_strands") != nullptr) == (px_per_mm > 19.8));
        }
    }
}

BOOST_AUTO_TEST_CASE(a_photo_that_the_gate_refuses_gives_no_reading_and_says_the_gates_reason) {
    tests::CardPhoto what;
    what.blur_px = 6;
    const auto result = work::measure_photo(tests::photo_bytes_of(what), tests::marks_for(what));
    BOOST_REQUIRE(result.ok());
    BOOST_TEST(result->quality.level == "refused");
    BOOST_TEST(result->readings.empty());
    BOOST_REQUIRE_EQUAL(result->refused.size(), static_cast<std::size_t>(edge_reading_names().size()));
    for (const Refusal& refusal : result->refused) {
        BOOST_TEST(refusal.code == "blurred");
        BOOST_TEST(refusal.text == result->quality.findings.front().text);
    }
}

BOOST_AUTO_TEST_CASE(a_coarse_photo_gives_coverage_and_nothing_else) {
    tests::CardPhoto what;
    what.with_card = false;
    what.px_per_mm = 6;
    what.size = QSize(600, 500);
    what.edge_y = 270;
    const QByteArray bytes = tests::photo_bytes_of(what);
    Marks marks = tests::marks_for(what);
    const auto at = [&](double px_per_mm) {
        marks.scale_points = {QPointF(20, 20), QPointF(320, 20)};
        marks.scale_mm = 300 / px_per_mm;
        return work::measure_photo(bytes, marks);
    };
    const auto coarse = at(6), too_coarse = at(3.9);
    BOOST_REQUIRE(coarse.ok());
    BOOST_REQUIRE(too_coarse.ok());
    BOOST_REQUIRE_EQUAL(coarse->readings.size(), 1u);
    BOOST_TEST(coarse->readings.front().name == "edge_coverage");
    for (const Refusal& refusal : coarse->refused)
        BOOST_TEST((refusal.code == "coverage-only" || refusal.code.starts_with("too-coarse")), refusal.code);
    BOOST_TEST(too_coarse->readings.empty());
    for (const Refusal& refusal : too_coarse->refused) BOOST_TEST(refusal.code == "too-coarse");
}

BOOST_AUTO_TEST_CASE(the_check_sum_is_left_out_only_when_it_is_not_wanted) {
    const QByteArray bytes = tests::photo_bytes_of({});
    work::MeasureOptions options;
    const auto with = work::measure_photo(bytes, tests::marks_for({}), options);
    options.with_sha256 = false;
    const auto without = work::measure_photo(bytes, tests::marks_for({}), options);
    BOOST_REQUIRE(with.ok());
    BOOST_REQUIRE(without.ok());
    BOOST_TEST(with->sha256.toStdString() ==
               QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString());
    BOOST_TEST(without->sha256.isEmpty());
    BOOST_REQUIRE_EQUAL(with->readings.size(), without->readings.size());
    for (std::size_t i = 0; i < with->readings.size(); ++i)
        BOOST_TEST(with->readings[i].value == without->readings[i].value);
}

BOOST_AUTO_TEST_CASE(marks_outside_the_photo_are_an_error_that_names_them) {
    const tests::CardPhoto what;
    Marks marks = tests::marks_for(what);
    marks.edge_line.append(QPointF(99999, 5));
    const auto result = work::measure_photo(tests::photo_bytes_of(what), marks);
    BOOST_REQUIRE(!result.ok());
    BOOST_TEST(static_cast<int>(result.error().kind) == static_cast<int>(ErrorKind::invalid));
    BOOST_TEST(result.error().what.find("the edge line") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(bytes_that_are_no_picture_are_an_error) {
    const auto result = work::measure_photo("not a picture", tests::marks_for({}));
    BOOST_REQUIRE(!result.ok());
    BOOST_TEST(!result.error().sentence().empty());
}

BOOST_AUTO_TEST_CASE(a_stop_at_any_step_gives_cancelled_or_the_whole_result) {
    const tests::CardPhoto what;
    const QByteArray bytes = tests::photo_bytes_of(what);
    int steps = 0;
    const auto whole = work::measure_photo(bytes, tests::marks_for(what), {}, [&](double, std::string_view) {
        ++steps;
        return Go::on;
    });
    BOOST_REQUIRE(whole.ok());
    BOOST_TEST(steps > 3);
    int too_late = 0;
    for (int stop_at = 0; stop_at < steps; ++stop_at) {
        int step = 0;
        const auto result = work::measure_photo(bytes, tests::marks_for(what), {}, [&](double, std::string_view) {
            return step++ == stop_at ? Go::stop : Go::on;
        });
        if (result.ok()) {  // the step said that all was done
            ++too_late;
            BOOST_TEST(result->readings.size() == whole->readings.size());
        } else {
            BOOST_TEST(static_cast<int>(result.error().kind) == static_cast<int>(ErrorKind::cancelled));
        }
    }
    BOOST_TEST(too_late <= 1);
}

BOOST_AUTO_TEST_CASE(progress_never_runs_backwards) {
    double last = 0;
    const tests::CardPhoto what;
    const auto result = work::measure_photo(tests::photo_bytes_of(what), tests::marks_for(what), {},
                                            [&](double fraction, std::string_view) {
                                                BOOST_TEST(fraction >= last);
                                                last = fraction;
                                                return Go::on;
                                            });
    BOOST_TEST(result.ok());
    BOOST_TEST(last == 1.0);
}

BOOST_AUTO_TEST_CASE(the_json_has_the_members_of_the_contract) {
    const tests::CardPhoto what;
    const auto result = work::measure_photo(tests::photo_bytes_of(what), tests::marks_for(what));
    BOOST_REQUIRE(result.ok());
    const QJsonObject json = work::json_of_measure(result.value());
    BOOST_TEST((json.keys() == QStringList{"card", "photo", "quality", "readings", "refused"}));
    BOOST_TEST((json["photo"].toObject().keys() == QStringList{"height", "width"}));
    BOOST_TEST((json["card"].toObject().keys() == QStringList{"found", "gains", "px_per_mm", "tilt_deg"}));
    BOOST_TEST(json["card"].toObject()["gains"].toArray().size() == 3);
    BOOST_TEST((json["quality"].toObject().keys() == QStringList{"findings", "level"}));
    for (const QJsonValue& reading : json["readings"].toArray())
        BOOST_TEST((reading.toObject().keys() == QStringList{"high", "low", "name", "unit", "value"}));
    for (const QJsonValue& refusal : json["refused"].toArray())
        BOOST_TEST((refusal.toObject().keys() == QStringList{"code", "name", "text"}));
}

BOOST_AUTO_TEST_CASE(a_stored_calibration_reads_back_what_it_was) {
    const tests::CardPhoto what;
    const auto open = work::open_photo(tests::photo_bytes_of(what), {});
    BOOST_REQUIRE(open.ok());
    const card::Calibration& one = (*open)->card;
    const auto back = work::calibration_from_json(QJsonDocument(work::json_of_calibration(one)).toJson());
    BOOST_TEST(back.source.toStdString() == "card");
    for (int i = 0; i < 9; ++i) BOOST_TEST(back.calibration.mm_from_px.val[i] == one.mm_from_px.val[i]);
    BOOST_TEST(work::calibration_from_json("{}").has_scale() == false);
}

BOOST_AUTO_TEST_CASE(photos_of_odd_sizes_and_bands_that_leave_the_photo_give_an_answer_or_an_error) {
    for (const QSize size : {QSize(1, 1), QSize(3, 900), QSize(40000, 30), QSize(60, 60)}) {
        QImage image(size, QImage::Format_RGB888);
        image.fill(QColor(190, 150, 130));
        const QByteArray bytes = tests::encoded(image, "PNG");
        Marks marks;
        marks.edge_line = {QPointF(0, 0), QPointF(size.width(), 0)};
        marks.hair_side = QPointF(size.width() / 2.0, size.height());
        marks.scale_points = {QPointF(0, 0), QPointF(size.width(), size.height())};
        marks.scale_mm = 30;
        const auto result = work::measure_photo(bytes, marks);
        BOOST_TEST(
            (result.ok() ? !result->refused.empty() || !result->readings.empty() : !result.error().sentence().empty()));
    }
    const tests::CardPhoto what;
    for (const double y : {5.0, 1690.0}) {
        Marks marks = tests::marks_for(what);
        for (QPointF& p : marks.edge_line) p.setY(y);
        marks.hair_side = QPointF(1000, y < 100 ? y + 3 : y + 5);
        const auto result = work::measure_photo(tests::photo_bytes_of(what), marks);
        BOOST_TEST((result.ok() || !result.error().sentence().empty()));
    }
}

BOOST_AUTO_TEST_CASE(rounding_keeps_significant_digits) {
    BOOST_TEST(work::rounded(123456.789) == 123457.0);
    BOOST_TEST(work::rounded(0.000123456789) == 0.000123457);
    BOOST_TEST(work::rounded(0) == 0.0);
    BOOST_TEST(work::rounded(-1.23456789, 3) == -1.23);
}

// The earlier result is doctored, so that it shows whether it was taken over or measured again.
BOOST_AUTO_TEST_CASE(what_the_hand_has_not_touched_is_taken_over_and_what_it_has_is_measured_again) {
    const tests::CardPhoto what;
    const auto open = work::open_photo(tests::photo_bytes_of(what), {});
    BOOST_REQUIRE(open.ok());
    const Marks marks = tests::marks_for(what);
    auto first = work::measure_open_photo(*open.value(), marks, {});
    BOOST_REQUIRE(first.ok());
    BOOST_REQUIRE(!first->readings.empty());
    const double honest = first->readings.front().value;
    work::Earlier earlier{marks, *first};
    earlier.result.readings.front().value = -1;
    const auto same = work::measure_open_photo(*open.value(), marks, {}, {}, &earlier);
    BOOST_REQUIRE(same.ok());
    BOOST_TEST(same->readings.front().value == -1);
    BOOST_TEST(same->readings.size() == first->readings.size());
    BOOST_TEST(same->refused.size() == first->refused.size());
    BOOST_TEST(same->quality.level == first->quality.level);
    work::MeasureOptions with_overlay;
    with_overlay.with_overlay = true;  // the earlier one has none
    const auto asked = work::measure_open_photo(*open.value(), marks, with_overlay, {}, &earlier);
    BOOST_REQUIRE(asked.ok());
    BOOST_TEST(asked->readings.front().value == honest);
    BOOST_TEST(!asked->edges.overlay_px.empty());
    Marks moved = marks;
    moved.edge_line.front() += QPointF(0, 1);
    const auto again = work::measure_open_photo(*open.value(), moved, {}, {}, &earlier);
    BOOST_REQUIRE(again.ok());
    BOOST_TEST(again->readings.front().value > 0);
}

BOOST_AUTO_TEST_SUITE_END()
