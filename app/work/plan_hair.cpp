#include "work/plan_hair.h"

#include <QLocale>
#include <algorithm>

namespace kempt::work {

namespace {

PartRecord record_of(care::Part part, const care::ClientState& state) {
    PartRecord record{part, care::span_of(part, state.length_mm), {}, false};
    for (const care::Carried& carried :
         care::carry(state.history, state.today, care::rate_of(state), state.length_mm)) {
        const care::PastService& service = state.history.services[carried.service];
        care::Span span = care::meet(carried.surely, record.span);
        const bool surely = !span.empty();
        if (!surely) span = care::meet(carried.perhaps, record.span);
        if (!span.empty()) record.been_through.push_back({carried.service, service.kind, service.day, surely, span});
    }
    std::stable_sort(record.been_through.begin(), record.been_through.end(),
                     [](const Past& a, const Past& b) { return a.day > b.day; });
    // Of a family without kinds nothing is recorded: unknown only where the record does not reach back.
    record.complete = care::has_been_through(state, {"", "", {}}, record.span) == care::Truth::no;
    return record;
}

}  // namespace

std::vector<PartRecord> hair_of(const care::ClientState& state) {
    std::vector<PartRecord> hair;
    for (const care::Part part : {care::Part::roots, care::Part::mid_shaft, care::Part::ends}) {
        if (part == care::Part::ends && !state.length_mm) continue;
        if (PartRecord record = record_of(part, state); !record.span.empty()) hair.push_back(std::move(record));
    }
    return hair;
}

std::vector<GrowthNow> growth_of(const care::ClientState& state) {
    std::vector<GrowthNow> all;
    const care::GrowthRate rate = care::rate_of(state);
    // As a retouch of either sort counts it: from what stays and began at the roots.
    for (const care::Kind sort : {care::Kind::hydroxide, care::Kind::permanent}) {
        const care::PastService* last = care::grown_from(sort, state);
        if (!last) continue;
        GrowthNow growth{last->kind, last->day, care::new_growth_since(*last, state.today, rate),
                         false,      false,     rate.source};
        if (last->line_mm && last->line_day <= state.today) {
            growth.measured = true;
            growth.by_tape = last->line_by_tape;
            const std::string line = std::string("line of demarcation measured ") +
                                     (growth.by_tape ? "by tape on " : "on a photo of ") +
                                     QLocale(QLocale::English, QLocale::UnitedKingdom)
                                         .toString(date_of(last->line_day), u"d MMM yyyy")
                                         .toStdString();
            growth.source =
                last->line_day == state.today ? line : line + ", carried on at the rate of growth: " + rate.source;
        }
        all.push_back(std::move(growth));
    }
    return all;
}

std::string rate_sentence(const care::ClientState& state) {
    const care::GrowthRate rate = care::rate_of(state);
    if (state.own_rate) return "Measured on her and weighed against what is published: " + rate.source + ".";
    if (state.group == care::HairGroup::unknown)
        return "Published, over all groups of hair, since hers is not recorded: " + rate.source + ".";
    return "Published, for her group of hair: " + rate.source + ".";
}

}  // namespace kempt::work
