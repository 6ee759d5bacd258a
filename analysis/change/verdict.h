// The verdict between two visits.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "change/spread.h"

namespace kempt::change {

// changed: beyond the smallest detectable change, of a reading that has no better side.
enum class Verdict { improved, worse, changed, no_detectable_change, not_comparable };

struct Judgement {
    Verdict verdict = Verdict::not_comparable;
    double difference = 0;           // to - from, in the reading's unit; 0 when a side has no value
    double smallest_detectable = 0;  // 0 when it is not known
    double said = 0;                 // difference as the reason prints it, in the reading's unit; for tables beside it
    double said_smallest = 0;        // the smallest detectable change as the reason prints it, likewise
    double said_step = 0;            // its last decimal place there, in the reading's unit
    std::string reason;              // full sentences with figures and unit, rounded to what they can bear
};

struct VisitValue {
    std::vector<double> shots;  // values of the comparable repeat shots
    // Reasons that exclude this visit: full sentences, or bare clauses ("hair was wet"); empty when fine.
    std::vector<std::string> not_comparable;
    std::string unit;
    std::vector<Stated> stated{};  // the same shots with the intervals that their photos state; may be left out
};

// How a judgement is put into words; the figures of Judgement itself stay in the reading's unit.
struct Wording {
    std::string name;                  // of the reading, as a sentence begins; empty: sentence_name()
    std::string unit;                  // that the sentences use: "in", "1/in", "in/in2"; empty: the reading's own
    double factor = 1;                 // from the reading's unit to that one
    std::vector<std::string> between;  // full sentences: why these two visits cannot be compared with each other
};

// improved or worse only beyond the smallest detectable change of these numbers of shots. spread: spread_for; what the
// shots of both visits state is allowed for here (allowing_for).
[[nodiscard]] Judgement judge(const std::string& reading, const VisitValue& from, const VisitValue& to,
                              const Spread& spread, const Wording& wording = {});

// Share of the way from baseline to target, 0..1 unclamped; nullopt when they are equal or a value is not finite.
[[nodiscard]] std::optional<double> share_of_way(double baseline, double now, double target);

}  // namespace kempt::change
