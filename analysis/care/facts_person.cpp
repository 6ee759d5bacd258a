// Facts about the person: age, tests, answers to questions, daily life.
#include <algorithm>

#include "care/facts.h"

namespace kempt::care {
namespace {

template <std::optional<bool> Answers::*Member>
Value answer(const Context& context, const Family*) {
    const std::optional<bool>& given = context.state->answers.*Member;
    return given ? value_of(*given) : unknown_value();
}

template <std::optional<bool> DailyLife::*Member>
Value habit(const Context& context, const Family*) {
    const std::optional<bool>& given = context.state->daily.*Member;
    return given ? value_of(*given) : unknown_value();
}

template <std::optional<double> DailyLife::*Member>
Value amount(const Context& context, const Family*) {
    const std::optional<double>& given = context.state->daily.*Member;
    return given ? value_of(*given, *given) : unknown_value();
}

template <std::optional<double> ClientState::*Member>
Value measure(const Context& context, const Family*) {
    const std::optional<double>& given = context.state->*Member;
    return given ? value_of(*given, *given) : unknown_value();
}

Value daily_heat_times(const Context& context, const Family*) {
    const auto& heat = context.state->daily.heat;
    if (!heat) return unknown_value();
    double times = 0;
    for (const HeatTool& tool : *heat) times += std::max(0.0, tool.times_a_week);
    return value_of(times, times);
}

// The hottest tool; one whose setting nobody knows may be hotter still.
Value daily_heat_celsius(const Context& context, const Family*) {
    const auto& heat = context.state->daily.heat;
    if (!heat) return unknown_value();
    if (heat->empty()) return absent_value();
    Value value = value_of(0.0, 0.0);
    bool unknown = false, any = false;
    for (const HeatTool& tool : *heat) {
        unknown = unknown || !tool.temperature_c;
        any = any || tool.temperature_c;
        if (tool.temperature_c) value.low = std::max(value.low, *tool.temperature_c);
    }
    if (!any) return unknown_value();
    value.high = unknown ? std::numeric_limits<double>::infinity() : value.low;
    return value;
}

Value irons_wet(const Context& context, const Family*) {
    const auto& heat = context.state->daily.heat;
    if (!heat) return unknown_value();
    bool unknown = false;
    for (const HeatTool& tool : *heat) {
        if (tool.on_wet_hair.value_or(false)) return value_of(true);
        unknown = unknown || !tool.on_wet_hair;
    }
    return unknown ? unknown_value() : value_of(false);
}

template <std::optional<bool> Answers::*Member>
Fact asked(std::string_view name, std::string_view question) {
    return {name, Type::truth, false, false, question, &answer<Member>, {}};
}
template <std::optional<bool> DailyLife::*Member>
Fact lived(std::string_view name, std::string_view question) {
    return {name, Type::truth, false, false, question, &habit<Member>, {}};
}
template <std::optional<double> DailyLife::*Member>
Fact counted(std::string_view name, std::string_view question) {
    return {name, Type::number, false, false, question, &amount<Member>, {}};
}

}  // namespace

std::vector<Fact> facts_of_person() {
    return {
        {"age_years", Type::number, false, false, "Ask how old the client is.", &measure<&ClientState::age_years>, {}},
        {"length_mm",
         Type::number,
         false,
         false,
         "Measure how long the hair is.",
         &measure<&ClientState::length_mm>,
         {}},
        {"pull_test_hairs",
         Type::number,
         false,
         false,
         "Do one gentle pull of about 50 to 60 hairs and count what comes out.",
         &measure<&ClientState::pull_test_hairs>,
         {}},
        {"comb_count",
         Type::number,
         false,
         false,
         "Comb for 60 seconds over a cloth before washing and count the hairs.",
         &measure<&ClientState::comb_count>,
         {}},
        asked<&Answers::pregnant_or_breastfeeding>("pregnant_or_breastfeeding",
                                                   "Ask whether the client is pregnant or breastfeeding."),
        asked<&Answers::takes_medication>(
            "takes_medication",
            "Ask about medicines or treatments, also those that thin the skin or the blood or make hair fall."),
        asked<&Answers::scratched_scalp>("scratched_scalp",
                                         "Ask whether the scalp was scratched or brushed hard in the last 48 hours."),
        asked<&Answers::washed_scalp>("washed_scalp", "Ask whether the scalp was washed in the last 24 hours."),
        asked<&Answers::scalp_wound>("scalp_wound",
                                     "Part the hair and look for open, weeping, crusted or burnt places."),
        asked<&Answers::scalp_pain>("scalp_pain", "Ask whether the scalp hurts, burns or stings."),
        asked<&Answers::scalp_pustules>("scalp_pustules",
                                        "Look for pimples, pustules, crusts or thick scale along the hairline."),
        asked<&Answers::tingling_with_thinning>("tingling_with_thinning",
                                                "Ask about pins and needles where the hair gets thinner."),
        asked<&Answers::face_rash>("face_rash", "Look for a rash on face, ears and neck."),
        asked<&Answers::sudden_loss>("sudden_loss", "Ask whether hair was lost suddenly."),
        asked<&Answers::patchy_loss>("patchy_loss", "Part the hair and look for bald patches."),
        asked<&Answers::smooth_edges>("smooth_edges",
                                      "Look whether the thin skin is smooth and shiny, without openings of hairs."),
        asked<&Answers::eyebrow_loss>("eyebrow_loss", "Ask whether the eyebrows have become thinner."),
        asked<&Answers::loss_goes_on>("loss_goes_on",
                                      "Ask whether hair still gets thinner half a year after pulling styles stopped."),
        asked<&Answers::swelling_or_breathing>(
            "swelling_or_breathing", "Ask whether a hair product ever made the face swell or breathing hard."),
        asked<&Answers::dye_reaction>("dye_reaction", "Ask about any rash, itch or swelling after a hair dye."),
        asked<&Answers::black_henna_reaction>("black_henna_reaction",
                                              "Ask about a black henna tattoo that itched or blistered."),
        asked<&Answers::straightener_burn>("straightener_burn", "Ask whether a straightener ever burnt the scalp."),
        asked<&Answers::treatment_reaction>("treatment_reaction",
                                            "Ask about any rash, itch, swelling or burning after a treatment."),
        lived<&DailyLife::hard_water>("hard_water", "Ask whether the water at home is hard."),
        lived<&DailyLife::covers_hair>("covers_hair", "Ask whether the hair is covered during the day."),
        lived<&DailyLife::tight_headwear>("tight_headwear",
                                          "Ask whether caps, bands or helmets press on the hairline."),
        lived<&DailyLife::covers_at_night>("covers_at_night", "Ask how the hair is kept at night."),
        lived<&DailyLife::tight_styles>("wears_tight_styles", "Ask about tight braids, buns, tails, weaves or locks."),
        lived<&DailyLife::style_hurts>("style_hurts", "Ask whether a style hurts while it is put in or afterwards."),
        lived<&DailyLife::added_hair>("wears_added_hair", "Ask whether hair is added to braids, locks or weaves."),
        counted<&DailyLife::style_weeks>("style_weeks", "Ask how many weeks one style stays in."),
        counted<&DailyLife::minutes_a_day>("minutes_a_day", "Ask how many minutes a day there are for the hair."),
        counted<&DailyLife::swims_a_week>("swims_a_week", "Ask how often a week the client swims."),
        counted<&DailyLife::washes_a_week>("washes_a_week", "Ask how often a week the hair is washed."),
        {"daily_heat_times",
         Type::number,
         false,
         false,
         "Ask how often a week heat tools are used.",
         &daily_heat_times,
         {}},
        {"daily_heat_celsius",
         Type::number,
         false,
         false,
         "Ask how hot the heat tools at home are set.",
         &daily_heat_celsius,
         {}},
        {"irons_wet_hair",
         Type::truth,
         false,
         false,
         "Ask whether an iron ever touches damp hair at home.",
         &irons_wet,
         {}},
    };
}

}  // namespace kempt::care
