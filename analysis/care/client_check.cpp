// Numbers that cannot be are refused before any rule sees them.
#include <algorithm>
#include <array>
#include <cmath>

#include "care/client_state.h"

namespace kempt::care {
namespace {

constexpr double longest_mm = 6000;  // the longest hair on record is under 6 m (from memory)
constexpr std::array<std::string_view, 6> qualities = {"edges", "breakage", "porosity", "elasticity", "shine", "scalp"};

class Checker {
  public:
    void number(const std::optional<double>& value, double most, const std::string& what) {
        if (value && !(*value >= 0 && *value <= most)) say(what + " is no number from 0 on that can be.");
    }
    void stretch(double from_mm, const std::optional<double>& to_mm, const std::string& what) {
        number(from_mm, longest_mm, what + ": the beginning");
        number(to_mm, longest_mm, what + ": the end");
        if (to_mm && *to_mm < from_mm) say(what + " ends before it begins.");
    }
    void say(const std::string& what) {
        if (problem_.empty()) problem_ = what;
    }
    [[nodiscard]] Status status() const {
        if (problem_.empty()) return Done{};
        return Error{ErrorKind::invalid, "client-invalid", problem_, "", "Correct it in the record."};
    }

  private:
    std::string problem_;
};

void check_history(Checker& check, const ClientState& state) {
    for (const PastService& service : state.history.services) {
        const std::string what(word_of(service.kind));
        check.stretch(service.from_mm, service.to_mm, what);
        check.number(service.minutes, 24 * 60, what + ": the minutes");
        check.number(service.temperature_c, 1000, what + ": the temperature");
        if (!service.line_mm) continue;
        const GrowthRange& line = *service.line_mm;
        check.number(line.high, longest_mm, what + ": the line");
        if (!(line.low >= 0 && line.low <= line.value && line.value <= line.high))
            check.say(what + ": the line is no length with its range.");
        if (service.line_day < service.day) check.say(what + ": the line was measured before the service.");
    }
}

void check_plan(Checker& check, const ClientState& state, const Plan& plan) {
    for (const PlannedService& service : plan.services) {
        const std::string what(word_of(service.kind));
        check.stretch(service.from_mm, service.to_mm, what);
        if (!service.new_growth_only && state.length_mm && service.from_mm >= *state.length_mm)
            check.say(what + " is planned beyond the end of the hair.");
        check.number(service.minutes, 24 * 60, what + ": the minutes");
        check.number(service.most_minutes, 24 * 60, what + ": the longest time");
        check.number(service.temperature_c, 1000, what + ": the temperature");
        check.number(service.patch_test_hours, 1e6, what + ": the hours of the patch test");
    }
}

}  // namespace

Status checked(const ClientState& state, const Plan& plan) {
    Checker check;
    check.number(state.age_years, 130, "The age");
    check.number(state.length_mm, longest_mm, "The length of the hair");
    check.number(state.pull_test_hairs, 1000, "The pull test");
    check.number(state.comb_count, 1e6, "The comb count");
    if (state.own_rate) {
        const GrowthRate& rate = *state.own_rate;
        // 1.96 SD below the mean hair still grows.
        if (!(rate.sd_um_per_day >= 0 && rate.um_per_day > 1.96 * rate.sd_um_per_day && rate.um_per_day < 5000))
            check.say("The growth rate is not above zero or too uncertain.");
    }
    for (const Graded& grade : state.grades) {
        if (grade.value < 0 || grade.value > 4) check.say("A grade is not 0 to 4.");
        if (std::find(qualities.begin(), qualities.end(), grade.quality) == qualities.end())
            check.say("A grade is of no known quality.");
    }
    for (const Measured& reading : state.readings)
        if (!(reading.low <= reading.value && reading.value <= reading.high) ||
            !std::isfinite(reading.high - reading.low))
            check.say("A reading is no number with its interval.");
    const DailyLife& daily = state.daily;
    check.number(daily.minutes_a_day, 24 * 60, "The minutes a day");
    check.number(daily.swims_a_week, 100, "Swimming");
    check.number(daily.washes_a_week, 100, "Washing");
    check.number(daily.style_weeks, 5000, "The weeks of a style");
    if (daily.heat)
        for (const HeatTool& tool : *daily.heat) {
            check.number(tool.temperature_c, 1000, "The temperature of a heat tool");
            check.number(tool.times_a_week, 1000, "The use of a heat tool");
        }
    check_history(check, state);
    check_plan(check, state, plan);
    return check.status();
}

}  // namespace kempt::care
