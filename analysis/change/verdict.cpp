#include "change/verdict.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "change/reading_traits.h"

namespace kempt::change {
namespace {

std::string number(double value, int decimals) {
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    // "-0" and "-0.0" are zero.
    std::string result = text;
    if (result[0] == '-' && result.find_first_not_of("-0.") == std::string::npos) result.erase(0, 1);
    return result;
}

double rounded(double value, int decimals) {
    const double scale = std::pow(10, decimals);
    return std::round(value * scale) / scale;
}

// Decimals at which the smallest detectable change keeps one significant digit, two when the first would be a 1.
int bearable_decimals(double smallest) {
    if (!(smallest > 0)) return 2;
    const double power = std::floor(std::log10(smallest));
    const int extra = smallest / std::pow(10, power) < 2 ? 1 : 0;
    return std::clamp(static_cast<int>(-power) + extra, 0, 6);
}

std::string level_unit(const std::string& unit) {
    if (unit.empty() || unit == "-" || unit == "count" || unit == "level") return "";
    if (unit == "dE00") return " ΔE";
    if (unit == "1/cm") return " per cm";
    if (unit == "1/in") return " per in";
    if (unit == "1/mm") return " per mm";
    if (unit == "mm/mm2") return " mm/mm²";
    if (unit == "in/in2") return " in/in²";
    return " " + unit;
}

// A difference of percentages is in points.
std::string amount(double value, int decimals, const std::string& unit) {
    const std::string text = number(value, decimals);
    if (unit == "%") return text + (text == "1" ? " point" : " points");
    return text + level_unit(unit);
}

struct Figures {
    double from, to, smallest;
    int decimals;
};

// Figures that agree with each other as printed: the difference is that of the printed values, and it lies on the same
// side of the printed smallest change as the exact one does. One or two further decimals settle what rounding hides.
Figures figures(double from, double to, double smallest, bool called) {
    const int least = bearable_decimals(smallest);
    Figures shown{};
    for (int decimals = least; decimals <= least + 2; ++decimals) {
        shown = {rounded(from, decimals), rounded(to, decimals), rounded(smallest, decimals), decimals};
        const double difference = rounded(std::abs(shown.to - shown.from), decimals);
        if (called ? difference > shown.smallest : difference <= shown.smallest) break;
    }
    return shown;
}

std::string sentence(const std::string& name, const std::string& unit, const Figures& shown, Verdict verdict) {
    const double difference = shown.to - shown.from;
    const bool up = difference > 0;
    const std::string moved = amount(std::abs(difference), shown.decimals, unit);
    const std::string from = number(shown.from, shown.decimals);
    const std::string to = number(shown.to, shown.decimals) + level_unit(unit);
    const std::string smallest = amount(shown.smallest, shown.decimals, unit);
    if (verdict != Verdict::no_detectable_change)
        return name + (up ? " rose by " : " fell by ") + moved + ", from " + from + " to " + to +
               "; the smallest change these shots can show is " + smallest + ".";
    if (rounded(difference, shown.decimals) == 0)
        return name + " stayed at " + to + "; the smallest change these shots can show is " + smallest + ".";
    return name + " went from " + from + " to " + to + ", " + (up ? "up " : "down ") + moved + "; that is within the " +
           smallest + " that these shots cannot tell from chance.";
}

std::vector<double> finite(const std::vector<double>& values) {
    std::vector<double> kept;
    std::copy_if(values.begin(), values.end(), std::back_inserter(kept), [](double v) { return std::isfinite(v); });
    return kept;
}

double mean(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

// Full sentences follow one another; bare clauses make one sentence together.
std::string joined(const std::vector<std::string>& reasons) {
    std::string text;
    for (size_t i = 0; i < reasons.size(); ++i) {
        if (i > 0) text += reasons[i - 1].ends_with('.') ? " " : i + 1 == reasons.size() ? " and " : ", ";
        text += reasons[i];
    }
    return text.ends_with('.') ? text : text + ".";
}

// Empty when both visits can be compared.
std::string why_not(const std::string& name, const VisitValue& from, const VisitValue& to, const Wording& wording,
                    bool from_empty, bool to_empty) {
    std::string text;
    const auto add = [&](const char* who, const std::vector<std::string>& reasons) {
        if (reasons.empty()) return;
        text += who;
        text += joined(reasons);
    };
    const bool alike = from.not_comparable == to.not_comparable;
    add(alike ? " Both visits: " : " Earlier visit: ", from.not_comparable);
    if (!alike) add(" Later visit: ", to.not_comparable);
    add(" ", wording.between);
    if (!text.empty()) return "These visits cannot be compared." + text;
    if (from_empty && to_empty) return name + " was not measured at either visit.";
    if (from_empty) return name + " was not measured at the earlier visit.";
    if (to_empty) return name + " was not measured at the later visit.";
    if (from.unit != to.unit)
        return name + " was measured in different units at the two visits (" + from.unit + " and " + to.unit + ").";
    return "";
}

}  // namespace

Judgement judge(const std::string& reading, const VisitValue& from, const VisitValue& to, const Spread& spread,
                const Wording& wording) {
    const std::string name = wording.name.empty() ? sentence_name(reading) : wording.name;
    const std::vector<double> before = finite(from.shots), after = finite(to.shots);
    Judgement judgement;
    if (!before.empty() && !after.empty() && from.unit == to.unit) judgement.difference = mean(after) - mean(before);
    std::vector<Stated> stated = from.stated;
    stated.insert(stated.end(), to.stated.begin(), to.stated.end());
    double smallest = smallest_detectable_change(allowing_for(stated_sd(reading, stated), reading, spread),
                                                 static_cast<int>(before.size()), static_cast<int>(after.size()));
    if (!before.empty() && !after.empty()) smallest = spread.scale.difference(smallest, mean(before), mean(after));
    // Without any scatter there is no telling chance from change.
    const bool spread_known = std::isfinite(smallest) && smallest > 0;
    if (spread_known) judgement.smallest_detectable = smallest;

    judgement.reason = why_not(name, from, to, wording, before.empty(), after.empty());
    if (!judgement.reason.empty()) return judgement;
    if (!spread_known) {
        judgement.reason = name +
                           ": it is not known how far repeat shots scatter without any change. Take two or "
                           "three shots of this view at each visit.";
        return judgement;
    }
    const bool called = std::abs(judgement.difference) > smallest;
    if (!called)
        judgement.verdict = Verdict::no_detectable_change;
    else if (better_direction(reading) == Better::neither)
        judgement.verdict = Verdict::changed;
    else if ((judgement.difference > 0) == (better_direction(reading) == Better::higher))
        judgement.verdict = Verdict::improved;
    else
        judgement.verdict = Verdict::worse;
    const double factor = wording.factor;
    const Figures shown = figures(factor * mean(before), factor * mean(after), factor * smallest, called);
    judgement.reason = sentence(name, wording.unit.empty() ? from.unit : wording.unit, shown, judgement.verdict);
    judgement.said = rounded(shown.to - shown.from, shown.decimals) / factor;
    judgement.said_smallest = shown.smallest / factor;
    judgement.said_step = std::pow(10, -shown.decimals) / factor;
    return judgement;
}

std::optional<double> share_of_way(double baseline, double now, double target) {
    if (!std::isfinite(baseline) || !std::isfinite(now) || !std::isfinite(target) || baseline == target)
        return std::nullopt;
    return (now - baseline) / (target - baseline);
}

}  // namespace kempt::change
