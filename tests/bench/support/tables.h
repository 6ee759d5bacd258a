// Markdown tables of errors against truth and of verdicts over re-photographed pairs. Columns of a reading `x` in the
// rows: x_true (below 0: there is none), x (empty: refused), x_low, x_high, x_refused (code).
#pragma once

#include <functional>
#include <ostream>
#include <string>
#include <vector>

#include "bench/support/rows.h"

namespace bench {

struct Errors {
    int n = 0, refused = 0, held = 0;
    double absolute = 0, bias = 0, relative = 0, worst = 0;  // sums, but for worst
    std::vector<double> all;                                 // absolute errors
    [[nodiscard]] double mean() const { return absolute / n; }
    [[nodiscard]] double mean_share() const { return relative / n; }
    [[nodiscard]] double below(double share) const;  // quantile of the absolute errors
};
[[nodiscard]] Errors errors_of(const std::vector<Row>& rows, const std::string& reading,
                               const std::function<bool(const Row&)>& take = {});

struct Spec {
    std::string reading, unit;
    std::string wanted;     // as the table prints it
    bool relative = false;  // also print the error in % of the truth; classes are compared by it
};
// One row a reading: photos, refused, mean error, bias, 95 %, worst, share of intervals that hold the truth.
void reading_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs);
// One row a class: `column` holds the class's number, labels its names. Error of one reading, where its spec is
// relative in % of the truth, and its ratio to all.
void class_table(std::ostream& out, const std::vector<Row>& rows, const Spec& spec, const std::string& title,
                 const std::string& column, const std::vector<std::string>& labels);
// Several readings side by side, each in % of the truth with its ratio to all in brackets, and how many are refused.
void share_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs,
                 const std::string& title, const std::string& column, const std::vector<std::string>& labels);
// The rows with each value's place on the scale that it is judged on (change/scale.h) in place of the value, told so
// that an error in % of the truth is a step on that scale in hundredths.
[[nodiscard]] std::vector<Row> on_scale(std::vector<Row> rows, const std::vector<Spec>& specs);
// "Refusals: ..." with how often each code occurred.
void refusal_line(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs);

// Rows of re-photographed pairs: pair, visit (A, B: nothing changed; C: changed), shot, x_true, x. Judged as the
// program does it: this client's repeats, the rest of the book, the documented defaults. One row a reading: pairs
// without change and share called, true change A to C (mean) and share called in its direction, within-visit SD,
// median smallest detectable change. A pair counts from two shots a visit on.
void verdict_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs);
// The same by class, a row each: `column` holds the class's number, labels its names. Spreads are those of all.
void verdict_class_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs,
                         const std::string& title, const std::string& column, const std::vector<std::string>& labels);

}  // namespace bench
