#include "work/time_strip.h"

#include <cmath>

#include "app/work/skin_photos.h"
#include "work/edge_shift.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

double apart(const QImage& a, const QImage& b) {
    double sum = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) sum += std::abs(qGreen(a.pixel(x, y)) - qGreen(b.pixel(x, y)));
    return sum / (static_cast<double>(a.width()) * a.height());
}

}  // namespace

BOOST_AUTO_TEST_SUITE(time_strip)

BOOST_AUTO_TEST_CASE(every_visit_has_its_place_and_the_newest_marked_photo_leads) {
    TemporaryBook in;
    const Visit second = in.add_visit(QDate(2026, 2, 12)), third = in.add_visit(QDate(2026, 3, 12));
    const Id first_photo = tests::add_measured(in, in.visit, tests::small_photo(8, 1));
    tests::add_photo(in, third, tests::small_photo(10, 2));
    const auto plan = TemporaryBook::required(work::strip_plan(*in.book, in.client.id, View::left_temple));
    BOOST_REQUIRE_EQUAL(plan.places.size(), 3);
    BOOST_TEST(plan.reference == 0);  // the third visit's photo has no marks
    BOOST_TEST(plan.places[0].photo == first_photo);
    BOOST_TEST(plan.places[0].reading.has_value());
    BOOST_TEST(plan.places[0].reading->name.toStdString() == "edge_coverage");
    BOOST_TEST(plan.places[1].photo == 0);
    BOOST_TEST(plan.places[1].visit == second.id);
    BOOST_TEST(plan.places[2].photo > 0);
    const auto asked = TemporaryBook::required(work::strip_plan(*in.book, in.client.id, View::left_temple, third.id));
    BOOST_TEST(asked.reference == 2);
    BOOST_TEST(TemporaryBook::required(work::strip_plan(*in.book, in.client.id, View::nape)).reference == -1);
    BOOST_TEST(!work::strip_plan(*in.book, in.client.id + 1, View::nape).ok());
}

BOOST_AUTO_TEST_CASE(photos_are_laid_by_the_skin_at_one_scale_and_place_and_others_say_why_not) {
    TemporaryBook in;
    const Visit later = in.add_visit(QDate(2026, 3, 12)), bare = in.add_visit(QDate(2026, 4, 12));
    const Id one = tests::add_skin_photo(in, in.visit, tests::first_photo());
    TemporaryBook::required(work::set_marks(*in.book, one, tests::marks_of(tests::first_photo())));
    const Id other = tests::add_skin_photo(in, later, tests::later_photo());
    TemporaryBook::required(work::set_marks(*in.book, other, tests::marks_of(tests::later_photo())));
    tests::CardPhoto no_card = tests::small_photo(8, 4);
    no_card.with_card = false;
    tests::add_photo(in, bare, no_card);

    const auto plan = TemporaryBook::required(work::strip_plan(*in.book, in.client.id, View::left_temple, in.visit.id));
    const work::StripOptions options;
    const auto reference =
        TemporaryBook::required(work::strip_reference(*in.book, plan.places[plan.reference], options));
    BOOST_TEST(reference->to_scale);
    QVector<work::StripPicture> pictures;
    for (const work::StripPlace& place : plan.places)
        pictures.append(TemporaryBook::required(work::strip_picture(*in.book, place, *reference, options)));
    for (const work::StripPicture& picture : pictures) {
        BOOST_TEST((picture.picture.size() == pictures[0].picture.size()));
        BOOST_TEST(std::max(picture.picture.width(), picture.picture.height()) <= 640);
    }
    BOOST_TEST(pictures[0].laid);
    BOOST_TEST(pictures[1].laid);
    BOOST_REQUIRE(pictures[1].residual_mm.has_value());
    BOOST_TEST(*pictures[1].residual_mm < 1);
    BOOST_TEST(pictures[1].told.toStdString().find("skin") != std::string::npos);
    BOOST_TEST(!pictures[2].laid);
    BOOST_TEST(pictures[2].told.toStdString().find("no gauge card") != std::string::npos);
    // The skin lies at one place: moved by 12 pixels it fits worse.
    const QRect part(60, 4, pictures[0].picture.width() - 120, 40);
    const double here = apart(pictures[0].picture.copy(part), pictures[1].picture.copy(part));
    const double moved = apart(pictures[0].picture.copy(part), pictures[1].picture.copy(part.translated(12, 0)));
    BOOST_TEST_MESSAGE("codes apart " << here << ", moved " << moved);
    BOOST_TEST(here < moved);
}

BOOST_AUTO_TEST_CASE(a_strip_that_is_no_longer_wanted_stops) {
    TemporaryBook in;
    tests::add_measured(in, in.visit, tests::small_photo(8, 1));
    const auto plan = TemporaryBook::required(work::strip_plan(*in.book, in.client.id, View::left_temple));
    const auto reference = TemporaryBook::required(work::strip_reference(*in.book, plan.places[0], {}));
    const auto stopped = work::strip_picture(*in.book, plan.places[0], *reference, {},
                                             [](double, std::string_view) { return Go::stop; });
    BOOST_REQUIRE(!stopped.ok());
    BOOST_TEST((stopped.error().kind == ErrorKind::cancelled));
}

BOOST_AUTO_TEST_CASE(the_edge_is_told_to_have_come_forward_by_as_much_as_it_has) {
    work::MarkedLine earlier, later;
    for (int x = 0; x <= 40; ++x) {
        earlier.line_mm.push_back({static_cast<double>(x), 0});
        later.line_mm.push_back({x - 10.0, x < 30 ? -1.5 : 0.5});  // 10 mm of the earlier line have no later one
    }
    earlier.hair_mm = later.hair_mm = {20, 20};
    const work::EdgeShift shift = work::edge_shift(earlier, later, {});
    BOOST_REQUIRE(!shift.at_mm.empty());
    BOOST_TEST(shift.at_mm.back() <= 31);
    BOOST_TEST(shift.most_mm == 1.5, boost::test_tools::tolerance(0.01));
    BOOST_TEST(shift.least_mm < 0);
    BOOST_TEST(shift.forward_mm[5] == 1.5, boost::test_tools::tolerance(0.01));
    const work::EdgeShift back = work::edge_shift(later, earlier, {});
    BOOST_TEST(back.mean_mm < 0);  // the other way round it has gone back
}

BOOST_AUTO_TEST_SUITE_END()
