// What the trade knows and what was published, as checks. Common practice has no source; published figures name theirs.
#include <boost/test/unit_test.hpp>

#include "care/timeline.h"
#include "people.h"

using namespace kempt::care;
using namespace people;

namespace {

// A first straightening of a whole head in four sections.
struct First {
    ClientState state = sound();
    PlannedService service = prepared(Kind::hydroxide);
    Setting setting;
    First() {
        setting.strand_minutes = 16;
        setting.most_minutes = 22;
        setting.hands = 2;
        for (const char* name : {"nape", "crown", "left side", "right side"})
            setting.sections.push_back({name, 0.75, 1, 0.75});
    }
    Application application() {
        for (const Graded& grade : state.grades)
            if (grade.quality == "porosity" && grade.zone == "ends") setting.ends_porosity = grade.value;
        const auto made = application_of(setting, coverage_of(service, state));
        BOOST_REQUIRE(made);
        return *made;
    }
    Timeline timeline() {
        const auto solved = solve(application());
        BOOST_REQUIRE(solved);
        return *solved;
    }
};

double middle(const Placed& placed) {
    return (placed.least_minutes + placed.most_minutes) / 2;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(practice)

// Common practice: scalp heat about doubles the speed.
BOOST_AUTO_TEST_CASE(roots_take_about_half_the_time_of_the_lengths) {
    First first;
    const Application application = first.application();
    const Timeline timeline = first.timeline();
    double roots = 0, lengths = 0;
    int n = 0;
    for (const Placed& placed : timeline.order) {
        const Part part = application.tasks[placed.task].part;
        if (part == Part::roots) roots += middle(placed);
        if (part == Part::mid_shaft) lengths += middle(placed);
        n += part == Part::roots;
    }
    BOOST_REQUIRE_EQUAL(n, 4);
    BOOST_CHECK_CLOSE(roots / lengths, 0.5, 15);
}

// Common practice: mid-shaft first, stopping short of the ends; then ends and roots, late.
BOOST_AUTO_TEST_CASE(a_first_straightening_with_porous_ends_begins_at_the_mid_shaft) {
    First first;
    set_grade(first.state, "porosity", "ends", 2);
    const Coverage coverage = coverage_of(first.service, first.state);
    BOOST_REQUIRE_EQUAL(coverage.put_on.size(), 3);
    const Span mid = coverage.put_on[1].span, ends = coverage.put_on[2].span;
    BOOST_CHECK_EQUAL(mid.to_mm, 250);  // short of the last 5 cm of 30
    BOOST_CHECK_EQUAL(ends.from_mm, 250);
    const Application application = first.application();
    const Timeline timeline = first.timeline();
    BOOST_CHECK(timeline.works);
    const auto part = [&](const Placed& placed) { return application.tasks[placed.task].part; };
    for (int hand = 0; hand < 2; ++hand) {
        Part last = Part::mid_shaft;
        for (const Placed& placed : timeline.order) {
            if (placed.hand != hand) continue;
            BOOST_CHECK(part(placed) != Part::mid_shaft || last == Part::mid_shaft);  // never back to the mid-shaft
            last = part(placed);
        }
        BOOST_CHECK(last != Part::mid_shaft);
    }
    BOOST_CHECK(part(timeline.order.front()) == Part::mid_shaft);
    BOOST_CHECK(part(timeline.order.back()) == Part::roots);
}

BOOST_AUTO_TEST_CASE(porous_ends_are_never_started_first) {
    for (int grade = 0; grade <= 3; ++grade)
        for (const int hands : {1, 2}) {
            First first;
            set_grade(first.state, "porosity", "ends", grade);
            first.setting.hands = hands;
            const Application application = first.application();
            const Timeline timeline = first.timeline();
            BOOST_CHECK(application.tasks[timeline.order.front().task].part == Part::mid_shaft);
            double first_ends = 1e9, last_mid = 0;
            for (const Placed& placed : timeline.order) {
                if (application.tasks[placed.task].part == Part::ends)
                    first_ends = std::min(first_ends, placed.start_minutes);
                if (application.tasks[placed.task].part == Part::mid_shaft)
                    last_mid = std::max(last_mid, placed.start_minutes);
            }
            BOOST_CHECK_GE(first_ends, last_mid);
        }
}

// "New growth only, never on already relaxed hair" (dermatologists' public tips; hairdressing curriculum).
BOOST_AUTO_TEST_CASE(a_retouch_never_covers_relaxed_lengths) {
    for (const bool flagged : {true, false})
        for (const int days : {20, 60, 120, 400}) {
            ClientState state = sound();
            state.history.services = {past(Kind::hydroxide, days), past(Kind::hydroxide, days + 90)};
            PlannedService service = prepared(Kind::hydroxide);
            service.new_growth_only = flagged;
            const Coverage coverage = coverage_of(service, state);
            const double least = new_growth_since(state.history.services[0], today, rate_of(state)).low;
            for (const Stretch& stretch : coverage.put_on) BOOST_CHECK_LE(stretch.span.to_mm, least + 1e-9);
            if (flagged) continue;
            double off = 0;
            for (const Stretch& stretch : coverage.keep_off) off = std::max(off, stretch.span.to_mm);
            BOOST_CHECK_EQUAL(off, 300);  // planned over everything: the lengths are named as hair to keep off
        }
    // Its timeline has roots only.
    First first;
    first.state.history.services = {past(Kind::hydroxide, 60)};
    first.service.new_growth_only = true;
    for (const Task& task : first.application().tasks) BOOST_CHECK(task.part == Part::roots);
}

// Common practice; two weeks before permanent colour: dermatology leaflet.
BOOST_AUTO_TEST_CASE(uneven_colour_on_freshly_straightened_fine_hair_leads_to_demi_permanent) {
    ClientState state = sound();
    state.texture = Texture::fine;
    state.answers.uneven_colour.reset();
    state.readings.push_back({"tone_step", "", 9, 8, 10, {}});  // seen by the photo
    state.history.services = {past(Kind::permanent, 200), past(Kind::hydroxide, 3)};
    for (const std::optional<Kind> planned : {std::optional<Kind>{}, {Kind::permanent}, {Kind::semi_permanent}}) {
        Plan plan;
        if (planned) plan.services.push_back(prepared(*planned));
        const Advice advice = advise(*built_in_rules(), state, plan);
        const Finding* finding = find(advice, "even-out-fresh-fine");
        BOOST_REQUIRE(finding);
        BOOST_REQUIRE(finding->choose);
        BOOST_CHECK(*finding->choose == Kind::demi_permanent);
        for (const char* word : {"porous", "lift", "peroxide", "straightened"})
            BOOST_CHECK_MESSAGE(finding->reason.find(word) != std::string::npos, word);
        // Permanent colour is stopped at the same time.
        BOOST_CHECK_EQUAL(advice.stopped, planned == Kind::permanent);
    }
    // The steps of an even head, or coarse hair, do not lead there.
    state.readings[0] = {"tone_step", "", 2, 1, 3, {}};
    BOOST_CHECK(!find(advise(*built_in_rules(), state, {}), "even-out-fresh-fine"));
}

// Sishi 2019, S Afr Med J 109:941-6: 121 relaxers, median pH 12.36 (IQR 12.10-12.62); >= 10.5 irritant, >= 11.5
// corrosive to skin; no difference between adults' and children's.
BOOST_AUTO_TEST_CASE(straightener_ph_is_said_as_published) {
    constexpr double median = 12.36, corrosive = 11.5;
    const Rule* rule = built_in_rules()->find("hydroxide-is-corrosive");
    BOOST_REQUIRE(rule);
    char text[16];
    for (const double ph : {median, corrosive}) {
        std::snprintf(text, sizeof text, ph == median ? "%.2f" : "%.1f", ph);
        BOOST_CHECK_MESSAGE(rule->reason.find(text) != std::string::npos, text);
    }
    BOOST_CHECK(rule->source.find("Sishi 2019, S Afr Med J 109:941-6") != std::string::npos);
    const Rule* child = built_in_rules()->find("child-straightener");
    BOOST_REQUIRE(child);
    BOOST_CHECK(child->source.find("Sishi 2019") != std::string::npos);
}

// McDonald 2017, J Am Acad Dermatol (abstract, n = 181): mean 0.44, SD 0.75, range 0-4; normal is 2 or fewer (97.2 %).
BOOST_AUTO_TEST_CASE(pull_test_turns_at_the_published_norm) {
    const auto speaks = [](double hairs) {
        ClientState state = sound();
        state.pull_test_hairs = hairs;
        return find(advise(*built_in_rules(), state, {}), "doctor-pull-test") != nullptr;
    };
    BOOST_CHECK(!speaks(0) && !speaks(0.44) && !speaks(2));
    BOOST_CHECK(speaks(3) && speaks(4));
    BOOST_CHECK(built_in_rules()->find("doctor-pull-test")->source.find("McDonald 2017") != std::string::npos);
}

// Wasko 2008, Arch Dermatol 144:759-62: 60-second comb count of men without alopecia (n = 60): 20-40 years 0-78 (mean
// 10.2), 41-60 years 0-43 (mean 10.3). Nothing is published for women or curled hair, and the rule says so.
BOOST_AUTO_TEST_CASE(comb_count_turns_above_the_published_range) {
    const auto speaks = [](double hairs) {
        ClientState state = sound();
        state.comb_count = hairs;
        return find(advise(*built_in_rules(), state, {}), "doctor-comb-count") != nullptr;
    };
    BOOST_CHECK(!speaks(10.2) && !speaks(10.3) && !speaks(43) && !speaks(78));
    BOOST_CHECK(speaks(79));
    const Rule* rule = built_in_rules()->find("doctor-comb-count");
    BOOST_CHECK(rule->reason.find("no published norm for women") != std::string::npos);
    BOOST_CHECK(rule->source.find("Wasko 2008") != std::string::npos);
}

// Loussouarn, El Rawadi & Genain 2005, Int J Dermatol 44(S1):6-9 (table quoted in a textbook chapter): 161, 226, 175
// hairs per cm2 and 14, 12, 12 % telogen. With a scalp of 600 cm2 and 100 days of telogen (both from memory) that is
// what a head sheds a day; a count at which the rule speaks must lie below it, or it could hardly ever speak.
BOOST_AUTO_TEST_CASE(comb_count_speaks_below_what_published_densities_shed_a_day) {
    double speaks_at = 0;
    ClientState state = sound();
    do state.comb_count = ++speaks_at;
    while (speaks_at < 500 && !find(advise(*built_in_rules(), state, {}), "doctor-comb-count"));
    constexpr double rows[][2] = {{161, 0.14}, {226, 0.12}, {175, 0.12}};
    for (const auto& row : rows) BOOST_CHECK_LT(speaks_at, row[0] * 600 * row[1] / 100);
}

// Khumalo 2008, J Am Acad Dermatol 59:432-8: odds ratio of traction on relaxed against natural hair 3.47 (1.94-6.20);
// 17.1 % of 574 schoolgirls.
BOOST_AUTO_TEST_CASE(traction_figures_are_said_as_published) {
    BOOST_CHECK(built_in_rules()->find("tight-style-on-straightened")->reason.find("3.5 times") != std::string::npos);
    BOOST_CHECK(built_in_rules()->find("child-tight-style")->reason.find("574") != std::string::npos);
    BOOST_CHECK(built_in_rules()->find("child-tight-style")->reason.find("17 %") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()
