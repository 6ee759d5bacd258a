// Facts about what is planned for today.
#include <algorithm>

#include "care/facts.h"

namespace kempt::care {
namespace {

template <std::optional<bool> PlannedService::*Member>
Value said(const Context& context, const Family*) {
    const std::optional<bool>& given = context.service->*Member;
    return given ? value_of(*given) : unknown_value();
}

template <std::optional<double> PlannedService::*Member>
Value set_to(const Context& context, const Family*) {
    const std::optional<double>& given = context.service->*Member;
    return given ? value_of(*given, *given) : unknown_value();
}

// A test whose result nobody wrote down is unknown; one that was not made has none.
template <std::optional<bool> PlannedService::*Made, std::optional<TestResult> PlannedService::*Result>
Value failed(const Context& context, const Family*) {
    const auto& result = context.service->*Result;
    if (result) return value_of(*result == TestResult::failed);
    const auto& made = context.service->*Made;
    return made && !*made ? absent_value() : unknown_value();
}

// The same only where somebody wrote down that it failed; never asked. For kinds that no test is asked of.
template <std::optional<TestResult> PlannedService::*Result>
Value seen_failed(const Context& context, const Family*) {
    return value_of(context.service->*Result == TestResult::failed);
}
Value formaldehyde_is_told(const Context& context, const Family*) {
    return value_of(context.service->releases_formaldehyde.value_or(false));
}

Value minutes_are_told(const Context& context, const Family*) {
    return value_of(context.service->minutes && context.service->most_minutes);
}

Value patch_hours(const Context& context, const Family*) {
    const PlannedService& service = *context.service;
    if (service.patch_test_hours) return value_of(*service.patch_test_hours, *service.patch_test_hours);
    return service.patch_tested && !*service.patch_tested ? absent_value() : unknown_value();
}

Value service(const Context& context, const Family* family) {
    return value_of(belongs(*family, context.service->kind));
}
Value planned(const Context& context, const Family* family) {
    const auto& all = context.plan->services;
    return value_of(
        std::any_of(all.begin(), all.end(), [&](const PlannedService& one) { return belongs(*family, one.kind); }));
}
Value with(const Context& context, const Family* family) {
    const auto& all = context.plan->services;
    return value_of(std::any_of(all.begin(), all.end(), [&](const PlannedService& one) {
        return &one != context.service && belongs(*family, one.kind);
    }));
}

Value strength(const Context& context, const Family*) {
    return context.service->strength ? value_of(word_of(*context.service->strength)) : unknown_value();
}
Value new_growth_only(const Context& context, const Family*) {
    return value_of(context.service->new_growth_only);
}
Value passes(const Context& context, const Family*) {
    const auto& given = context.service->passes;
    return given ? value_of(*given, *given) : unknown_value();
}
// Minutes planned as a share of the maker's maximum, %.
Value minutes_share(const Context& context, const Family*) {
    const auto &minutes = context.service->minutes, &most = context.service->most_minutes;
    if (!minutes || !most || !(*most > 0)) return unknown_value();
    const double share = 100 * *minutes / *most;
    return value_of(share, share);
}

template <std::optional<bool> PlannedService::*Member>
Fact truth(std::string_view name, std::string_view question) {
    return {name, Type::truth, false, true, question, &said<Member>, {}};
}
Fact number(std::string_view name, std::string_view question, Value (*get)(const Context&, const Family*)) {
    return {name, Type::number, false, true, question, get, {}};
}

}  // namespace

std::vector<Fact> facts_of_service() {
    using P = PlannedService;
    return {
        {"service", Type::truth, true, true, "", service, {}},
        {"planned", Type::truth, true, false, "", planned, {}},
        {"with", Type::truth, true, true, "", with, {}},
        {"new_growth_only", Type::truth, false, true, "", new_growth_only, {}},
        {"strength",
         Type::word,
         false,
         true,
         "Choose the strength and write it down.",
         strength,
         {"mild", "regular", "super"}},
        number("minutes_share", "Read the longest time in the maker's directions and plan the minutes.", minutes_share),
        number("temperature_c", "Set the tool's temperature and write it down.", &set_to<&P::temperature_c>),
        number("passes", "Plan how often the tool passes over one strand.", passes),
        truth<&P::at_home>("at_home", "Ask whether this is to be done at home."),
        truth<&P::touches_scalp>("touches_scalp", "Say whether the product touches the scalp."),
        truth<&P::releases_formaldehyde>("releases_formaldehyde",
                                         "Read label and safety data sheet for formaldehyde and its other names "
                                         "(methylene glycol, formalin, methanal)."),
        truth<&P::data_sheet>("data_sheet", "Look for the product's safety data sheet."),
        truth<&P::hair_is_wet>("hair_is_wet", "Feel whether the hair is dry to its core."),
        truth<&P::heat_protectant>("heat_protectant", "Say whether a heat protectant is used."),
        truth<&P::strand_tested>("strand_tested", "Do a strand test on the weakest hair."),
        {"strand_test_seen_failed", Type::truth, false, true, "", &seen_failed<&P::strand_test>, {}},
        {"patch_test_seen_failed", Type::truth, false, true, "", &seen_failed<&P::patch_test>, {}},
        {"minutes_are_told", Type::truth, false, true, "", minutes_are_told, {}},
        {"formaldehyde_is_told", Type::truth, false, true, "", formaldehyde_is_told, {}},
        {"strand_test_failed",
         Type::truth,
         false,
         true,
         "Read the strand test and write down how it ended.",
         &failed<&P::strand_tested, &P::strand_test>,
         {}},
        truth<&P::patch_tested>("patch_tested", "Ask whether this very product was patch-tested."),
        {"patch_test_failed",
         Type::truth,
         false,
         true,
         "Look at the place of the patch test.",
         &failed<&P::patch_tested, &P::patch_test>,
         {}},
        number("patch_test_hours", "Ask when the patch test was put on.", patch_hours),
        truth<&P::tight>("tight", "Say whether the style pulls on the hair."),
        truth<&P::adds_hair>("adds_hair", "Say whether hair is added to the style."),
    };
}

}  // namespace kempt::care
