// Invented clients for the tests: one with nothing against her, and random ones.
#pragma once

#include <cmath>
#include <limits>
#include <random>
#include <stdexcept>

#include "care/evaluate.h"

namespace people {

using namespace kempt::care;

inline constexpr Day today = 20000;

// Everything is known and nothing speaks against a service, but for what any chemical service carries.
inline ClientState sound() {
    ClientState state;
    state.today = today;
    state.age_years = 34;
    state.length_mm = 300;
    state.texture = Texture::medium;
    state.group = HairGroup::african;
    state.pull_test_hairs = 1;
    state.comb_count = 10;
    for (const char* quality : {"breakage", "porosity", "elasticity", "shine", "edges", "scalp"})
        state.grades.push_back({quality, "", 4});
    state.history.complete_since = whole_life;
    DailyLife& daily = state.daily;
    daily.minutes_a_day = 20;
    daily.heat.emplace();
    daily.swims_a_week = 0;
    daily.washes_a_week = 1;
    daily.style_weeks = 2;
    for (auto* fact : {&daily.hard_water, &daily.covers_hair, &daily.tight_headwear, &daily.tight_styles,
                       &daily.style_hurts, &daily.added_hair})
        *fact = false;
    daily.covers_at_night = true;
    Answers& a = state.answers;
    for (auto* fact : {&a.pregnant_or_breastfeeding,
                       &a.takes_medication,
                       &a.scratched_scalp,
                       &a.washed_scalp,
                       &a.scalp_wound,
                       &a.scalp_pain,
                       &a.scalp_pustules,
                       &a.tingling_with_thinning,
                       &a.face_rash,
                       &a.sudden_loss,
                       &a.patchy_loss,
                       &a.smooth_edges,
                       &a.eyebrow_loss,
                       &a.loss_goes_on,
                       &a.swelling_or_breathing,
                       &a.dye_reaction,
                       &a.black_henna_reaction,
                       &a.straightener_burn,
                       &a.treatment_reaction,
                       &a.uneven_colour})
        *fact = false;
    return state;
}

// A service with everything done that is to be done before it.
inline PlannedService prepared(Kind kind) {
    PlannedService service;
    service.kind = kind;
    service.strength = Strength::mild;
    service.minutes = 15;
    service.most_minutes = 20;
    service.temperature_c = 140;
    service.passes = 1;
    for (auto* fact : {&service.at_home, &service.touches_scalp, &service.releases_formaldehyde, &service.hair_is_wet,
                       &service.tight, &service.adds_hair})
        *fact = false;
    for (auto* fact : {&service.data_sheet, &service.heat_protectant, &service.strand_tested, &service.patch_tested})
        *fact = true;
    service.strand_test = service.patch_test = TestResult::passed;
    service.patch_test_hours = 72;
    return service;
}

inline PastService past(Kind kind, int days_ago, double from_mm = 0, std::optional<double> to_mm = {}) {
    PastService service;
    service.kind = kind;
    service.day = today - days_ago;
    service.from_mm = from_mm;
    service.to_mm = to_mm;
    return service;
}

inline void set_grade(ClientState& state, const std::string& quality, const std::string& zone, int value) {
    std::erase_if(state.grades, [&](const Graded& g) { return g.quality == quality && g.zone == zone; });
    state.grades.push_back({quality, zone, value});
}

// Of a state and a plan that can be.
inline Advice advise(const Rules& rules, const ClientState& state, const Plan& plan) {
    const auto advice = evaluate(rules, state, plan);
    if (!advice) throw std::runtime_error(advice.error().sentence());
    return *advice;
}

inline const Finding* find(const Advice& advice, std::string_view rule,
                           FindingSort sort = FindingSort::speaks_against) {
    for (const Finding& finding : advice.findings)
        if (finding.rule == rule && finding.sort == sort) return &finding;
    return nullptr;
}

// Random clients and plans. Whatever may be unknown is unknown now and then.
class Dice {
  public:
    explicit Dice(uint64_t seed) : engine_(seed) {}
    double uniform(double low, double high) {
        return low + (high - low) * static_cast<double>(engine_() >> 11) * 0x1.0p-53;
    }
    int whole(int low, int high) { return low + static_cast<int>(uniform(0, high - low + 0.999999)); }
    bool chance(double share) { return uniform(0, 1) < share; }
    void maybe(std::optional<bool>& fact, double yes = 0.3) {
        if (chance(0.7)) fact = chance(yes);
    }
    void maybe(std::optional<double>& fact, double low, double high) {
        if (chance(0.7)) fact = uniform(low, high);
    }

  private:
    std::mt19937_64 engine_;
};

inline Kind kind(Dice& dice) {
    return static_cast<Kind>(dice.whole(0, kind_count - 1));
}

inline void some_sections(Dice& dice, std::vector<std::string>& sections) {
    if (dice.chance(0.6)) return;
    for (const char* name : {"front hairline", "left temple", "right temple", "crown", "nape", "by the left ear"})
        if (dice.chance(0.4)) sections.push_back(name);
}

inline PastService random_past(Dice& dice) {
    PastService service;
    service.kind = kind(dice);
    service.day = today - dice.whole(-20, 1500);
    service.from_mm = dice.chance(0.6) ? 0 : dice.uniform(0, 200);
    if (dice.chance(0.4)) service.to_mm = service.from_mm + dice.uniform(0, 300);
    some_sections(dice, service.sections);
    if (dice.chance(0.1)) {
        const double line = dice.uniform(1, 60);
        service.line_mm = GrowthRange{line, line - 1, line + 1};
        service.line_day = std::max(service.day, today - dice.whole(0, 30));
    }
    return service;
}

inline ClientState random_state(Dice& dice) {
    ClientState state;
    state.today = today;
    dice.maybe(state.age_years, 4, 80);
    dice.maybe(state.length_mm, 5, 700);
    if (dice.chance(0.7)) state.texture = static_cast<Texture>(dice.whole(0, 2));
    state.group = static_cast<HairGroup>(dice.whole(0, 3));
    if (dice.chance(0.2)) state.own_rate = GrowthRate{dice.uniform(180, 450), dice.uniform(10, 50), "measured"};
    dice.maybe(state.pull_test_hairs, 0, 5);
    dice.maybe(state.comb_count, 0, 100);
    for (const char* quality : {"breakage", "porosity", "elasticity", "edges", "scalp"})
        for (const char* zone : {"", "roots", "mid-shaft", "ends", "left temple", "nape", "crown"})
            if (dice.chance(0.3)) state.grades.push_back({quality, zone, dice.whole(0, 4)});
    for (const char* name : {"edge_coverage", "short_share", "tone_step"}) {
        if (dice.chance(0.6)) continue;
        Measured reading{name, dice.chance(0.5) ? "left temple" : "", dice.uniform(0, 12), 0, 0, {}};
        reading.low = reading.value - dice.uniform(0, 3);
        reading.high = reading.value + dice.uniform(0, 3);
        if (dice.chance(0.6)) reading.verdict = static_cast<Direction>(dice.whole(0, 3));
        state.readings.push_back(reading);
    }
    for (int n = dice.whole(0, 6); n > 0; --n) state.history.services.push_back(random_past(dice));
    if (dice.chance(0.7)) state.history.complete_since = dice.chance(0.5) ? whole_life : today - dice.whole(0, 2000);
    DailyLife& daily = state.daily;
    dice.maybe(daily.minutes_a_day, 0, 60);
    if (dice.chance(0.7)) {
        daily.heat.emplace();
        for (int n = dice.whole(0, 2); n > 0; --n) {
            HeatTool tool{"iron", {}, dice.uniform(0, 8), {}};
            dice.maybe(tool.temperature_c, 100, 240);
            dice.maybe(tool.on_wet_hair);
            daily.heat->push_back(tool);
        }
    }
    dice.maybe(daily.swims_a_week, 0, 4);
    dice.maybe(daily.washes_a_week, 0, 7);
    dice.maybe(daily.style_weeks, 0, 30);
    for (auto* fact : {&daily.hard_water, &daily.covers_hair, &daily.tight_headwear, &daily.covers_at_night,
                       &daily.tight_styles, &daily.style_hurts, &daily.added_hair})
        dice.maybe(*fact);
    Answers& a = state.answers;
    for (auto* fact :
         {&a.pregnant_or_breastfeeding, &a.takes_medication, &a.scratched_scalp, &a.washed_scalp, &a.scalp_wound,
          &a.scalp_pain, &a.scalp_pustules, &a.tingling_with_thinning, &a.face_rash, &a.sudden_loss, &a.patchy_loss,
          &a.smooth_edges, &a.eyebrow_loss, &a.loss_goes_on, &a.swelling_or_breathing, &a.dye_reaction,
          &a.black_henna_reaction, &a.straightener_burn, &a.uneven_colour})
        dice.maybe(*fact, 0.2);
    return state;
}

inline PlannedService random_service(Dice& dice) {
    PlannedService service;
    service.kind = kind(dice);
    if (dice.chance(0.3)) service.from_mm = dice.uniform(0, 200);
    if (dice.chance(0.4)) service.to_mm = service.from_mm + dice.uniform(0, 300);
    service.new_growth_only = dice.chance(0.3);
    some_sections(dice, service.sections);
    if (dice.chance(0.7)) service.strength = static_cast<Strength>(dice.whole(0, 2));
    dice.maybe(service.minutes, 1, 40);
    dice.maybe(service.most_minutes, 5, 40);
    dice.maybe(service.temperature_c, 100, 240);
    if (dice.chance(0.7)) service.passes = dice.whole(1, 5);
    for (auto* fact : {&service.at_home, &service.touches_scalp, &service.releases_formaldehyde, &service.data_sheet,
                       &service.hair_is_wet, &service.heat_protectant, &service.strand_tested, &service.patch_tested,
                       &service.tight, &service.adds_hair})
        dice.maybe(*fact);
    if (dice.chance(0.5)) service.strand_test = dice.chance(0.3) ? TestResult::failed : TestResult::passed;
    if (dice.chance(0.5)) service.patch_test = dice.chance(0.3) ? TestResult::failed : TestResult::passed;
    dice.maybe(service.patch_test_hours, 0, 400);
    return service;
}

inline PlannedService random_service(Dice& dice, const ClientState& state) {
    PlannedService service = random_service(dice);
    while (state.length_mm && service.from_mm >= *state.length_mm) service.from_mm /= 2;
    return service;
}

inline Plan random_plan(Dice& dice, const ClientState& state) {
    Plan plan;
    for (int n = dice.whole(0, 3); n > 0; --n) plan.services.push_back(random_service(dice, state));
    return plan;
}

}  // namespace people
