// Parts of the plan page that need no window: fields by kind, questions and their answers, where things are drawn.
#include <QSet>
#include <boost/test/unit_test.hpp>

#include "care/evaluate.h"
#include "care/facts.h"
#include "desk/plan/answering.h"
#include "desk/plan/cautions_strip.h"
#include "desk/plan/findings_panel.h"
#include "desk/plan/plan_words.h"
#include "desk/plan/strand_layout.h"
#include "desk/plan/timeline_layout.h"
#include "room.h"

using namespace kempt;
using namespace kempt::desk;

namespace {

care::Application two_sections(int hands) {
    care::Application application;
    application.most_minutes = 40;
    application.hands = hands;
    for (const char* section : {"nape", "crown"}) {
        application.tasks.push_back({care::Part::mid_shaft, section, 3, 30});
        application.tasks.push_back({care::Part::ends, section, 2, 24});
        application.tasks.push_back({care::Part::roots, section, 2, 15});
    }
    return application;
}

TimelinePicture picture_of(const care::Application& application, double width, bool above) {
    TimelineSizes sizes;
    sizes.width = width;
    sizes.label_above = above;
    return layout_timeline(application, care::solve(application).value(), sizes);
}

care::ClientState with_colour(double length_mm) {
    care::ClientState state;
    state.today = 20000;
    state.length_mm = length_mm;
    care::PastService colour;
    colour.kind = care::Kind::permanent;
    colour.day = 20000 - 100;
    care::PastService lightening = colour;
    lightening.kind = care::Kind::lightening;
    lightening.day = 20000 - 400;
    care::PastService gloss = colour;
    gloss.kind = care::Kind::moisture;
    state.history.services = {lightening, colour, gloss};
    return state;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(plan_parts)

BOOST_AUTO_TEST_CASE(a_kind_shows_only_what_it_needs) {
    using care::Kind;
    BOOST_TEST(wants(Kind::heat_styling, PlanField::temperature));
    BOOST_TEST(!wants(Kind::heat_styling, PlanField::patch_test));
    BOOST_TEST(!wants(Kind::heat_styling, PlanField::order));
    BOOST_TEST(wants(Kind::permanent, PlanField::patch_test));
    BOOST_TEST(wants(Kind::permanent, PlanField::new_growth));
    BOOST_TEST(!wants(Kind::permanent, PlanField::temperature));
    BOOST_TEST(wants(Kind::hydroxide_no_lye, PlanField::strength));
    BOOST_TEST(!wants(Kind::hydroxide_no_lye, PlanField::patch_test));
    BOOST_TEST(wants(Kind::smoothing, PlanField::formaldehyde));
    BOOST_TEST(wants(Kind::protective_style, PlanField::tight));
    for (int field = 0; field <= static_cast<int>(PlanField::order); ++field)
        BOOST_TEST(!wants(Kind::cut, static_cast<PlanField>(field)));
}

BOOST_AUTO_TEST_CASE(every_kind_on_offer_is_offered_once) {
    QSet<int> seen;
    for (const KindGroup& group : kind_groups())
        for (const care::Kind kind : group.kinds) {
            BOOST_TEST(!seen.contains(static_cast<int>(kind)));
            seen.insert(static_cast<int>(kind));
        }
    BOOST_TEST(seen.size() >= 15);
}

BOOST_AUTO_TEST_CASE(every_sentence_that_a_rule_can_ask_with_has_its_way_of_being_answered) {
    for (const care::Fact& fact : care::facts()) {
        if (fact.question.empty()) continue;
        const care::Family* family = fact.takes_family ? &care::families().front() : nullptr;
        const QString sentence = QString::fromStdString(care::question_of(fact, family));
        BOOST_TEST(answering_of(sentence).has_value(), sentence.toStdString());
    }
    for (const Question& question : questions()) {
        const auto answering = answering_of_fact(question.name);
        BOOST_REQUIRE(answering.has_value());
        BOOST_TEST((answering->by == AnswerBy::yes_no || answering->by == AnswerBy::count),
                   question.name.toStdString());
    }
    BOOST_TEST(!answering_of("Is this a question of no rule?").has_value());
}

BOOST_AUTO_TEST_CASE(every_caution_has_its_few_words) {
    const auto& rules = care::built_in_rules();
    BOOST_REQUIRE(rules.ok());
    BOOST_TEST(!rules->always.empty());
    for (const care::Caution& caution : rules->always)
        BOOST_TEST(!brief_caution(QString::fromStdString(caution.id)).isEmpty(), caution.id);
}

BOOST_AUTO_TEST_CASE(where_a_finding_holds_names_each_service_once) {
    care::Finding finding;
    finding.where = {{care::Kind::permanent, care::Part::mid_shaft, ""},
                     {care::Kind::permanent, care::Part::ends, ""},
                     {care::Kind::gloss, {}, ""},
                     {care::Kind::lightening, {}, "nape"}};
    BOOST_TEST(place_words(finding).toStdString() == "permanent colour: mid-shaft, ends; gloss; lightening: nape");
    finding.where = {{}};
    BOOST_TEST(place_words(finding).isEmpty());
    finding.where = {{{}, {}, "left temple"}};
    BOOST_TEST(place_words(finding).toStdString() == "left temple");
}

BOOST_AUTO_TEST_CASE(strips_stand_where_the_plan_says_and_end_at_one_rinse) {
    for (const int hands : {1, 2}) {
        const care::Application application = two_sections(hands);
        const care::Timeline timeline = care::solve(application).value();
        const TimelinePicture picture = picture_of(application, 900, false);
        BOOST_REQUIRE_EQUAL(picture.strips.size(), static_cast<qsizetype>(timeline.order.size()));
        for (int i = 0; i < picture.strips.size(); ++i) {
            const TimelineStrip& strip = picture.strips[i];
            const care::Placed& placed = timeline.order[strip.placed];
            const double need = application.tasks[placed.task].needed_minutes;
            BOOST_TEST(strip.start == picture.x_of(placed.start_minutes), boost::test_tools::tolerance(1e-9));
            BOOST_TEST(strip.full == picture.x_of(placed.end_minutes), boost::test_tools::tolerance(1e-9));
            BOOST_TEST(strip.band.right() == picture.x_of(timeline.rinse_minutes), boost::test_tools::tolerance(1e-9));
            // Under-processed is what is ready after the rinse, over-processed what is ready before it.
            BOOST_TEST((placed.under_percent > 0.01) == (strip.last_ready > picture.rinse + 0.001));
            BOOST_TEST((placed.over_percent > 0.01) == (strip.first_ready < picture.rinse - 0.001));
            BOOST_TEST((strip.last_ready - strip.full) == need * picture.px_per_minute,
                       boost::test_tools::tolerance(1e-9));
            BOOST_TEST(strip.hand.isEmpty() == (hands == 1));
        }
    }
}

BOOST_AUTO_TEST_CASE(strips_and_words_keep_inside_the_picture_and_off_each_other) {
    for (const double width : {420.0, 900.0, 2400.0})
        for (const bool above : {false, true}) {
            if (width < 600 && !above) continue;  // there the view sets the words above
            const TimelinePicture picture = picture_of(two_sections(1), width, above);
            double bottom = 0;
            for (const TimelineStrip& strip : picture.strips) {
                BOOST_TEST(strip.band.left() >= 0);
                BOOST_TEST(std::max(strip.last_ready, strip.band.right()) <= width + 0.5);
                BOOST_TEST(strip.result_box.right() <= width + 0.5);
                BOOST_TEST(strip.label.top() >= bottom - 0.5);
                BOOST_TEST(!strip.label.intersects(strip.band));
                BOOST_TEST(!strip.result_box.intersects(strip.band));
                bottom = strip.band.bottom();
            }
            BOOST_TEST(picture.height >= bottom);
            BOOST_TEST(picture.strip_at(picture.strips[1].band.center()) == 1);
            BOOST_TEST(picture.strip_at({5, picture.height + 50}) == -1);
        }
}

BOOST_AUTO_TEST_CASE(the_strand_says_of_each_place_what_the_record_says) {
    const care::ClientState state = with_colour(220);
    const auto carried = care::carry(state.history, state.today, care::rate_of(state), state.length_mm);
    int sure = 0, perhaps = 0, nothing = 0;
    for (double mm = 2.5; mm < 220; mm += 5) {
        const auto told = passed_at(mm, state, carried);
        const auto known = care::what_has_this_hair_been_through(state.history, mm, state.today, care::rate_of(state));
        BOOST_REQUIRE_EQUAL(told.size(), static_cast<qsizetype>(known.size()));
        for (std::size_t i = 0; i < known.size(); ++i) {
            const bool surely = known[i].truth == care::Truth::yes;
            BOOST_TEST(told[static_cast<qsizetype>(i)].surely == surely);
            BOOST_TEST(told[static_cast<qsizetype>(i)].words.startsWith(
                qs(word_of(state.history.services[known[i].service].kind))));
            ++(surely ? sure : perhaps);
        }
        if (known.empty()) ++nothing;
    }
    BOOST_TEST(sure > 0);
    BOOST_TEST(perhaps > 0);
    BOOST_TEST(nothing > 0);
}

BOOST_AUTO_TEST_CASE(lanes_are_newest_first_inside_the_hair_and_treatments_are_asked_for) {
    const care::ClientState state = with_colour(220);
    const auto carried = care::carry(state.history, state.today, care::rate_of(state), state.length_mm);
    const auto plan = work::plan_care(state, {});
    BOOST_REQUIRE(plan.ok());
    StrandSizes sizes;
    StrandPicture picture = layout_strand(state, carried, *plan, sizes);
    BOOST_REQUIRE_EQUAL(picture.lanes.size(), 2);
    BOOST_TEST((picture.lanes[0].sort == LaneSort::colour));
    BOOST_TEST((picture.lanes[1].sort == LaneSort::lightening));
    BOOST_TEST(picture.lanes[0].y < picture.lanes[1].y);
    for (const StrandLane& lane : picture.lanes)
        for (const auto& spans : {lane.surely, lane.perhaps})
            for (const care::Span& span : spans) {
                BOOST_TEST(picture.x_of(span.from_mm) >= picture.left);
                BOOST_TEST(span.to_mm <= 220);
                BOOST_TEST(picture.x_of(span.to_mm) <= picture.right + 1e-9);
            }
    BOOST_TEST(picture.mm_of(picture.x_of(77)) == 77, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(!picture.open_end);
    sizes.gentle_too = true;
    BOOST_TEST(layout_strand(state, carried, *plan, sizes).lanes.size() == 3);
    // Without a length the drawing ends beyond what is known, and says so.
    care::ClientState open = state;
    open.length_mm.reset();
    const auto reach = care::carry(open.history, open.today, care::rate_of(open));
    picture = layout_strand(open, reach, *work::plan_care(open, {}), sizes);
    BOOST_TEST(picture.open_end);
    for (const care::Carried& one : reach) BOOST_TEST(picture.length_mm > one.surely.from_mm);
}

BOOST_AUTO_TEST_CASE(of_another_days_plan_the_tests_are_left_behind) {
    work::DraftItem item;
    item.item.service.kind = care::Kind::permanent;
    item.item.service.strength = care::Strength::mild;
    item.item.service.patch_test = care::TestResult::passed;
    item.item.service.patch_tested = item.item.service.strand_tested = true;
    item.item.service.patch_test_hours = 60;
    item.item.setting = care::Setting{};
    item.item.setting->strand_minutes = 30;
    item.item.setting->sections = {{"nape", 1, 2, 3}};
    const auto taken = without_that_day({item});
    BOOST_TEST((taken[0].item.service.strength == care::Strength::mild));
    BOOST_TEST(!taken[0].item.service.patch_test.has_value());
    BOOST_TEST(!taken[0].item.service.patch_tested.has_value());
    BOOST_TEST(!taken[0].item.service.strand_tested.has_value());
    BOOST_TEST(!taken[0].item.service.patch_test_hours.has_value());
    BOOST_TEST(taken[0].item.setting->strand_minutes == 0);
    BOOST_TEST(taken[0].item.setting->sections.size() == 1);
}

BOOST_AUTO_TEST_SUITE_END()
