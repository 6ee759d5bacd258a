// Reads a condition by recursive descent and checks every name in it.
#include <algorithm>
#include <charconv>

#include "care/expression.h"
#include "care/records.h"

namespace kempt::care {
namespace {

constexpr int deepest = 40;  // brackets and nots in each other: a written rule needs three

bool is_name(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_' || c == '-' || c == '.';
}

}  // namespace

class ExpressionReader {
  public:
    explicit ExpressionReader(std::string_view text) : text_(text) { next(); }

    Result<Expression> read() {
        const int root = either(0);
        if (root >= 0 && !token_.empty()) fail(in_quotes(token_) + " was not expected");
        if (!problem_.empty())
            return Error{ErrorKind::invalid, "condition-invalid",
                         problem_ + " (at character " + std::to_string(problem_at_ + 1) + ").", "",
                         "Correct the condition."};
        out_.root_ = root;
        return std::move(out_);
    }

  private:
    using Op = Expression::Op;
    using Node = Expression::Node;

    int fail(const std::string& problem) {
        if (problem_.empty()) {
            problem_ = problem;
            problem_at_ = token_at_;
        }
        return -1;
    }

    void next() {
        while (at_ < text_.size() && text_[at_] == ' ') ++at_;
        token_at_ = at_;
        quoted_ = false;
        if (at_ == text_.size()) {
            token_.clear();
            return;
        }
        std::size_t end = at_ + 1;
        if (text_[at_] == '"') {
            end = text_.find('"', at_ + 1);
            quoted_ = true;
            if (end == std::string_view::npos) {
                fail("a quote is not closed");
                end = text_.size();
            }
            token_ = std::string(text_.substr(at_ + 1, end - at_ - 1));
            at_ = std::min(text_.size(), end + 1);
            return;
        }
        if (is_name(text_[at_])) {
            while (end < text_.size() && is_name(text_[end])) ++end;
        } else if ((text_[at_] == '<' || text_[at_] == '>' || text_[at_] == '!') && end < text_.size() &&
                   text_[end] == '=') {
            ++end;
        }
        token_ = std::string(text_.substr(at_, end - at_));
        at_ = end;
    }

    [[nodiscard]] bool here(std::string_view token) const { return !quoted_ && token_ == token; }

    int add(Node node) {
        out_.nodes_.push_back(std::move(node));
        return static_cast<int>(out_.nodes_.size()) - 1;
    }

    int joined(Op op, std::string_view word, int depth, int (ExpressionReader::*inner)(int)) {
        int left = (this->*inner)(depth);
        while (left >= 0 && here(word)) {
            next();
            const int right = (this->*inner)(depth);
            if (right < 0) return -1;
            Node node;
            node.op = op;
            node.left = left;
            node.right = right;
            left = add(node);
        }
        return left;
    }
    int either(int depth) { return joined(Op::either, "or", depth, &ExpressionReader::both); }
    int both(int depth) { return joined(Op::both, "and", depth, &ExpressionReader::single); }

    int single(int depth) {
        if (depth > deepest) return fail("too many brackets");
        if (here("not")) {
            next();
            Node node;
            node.op = Op::negate;
            node.left = single(depth + 1);
            return node.left < 0 ? -1 : add(node);
        }
        if (here("(")) {
            next();
            const int inner = either(depth + 1);
            if (inner < 0) return -1;
            if (!here(")")) return fail("')' is missing");
            next();
            return inner;
        }
        return comparison();
    }

    int comparison() {
        if (token_.empty() || quoted_ || !is_name(token_[0])) return fail("a fact is missing");
        Node node;
        node.named.fact = find_fact(token_);
        if (!node.named.fact) return fail("unknown fact " + in_quotes(token_));
        const Fact& fact = *node.named.fact;
        next();
        if (fact.takes_family && !family(node)) return -1;
        if (!fact.takes_family && here("(")) return fail(in_quotes(fact.name) + " takes no family");
        if (std::find(out_.names_.begin(), out_.names_.end(), node.named) == out_.names_.end())
            out_.names_.push_back(node.named);
        if (fact.type == Type::truth) {
            node.op = Op::truth;
            return add(node);
        }
        return compared(fact, node);
    }

    bool family(Node& node) {
        if (!here("(")) return fail(in_quotes(node.named.fact->name) + " needs a family in brackets") >= 0;
        next();
        node.named.family = find_family(token_);
        if (!node.named.family) return fail("unknown family " + in_quotes(token_)) >= 0;
        next();
        if (!here(")")) return fail("')' is missing") >= 0;
        next();
        return true;
    }

    int compared(const Fact& fact, Node& node) {
        static const std::vector<std::pair<std::string_view, Compare>> signs = {
            {"<", Compare::less},           {"<=", Compare::less_equal}, {">", Compare::greater},
            {">=", Compare::greater_equal}, {"=", Compare::equal},       {"!=", Compare::not_equal}};
        const auto sign = std::find_if(signs.begin(), signs.end(), [&](const auto& s) { return here(s.first); });
        if (sign == signs.end()) return fail(in_quotes(fact.name) + " must be compared");
        node.compare = sign->second;
        next();
        if (fact.type == Type::word) {
            node.op = Op::word;
            if (node.compare != Compare::equal && node.compare != Compare::not_equal)
                return fail("a word is only = or !=");
            if (!quoted_ || std::find(fact.words.begin(), fact.words.end(), token_) == fact.words.end())
                return fail(in_quotes(token_) + " is no word of " + in_quotes(fact.name));
            node.word = token_;
        } else {
            node.op = Op::number;
            const auto [end, error] = std::from_chars(token_.data(), token_.data() + token_.size(), node.number);
            if (quoted_ || error != std::errc() || end != token_.data() + token_.size() || token_.empty())
                return fail(in_quotes(token_) + " is no number");
        }
        next();
        return add(node);
    }

    std::string_view text_;
    std::size_t at_ = 0, token_at_ = 0, problem_at_ = 0;
    std::string token_, problem_;
    bool quoted_ = false;
    Expression out_;
};

Result<Expression> Expression::parse(std::string_view text) {
    return ExpressionReader(text).read();
}

}  // namespace kempt::care
