// The facts that a rule's condition may name. Each has a type, the least place it can be asked of, and the sentence
// that asks for it when nobody knows it.
#pragma once

#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "care/client_state.h"
#include "care/history.h"

namespace kempt::care {

// What a condition is asked about: the client; one planned service; one part of the strand under that service; one
// head section.
enum class Scope { client, service, part, section };

struct Context {
    const ClientState* state = nullptr;
    const Plan* plan = nullptr;
    const PlannedService* service = nullptr;  // set in service, part; in section when a service is planned
    std::optional<Part> part;                 // set in part
    std::string section;                      // in section; empty: the whole head
    Scope scope = Scope::client;
};

// The hair that the context speaks of: the planned part, the planned hair, or all of it.
[[nodiscard]] Span span_of(const Context& context);

enum class Type { truth, number, word };

struct Value {
    bool known = false;
    bool absent = false;         // there is no such thing here: every comparison is a no
    bool may_be_absent = false;  // of a number
    bool truth = false;
    double low = 0, high = std::numeric_limits<double>::infinity();  // of a number
    std::string_view word;
};
[[nodiscard]] Value unknown_value();
[[nodiscard]] Value absent_value();
[[nodiscard]] Value value_of(bool truth);
[[nodiscard]] Value value_of(double low, double high);
[[nodiscard]] Value value_of(std::string_view word);

struct Fact {
    std::string_view name;
    Type type = Type::truth;
    bool takes_family = false;   // had(hydroxide)
    bool needs_service = false;  // cannot be asked of the client alone
    std::string_view question;   // "%" stands for the family's phrase
    Value (*get)(const Context&, const Family*) = nullptr;
    std::vector<std::string_view> words;  // that a word fact may be
};

[[nodiscard]] const std::vector<Fact>& facts();
[[nodiscard]] const Fact* find_fact(std::string_view name);
[[nodiscard]] std::string question_of(const Fact& fact, const Family* family);

// The registry's three parts.
[[nodiscard]] std::vector<Fact> facts_of_person();   // facts_person.cpp: age, answers, daily life
[[nodiscard]] std::vector<Fact> facts_of_hair();     // facts_hair.cpp: grades, readings, history
[[nodiscard]] std::vector<Fact> facts_of_service();  // facts_service.cpp: what is planned

}  // namespace kempt::care
