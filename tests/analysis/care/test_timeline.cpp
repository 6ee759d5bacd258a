// The application timeline against exhaustive search over every sharing and every order.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <numeric>

#include "care/sharing.h"
#include "care/timeline.h"
#include "orders.h"
#include "people.h"

using namespace kempt::care;
using people::Dice;

namespace {

Application small(Dice& dice, int most_tasks) {
    Application application;
    application.hands = dice.whole(1, 2);
    application.most_minutes = dice.uniform(8, 40);
    const double strand = dice.uniform(6, 30), ends = ends_rate(dice.whole(0, 4));
    const int sections = dice.whole(1, 3), tasks = dice.whole(1, most_tasks);
    for (int i = 0; i < tasks; ++i) {
        const Part part = static_cast<Part>(dice.whole(0, 2));
        const double rate = part == Part::roots ? roots_rate : part == Part::ends ? ends : 1;
        application.tasks.push_back({part, "section " + std::to_string(dice.whole(1, sections)),
                                     0.25 * dice.whole(1, 16), strand / rate * dice.uniform(0.9, 1.1)});
    }
    return application;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(timeline)

BOOST_AUTO_TEST_CASE(ends_without_a_known_length_and_minutes_that_are_none_are_refused) {
    ClientState state = people::sound();
    state.length_mm.reset();
    PlannedService service;
    service.kind = Kind::lightening;
    Setting setting;
    setting.strand_minutes = 20;
    setting.most_minutes = 45;
    setting.sections = {{"nape", 1, 1, 1}};
    BOOST_CHECK(!application_of(setting, coverage_of(service, state)));
    setting.sections = {{"nape", 1, 1, 0}};
    BOOST_CHECK(application_of(setting, coverage_of(service, state)));
    for (const double wrong : {std::nan(""), std::numeric_limits<double>::infinity(), -5.0}) {
        setting.sections = {{"nape", wrong, 1, 0}};
        BOOST_CHECK(!application_of(setting, coverage_of(service, state)));
    }
    // A retouch of which nobody knows what it grows away from asks for the line first.
    service.kind = Kind::permanent;
    service.new_growth_only = true;
    BOOST_CHECK(coverage_of(service, state).unsure);
}

BOOST_AUTO_TEST_CASE(one_section_one_hand_by_hand) {
    // Need 10, 2 minutes to apply: the first hair is 1 over, the last 1 under: 10 % of 10, half of the 20 % tolerated.
    Application application;
    application.tasks = {{Part::mid_shaft, "", 2, 10}};
    application.most_minutes = 20;
    const auto solved = solve(application);
    BOOST_REQUIRE(solved);
    BOOST_CHECK_CLOSE(solved->worst, 0.5, 1e-6);
    BOOST_CHECK(solved->works);
    BOOST_CHECK_CLOSE(solved->order[0].most_minutes, 11, 1e-5);
    BOOST_CHECK_CLOSE(solved->order[0].over_percent, 10, 1e-4);
    BOOST_CHECK_CLOSE(solved->order[0].under_percent, 10, 1e-4);
    BOOST_CHECK_CLOSE(solved->rinse_minutes, 11, 1e-5);
    // Under a maximum of 10.5 the last hair is left 1.5 under: 15 % of 10 is three quarters of what is tolerated.
    application.most_minutes = 10.5;
    BOOST_CHECK_CLOSE(solve(application)->worst, 0.75, 1e-6);
    application.most_minutes = 9;
    const auto late = solve(application);
    BOOST_CHECK_CLOSE(late->worst, 1.5, 1e-6);
    BOOST_CHECK(!late->works && !late->why_not.empty());
}

BOOST_AUTO_TEST_CASE(least_worst_deviation_equals_that_of_every_order_tried) {
    Dice dice(11);
    for (int i = 0; i < 150; ++i) {
        const Application application = small(dice, 6);
        const auto solved = solve(application);
        BOOST_REQUIRE(solved);
        const double tried = orders::least_worst(application);
        if (std::isinf(tried))
            BOOST_CHECK(std::isinf(solved->worst));
        else
            BOOST_CHECK_SMALL(solved->worst - tried, 1e-6);
    }
}

BOOST_AUTO_TEST_CASE(seven_tasks_too) {
    Dice dice(12);
    for (int i = 0; i < 12; ++i) {
        Application application = small(dice, 7);
        while (application.tasks.size() < 7) application.tasks.push_back(application.tasks[0]);
        const bool works = solve(application)->works;
        BOOST_CHECK_EQUAL(works, orders::some_order_works(application));
    }
}

BOOST_AUTO_TEST_CASE(the_order_shown_is_one_that_can_be_done_and_deviates_as_said) {
    Dice dice(13);
    for (int i = 0; i < 2000; ++i) {
        Application application = small(dice, 24);
        const auto solved = solve(application);
        BOOST_REQUIRE(solved);
        BOOST_REQUIRE_EQUAL(solved->order.size(), application.tasks.size());
        std::vector<double> busy(3, 0);
        std::vector<std::string> owner;
        double worst = 0, first = 1e9;
        for (const Placed& placed : solved->order) {
            const Task& task = application.tasks[placed.task];
            BOOST_CHECK_GE(placed.start_minutes, busy[static_cast<std::size_t>(placed.hand)] - 1e-6);
            BOOST_CHECK_CLOSE(placed.end_minutes - placed.start_minutes, task.apply_minutes, 1e-6);
            BOOST_CHECK_SMALL(solved->rinse_minutes - placed.start_minutes - placed.most_minutes, 1e-9);
            BOOST_CHECK_GE(placed.least_minutes, -1e-6);
            busy[static_cast<std::size_t>(placed.hand)] = placed.end_minutes;
            first = std::min(first, placed.start_minutes);
            worst = std::max(
                {worst, placed.over_percent / 100 / application.over, placed.under_percent / 100 / application.under});
            if (!std::isinf(solved->worst)) BOOST_CHECK_LE(placed.most_minutes, application.most_minutes + 1e-6);
            for (const Placed& other : solved->order)
                if (application.tasks[other.task].section == task.section) BOOST_CHECK_EQUAL(other.hand, placed.hand);
        }
        BOOST_CHECK_SMALL(first, 1e-6);
        if (std::isinf(solved->worst))
            BOOST_CHECK(!solved->works);
        else
            BOOST_CHECK_LE(worst, solved->worst + 1e-6);
        if (solved->works)
            for (const Placed& placed : solved->order) BOOST_CHECK(placed.within);
        BOOST_CHECK_EQUAL(solved->works, solved->why_not.empty());
    }
}

BOOST_AUTO_TEST_CASE(what_would_help_does_help) {
    Dice dice(14);
    int more = 0, rounds = 0, smaller = 0, milder = 0;
    for (int i = 0; i < 600; ++i) {
        Application application = small(dice, 9);
        application.hands = 1;
        const auto solved = solve(application);
        for (const Remedy& remedy : what_would_help(application)) {
            BOOST_CHECK(!solved->works);
            BOOST_CHECK(!remedy.text.empty() && !remedy.rounds.empty());
            double minutes = 0, planned = 0;
            for (const Task& task : application.tasks) planned += task.apply_minutes;
            for (const Application& round : remedy.rounds) {
                // By every order, not by the solver's word, where that can be tried.
                if (round.tasks.size() <= 6) BOOST_CHECK(orders::some_order_works(round));
                BOOST_CHECK(solve(round)->works);
                for (const Task& task : round.tasks) minutes += task.apply_minutes;
            }
            BOOST_CHECK_CLOSE(minutes, planned, 1e-6);  // nothing is left out
            more += remedy.sort == RemedySort::more_hands;
            rounds += remedy.sort == RemedySort::rounds;
            smaller += remedy.sort == RemedySort::smaller_sections;
            milder += remedy.sort == RemedySort::milder;
            if (remedy.sort != RemedySort::milder) continue;
            // Works from the least to the most factor, and not just outside.
            for (const double share : {0.0, 0.5, 1.0}) {
                Application slow = application;
                const double factor = remedy.least_factor + share * (remedy.most_factor - remedy.least_factor);
                for (Task& task : slow.tasks) task.needed_minutes *= factor;
                BOOST_CHECK(solve(slow)->works);
            }
            Application slow = application;
            for (Task& task : slow.tasks) task.needed_minutes *= remedy.least_factor * 0.999;
            BOOST_CHECK(!solve(slow)->works);
        }
    }
    BOOST_CHECK(more > 20 && rounds > 20 && smaller > 20 && milder > 20);
}

BOOST_AUTO_TEST_CASE(the_reason_names_what_is_tight) {
    Application application;
    application.tasks = {{Part::mid_shaft, "crown", 10, 12}};
    application.most_minutes = 60;
    BOOST_CHECK_EQUAL(solve(application)->why_not,
                      "Applying the mid-shaft of crown takes 10 minutes: the first are over-processed before the last "
                      "are ready.");
    application.most_minutes = 15;
    BOOST_CHECK_EQUAL(
        solve(application)->why_not,
        "The mid-shaft of crown need 12 minutes and 10 minutes to apply: more than the maker's maximum of "
        "15 minutes.");
    application.tasks = {{Part::roots, "nape", 6, 10}, {Part::ends, "nape", 6, 11}};
    application.most_minutes = 60;
    BOOST_CHECK(solve(application)
                    ->why_not.find("From the first stroke at the ends of nape to the last at the roots of "
                                   "nape it takes 12 minutes") == 0);
}

BOOST_AUTO_TEST_CASE(eight_sections_of_three_parts_with_two_people_are_solved) {
    Application application;
    for (int section = 0; section < 8; ++section)
        for (const Part part : {Part::roots, Part::mid_shaft, Part::ends})
            application.tasks.push_back({part, std::to_string(section), 0.5 + 0.1 * section,
                                         part == Part::roots  ? 8.0
                                         : part == Part::ends ? 13.0
                                                              : 16.0});
    application.most_minutes = 25;
    application.hands = 2;
    application.over = application.under = 0.3;
    const auto solved = solve(application);
    BOOST_REQUIRE(solved);
    BOOST_CHECK(solved->works);
    application.hands = 1;
    BOOST_CHECK(!solve(application)->works);
    BOOST_CHECK(solve(application)->worst > solved->worst);
}

BOOST_AUTO_TEST_CASE(nonsense_is_refused) {
    Application application;
    application.most_minutes = 20;
    BOOST_CHECK(!solve(application));
    application.tasks = {{Part::roots, "", 1, 10}};
    BOOST_CHECK(solve(application));
    for (const double bad : {0.0, -1.0, 1e9, std::nan("")}) {
        Application wrong = application;
        wrong.tasks[0].apply_minutes = bad;
        BOOST_CHECK(!solve(wrong));
        wrong = application;
        wrong.most_minutes = bad;
        BOOST_CHECK(!solve(wrong));
        wrong = application;
        wrong.under = bad;
        BOOST_CHECK(!solve(wrong));
    }
    application.hands = 4;
    BOOST_CHECK(!solve(application));
    Setting setting;
    setting.strand_minutes = setting.most_minutes = 20;
    setting.sections = {{"nape", 1, 1, 1}};
    BOOST_CHECK(!application_of(setting, {}));  // no hair to cover
    BOOST_CHECK_EQUAL(ends_rate(4), 1);
    BOOST_CHECK_EQUAL(ends_rate(-3), ends_rate(0));
}

BOOST_AUTO_TEST_SUITE_END()
