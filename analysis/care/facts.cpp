#include "care/facts.h"

namespace kempt::care {

Value unknown_value() {
    return {};
}

Value absent_value() {
    Value value;
    value.known = value.absent = true;
    return value;
}

Value value_of(bool truth) {
    Value value;
    value.known = true;
    value.truth = truth;
    return value;
}

Value value_of(double low, double high) {
    Value value;
    value.known = true;
    value.low = low;
    value.high = high;
    return value;
}

Value value_of(std::string_view word) {
    Value value;
    value.known = true;
    value.word = word;
    return value;
}

Span span_of(const Context& context) {
    const Span hair{0, context.state->length_mm.value_or(std::numeric_limits<double>::infinity())};
    if (context.scope == Scope::client || context.scope == Scope::section || !context.service) return hair;
    const Span planned = span_of(*context.service, *context.state);
    return context.part ? meet(planned, span_of(*context.part, context.state->length_mm)) : planned;
}

const std::vector<Fact>& facts() {
    static const std::vector<Fact> all = [] {
        std::vector<Fact> list = facts_of_person();
        for (auto part : {facts_of_hair(), facts_of_service()}) list.insert(list.end(), part.begin(), part.end());
        return list;
    }();
    return all;
}

const Fact* find_fact(std::string_view name) {
    for (const Fact& fact : facts())
        if (fact.name == name) return &fact;
    return nullptr;
}

std::string question_of(const Fact& fact, const Family* family) {
    std::string text(fact.question);
    if (const auto at = text.find('%'); at != std::string::npos)
        text.replace(at, 1, family ? std::string(family->phrase) : std::string("it"));
    return text;
}

}  // namespace kempt::care
