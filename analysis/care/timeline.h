// The application timeline: in which order, and when, product goes on each part of each head section, so that all of
// them are done at one moment and rinsed together.
//
// A part needs strand-test minutes / its rate. Its hair is reached during the minutes of application, so the first hair
// carries the product longer than the last. Every part must lie between its need less `under` and its need plus `over`,
// and no hair may carry the product longer than the maker's maximum. Counted back from the rinse this is scheduling
// with release times and deadlines; both grow with the need, so applying in the order of needs, longest first, is as
// good as any order (exchange of neighbours), and the least worst deviation has a closed form. Each head section is one
// applier's; all ways to share the sections out are tried. The answer is exact; tests compare it with all orders.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "care/coverage.h"
#include "core/result.h"

namespace kempt::care {

// Relative speed of processing, 1 at the mid-shaft. Scalp heat about doubles it at the roots, and porous ends run fast:
// common practice, no source; a strand test of that very part is better.
inline constexpr double roots_rate = 2;
[[nodiscard]] double ends_rate(int porosity_grade);  // 0..4: 1.5, 1.5, 1.25, 1.1, 1: own assumption

struct Task {
    Part part = Part::roots;
    std::string section;
    double apply_minutes = 0, needed_minutes = 0;
};

struct Application {
    std::vector<Task> tasks;
    double most_minutes = 0;  // that any hair may carry the product, from the maker's directions
    int hands = 1;            // appliers, 1..3
    // Own choice: the minutes that makers print for one strength span about a fifth to either side (from memory).
    double under = 0.2, over = 0.2;
};

struct Placed {
    std::size_t task = 0;
    int hand = 0;
    double start_minutes = 0, end_minutes = 0;   // from the first stroke
    double least_minutes = 0, most_minutes = 0;  // that its last and first hair carry the product
    double under_percent = 0, over_percent = 0;  // of the need: at its last and its first hair
    bool within = false;                         // tolerance and maximum
};

struct Timeline {
    std::vector<Placed> order;  // by start
    double rinse_minutes = 0;   // from the first stroke
    // The worst deviation as a share of what is tolerated, the least that any order reaches: 1 is just tolerated.
    double worst = 0;
    bool works = false;   // worst <= 1
    std::string why_not;  // a sentence; empty when it works
};

// Errors: invalid (no task or more than 48, more than 16 sections or, with several hands, more than 8; minutes or
// tolerances not above 0 or over 600, hands not 1..3).
[[nodiscard]] Result<Timeline> solve(const Application& application);

// What the stylist enters.
struct SectionMinutes {
    std::string name;
    double roots = 0, mid_shaft = 0, ends = 0;  // to apply each; 0: this part is not done here
};
struct Setting {
    double strand_minutes = 0;  // that a strand of the mid-shaft needed
    double most_minutes = 0;
    int hands = 1;
    std::vector<SectionMinutes> sections;
    std::optional<double> roots_minutes, ends_minutes;  // their own strand tests, before any rate
    std::optional<int> ends_porosity;                   // grade; not set: taken as sound (rate 1)
};
// Only parts that the coverage puts product on become tasks. Errors: invalid (nothing to cover, as solve).
[[nodiscard]] Result<Application> application_of(const Setting& setting, const Coverage& coverage);

// A change that makes an order work, each proven by solving again.
enum class RemedySort { more_hands, rounds, smaller_sections, milder };
struct Remedy {
    RemedySort sort = RemedySort::more_hands;
    std::string text;
    std::vector<Application> rounds;           // one, or one a round: applied and rinsed one after the other
    double least_factor = 1, most_factor = 1;  // of milder: how much longer its strand test takes than now
};
// Empty when it works already, or when nothing of this sort helps.
[[nodiscard]] std::vector<Remedy> what_would_help(const Application& application);

}  // namespace kempt::care
