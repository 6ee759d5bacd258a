// Whole photos with the gauge card: what is carried from one visit to the next, and what is refused.
#include <boost/test/unit_test.hpp>
#include <opencv2/imgproc.hpp>

#include "analysis/align/made_visit.h"

using namespace kempt;
using tests::MadeVisit;
using tests::VisitPhoto;

namespace {

const VisitPhoto& first() {
    static const VisitPhoto photo(MadeVisit{});
    return photo;
}

// The card 9 mm along and 4 mm out, turned by 6 degrees; another camera, light and hair.
MadeVisit later_visit() {
    MadeVisit what;
    what.hair = 7;
    what.hair_out_mm = 1.5;
    what.card_at_mm = {9, -6};
    what.card_turn_deg = 4;
    what.camera_turn_deg = -5;
    what.tilt = 0.0012;
    what.px_per_mm = 14;
    what.light = 0.6;
    what.slope = 0.006;
    return what;
}

const VisitPhoto& second() {
    static const VisitPhoto photo(later_visit());
    return photo;
}

double worst_mm(const align::Alignment& laid, const VisitPhoto& from, const VisitPhoto& to) {
    const auto carried = align::carry(laid, from.calibration(), to.calibration(), from.line_px());
    const auto wanted = to.line_px();
    double worst = 0;
    for (std::size_t i = 0; i < carried.size(); ++i)
        worst = std::max(worst, cv::norm(carried[i] - wanted[i]) / to.calibration().px_per_mm);
    return worst;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(two_visits)

BOOST_AUTO_TEST_CASE(the_line_is_carried_by_the_skin_when_card_camera_light_and_hair_changed) {
    BOOST_REQUIRE(first().calibration().card_found);
    BOOST_REQUIRE(second().calibration().card_found);
    const auto laid = align::align(first().side(true), second().side(false));
    BOOST_REQUIRE_MESSAGE(laid.ok(), (laid.ok() ? "" : laid.error().sentence()));
    BOOST_TEST(laid->by == "skin");
    const double worst = worst_mm(*laid, first(), second());
    BOOST_TEST_MESSAGE("worst point " << worst << " mm, stated " << laid->residual_mm << " mm");
    BOOST_TEST(worst < 0.25);
    BOOST_TEST(laid->residual_mm < 0.5);
    BOOST_TEST(laid->residual_mm > 0.01);
    BOOST_TEST(laid->skin_share > 0.4);
    // Through the cards alone it would have been wrong by what the card moved.
    align::Alignment cards;
    cards.later_mm_from_earlier_mm = {};
    BOOST_TEST(worst_mm(cards, first(), second()) > 5);
}

BOOST_AUTO_TEST_CASE(a_card_that_lies_upside_down_the_next_time_is_no_hindrance) {
    MadeVisit what = later_visit();
    what.card_at_mm = {88, 30};
    what.card_turn_deg = 183;
    const VisitPhoto turned(what);
    BOOST_REQUIRE(turned.calibration().card_found);
    const auto laid = align::align(first().side(true), turned.side(false));
    BOOST_REQUIRE_MESSAGE(laid.ok(), (laid.ok() ? "" : laid.error().sentence()));
    BOOST_TEST(worst_mm(*laid, first(), turned) < 0.3);
}

BOOST_AUTO_TEST_CASE(a_photo_of_16_bits_is_laid_as_well) {
    VisitPhoto deep(later_visit());
    const auto plain = align::align(first().side(true), deep.side(false));
    deep.deepen();
    const auto laid = align::align(first().side(true), deep.side(false));
    BOOST_REQUIRE(plain.ok());
    BOOST_REQUIRE(laid.ok());
    const cv::Point2d at(40, 40);
    BOOST_TEST(cv::norm(plain->later_mm_from_earlier_mm(at) - laid->later_mm_from_earlier_mm(at)) < 0.02);
}

BOOST_AUTO_TEST_CASE(anchors_on_both_photos_decide_and_are_met_exactly) {
    const std::vector<cv::Point2d> moles{{15, 36}, {70, 38}, {40, 47}};
    const auto laid = align::align(first().side(true, moles), second().side(false, moles));
    BOOST_REQUIRE_MESSAGE(laid.ok(), (laid.ok() ? "" : laid.error().sentence()));
    BOOST_TEST(laid->by == "anchors");
    BOOST_TEST(worst_mm(*laid, first(), second()) < 0.1);  // the corners of two cards: 0.05 mm
    BOOST_TEST(laid->skin_share == 0.0);
    // Without a line, too.
    BOOST_TEST(align::align(first().side(false, moles), second().side(false, moles)).ok());
    // Even against the skin: anchors set 2 mm aside carry the line 2 mm aside.
    std::vector<cv::Point2d> aside = moles;
    for (cv::Point2d& p : aside) p.x += 2;
    const auto moved = align::align(first().side(true, moles), second().side(false, aside));
    BOOST_REQUIRE(moved.ok());
    BOOST_TEST(worst_mm(*moved, first(), second()) == 2, boost::test_tools::tolerance(0.05));
    // One anchor, or another number on each side, is not enough: then the skin decides.
    const auto one = align::align(first().side(true, {moles[0]}), second().side(false, {moles[0]}));
    BOOST_REQUIRE(one.ok());
    BOOST_TEST(one->by == "skin");
}

BOOST_AUTO_TEST_CASE(anchors_in_another_order_and_anchors_far_off_are_not_used) {
    const std::vector<cv::Point2d> moles{{15, 36}, {70, 38}, {40, 47}}, swapped{{15, 36}, {40, 47}, {70, 38}};
    const auto wrong = align::align(first().side(true, moles), second().side(false, swapped));
    BOOST_REQUIRE(!wrong.ok());
    BOOST_TEST(wrong.error().code == "anchors-disagree");
    const std::vector<cv::Point2d> corner{{12, 8}, {15, 8}};  // two moles 3 mm apart, 60 mm from the line's far end
    const auto lever = align::align(first().side(true, corner), second().side(false, corner));
    BOOST_REQUIRE(!lever.ok());
    BOOST_TEST(lever.error().code == "residual-too-large");
    BOOST_TEST(lever.error().what.find(" mm") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(plain_skin_a_missing_card_and_a_missing_line_are_refused_with_what_to_do) {
    MadeVisit plain;
    plain.skin_contrast = 0.02;
    MadeVisit plain_later = later_visit();
    plain_later.skin_contrast = 0.02;
    const VisitPhoto before(plain), after(plain_later);
    const auto refused = align::align(before.side(true), after.side(false));
    BOOST_REQUIRE(!refused.ok());
    BOOST_TEST((refused.error().kind == ErrorKind::refused));
    BOOST_TEST(refused.error().code == "too-little-skin");
    BOOST_TEST(refused.error().remedy.find("anchors") != std::string::npos);
    MadeVisit bare = later_visit();
    bare.with_card = false;
    const VisitPhoto cardless(bare);
    BOOST_TEST(align::align(first().side(true), cardless.side(false)).error().code == "no-card");
    BOOST_TEST(align::align(first().side(false), second().side(false)).error().code == "no-line");
    BOOST_TEST(align::align({}, second().side(false)).error().code == "no-card");
}

BOOST_AUTO_TEST_CASE(another_persons_photo_is_refused) {
    MadeVisit other = later_visit();
    other.skin = 42;
    const VisitPhoto stranger(other);
    BOOST_TEST(!align::align(first().side(true), stranger.side(false)).ok());
}

BOOST_AUTO_TEST_CASE(a_line_off_the_photo_or_of_no_length_is_refused_and_nothing_breaks) {
    align::Side odd = first().side(true);
    for (cv::Point2d& p : odd.edge_line_px) p.x += 1e5;
    BOOST_TEST(!align::align(odd, second().side(false)).ok());
    odd.edge_line_px = {{600, 500}, {600, 500}};
    BOOST_TEST(!align::align(odd, second().side(false)).ok());
}

BOOST_AUTO_TEST_CASE(it_stops_at_once_when_told_to) {
    const auto stopped =
        align::align(first().side(true), second().side(false), {}, [](double, std::string_view) { return Go::stop; });
    BOOST_REQUIRE(!stopped.ok());
    BOOST_TEST((stopped.error().kind == ErrorKind::cancelled));
}

BOOST_AUTO_TEST_SUITE_END()
