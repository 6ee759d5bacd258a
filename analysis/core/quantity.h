// A measured value with its unit and 95 % interval, and a value that was refused with its reason.
#pragma once

#include <string>

namespace kempt {

struct Quantity {
    std::string name;  // "edge_coverage"
    double value = 0;
    std::string unit;  // "%", "1/cm", "mm", "mm/mm2"
    double low = 0;    // 95 % interval
    double high = 0;
};

struct Refusal {
    std::string name;  // the reading that is not given
    std::string code;  // kebab-case: "too-coarse"
    std::string text;  // one plain sentence
};

enum class Level { note, warning, refused };

// One finding of the quality gate.
struct Finding {
    std::string code;  // kebab-case: "card-missing"
    Level level = Level::note;
    std::string text;    // what is the matter, in plain words
    std::string remedy;  // what to do about it
};

}  // namespace kempt
