// A rule's condition: facts compared with values, joined by and, or, not. Three-valued (Kleene 1938): what nobody knows
// makes the answer unknown only where it matters, and then the outcome names what has to be asked.
//
//   service(thioglycolate) and had(hydroxide)
//   days_since(straightener) < 14 or (age_years < 16 and not at_home)
//   texture = "fine"
//
// Names and families are checked when a condition is read. A comparison with something that is not there at all (days
// since a service that never was) is a no.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "care/facts.h"
#include "core/result.h"

namespace kempt::care {

// A fact as a condition names it, with its family where it takes one.
struct Named {
    const Fact* fact = nullptr;
    const Family* family = nullptr;
    bool operator==(const Named&) const = default;
};

struct Outcome {
    Truth truth = Truth::unknown;
    std::vector<Named> unknown;  // when unknown: the facts that would settle it, each once
};

enum class Compare { less, less_equal, greater, greater_equal, equal, not_equal };

class Expression {
  public:
    // Errors: invalid, with the place in the text ("at character 12").
    [[nodiscard]] static Result<Expression> parse(std::string_view text);
    [[nodiscard]] Outcome evaluate(const Context& context) const;
    [[nodiscard]] const std::vector<Named>& names() const { return names_; }
    [[nodiscard]] bool needs_service() const;

  private:
    friend class ExpressionReader;
    enum class Op { either, both, negate, truth, number, word };
    struct Node {
        Op op = Op::truth;
        int left = -1, right = -1;
        Named named;
        Compare compare = Compare::equal;
        double number = 0;
        std::string word;
    };
    [[nodiscard]] Outcome evaluate(int node, const Context& context) const;

    std::vector<Node> nodes_;
    std::vector<Named> names_;
    int root_ = -1;
};

}  // namespace kempt::care
