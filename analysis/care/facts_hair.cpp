// Facts about the hair: texture, grades, readings, and what it has been through.
#include <algorithm>
#include <array>

#include "care/facts.h"

namespace kempt::care {
namespace {

// The sections that together make the whole head: the standard views of the scalp.
constexpr std::array<std::string_view, 5> head_sections = {"front hairline", "left temple", "right temple", "crown",
                                                           "nape"};

std::optional<int> lowest(const ClientState& state, std::string_view quality, std::string_view zone) {
    std::optional<int> low;
    for (const Graded& grade : state.grades)
        if (grade.quality == quality && grade.zone == zone) low = std::min(low.value_or(4), grade.value);
    return low;
}

// Of a head section: its grade. The whole head: its own grade, nothing when all five sections have one. Asked of the
// client or a service: the lowest anywhere, which may be lower still where nobody looked.
Value section_grade(const Context& context, std::string_view quality) {
    const ClientState& state = *context.state;
    const bool all = std::all_of(head_sections.begin(), head_sections.end(),
                                 [&](std::string_view name) { return lowest(state, quality, name).has_value(); });
    if (context.scope == Scope::section) {
        if (const auto grade = lowest(state, quality, context.section)) return value_of(*grade, *grade);
        if (!context.section.empty()) return absent_value();  // it was graded for another quality
        return all ? absent_value() : unknown_value();
    }
    std::optional<int> low;
    for (const Graded& grade : state.grades)
        if (grade.quality == quality) low = std::min(low.value_or(4), grade.value);
    if (!low) return unknown_value();
    return value_of(all || lowest(state, quality, "") ? *low : 0, *low);
}

// The lowest grade of any head section, or of the one that is asked about.
std::optional<int> lowest_of_sections(const Context& context, std::string_view quality) {
    std::optional<int> low;
    for (const std::string_view section : head_sections) {
        if (!context.section.empty() && context.section != section) continue;
        if (const auto grade = lowest(*context.state, quality, section)) low = std::min(low.value_or(4), *grade);
    }
    return low;
}

// Of a part of the strand; of more than one part: the lowest, which may be lower still where a part has no grade. A
// head section's grade may be that of any of its parts.
Value strand_grade(const Context& context, std::string_view quality) {
    if (context.scope == Scope::section) return section_grade(context, quality);
    const std::optional<int> whole = lowest(*context.state, quality, "");
    Value value = value_of(4.0, 4.0);
    bool any = false, missing = false;
    for (const Part part : {Part::roots, Part::mid_shaft, Part::ends}) {
        if (context.part && *context.part != part) continue;
        auto grade = lowest(*context.state, quality, word_of(part));
        if (!grade) grade = whole;
        if (grade) value.high = std::min(value.high, double(*grade));
        any = any || grade;
        missing = missing || !grade;
    }
    if (const auto section = lowest_of_sections(context, quality)) {
        value.high = std::min(value.high, double(*section));
        missing = missing || !any;
        any = true;
    }
    if (!any) return unknown_value();
    value.low = missing ? 0 : value.high;
    return value;
}

Value porosity(const Context& c, const Family*) {
    return strand_grade(c, "porosity");
}
Value elasticity(const Context& c, const Family*) {
    return strand_grade(c, "elasticity");
}
Value breakage(const Context& c, const Family*) {
    return strand_grade(c, "breakage");
}
Value scalp(const Context& c, const Family*) {
    return section_grade(c, "scalp");
}
Value edges(const Context& c, const Family*) {
    return section_grade(c, "edges");
}

Value texture(const Context& context, const Family*) {
    return context.state->texture ? value_of(word_of(*context.state->texture)) : unknown_value();
}

Value verdict_is_worse(const Context& context, std::string_view name) {
    bool any = false;
    for (const Measured& reading : context.state->readings) {
        if (reading.name != name || !reading.verdict || *reading.verdict == Direction::not_comparable) continue;
        if (context.scope == Scope::section && reading.zone != context.section) continue;
        if (*reading.verdict == Direction::worse) return value_of(true);
        any = true;
    }
    // No earlier visit to compare with is no reason to ask anybody.
    return any ? value_of(false) : absent_value();
}
Value edges_worse(const Context& c, const Family*) {
    return verdict_is_worse(c, "edge_coverage");
}
Value breakage_worse(const Context& c, const Family*) {
    return verdict_is_worse(c, "short_share");
}

// Two colours side by side that a person sees from where she stands: 5 CIEDE2000 (own choice; the least difference
// that can be seen at all is about 2, from memory). The stylist's word goes before the photo.
constexpr double seen_step = 5;
Value uneven_colour(const Context& context, const Family*) {
    if (context.state->answers.uneven_colour) return value_of(*context.state->answers.uneven_colour);
    bool any = false, unsure = false;
    for (const Measured& reading : context.state->readings) {
        if (reading.name != "tone_step" && reading.name != "tone_spread") continue;
        any = true;
        if (reading.low > seen_step) return value_of(true);
        unsure = unsure || reading.high > seen_step;
    }
    return any && !unsure ? value_of(false) : unknown_value();
}

Value from(Truth truth) {
    return truth == Truth::unknown ? unknown_value() : value_of(truth == Truth::yes);
}

std::vector<std::string> sections_of(const Context& context) {
    if (context.scope == Scope::section && !context.section.empty()) return {context.section};
    return context.service ? context.service->sections : std::vector<std::string>{};
}

Value had(const Context& context, const Family* family) {
    return from(has_been_through(*context.state, *family, span_of(context), sections_of(context)));
}

Context of_client(const Context& context) {
    Context all = context;
    all.scope = Scope::client;
    all.service = nullptr;
    all.part.reset();
    all.section.clear();
    return all;
}

Value ever(const Context& context, const Family* family) {
    return had(of_client(context), family);
}

// Of a part: on its own hair; otherwise anywhere on the head, because a wait is for the whole head.
Value days(const Context& context, const Family* family) {
    const Context place = context.scope == Scope::part ? context : of_client(context);
    const DaysSince since = days_since(*context.state, *family, span_of(place), sections_of(place));
    if (since.absent) return absent_value();
    Value value = value_of(since.low, since.high);
    value.may_be_absent = since.may_be_absent;
    return value;
}

// A straightener or perm, or a colour, of the planned kind's sort that was perhaps put on the roots since a day: the
// new growth may be no longer than since then.
const PastService* perhaps_since(const ClientState& state, Kind kind, const PastService* before) {
    const Family& sort = *find_family(belongs(*find_family("texture"), kind) ? "texture" : "colour");
    const PastService* newest = before;
    for (const PastService& service : state.history.services)
        if (service.unsure && service.day <= state.today && service.from_mm <= roots_mm &&
            belongs(sort, service.kind) && (!newest || service.day > newest->day))
            newest = &service;
    return newest == before ? nullptr : newest;
}

Value new_growth(const Context& context, const Family*) {
    const ClientState& state = *context.state;
    const PastService* before = grown_from(context.service->kind, state);
    const PastService* perhaps = perhaps_since(state, context.service->kind, before);
    if (before) {
        const GrowthRange grown = new_growth_since(*before, state.today, rate_of(state));
        return value_of(perhaps ? new_growth_since(*perhaps, state.today, rate_of(state)).low : grown.low, grown.high);
    }
    if (perhaps) return unknown_value();
    const auto& since = context.state->history.complete_since;
    return since && *since <= whole_life ? absent_value() : unknown_value();
}

Fact number(std::string_view name, std::string_view question, Value (*get)(const Context&, const Family*),
            bool needs_service = false) {
    return {name, Type::number, false, needs_service, question, get, {}};
}
Fact truth(std::string_view name, std::string_view question, Value (*get)(const Context&, const Family*)) {
    return {name, Type::truth, false, false, question, get, {}};
}

}  // namespace

std::vector<Fact> facts_of_hair() {
    constexpr std::string_view asks_history =
        "Ask whether this hair has been through % by anybody, when, and how far along its length.";
    return {
        number("porosity", "Wet a strand and grade the porosity of roots, mid-shaft and ends.", porosity),
        number("elasticity", "Stretch a wet strand and grade the elasticity of roots, mid-shaft and ends.", elasticity),
        number("breakage", "Comb through once and grade the breakage of roots, mid-shaft and ends.", breakage),
        number("scalp", "Part the hair and grade the scalp of every section.", scalp),
        number("edges", "Grade the edges of every section.", edges),
        {"texture",
         Type::word,
         false,
         false,
         "Feel single hairs: fine, medium or coarse?",
         texture,
         {"fine", "medium", "coarse"}},
        truth("edges_worse", "Measure the edges again.", edges_worse),
        truth("breakage_worse", "Do the timed comb-through again.", breakage_worse),
        truth("uneven_colour", "Look at the colour along strands of several sections: even or not?", uneven_colour),
        {"had", Type::truth, true, false, asks_history, had, {}},
        {"ever", Type::truth, true, false, asks_history, ever, {}},
        {"days_since", Type::number, true, false, asks_history, days, {}},
        number("new_growth_mm", "Measure the new growth to the line of demarcation.", new_growth, true),
    };
}

}  // namespace kempt::care
