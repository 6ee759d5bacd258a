#include "care/expression.h"

#include <algorithm>

namespace kempt::care {
namespace {

Truth opposite(Truth truth) {
    if (truth == Truth::unknown) return Truth::unknown;
    return truth == Truth::yes ? Truth::no : Truth::yes;
}

Truth decided(bool surely, bool surely_not) {
    return surely ? Truth::yes : surely_not ? Truth::no : Truth::unknown;
}

Truth compare_number(const Value& value, Compare compare, double with) {
    const double low = value.low, high = value.high;
    Truth truth = Truth::unknown;
    switch (compare) {
        case Compare::less:
            truth = decided(high < with, low >= with);
            break;
        case Compare::less_equal:
            truth = decided(high <= with, low > with);
            break;
        case Compare::greater:
            truth = decided(low > with, high <= with);
            break;
        case Compare::greater_equal:
            truth = decided(low >= with, high < with);
            break;
        case Compare::equal:
            truth = decided(low == with && high == with, low > with || high < with);
            break;
        case Compare::not_equal:
            truth = decided(low > with || high < with, low == with && high == with);
            break;
    }
    return value.may_be_absent && truth == Truth::yes ? Truth::unknown : truth;
}

void add_once(std::vector<Named>& list, const std::vector<Named>& more) {
    for (const Named& named : more)
        if (std::find(list.begin(), list.end(), named) == list.end()) list.push_back(named);
}

}  // namespace

Outcome Expression::evaluate(const Context& context) const {
    return evaluate(root_, context);
}

Outcome Expression::evaluate(int index, const Context& context) const {
    const Node& node = nodes_[static_cast<std::size_t>(index)];
    if (node.op == Op::negate) {
        Outcome inner = evaluate(node.left, context);
        inner.truth = opposite(inner.truth);
        return inner;
    }
    if (node.op == Op::both || node.op == Op::either) {
        const Truth settles = node.op == Op::both ? Truth::no : Truth::yes;
        Outcome left = evaluate(node.left, context);
        if (left.truth == settles) return left;
        const Outcome right = evaluate(node.right, context);
        if (right.truth == settles) return right;
        if (left.truth != Truth::unknown) return right;
        add_once(left.unknown, right.unknown);
        return left;
    }
    const Value value = node.named.fact->get(context, node.named.family);
    Outcome outcome;
    if (value.absent) {
        outcome.truth = Truth::no;
    } else if (value.known) {
        if (node.op == Op::truth) outcome.truth = value.truth ? Truth::yes : Truth::no;
        if (node.op == Op::number) outcome.truth = compare_number(value, node.compare, node.number);
        if (node.op == Op::word)
            outcome.truth = (value.word == node.word) == (node.compare == Compare::equal) ? Truth::yes : Truth::no;
    }
    if (outcome.truth == Truth::unknown) outcome.unknown = {node.named};
    return outcome;
}

bool Expression::needs_service() const {
    return std::any_of(names_.begin(), names_.end(), [](const Named& named) { return named.fact->needs_service; });
}

}  // namespace kempt::care
