// Marks carried from shot to shot and from visit to visit, and the last visit's marks proposed for a new photo.
#include "work/carry_marks.h"

#include "app/work/skin_photos.h"
#include "work/propose_marks.h"

using namespace kempt;
using tests::TemporaryBook;

BOOST_AUTO_TEST_SUITE(carry_marks)

BOOST_AUTO_TEST_CASE(between_visits_the_skin_carries_the_line_though_the_card_lies_elsewhere) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    const Id from = tests::add_skin_photo(in, in.visit, tests::first_photo()),
             to = tests::add_skin_photo(in, later, tests::later_photo());
    Marks marks = tests::marks_of(tests::first_photo());
    const auto here = [](cv::Point2d skin_mm) {
        const cv::Point2d px = tests::first_photo().px(skin_mm);
        return QPointF(px.x, px.y);
    };
    marks.strand_line = {here({40, 41}), here({40, 50})};
    marks.shine_region = {here({30, 44}), here({50, 44}), here({50, 50})};
    marks.scalp_taps = {here({42, 36})};  // bare skin in both
    marks.not_hair = marks.whole = {here({42, 45})};
    TemporaryBook::required(work::set_marks(*in.book, from, marks));
    const auto carried = TemporaryBook::required(work::carry_marks(*in.book, {from, to, {}}));
    BOOST_TEST(carried.by.toStdString() == "skin");
    BOOST_REQUIRE(carried.residual_mm.has_value());
    const double off = tests::off_mm(carried.marks.edge_line, tests::later_photo());
    BOOST_TEST_MESSAGE("carried to " << off << " mm, stated " << *carried.residual_mm);
    BOOST_TEST(off < 0.2);
    BOOST_TEST(off < *carried.residual_mm + 0.1);
    BOOST_TEST(carried.marks.photo == to);
    BOOST_TEST(carried.marks.id == 0);
    const cv::Point2d strand = tests::later_photo().px({40, 50});
    BOOST_REQUIRE_EQUAL(carried.marks.strand_line.size(), 2);
    BOOST_TEST(std::hypot(carried.marks.strand_line[1].x() - strand.x, carried.marks.strand_line[1].y() - strand.y) <
               5);
    BOOST_TEST(carried.marks.shine_region.size() == 3);
    BOOST_TEST(carried.marks.scalp_taps.size() == 1);
    BOOST_TEST(carried.marks.not_hair.isEmpty());
    BOOST_TEST(carried.marks.whole.isEmpty());
    BOOST_TEST(carried.told().contains(QStringLiteral("skin")));
    BOOST_TEST(carried.told().contains(QStringLiteral(" mm")));
    TemporaryBook::required(work::set_marks(*in.book, to, carried.marks));  // they may be kept as they are
}

BOOST_AUTO_TEST_CASE(a_colour_sample_is_left_out_where_the_new_photo_shows_other_stuff) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    tests::MadeVisit grown = tests::later_visit();
    grown.hair_out_mm = 3;
    const tests::VisitPhoto after(grown);
    const Id from = tests::add_skin_photo(in, in.visit, tests::first_photo()),
             to = tests::add_skin_photo(in, later, after);
    Marks marks = tests::marks_of(tests::first_photo());
    // Skin just outside the line, of which strands now cover more than half; and skin far outside.
    int covered = 0;
    for (double x = 20; x < 66; x += 1) {
        const cv::Point2d px = tests::first_photo().px({x, tests::edge_y(x) - 1.2});
        marks.scalp_taps.append(QPointF(px.x, px.y));
        ++covered;
    }
    const cv::Point2d far = tests::first_photo().px({42, 35});
    marks.scalp_taps.append(QPointF(far.x, far.y));
    TemporaryBook::required(work::set_marks(*in.book, from, marks));
    const auto carried = TemporaryBook::required(work::carry_marks(*in.book, {from, to, {}}));
    BOOST_TEST(carried.marks.scalp_taps.size() < covered * 3 / 4);
    BOOST_TEST(carried.marks.scalp_taps.size() >= 1);
    BOOST_REQUIRE(!carried.notes.isEmpty());
    BOOST_TEST(carried.notes.front().contains(QStringLiteral("left out")));
    const auto device = [&](const QPointF& p) {
        return after.photo().pixels.at<cv::Vec3b>(static_cast<int>(p.y()), static_cast<int>(p.x()))[0];
    };
    for (const QPointF& tap : carried.marks.scalp_taps) BOOST_TEST(static_cast<int>(device(tap)) > 110);  // no strand
}

BOOST_AUTO_TEST_CASE(within_a_visit_the_card_carries_and_a_card_that_was_moved_is_noticed) {
    TemporaryBook in;
    tests::MadeVisit again;  // the same card place, another camera
    again.hair = 1;
    again.camera_turn_deg = 3;
    again.px_per_mm = 13;
    const tests::VisitPhoto second(again);
    const Id from = tests::add_skin_photo(in, in.visit, tests::first_photo()),
             to = tests::add_skin_photo(in, in.visit, second),
             moved = tests::add_skin_photo(in, in.visit, tests::later_photo());
    TemporaryBook::required(work::set_marks(*in.book, from, tests::marks_of(tests::first_photo())));
    const auto same = TemporaryBook::required(work::carry_marks(*in.book, {from, to, {}}));
    BOOST_TEST(same.by.toStdString() == "card");
    BOOST_TEST(tests::off_mm(same.marks.edge_line, second) < 0.15);
    const auto other = TemporaryBook::required(work::carry_marks(*in.book, {from, moved, {}}));
    BOOST_TEST(other.by.toStdString() == "skin");
    BOOST_TEST(tests::off_mm(other.marks.edge_line, tests::later_photo()) < 0.2);
    BOOST_TEST(other.told().contains(QStringLiteral("moved")));
}

BOOST_AUTO_TEST_CASE(anchors_on_both_photos_decide_and_stay_as_they_were_set) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    const Id from = tests::add_skin_photo(in, in.visit, tests::first_photo()),
             to = tests::add_skin_photo(in, later, tests::later_photo());
    Marks marks = tests::marks_of(tests::first_photo()), own;
    own.view = View::left_temple;
    for (const cv::Point2d& mole : {cv::Point2d(15, 36), cv::Point2d(70, 38)}) {
        const cv::Point2d a = tests::first_photo().px(mole), b = tests::later_photo().px(mole);
        marks.anchors.append(QPointF(a.x, a.y));
        own.anchors.append(QPointF(b.x, b.y));
    }
    TemporaryBook::required(work::set_marks(*in.book, from, marks));
    TemporaryBook::required(work::set_marks(*in.book, to, own));
    const auto carried = TemporaryBook::required(work::carry_marks(*in.book, {from, to, {}}));
    BOOST_TEST(carried.by.toStdString() == "anchors");
    BOOST_TEST(tests::off_mm(carried.marks.edge_line, tests::later_photo()) < 0.15);
    BOOST_TEST((carried.marks.anchors == own.anchors));
}

BOOST_AUTO_TEST_CASE(between_visits_plain_skin_is_refused_and_the_card_is_not_believed_instead) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    const Id from = tests::add_measured(in, in.visit, tests::small_photo(12, 1)),
             to = tests::add_photo(in, later, tests::small_photo(12, 2));
    const auto carried = work::carry_marks(*in.book, {from, to, {}});
    BOOST_REQUIRE(!carried.ok());
    BOOST_TEST(carried.error().code == "too-little-skin");
    BOOST_TEST(carried.error().remedy.find("anchors") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_line_that_leaves_the_new_photo_ends_at_its_border) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    const Id from = tests::add_skin_photo(in, in.visit, tests::first_photo());
    TemporaryBook::required(work::set_marks(*in.book, from, tests::marks_of(tests::first_photo())));
    tests::MadeVisit what;
    what.hair = 9;
    what.card_at_mm = {-6, -4};
    const tests::VisitPhoto after(what);
    // The right third is cut off: two of the card's corners go, and the line's right third.
    const cv::Mat left = after.photo().pixels(cv::Rect(0, 0, 800, after.photo().pixels.rows)).clone();
    const QImage image(left.data, left.cols, left.rows, static_cast<qsizetype>(left.step), QImage::Format_RGB888);
    work::ImportOptions options;
    options.visit = later.id;
    options.view = View::left_temple;
    options.paths = {in.write(QStringLiteral("left.png"), tests::encoded(image, "PNG"))};
    const Id to = TemporaryBook::required(work::import_photos(*in.book, options)).files.front().photo;
    const auto carried = work::carry_marks(*in.book, {from, to, {}});
    BOOST_REQUIRE_MESSAGE(carried.ok(), (carried.ok() ? "" : carried.error().sentence()));
    const auto& line = carried->marks.edge_line;
    BOOST_REQUIRE(line.size() >= 2);
    BOOST_TEST(line.back().x() == 800, boost::test_tools::tolerance(1e-9));
    const cv::Point2d begin = after.line_px().front();
    BOOST_TEST(std::hypot(line.front().x() - begin.x, line.front().y() - begin.y) < 6);
    BOOST_TEST(work::check_marks(carried->marks, image.size()).ok());
}

BOOST_AUTO_TEST_CASE(the_last_visits_best_shot_is_proposed_for_a_new_photo) {
    TemporaryBook in;
    const Visit before = in.add_visit(QDate(2025, 11, 3)), today = in.add_visit(QDate(2026, 3, 12));
    // Two shots at the visit in January, one of them measured; an older visit; and a photo of today without marks.
    tests::MadeVisit slightly;
    slightly.hair = 3;
    slightly.camera_turn_deg = 1;
    const tests::VisitPhoto other(slightly);
    const Id unmarked = tests::add_skin_photo(in, in.visit, other),
             marked = tests::add_skin_photo(in, in.visit, tests::first_photo());
    BOOST_TEST(unmarked != marked);
    TemporaryBook::required(work::set_marks(*in.book, marked, tests::marks_of(tests::first_photo())));
    TemporaryBook::required(work::measure_in_book(*in.book, marked));
    tests::MadeVisit older;
    older.hair = 5;
    older.card_at_mm = {-5, 0};
    const tests::VisitPhoto oldest(older);
    TemporaryBook::required(
        work::set_marks(*in.book, tests::add_skin_photo(in, before, oldest), tests::marks_of(oldest)));
    const Id fresh = tests::add_skin_photo(in, today, tests::later_photo());
    const auto proposed = TemporaryBook::required(work::propose_marks(*in.book, {fresh, {}, 2}));
    BOOST_TEST(proposed.from_photo == marked);
    BOOST_TEST(proposed.from_visit == in.visit.id);
    BOOST_TEST((proposed.from_date == QDate(2026, 1, 12)));
    BOOST_TEST(proposed.carried.by.toStdString() == "skin");
    BOOST_TEST(proposed.carried.marks.photo == fresh);
    BOOST_TEST(tests::off_mm(proposed.carried.marks.edge_line, tests::later_photo()) < 0.2);
    // Nothing was kept: the proposal waits for her.
    BOOST_TEST(!TemporaryBook::required(work::marks_of(*in.book, fresh)).has_value());
    // For the visit of January, November is the last one; for November there is none.
    const auto from_november = TemporaryBook::required(work::propose_marks(*in.book, {unmarked, {}, 2}));
    BOOST_TEST(from_november.from_visit == before.id);
    const auto first = TemporaryBook::required(work::photo_of(*in.book, fresh));
    BOOST_TEST(first.photo.visit == today.id);
}

BOOST_AUTO_TEST_CASE(without_an_earlier_line_nothing_is_proposed_and_a_stop_is_a_stop) {
    TemporaryBook in;
    const Id only = tests::add_skin_photo(in, in.visit, tests::first_photo());
    const auto none = work::propose_marks(*in.book, {only, {}, 2});
    BOOST_REQUIRE(!none.ok());
    BOOST_TEST(none.error().code == "no-earlier-marks");
    BOOST_TEST((none.error().kind == ErrorKind::not_found));
    TemporaryBook::required(work::set_marks(*in.book, only, tests::marks_of(tests::first_photo())));
    const Id fresh = tests::add_skin_photo(in, in.add_visit(QDate(2026, 3, 12)), tests::later_photo());
    const auto stopped = work::propose_marks(*in.book, {fresh, {}, 2}, [](double, std::string_view step) {
        return step == "looking for the same skin" ? Go::stop : Go::on;
    });
    BOOST_REQUIRE(!stopped.ok());
    BOOST_TEST((stopped.error().kind == ErrorKind::cancelled));
    BOOST_TEST((work::propose_marks(*in.book, {fresh + 99, {}, 2}).error().kind == ErrorKind::not_found));
}

BOOST_AUTO_TEST_SUITE_END()
