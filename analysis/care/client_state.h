// What is known of a client and of the services planned for today, as plain facts. std::optional means "nobody knows
// yet": a rule that needs such a fact asks for it, it never takes it for a no.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "care/growth.h"
#include "care/words.h"
#include "core/result.h"

namespace kempt::care {

using Day = int;  // days since 1970-01-01

// A stylist's judgement, 0..4 with 4 best. quality: "edges", "breakage", "porosity", "elasticity", "shine", "scalp".
// zone: a part of the strand ("roots", "mid-shaft", "ends"), a head section ("left temple"), or empty: the whole head.
struct Graded {
    std::string quality, zone;
    int value = 0;
};

enum class Direction { improved, worse, no_detectable_change, not_comparable };

// A reading with its 95 % interval and the verdict since the visit before, where there is one.
struct Measured {
    std::string name;  // "edge_coverage", "short_share", "tone_step"
    std::string zone;  // the view: "left temple"; empty: no place
    double value = 0, low = 0, high = 0;
    std::optional<Direction> verdict;
};

enum class TestResult { passed, failed };

// A service in the record. Lengths in mm from the scalp as the hair was on that day.
struct PastService {
    Kind kind = Kind::cut;
    Day day = 0;
    double from_mm = 0;
    std::optional<double> to_mm;        // not set: to the ends. Of a cut: the length that was left
    std::vector<std::string> sections;  // of the head; empty: all of it
    std::optional<Strength> strength;
    std::optional<double> minutes, temperature_c;
    std::optional<int> passes;
    std::optional<TestResult> strand_test;
    std::optional<TestResult> patch_test;
    std::optional<Day> patch_test_day;
    std::string result;  // in the stylist's words
    std::optional<bool> reaction, at_home;
    // Its line of demarcation, seen on a later day (mm from the scalp, with its 95 % range): then the photo says how
    // far it has moved, not a rate.
    std::optional<GrowthRange> line_mm;
    Day line_day = 0;
    bool line_by_tape = false;  // else on a photo
    // Planned for that day, and nobody has said whether it was done: it was perhaps done, never surely. Such a cut
    // leaves the hair as long as it was.
    bool unsure = false;
};

struct ChemicalHistory {
    std::vector<PastService> services;  // in any order
    // Every service from this day on is in the record; not set: there may be others at any time.
    std::optional<Day> complete_since;
};
inline constexpr Day whole_life = -1000000;  // complete_since of a client whose whole history is known

struct HeatTool {
    std::string name;
    std::optional<double> temperature_c;
    double times_a_week = 0;
    std::optional<bool> on_wet_hair;
};

struct DailyLife {
    std::optional<double> minutes_a_day;        // she has for her hair
    std::optional<std::vector<HeatTool>> heat;  // an empty list: none used
    std::optional<double> swims_a_week, washes_a_week;
    std::optional<bool> hard_water, covers_hair, tight_headwear, covers_at_night;
    std::optional<bool> tight_styles, style_hurts, added_hair;
    std::optional<double> style_weeks;  // how long one style stays in
};

// Questions that a stylist asks before a service. Times are counted back from now.
struct Answers {
    std::optional<bool> pregnant_or_breastfeeding, takes_medication;
    std::optional<bool> scratched_scalp;  // or brushed it hard, within 48 hours
    std::optional<bool> washed_scalp;     // within 24 hours
    std::optional<bool> scalp_wound, scalp_pain, scalp_pustules, tingling_with_thinning, face_rash;
    std::optional<bool> sudden_loss, patchy_loss, smooth_edges, eyebrow_loss, loss_goes_on;
    std::optional<bool> swelling_or_breathing;  // of the face, or trouble breathing, after a hair product
    std::optional<bool> dye_reaction, black_henna_reaction, straightener_burn;
    std::optional<bool> treatment_reaction;  // a treatment or smoothing has irritated her
    std::optional<bool> uneven_colour;
};

struct ClientState {
    Day today = 0;
    std::optional<double> age_years, length_mm;
    std::optional<Texture> texture;
    HairGroup group = HairGroup::unknown;
    std::optional<GrowthRate> own_rate;  // measured on her, pooled by with_own_rates
    std::optional<double> pull_test_hairs, comb_count;
    std::vector<Graded> grades;
    std::vector<Measured> readings;
    ChemicalHistory history;
    DailyLife daily;
    Answers answers;
};

// A service that is planned for today.
struct PlannedService {
    Kind kind = Kind::cut;
    double from_mm = 0;            // as today's hair is
    std::optional<double> to_mm;   // not set: to the ends
    bool new_growth_only = false;  // a retouch: from the scalp to the line of demarcation, whatever from and to say
    std::vector<std::string> sections;  // empty: the whole head
    std::optional<Strength> strength;
    std::optional<double> minutes, most_minutes;  // planned, and the most that the maker's directions allow
    std::optional<double> temperature_c;
    std::optional<int> passes;
    std::optional<bool> at_home, touches_scalp, releases_formaldehyde, data_sheet, hair_is_wet, heat_protectant;
    std::optional<bool> strand_tested;
    std::optional<TestResult> strand_test;  // when strand_tested
    std::optional<bool> patch_tested;       // with this product
    std::optional<TestResult> patch_test;
    std::optional<double> patch_test_hours;  // since it was put on
    std::optional<bool> tight, adds_hair;    // of a protective style
};

struct Plan {
    std::vector<PlannedService> services;
};

// What can be a client and a plan at all. Errors: invalid (a number that is none, negative or beyond what exists; a
// grade outside 0..4 or of an unknown quality; a stretch that ends before it begins or begins beyond the hair).
[[nodiscard]] Status checked(const ClientState& state, const Plan& plan);

// The client's own rate where it was measured, else the published one of her group.
[[nodiscard]] GrowthRate rate_of(const ClientState& state);

// Where the parts of a strand lie, in mm from the scalp. Scalp heat reaches the first 1-2 cm; the last 5 cm are taken
// as ends, on hair under 20 cm the last quarter (common practice, no source).
struct Span {
    double from_mm = 0, to_mm = 0;  // to_mm may be infinity
    // Half a millimetre cannot be kept apart by hand. From infinity to infinity (no number) there is nothing either.
    [[nodiscard]] bool empty() const { return !(to_mm - from_mm >= 0.5); }
};
[[nodiscard]] Span meet(const Span& a, const Span& b);
inline constexpr double roots_mm = 20;
inline constexpr double ends_mm = 50, ends_share = 0.25;
// length_mm not set: mid-shaft and ends both may reach anywhere beyond the roots.
[[nodiscard]] Span span_of(Part part, const std::optional<double>& length_mm);

// The hair that a planned service is put on. A retouch ends where the new growth surely ends: at the low end of its
// 95 % range. Without an earlier service of its sort in the record it is taken as the roots.
[[nodiscard]] Span span_of(const PlannedService& service, const ClientState& state);
// The earlier service that a retouch of this kind grows away from: texture from texture, colour from colour, colour
// that stays from colour that stays (a gloss leaves no line). It began at the roots. Null: none.
[[nodiscard]] const PastService* grown_from(Kind kind, const ClientState& state);

}  // namespace kempt::care
