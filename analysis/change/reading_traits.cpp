#include "change/reading_traits.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <limits>

namespace kempt::change {
namespace {

struct Traits {
    const char* reading;
    const char* name;
    Better better;
    double within_sd;  // calibrated on repeat shots as docs/reliability.md says; 0: none yet
    double setup_sd;   // likewise
    Scale scale{};
    double same_sd = std::numeric_limits<double>::infinity();
};

// Direction: what a recovering client hopes for. Fill depth is the depth at which coverage reaches half of its inner
// value, so it falls as an edge fills in.
constexpr std::array<Traits, 21> table{{
    {"edge_coverage", "Edge coverage", Better::higher, 1.5, 1.1},
    {"edge_strands", "Strands at the edge", Better::higher, 1.9, 1.2},
    {"fill_depth", "Fill depth", Better::lower, 0.36, 0.3},
    {"bare_length", "Bare length", Better::lower, 2.8, 2.2},
    {"length_density", "Hair length per area", Better::higher, 0.25, 0.18},
    {"temple_asymmetry", "Difference between the temples", Better::lower, 0, 0},
    {"shine_contrast", "Shine contrast", Better::higher, 0.008, 0.018, {.kind = Scale::Kind::root}},
    {"shine_width", "Shine width", Better::lower, 0.023, 0.045, {.kind = Scale::Kind::logarithm}},
    {"luster", "Lustre", Better::higher, 0.031, 0.05, {.kind = Scale::Kind::logarithm}},
    {"alignment", "Alignment", Better::higher, 0.03, 0.075, {.kind = Scale::Kind::lack, .less = 1.1, .most = 1}},
    {"tone_spread", "Tone spread", Better::lower, 0.8, 1.0, {}, 1.5},
    {"tone_level", "Level", Better::neither, 0.15, 0.25},
    {"hem_unevenness", "Unevenness of the hem", Better::lower, 0.09, 0.22},
    {"see_through", "See-through share of the ends", Better::lower, 0.5, 1.5},
    {"flyaway", "Flyaway share", Better::lower, 0.25, 0.33},
    {"short_share", "Share of short strands", Better::lower, 0.114, 0.095, {.kind = Scale::Kind::root}},
    {"strands", "Strands combed out", Better::lower, 0.81, 0.63},
    {"strand_median", "Length of the combed-out strands", Better::higher, 7.2, 4.7},
    {"curve_diameter",
     "Curve diameter",
     Better::neither,
     0.012,
     0.0255,
     {.kind = Scale::Kind::logarithm, .straight_at = 40}},
    {"wave_ratio",
     "Wave ratio",
     Better::neither,
     0.026,
     0.082,
     {.kind = Scale::Kind::logarithm, .less = 0.97, .least = 1}},
    {"strand_length", "Strand length", Better::neither, 0.012, 0.003, {.kind = Scale::Kind::logarithm}},
}};

const Traits* find(const std::string& reading) {
    const auto at = std::find_if(table.begin(), table.end(), [&](const Traits& row) { return reading == row.reading; });
    return at == table.end() ? nullptr : &*at;
}

}  // namespace

Better better_direction(const std::string& reading) {
    const Traits* row = find(reading);
    return row ? row->better : Better::higher;
}

double default_within_sd(const std::string& reading) {
    const Traits* row = find(reading);
    return row ? row->within_sd : 0;
}

double default_setup_sd(const std::string& reading) {
    const Traits* row = find(reading);
    return row ? row->setup_sd : 0;
}

double same_sd(const std::string& reading) {
    const Traits* row = find(reading);
    return row ? row->same_sd : std::numeric_limits<double>::infinity();
}

Scale scale_of(const std::string& reading) {
    const Traits* row = find(reading);
    return row ? row->scale : Scale{};
}

std::string sentence_name(const std::string& reading) {
    if (const Traits* row = find(reading)) return row->name;
    std::string name = reading.empty() ? std::string("The reading") : reading;
    std::replace(name.begin(), name.end(), '_', ' ');
    name[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(name[0])));
    return name;
}

}  // namespace kempt::change
