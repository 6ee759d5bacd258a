#include "work/measure_in_book.h"

#include <QJsonDocument>
#include <QJsonObject>

#include "app/work/book_photos.h"
#include "core/version.h"
#include "domain/words.h"
#include "work/carry_marks.h"

using namespace kempt;
using tests::TemporaryBook;

BOOST_AUTO_TEST_SUITE(measure_in_book)

BOOST_AUTO_TEST_CASE(readings_are_kept_with_everything_that_explains_them) {
    TemporaryBook in;
    const tests::CardPhoto what = tests::small_photo(12, 1);
    const Id photo = tests::add_photo(in, in.visit, what);
    const Marks marks = TemporaryBook::required(work::set_marks(*in.book, photo, tests::marks_for(what)));
    work::MeasureInBookOptions options;
    options.clock = Clock([] { return QDateTime(QDate(2026, 3, 1), QTime(9, 30), Qt::UTC); });
    const auto measured = TemporaryBook::required(work::measure_in_book(*in.book, photo, options));
    BOOST_TEST(!measured.kept_as_they_were);
    const auto readings = TemporaryBook::required(work::readings_of(*in.book, photo));
    BOOST_REQUIRE_EQUAL(readings.size(), edge_reading_names().size());
    const auto row = TemporaryBook::required(work::photo_of(*in.book, photo));
    BOOST_TEST(!row.photo.quality_level.isEmpty());
    for (const ReadingRecord& reading : readings) {
        BOOST_TEST(reading.analysis_version == analysis_version);
        BOOST_TEST(reading.marks == marks.id);
        BOOST_TEST(reading.photo_sha256.toStdString() == row.photo.sha256.toStdString());
        BOOST_TEST((reading.measured_at == options.clock.now()));
        BOOST_TEST(QJsonDocument::fromJson(reading.options.toUtf8()).object()["depth_mm"].toDouble() == 20.0);
        BOOST_TEST(QJsonDocument::fromJson(reading.card.toUtf8()).object()["source"].toString().toStdString() ==
                   "card");
    }
}

BOOST_AUTO_TEST_CASE(the_same_photo_and_marks_are_not_measured_twice_unless_asked) {
    TemporaryBook in;
    const Id photo = tests::add_measured(in, in.visit, tests::small_photo(12, 1));
    BOOST_TEST(TemporaryBook::required(work::measure_in_book(*in.book, photo)).kept_as_they_were);
    work::MeasureInBookOptions again;
    again.again = true;
    BOOST_TEST(!TemporaryBook::required(work::measure_in_book(*in.book, photo, again)).kept_as_they_were);
    // Another printer correction is another measurement.
    TemporaryBook::required(work::set_printer_scale(*in.book, 1.02));
    BOOST_TEST(!TemporaryBook::required(work::measure_in_book(*in.book, photo)).kept_as_they_were);
}

BOOST_AUTO_TEST_CASE(a_refused_photo_keeps_refusals_only_each_with_the_gates_code) {
    TemporaryBook in;
    tests::CardPhoto what = tests::small_photo(12, 1);
    what.blur_px = 6;
    const Id photo = tests::add_measured(in, in.visit, what);
    const auto row = TemporaryBook::required(work::photo_of(*in.book, photo));
    BOOST_TEST(row.photo.quality_level.toStdString() == "refused");
    BOOST_REQUIRE_EQUAL(row.readings.size(), edge_reading_names().size());
    for (const ReadingRecord& reading : row.readings) {
        BOOST_TEST(reading.refused);
        BOOST_TEST(reading.refusal_code.toStdString() == "blurred");
        BOOST_TEST(!reading.refusal_text.isEmpty());
    }
}

BOOST_AUTO_TEST_CASE(a_stop_before_keeping_leaves_no_reading_behind) {
    TemporaryBook in;
    const tests::CardPhoto what = tests::small_photo(12, 1);
    const Id photo = tests::add_photo(in, in.visit, what);
    TemporaryBook::required(work::set_marks(*in.book, photo, tests::marks_for(what)));
    const auto measured = work::measure_in_book(*in.book, photo, {}, [](double, std::string_view step) {
        return step == "keeping the readings" ? Go::stop : Go::on;
    });
    BOOST_REQUIRE(!measured.ok());
    BOOST_TEST(static_cast<int>(measured.error().kind) == static_cast<int>(ErrorKind::cancelled));
    BOOST_TEST(TemporaryBook::required(work::readings_of(*in.book, photo)).isEmpty());
    BOOST_TEST(TemporaryBook::required(work::photo_of(*in.book, photo)).photo.quality_level.isEmpty());
}

BOOST_AUTO_TEST_CASE(a_photo_without_marks_says_what_to_do) {
    TemporaryBook in;
    const Id photo = tests::add_photo(in, in.visit, tests::small_photo(12, 1));
    const auto measured = work::measure_in_book(*in.book, photo);
    BOOST_REQUIRE(!measured.ok());
    BOOST_TEST(measured.error().code == "no-marks");
    const auto batch = TemporaryBook::required(work::measure_all(*in.book, 0));
    BOOST_TEST(batch.without_marks == 1);
}

BOOST_AUTO_TEST_CASE(marks_that_are_drawn_again_are_one_row_and_old_ones_stay_with_their_readings) {
    TemporaryBook in;
    const tests::CardPhoto what = tests::small_photo(12, 1);
    const Id photo = tests::add_measured(in, in.visit, what);
    const Marks first = *TemporaryBook::required(work::marks_of(*in.book, photo));
    BOOST_TEST(TemporaryBook::required(work::set_marks(*in.book, photo, first)).id == first.id);
    Marks moved = first;
    moved.edge_line[0].ry() += 5;
    BOOST_TEST(TemporaryBook::required(work::set_marks(*in.book, photo, moved)).id != first.id);
    const auto readings = TemporaryBook::required(work::readings_of(*in.book, photo));
    for (const ReadingRecord& reading : readings) BOOST_TEST(reading.marks == first.id);
}

BOOST_AUTO_TEST_CASE(marks_are_carried_to_a_shot_in_which_everything_lies_elsewhere) {
    TemporaryBook in;
    const tests::CardPhoto one = tests::small_photo(12, 1);
    tests::CardPhoto other = one;  // the camera moved 60 px right and 40 px down, card and edge with it
    other.seed = 2;
    other.card_at += QPoint(60, 40);
    other.edge_y += 40;
    const Id from = tests::add_measured(in, in.visit, one), to = tests::add_photo(in, in.visit, other);
    const work::CarriedMarks proposal = TemporaryBook::required(work::carry_marks(*in.book, {from, to, {}}));
    BOOST_TEST(proposal.by.toStdString() == "card");
    const Marks& carried = proposal.marks;
    const Marks drawn = tests::marks_for(one);
    BOOST_REQUIRE_EQUAL(carried.edge_line.size(), drawn.edge_line.size());
    for (qsizetype i = 0; i + 1 < drawn.edge_line.size(); ++i) {  // the last point leaves no room to the right
        BOOST_TEST(carried.edge_line[i].x() - drawn.edge_line[i].x() == 60.0, boost::test_tools::tolerance(0.05));
        BOOST_TEST(carried.edge_line[i].y() - drawn.edge_line[i].y() == 40.0, boost::test_tools::tolerance(0.05));
    }
    BOOST_TEST(carried.photo == to);
}

BOOST_AUTO_TEST_CASE(marks_are_not_carried_without_a_card_or_to_another_view) {
    TemporaryBook in;
    const tests::CardPhoto one = tests::small_photo(12, 1);
    tests::CardPhoto bare = tests::small_photo(12, 2);
    bare.with_card = false;
    const Id from = tests::add_measured(in, in.visit, one), to = tests::add_photo(in, in.visit, bare);
    const Id nape = tests::add_photo(in, in.visit, tests::small_photo(12, 3), View::nape);
    const auto carried = work::carry_marks(*in.book, {from, to, {}});
    BOOST_REQUIRE(!carried.ok());
    BOOST_TEST(carried.error().code == "no-card-to-carry");
    const auto elsewhere = work::carry_marks(*in.book, {from, nape, {}});
    BOOST_REQUIRE(!elsewhere.ok());
    BOOST_TEST(elsewhere.error().code == "other-view");
}

BOOST_AUTO_TEST_SUITE_END()
