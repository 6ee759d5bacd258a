#include <QImage>
#include <cmath>

#include "app/work/skin_photos.h"
#include "work/compare_pictures.h"
#include "work/line_up.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

work::MarkedLine curved(double turn, double dx, double dy, bool backwards) {
    work::MarkedLine marked;
    for (int i = 0; i <= 40; ++i) {
        const double x = i, y = 0.02 * (x - 20) * (x - 20);
        marked.line_mm.push_back(
            {std::cos(turn) * x - std::sin(turn) * y + dx, std::sin(turn) * x + std::cos(turn) * y + dy});
    }
    marked.hair_mm = {std::cos(turn) * 20 - std::sin(turn) * 30 + dx, std::sin(turn) * 20 + std::cos(turn) * 30 + dy};
    if (backwards) std::reverse(marked.line_mm.begin(), marked.line_mm.end());
    return marked;
}

double difference(const QImage& a, const QImage& b) {
    double sum = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            const QRgb p = a.pixel(x, y), q = b.pixel(x, y);
            sum += std::abs(qRed(p) - qRed(q)) + std::abs(qGreen(p) - qGreen(q)) + std::abs(qBlue(p) - qBlue(q));
        }
    return sum / (3.0 * a.width() * a.height());
}

work::PairSide side(const work::OpenPhoto& open, const Marks& marks) {
    work::PairSide out;
    out.photo = &open;
    out.calibration = open.card;
    out.marks = marks;
    out.date = QDate(2026, 1, 12);
    return out;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(compare)

BOOST_AUTO_TEST_CASE(a_turned_and_shifted_line_is_laid_back_over_itself_drawn_either_way) {
    for (const bool backwards : {false, true})
        for (const double turn : {-2.5, -0.4, 0.0, 0.3, 1.6}) {
            const auto laid = work::line_up(curved(0, 0, 0, false), curved(turn, 13, -7, backwards));
            BOOST_TEST(laid.rms_mm < 0.05);
            const auto later = curved(turn, 13, -7, false);
            const cv::Point2d back = laid.earlier_from_later(later.hair_mm);
            BOOST_TEST(std::hypot(back.x - 20, back.y - 30) < 0.3);
        }
}

BOOST_AUTO_TEST_CASE(a_rigid_map_and_its_inverse_cancel) {
    const auto rigid = work::rigid_from_pairs({{0, 0}, {10, 0}, {3, 4}}, {{5, 5}, {5, 15}, {1, 8}});
    const cv::Point2d there = rigid({10, 0}), back = rigid.inverse()(there);
    BOOST_TEST(std::hypot(there.x - 5, there.y - 15) < 1e-9);
    BOOST_TEST(std::hypot(back.x - 10, back.y) < 1e-9);
}

BOOST_AUTO_TEST_CASE(the_same_scene_photographed_at_two_scales_gives_two_pictures_that_agree) {
    tests::application();
    const tests::CardPhoto far = tests::small_photo(12, 5);
    const QImage scene = tests::draw(far);
    const QImage near = scene.scaled(scene.size() * 1.3, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    const auto one = TemporaryBook::required(work::open_photo(tests::encoded(scene), {}));
    const auto other = TemporaryBook::required(work::open_photo(tests::encoded(near), {}));
    Marks near_marks = tests::marks_for(far);
    for (QPointF& p : near_marks.edge_line) p *= 1.3;
    near_marks.hair_side = *near_marks.hair_side * 1.3;
    const auto pair =
        TemporaryBook::required(work::align_pair(side(*one, tests::marks_for(far)), side(*other, near_marks)));
    BOOST_REQUIRE((pair.before.size() == pair.after.size()));
    BOOST_TEST(pair.px_per_mm > 5);
    BOOST_TEST(pair.light_matched);
    BOOST_TEST(pair.rms_mm < 0.1);
    const double apart = difference(pair.before, pair.after);
    BOOST_TEST_MESSAGE("mean difference in codes: " << apart);
    BOOST_TEST(apart < 4);  // noise, JPEG and rescaling; a shift by 0.3 mm gives three times as much
    // The drawn line lies at one place in both.
    BOOST_REQUIRE_EQUAL(pair.before_line.size(), pair.after_line.size());
    for (qsizetype i = 0; i < pair.before_line.size(); ++i)
        BOOST_TEST(std::hypot(pair.before_line[i].x() - pair.after_line[i].x(),
                              pair.before_line[i].y() - pair.after_line[i].y()) < 3);
}

// The hair grew outward by 2 mm and both lines were drawn where it begins: laid by its lines the pair would hide that.
BOOST_AUTO_TEST_CASE(a_pair_is_laid_by_the_skin_and_shows_how_far_the_edge_has_moved) {
    tests::application();
    const auto one = TemporaryBook::required(work::open_photo(tests::bytes_of(tests::first_photo()), {}));
    const auto other = TemporaryBook::required(work::open_photo(tests::bytes_of(tests::later_photo()), {}));
    const Marks before = tests::marks_of(tests::first_photo());
    Marks after = tests::marks_of(tests::later_photo());
    for (qsizetype i = 0; i < after.edge_line.size(); ++i) {
        const double x = 12 + 2.0 * static_cast<double>(i);
        const cv::Point2d px = tests::later_photo().px({x, tests::edge_y(x) - 2});
        after.edge_line[i] = QPointF(px.x, px.y);
    }
    const auto pair = TemporaryBook::required(work::align_pair(side(*one, before), side(*other, after)));
    BOOST_TEST(pair.by.toStdString() == "skin");
    BOOST_REQUIRE(pair.residual_mm.has_value());
    BOOST_TEST(*pair.residual_mm < 0.5);
    BOOST_TEST(pair.rms_mm == 2, boost::test_tools::tolerance(0.15));
    BOOST_REQUIRE(!pair.notes.isEmpty());
    BOOST_TEST(pair.notes.join(' ').contains(QStringLiteral("by the skin")));
    // The same place of skin lies at the same place of both pictures: the later line 2 mm above the earlier one.
    const qsizetype middle = pair.before_line.size() / 2;
    BOOST_TEST(std::abs(pair.before_line[middle].y() - pair.after_line[middle].y()) / pair.px_per_mm == 2,
               boost::test_tools::tolerance(0.15));
}

BOOST_AUTO_TEST_CASE(plain_skin_falls_back_to_the_lines_and_says_so) {
    tests::application();
    // Two shots: the noise of one and the same photo would be a texture to register by.
    const auto one = TemporaryBook::required(work::open_photo(tests::photo_bytes_of(tests::small_photo(12, 5)), {}));
    const auto other = TemporaryBook::required(work::open_photo(tests::photo_bytes_of(tests::small_photo(12, 6)), {}));
    const Marks marks = tests::marks_for(tests::small_photo(12, 5));
    const auto pair = TemporaryBook::required(work::align_pair(side(*one, marks), side(*other, marks)));
    BOOST_TEST(pair.by.toStdString() == "edge line");
    BOOST_TEST(!pair.residual_mm.has_value());
    BOOST_TEST(pair.notes.join(' ').contains(QStringLiteral("by the edge lines")));
}

BOOST_AUTO_TEST_CASE(a_darker_exposure_is_brought_to_the_same_tones_by_the_cards_light) {
    tests::application();
    const tests::CardPhoto what = tests::small_photo(12, 5);
    const QImage scene = tests::draw(what);
    QImage darker = scene.copy();
    for (int y = 0; y < darker.height(); ++y)
        for (int i = 0; i < 3 * darker.width(); ++i)
            darker.scanLine(y)[i] = static_cast<uchar>(std::lround(0.8 * scene.constScanLine(y)[i]));
    const auto one = TemporaryBook::required(work::open_photo(tests::encoded(scene, "PNG"), {}));
    const auto other = TemporaryBook::required(work::open_photo(tests::encoded(darker, "PNG"), {}));
    const Marks marks = tests::marks_for(what);
    const auto pair = TemporaryBook::required(work::align_pair(side(*one, marks), side(*other, marks)));
    const double apart = difference(pair.before, pair.after), raw = difference(scene, darker);
    BOOST_TEST_MESSAGE("codes apart: " << apart << ", before matching " << raw);
    BOOST_TEST(apart < 0.3 * raw);
}

BOOST_AUTO_TEST_CASE(without_a_scale_the_pair_is_shown_side_by_side_and_says_so) {
    tests::application();
    tests::CardPhoto bare = tests::small_photo(12, 5);
    bare.with_card = false;
    const auto one = TemporaryBook::required(work::open_photo(tests::photo_bytes_of(bare), {}));
    const Marks marks = tests::marks_for(bare);
    const auto pair = TemporaryBook::required(work::align_pair(side(*one, marks), side(*one, marks)));
    BOOST_TEST(pair.px_per_mm == 0.0);
    BOOST_TEST((pair.before.size() == pair.after.size()));
    BOOST_REQUIRE(!pair.notes.isEmpty());
    BOOST_TEST(pair.notes.front().contains(QStringLiteral("Not to scale")));
}

// The later photo ends 13 mm below the line, where the earlier one still shows 27 mm.
BOOST_AUTO_TEST_CASE(the_pair_shows_only_what_both_photos_show) {
    tests::application();
    const tests::CardPhoto what = tests::small_photo(12, 5);
    const QImage scene = tests::draw(what);
    const int end = what.edge_y + 260;
    const auto one = TemporaryBook::required(work::open_photo(tests::encoded(scene, "PNG"), {}));
    const auto other =
        TemporaryBook::required(work::open_photo(tests::encoded(scene.copy(0, 0, scene.width(), end), "PNG"), {}));
    const Marks marks = tests::marks_for(what);
    const auto pair = TemporaryBook::required(work::align_pair(side(*one, marks), side(*other, marks)));
    BOOST_TEST(pair.before.height() / pair.px_per_mm > 8 + 12.5);  // the margin and the 13 mm
    BOOST_TEST(pair.before.height() / pair.px_per_mm < 8 + 13.1);
    const QRect inside = pair.after.rect().adjusted(-1, -1, 1, 1);  // the line runs from rim to rim
    for (const QPointF& p : pair.after_line) BOOST_TEST(inside.contains(p.toPoint()));
    int empty = 0;
    for (int x = 0; x < pair.after.width(); ++x)
        if (pair.after.pixel(x, pair.after.height() - 1) == qRgb(200, 200, 200)) ++empty;
    BOOST_TEST(empty < pair.after.width() / 10);
}

BOOST_AUTO_TEST_CASE(a_very_long_photo_is_drawn_too) {
    tests::application();
    QImage image(40000, 60, QImage::Format_RGB888);
    image.fill(QColor(190, 150, 130));
    const auto open = TemporaryBook::required(work::open_photo(tests::encoded(image, "PNG"), {}));
    Marks marks;
    marks.edge_line = {QPointF(100, 30), QPointF(39000, 30)};
    marks.hair_side = QPointF(200, 50);
    work::PairSide one = side(*open, marks);
    one.calibration = TemporaryBook::required(card::calibrate_two_points({100, 30}, {39000, 30}, 150));
    const auto pair = TemporaryBook::required(work::align_pair(one, one));
    BOOST_TEST(pair.px_per_mm > 0);
    const QPoint inside = pair.before_line.front().toPoint() + QPoint(30, 0);
    BOOST_TEST(std::abs(qRed(pair.before.pixel(inside)) - 190) < 3);
}

BOOST_AUTO_TEST_CASE(two_visits_of_the_book_make_a_pair_and_strangers_do_not) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12));
    tests::add_measured(in, in.visit, tests::small_photo(8, 1));
    tests::add_measured(in, later, tests::small_photo(14, 2));
    work::CompareOptions options;
    options.client = in.client.id;
    options.from_visit = in.visit.id;
    options.to_visit = later.id;
    const auto pictures = TemporaryBook::required(work::compare_pictures(*in.book, options));
    BOOST_TEST((pictures.before_date == in.visit.date));
    BOOST_TEST(!pictures.verdict.isEmpty());
    options.view = View::nape;
    const auto none = work::compare_pictures(*in.book, options);
    BOOST_REQUIRE(!none.ok());
    BOOST_TEST(none.error().code == "no-photo-of-view");
    options.view = View::left_temple;
    options.client = in.client.id + 1;
    BOOST_TEST(!work::compare_pictures(*in.book, options).ok());
}

BOOST_AUTO_TEST_CASE(lengths_without_an_edge_line_stand_at_one_scale_and_are_not_laid_over_each_other) {
    tests::application();
    const tests::CardPhoto what = tests::small_photo(12, 5);
    const QImage scene = tests::draw(what);
    const QImage near = scene.scaled(scene.size() * 1.3, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    const auto one = TemporaryBook::required(work::open_photo(tests::encoded(scene), {}));
    const auto other = TemporaryBook::required(work::open_photo(tests::encoded(near), {}));
    Marks marks, near_marks;
    marks.strand_line = {QPointF(900, 860), QPointF(900, 1000), QPointF(900, 1200)};
    for (const QPointF& p : marks.strand_line) near_marks.strand_line.append(p * 1.3);
    const auto pair = TemporaryBook::required(work::align_pair(side(*one, marks), side(*other, near_marks)));
    BOOST_TEST(!pair.over);
    BOOST_TEST(pair.by.toStdString() == "marks");
    BOOST_TEST(!pair.why_apart.isEmpty());
    BOOST_TEST(pair.px_per_mm > 5);
    BOOST_REQUIRE((pair.before.size() == pair.after.size()));
    BOOST_TEST(difference(pair.before, pair.after) < 4);  // of one scene, the marks at the same place
    const QPointF root = pair.before_line.front() - pair.after_line.front();
    BOOST_TEST(std::hypot(root.x(), root.y()) < 0.3 * pair.px_per_mm);
}

BOOST_AUTO_TEST_CASE(lengths_with_the_same_anchors_are_laid_over_each_other_and_wrong_ones_are_refused) {
    tests::application();
    const auto one = TemporaryBook::required(work::open_photo(tests::photo_bytes_of(tests::small_photo(12, 5)), {}));
    Marks before, after;
    before.anchors = {QPointF(600, 900), QPointF(1200, 900), QPointF(900, 1200)};
    after.anchors = {QPointF(610, 905), QPointF(1210, 905), QPointF(910, 1205)};
    const auto pair = TemporaryBook::required(work::align_pair(side(*one, before), side(*one, after)));
    BOOST_TEST(pair.over);
    BOOST_TEST(pair.by.toStdString() == "anchors");
    after.anchors[1] += QPointF(200, 0);  // another mole, a centimetre away
    const auto wrong = TemporaryBook::required(work::align_pair(side(*one, before), side(*one, after)));
    BOOST_TEST(!wrong.over);
    BOOST_TEST(wrong.why_apart.contains(QStringLiteral("anchors")));
}

BOOST_AUTO_TEST_CASE(the_edges_way_forward_is_told_in_millimetres_only_where_the_skin_laid_the_pair) {
    tests::application();
    const auto one = TemporaryBook::required(work::open_photo(tests::bytes_of(tests::first_photo()), {}));
    const auto other = TemporaryBook::required(work::open_photo(tests::bytes_of(tests::later_photo()), {}));
    const Marks before = tests::marks_of(tests::first_photo());
    Marks after = tests::marks_of(tests::later_photo());
    for (qsizetype i = 0; i < after.edge_line.size(); ++i) {
        const double x = 12 + 2.0 * static_cast<double>(i);
        const cv::Point2d px = tests::later_photo().px({x, tests::edge_y(x) - 2});
        after.edge_line[i] = QPointF(px.x, px.y);
    }
    const auto pair = TemporaryBook::required(work::align_pair(side(*one, before), side(*other, after)));
    BOOST_REQUIRE(pair.shift.has_value());
    BOOST_TEST(pair.shift->mean_mm == 2, boost::test_tools::tolerance(0.15));
    // Plain skin: laid by the lines, which hides where the edge went.
    const auto plain = TemporaryBook::required(work::open_photo(tests::photo_bytes_of(tests::small_photo(12, 5)), {}));
    const auto again = TemporaryBook::required(work::open_photo(tests::photo_bytes_of(tests::small_photo(12, 6)), {}));
    const Marks marks = tests::marks_for(tests::small_photo(12, 5));
    const auto by_lines = TemporaryBook::required(work::align_pair(side(*plain, marks), side(*again, marks)));
    BOOST_TEST(by_lines.over);
    BOOST_TEST(!by_lines.shift.has_value());
}

BOOST_AUTO_TEST_CASE(the_right_temple_is_mirrored_onto_the_left_one) {
    TemporaryBook in;
    const tests::CardPhoto what = tests::small_photo(12, 5);
    tests::add_measured(in, in.visit, what);
    const Id right = tests::add_photo(in, in.visit, tests::small_photo(12, 6), View::right_temple);
    Marks marks = tests::marks_for(what);
    marks.view = View::right_temple;
    TemporaryBook::required(work::set_marks(*in.book, right, marks));
    work::CompareOptions options;
    options.client = in.client.id;
    options.from_visit = options.to_visit = in.visit.id;
    options.to_view = View::right_temple;
    const auto pictures = TemporaryBook::required(work::compare_pictures(*in.book, options));
    BOOST_TEST(!pictures.pair.over);
    BOOST_TEST(pictures.pair.px_per_mm > 5);
    BOOST_TEST(pictures.verdict.contains(QStringLiteral("left temple: edge coverage")));
    options.to_view = View::nape;
    BOOST_TEST(!work::compare_pictures(*in.book, options).ok());
}

BOOST_AUTO_TEST_SUITE_END()
