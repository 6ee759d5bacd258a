// What can this hair take, without a book: the same answer that windows and commands show.
#include "work/plan_care.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <boost/test/unit_test.hpp>
#include <functional>

#include "analysis/care/orders.h"
#include "analysis/care/people.h"
#include "work/plan_json.h"
#include "work/plan_words.h"
#include "work/report_care.h"

using namespace kempt;
using namespace kempt::work;
using people::past, people::prepared, people::set_grade, people::sound;

namespace {

CarePlan plan_for(const care::ClientState& state, const PlanRequest& request) {
    const auto plan = plan_care(state, request);
    BOOST_REQUIRE_MESSAGE(plan.ok(), (plan ? "" : plan.error().sentence()));
    return *plan;
}

// Four sections, two people; minutes as they are common for a mild straightener.
PlannedItem with_timeline(const care::PlannedService& service) {
    PlannedItem item{service, care::Setting{}};
    item.setting->strand_minutes = 16;
    item.setting->most_minutes = 22;
    item.setting->hands = 2;
    for (const char* name : {"nape", "crown", "left side", "right side"})
        item.setting->sections.push_back({name, 0.75, 1, 0.75});
    return item;
}

bool speaks(const CarePlan& plan, std::string_view rule) {
    return people::find(plan.advice, rule) != nullptr;
}

std::string joined(const CarePlan& plan) {
    return lines_of(plan).join(u'\n').toStdString();
}

}  // namespace

BOOST_AUTO_TEST_SUITE(plan)

// Common practice, no source: mid-shaft first, stopping short of the ends; roots take half the time and come late.
BOOST_AUTO_TEST_CASE(first_straightening_with_porous_ends_is_mid_shaft_then_ends_then_roots) {
    care::ClientState state = sound();
    set_grade(state, "porosity", "ends", 2);
    const CarePlan plan = plan_for(state, {{with_timeline(prepared(care::Kind::hydroxide))}, {}, {}, 0.2, 0.2, {}, {}});
    const ServicePlan& service = plan.services.at(0);
    BOOST_TEST(!service.stopped);
    BOOST_REQUIRE(service.timeline);
    const PlannedTimeline& planned = *service.timeline;
    BOOST_TEST(planned.timeline.works);
    BOOST_TEST(planned.would_help.empty());
    const auto task = [&](std::size_t i) { return planned.application.tasks[planned.timeline.order[i].task]; };
    const std::size_t n = planned.timeline.order.size();
    BOOST_REQUIRE_EQUAL(n, 12u);
    BOOST_TEST((task(0).part == care::Part::mid_shaft));
    BOOST_TEST((task(n - 1).part == care::Part::roots));
    for (std::size_t i = 0; i < n; ++i) {
        if (task(i).part == care::Part::roots) BOOST_TEST(task(i).needed_minutes == 8);  // half of 16
        // the grade of the ends was found in the state: rate 1.25
        if (task(i).part == care::Part::ends)
            BOOST_TEST(task(i).needed_minutes == 12.8, boost::test_tools::tolerance(1e-9));
    }
    BOOST_TEST(speaks(plan, "porous-straightening"));
    BOOST_TEST((plan.services[0].coverage.put_on.back().span.from_mm == 250));
}

BOOST_AUTO_TEST_CASE(a_retouch_is_never_laid_over_relaxed_lengths) {
    care::ClientState state = sound();
    state.history.services = {past(care::Kind::hydroxide, 90)};
    care::PlannedService service = prepared(care::Kind::hydroxide);
    service.new_growth_only = true;
    const double surely_new = care::new_growth_since(state.history.services[0], state.today, care::rate_of(state)).low;
    const CarePlan retouch = plan_for(state, {{with_timeline(service)}, {}, {}, 0.2, 0.2, {}, {}});
    for (const care::Stretch& stretch : retouch.services[0].coverage.put_on)
        BOOST_TEST(stretch.span.to_mm <= surely_new + 1e-9);
    BOOST_REQUIRE(retouch.services[0].timeline);
    for (const care::Task& task : retouch.services[0].timeline->application.tasks)
        BOOST_TEST((task.part == care::Part::roots));
    // Planned over everything it is stopped, and no order of work is shown that would overlap.
    service.new_growth_only = false;
    const CarePlan whole = plan_for(state, {{with_timeline(service)}, {}, {}, 0.2, 0.2, {}, {}});
    BOOST_TEST(speaks(whole, "hydroxide-overlap"));
    BOOST_TEST(whole.services[0].stopped);
    BOOST_TEST(!whole.services[0].timeline);
    BOOST_TEST(whole.services[0].no_timeline.find("stop") != std::string::npos);
    BOOST_TEST(!whole.services[0].coverage.keep_off.empty());
}

BOOST_AUTO_TEST_CASE(uneven_colour_on_freshly_straightened_fine_hair_leads_to_demi_permanent) {
    care::ClientState state = sound();
    state.texture = care::Texture::fine;
    state.answers.uneven_colour = true;
    state.history.services = {past(care::Kind::permanent, 200), past(care::Kind::hydroxide_lye, 3)};
    const CarePlan plan = plan_for(state, {{{prepared(care::Kind::permanent), {}}}, {}, {}, 0.2, 0.2, {}, {}});
    const care::Finding* finding = people::find(plan.advice, "even-out-fresh-fine");
    BOOST_REQUIRE(finding);
    BOOST_TEST((finding->choose == care::Kind::demi_permanent));
    BOOST_TEST(plan.services[0].stopped);
    const std::string text = joined(plan);
    BOOST_TEST(text.find("demi-permanent colour evens out tone on tone") != std::string::npos);
    BOOST_TEST(text.find("Stop: At least two weeks") != std::string::npos);
    BOOST_TEST(text.find("wait until") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(when_no_order_works_the_reason_and_proven_remedies_are_told) {
    PlannedItem item = with_timeline(prepared(care::Kind::hydroxide));
    item.setting->hands = 1;
    item.setting->sections.clear();
    for (const char* name : {"nape", "crown", "left", "right", "front", "back"})
        item.setting->sections.push_back({name, 1, 2, 1});
    const CarePlan plan = plan_for(sound(), {{item}, {}, {}, 0.2, 0.2, {}, {}});
    BOOST_REQUIRE(plan.services[0].timeline);
    const PlannedTimeline& planned = *plan.services[0].timeline;
    BOOST_TEST(!planned.timeline.works);
    BOOST_TEST(!planned.timeline.why_not.empty());
    BOOST_REQUIRE(!planned.would_help.empty());
    for (const ProvenRemedy& proven : planned.would_help) {
        BOOST_TEST(proven.rounds.size() == proven.remedy.rounds.size());
        for (const care::Timeline& round : proven.rounds) BOOST_TEST(round.works);
    }
    BOOST_TEST(joined(plan).find("No order works.") != std::string::npos);
    BOOST_TEST(joined(plan).find("round 1") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(the_report_counts_the_questions_of_stops_which_stand_first) {
    PlanRequest request;
    request.services.resize(1);
    request.services[0].service.kind = care::Kind::hydroxide;
    const CarePlan plan = plan_for({}, request);
    report::Model model;
    add_care(plan, model);
    const auto of_a_stop = [&](const QString& question) {
        for (const care::Finding& finding : plan.advice.findings)
            if (finding.level == care::RuleLevel::stop && std::find(finding.questions.begin(), finding.questions.end(),
                                                                    question.toStdString()) != finding.questions.end())
                return true;
        return false;
    };
    BOOST_TEST((model.planned.stop_questions > 0 && model.planned.stop_questions < model.planned.questions.size()));
    for (qsizetype i = 0; i < model.planned.questions.size(); ++i)
        BOOST_TEST(of_a_stop(model.planned.questions[i]) == (i < model.planned.stop_questions));
}

BOOST_AUTO_TEST_CASE(what_a_timeline_lacks_is_said) {
    const auto plan_of = [](care::Kind kind, const std::function<void(PlannedItem&)>& change) {
        PlannedItem item = with_timeline(prepared(kind));
        change(item);
        return plan_for(sound(), {{item}, {}, {}, 0.2, 0.2, {}, {}}).services[0];
    };
    const auto why = [&](care::Kind kind, const std::function<void(PlannedItem&)>& change) {
        const ServicePlan plan = plan_of(kind, change);
        BOOST_TEST(!plan.timeline);
        return plan.no_timeline;
    };
    using enum care::Kind;
    const auto says = [](const std::string& text, const char* word) { return text.find(word) != std::string::npos; };
    BOOST_TEST(says(why(hydroxide, [](PlannedItem& item) { item.setting->strand_minutes = 0; }), "strand test"));
    BOOST_TEST(says(why(hydroxide, [](PlannedItem& item) { item.setting->sections.clear(); }), "sections"));
    BOOST_TEST(says(why(hydroxide, [](PlannedItem& item) { item.setting->hands = 9; }), "people"));
    BOOST_TEST(says(why(cut, [](PlannedItem&) {}), "cut"));
    const auto no_maximum = [](PlannedItem& item) { item.setting->most_minutes = 0; };
    BOOST_TEST(plan_of(hydroxide, no_maximum).timeline->application.most_minutes == 20);  // the service's own
    BOOST_TEST(says(why(hydroxide,
                        [&](PlannedItem& item) {
                            no_maximum(item);
                            item.service.most_minutes.reset();
                        }),
                    "maker"));
}

BOOST_AUTO_TEST_CASE(the_hair_s_record_and_growth_are_told_by_part) {
    care::ClientState state = sound();
    state.history.services = {past(care::Kind::permanent, 400), past(care::Kind::hydroxide, 100),
                              past(care::Kind::gloss, 10)};
    const CarePlan plan = plan_for(state, {});
    BOOST_REQUIRE_EQUAL(plan.hair.size(), 3u);
    const auto kinds = [&](std::size_t part) {
        std::vector<care::Kind> list;
        for (const Past& one : plan.hair[part].been_through) list.push_back(one.kind);
        return list;
    };
    using enum care::Kind;
    BOOST_TEST((kinds(0) == std::vector{gloss, hydroxide}));  // perhaps: the slowest heads grew less than 20 mm
    BOOST_TEST(!plan.hair[0].been_through[1].surely);
    BOOST_TEST((kinds(2) == std::vector{gloss, hydroxide, permanent}));
    for (const PartRecord& part : plan.hair) BOOST_TEST(part.complete);
    // Loussouarn 2005: 280 +- 50 um a day; 100 days.
    BOOST_REQUIRE_EQUAL(plan.growth.size(), 2u);
    BOOST_TEST((plan.growth[1].kind == permanent));  // a gloss leaves no line
    BOOST_TEST(plan.growth[0].new_growth_mm.value == 28, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(!plan.growth[0].measured);
    BOOST_TEST(plan.growth[0].source.find("Loussouarn") != std::string::npos);
    state.history.complete_since = state.today - 50;
    const CarePlan partly = plan_for(state, {});
    BOOST_TEST(!partly.hair[2].complete);
    // A measured line goes before the rate.
    state.history.services[1].line_mm = care::GrowthRange{20, 19, 21};
    state.history.services[1].line_day = state.today;
    const GrowthNow measured = plan_for(state, {}).growth[0];
    BOOST_TEST(measured.measured);
    BOOST_TEST(measured.new_growth_mm.value == 20);
    BOOST_TEST(measured.source.find("line of demarcation") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(the_standing_cautions_end_every_plan_and_nothing_calls_a_service_safe) {
    people::Dice dice(20261201);
    const auto& always = care::built_in_rules()->always;
    BOOST_REQUIRE_GE(always.size(), 5u);
    for (int i = 0; i < 300; ++i) {
        const care::ClientState state = people::random_state(dice);
        PlanRequest request;
        for (const care::PlannedService& service : people::random_plan(dice, state).services)
            request.services.push_back({service, {}});
        const CarePlan plan = plan_for(state, request);
        const QStringList lines = lines_of(plan);
        const auto count = static_cast<qsizetype>(always.size());
        for (qsizetype k = 0; k < count; ++k)
            if (lines[lines.size() - count + k].trimmed().toStdString() != always[static_cast<std::size_t>(k)].text)
                BOOST_ERROR("client " << i << ": " << lines.last().toStdString());
        for (const QString& line : lines)  // a source may be called by its name: "Safety and Health Administration"
            if (!line.contains(u"ource: ") && care::promises_safety(line.toStdString()))
                BOOST_ERROR(line.toStdString());
    }
}

BOOST_AUTO_TEST_CASE(hundreds_of_random_clients_no_stop_overridden_and_no_order_missed) {
    people::Dice dice(20261202);
    int stopped = 0, orders = 0, none = 0;
    for (int i = 0; i < 600; ++i) {
        const care::ClientState state = people::random_state(dice);
        PlanRequest request;
        for (const care::PlannedService& service : people::random_plan(dice, state).services) {
            PlannedItem item{service, care::Setting{}};
            item.setting->strand_minutes = dice.uniform(5, 30);
            item.setting->most_minutes = dice.uniform(8, 45);
            item.setting->hands = dice.whole(1, 2);
            for (const char* name : {"nape", "crown"})
                item.setting->sections.push_back(
                    {name, dice.uniform(0.2, 3), dice.uniform(0.2, 4), dice.uniform(0.2, 3)});
            request.services.push_back(item);
        }
        const CarePlan plan = plan_for(state, request);
        for (const care::Finding& finding : plan.advice.findings) {
            if (finding.source.empty()) BOOST_ERROR("client " << i << ": " << finding.rule << " without a source");
            const bool stop =
                finding.level == care::RuleLevel::stop && finding.sort == care::FindingSort::speaks_against;
            for (const care::Place& place : finding.where)
                for (const ServicePlan& service : plan.services)
                    if (stop && (!place.service || *place.service == service.service.kind) && !service.stopped)
                        BOOST_ERROR("client " << i << ": " << finding.rule << " is overridden");
        }
        for (const ServicePlan& service : plan.services) {
            stopped += service.stopped;
            if (service.stopped && service.timeline) BOOST_ERROR("client " << i << ": an order under a stop");
            if (!service.timeline && service.no_timeline.empty()) BOOST_ERROR("client " << i << ": no reason");
            if (!service.timeline) continue;
            (service.timeline->timeline.works ? orders : none) += 1;
            if (service.timeline->timeline.works != orders::some_order_works(service.timeline->application))
                BOOST_ERROR("client " << i << ": all orders tried say otherwise");
        }
        const QJsonObject json = json_of_plan(plan);
        if (json["stopped"].toBool() != plan.advice.stopped || json["cautions"].toArray().isEmpty())
            BOOST_ERROR("client " << i << ": JSON");
    }
    BOOST_TEST_MESSAGE(stopped << " stopped, " << orders << " with an order, " << none << " with none");
    BOOST_TEST(stopped > 100);
    BOOST_TEST(orders > 20);
    BOOST_TEST(none > 20);
}

BOOST_AUTO_TEST_CASE(a_person_who_says_stop_is_heard) {
    const auto plan = plan_care(sound(), {{with_timeline(prepared(care::Kind::hydroxide))}, {}, {}, 0.2, 0.2, {}, {}},
                                [](double, std::string_view) { return Go::stop; });
    BOOST_REQUIRE(!plan);
    BOOST_TEST((plan.error().kind == ErrorKind::cancelled));
}

BOOST_AUTO_TEST_CASE(what_cannot_be_is_refused_with_its_name) {
    care::ClientState state = sound();
    state.length_mm = -3;
    const auto plan = plan_care(state, {});
    BOOST_REQUIRE(!plan);
    BOOST_TEST((plan.error().kind == ErrorKind::invalid));
    BOOST_TEST(plan.error().what.find("length") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_request_is_read_from_json_and_what_is_wrong_in_it_is_named) {
    const auto request = request_from_json(R"({"dye_day": "2026-12-01", "services": [
        {"kind": "hydroxide straightener", "new_growth_only": true, "sections": ["Left-Temple", "nape"],
         "strength": "mild", "to_mm": null, "strand_test": "passed", "passes": 2, "at_home": false,
         "timeline": {"strand_minutes": 14, "hands": 2, "ends_porosity": 3,
                      "sections": [{"name": "nape", "roots": 1, "mid_shaft": 2}]}}, {"kind": "gloss"}]})");
    BOOST_REQUIRE_MESSAGE(request.ok(), (request ? "" : request.error().sentence()));
    BOOST_REQUIRE_EQUAL(request->services.size(), 2u);
    const care::PlannedService& service = request->services[0].service;
    BOOST_TEST((service.kind == care::Kind::hydroxide && service.new_growth_only && !service.to_mm));
    BOOST_TEST((service.strand_tested == true && service.passes == 2 && service.at_home == false));
    BOOST_TEST((service.strength == care::Strength::mild && !service.patch_tested));
    BOOST_TEST((service.sections == std::vector<std::string>{"left temple", "nape"}));  // as the record calls them
    BOOST_TEST((request->services[0].setting->sections[0].mid_shaft == 2));
    BOOST_TEST((!request->services[1].setting && request->dye_day == QDate(2026, 12, 1)));
    const std::pair<const char*, const char*> wrong[] = {
        {"[]", "no JSON object"},
        {R"({"services": [{"kind": "magic"}]})", "magic"},
        {R"({"services": [{"kind": "gloss", "minuts": 3}]})", "services.minuts"},
        {R"({"services": [{"kind": "gloss", "minutes": "3"}]})", "services.minutes"},
        {R"({"services": [{"kind": "gloss", "passes": 1.5}]})", "passes"},
        {R"({"services": [{"kind": "gloss", "strength": "huge"}]})", "strength"},
        {R"({"services": [{"kind": "gloss", "strand_test": "maybe"}]})", "strand_test"},
        {R"({"services": [{"kind": "gloss", "timeline": 3}]})", "timeline"},
        {R"({"services": [{"kind": "gloss", "sections": ["neck"]}]})", "neck"},
        {R"({"services": [{"kind": "gloss", "sections": [3]}]})", "sections"},
        {R"({"services": 3})", "services"},
        {R"({"dye_day": "tomorrow"})", "dye_day"}};
    for (const auto& [json, word] : wrong) {
        const auto bad = request_from_json(json);
        BOOST_REQUIRE_MESSAGE(!bad, json);
        BOOST_TEST(bad.error().what.find(word) != std::string::npos, bad.error().what);
    }
}

BOOST_AUTO_TEST_SUITE_END()
