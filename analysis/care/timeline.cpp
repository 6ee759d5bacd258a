#include "care/timeline.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "care/sequence.h"
#include "care/sharing.h"

namespace kempt::care {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();
constexpr double rounding = 1e-9;  // minutes and shares: far below what a clock shows
constexpr double longest = 600;    // minutes: nobody sits ten hours

Error invalid(const std::string& what) {
    return {ErrorKind::invalid, "timeline-invalid", what, "", "Correct the minutes and sections."};
}

bool sensible(double minutes) {
    return minutes > 0 && minutes <= longest;
}

Status checked(const Application& application) {
    const std::size_t sections = sections_of(application).size();
    if (application.tasks.empty() || application.tasks.size() > 48) return invalid("There are no tasks, or over 48.");
    if (application.hands < 1 || application.hands > 3) return invalid("One to three people apply.");
    if (sections > 16 || (application.hands > 1 && sections > 8)) return invalid("There are too many head sections.");
    if (!sensible(application.most_minutes)) return invalid("The maker's maximum is no number of minutes.");
    for (const double share : {application.under, application.over})
        if (!(share > 0 && share < 1)) return invalid("A tolerance is a share between 0 and 1.");
    for (const Task& task : application.tasks)
        if (!sensible(task.apply_minutes) || !sensible(task.needed_minutes))
            return invalid("A part has no minutes to apply or to process.");
    return Done{};
}

std::string minutes_text(double minutes) {
    const double rounded = std::round(minutes * 2) / 2;
    const bool half = rounded != std::floor(rounded);
    return std::to_string(static_cast<int>(rounded)) + (half ? ".5" : "") + (rounded == 1 ? " minute" : " minutes");
}

std::string reason_of(const Application& application, const std::vector<Slot>& slots, const Tightest& tight) {
    const auto name = [&](std::size_t slot) {
        const Task& task = application.tasks[slots[slot].task];
        return std::string(word_of(task.part)) + (task.section.empty() ? "" : " of " + task.section);
    };
    double minutes = 0;
    for (std::size_t i = tight.nearest; i <= tight.farthest; ++i) minutes += slots[i].apply;
    const std::string from = name(tight.farthest), to = name(tight.nearest), takes = minutes_text(minutes);
    if (tight.by_maximum && tight.nearest == tight.farthest)
        return "The " + to + " need " + minutes_text(slots[tight.nearest].need) + " and " + takes +
               " to apply: more than the maker's maximum of " + minutes_text(application.most_minutes) + ".";
    const std::string chain =
        from == to ? "Applying the " + to + " takes " + takes
                   : "From the first stroke at the " + from + " to the last at the " + to + " it takes " + takes;
    if (tight.by_maximum)
        return chain +
               ": with the time that the last ones need, the first carry the product longer than the maker's "
               "maximum of " +
               minutes_text(application.most_minutes) + ".";
    return chain + ": the first are over-processed before the last are ready.";
}

}  // namespace

double ends_rate(int porosity_grade) {
    constexpr double rates[] = {1.5, 1.5, 1.25, 1.1, 1};
    return rates[std::clamp(porosity_grade, 0, 4)];
}

Result<Timeline> solve(const Application& application) {
    if (const Status status = checked(application); !status) return status.error();
    const Limits limits{application.most_minutes, application.under, application.over};
    // Least worst deviation over all ways to share the sections out; of equal ones the most even.
    double best = endless, best_load = endless;
    std::vector<std::vector<Slot>> shared;
    for_each_sharing(application, [&](const std::vector<std::vector<Slot>>& hands) {
        double worst = 0, load = 0;
        for (const std::vector<Slot>& slots : hands) {
            worst = std::max(worst, tightest(slots, limits).worst);
            double minutes = 0;
            for (const Slot& slot : slots) minutes += slot.apply;
            load = std::max(load, minutes);
        }
        const bool better = worst < best - rounding || (worst <= best + rounding && load < best_load - rounding);
        if (!shared.empty() && !better) return;
        best = std::min(best, worst);
        best_load = load;
        shared = hands;
    });
    Timeline timeline;
    timeline.worst = best;
    timeline.works = best <= 1 + rounding;
    // Where the maximum cannot be kept at all, the order is shown as it would be without it.
    Limits shown = limits;
    if (best == endless) {
        shown.most = 10 * longest;
        best = 0;
        for (const auto& slots : shared) best = std::max(best, tightest(slots, shown).worst);
    }
    Tightest tight{-1, 0, 0, false};
    std::size_t tight_hand = 0;
    for (std::size_t hand = 0; hand < shared.size(); ++hand) {
        const std::vector<Slot>& slots = shared[hand];
        if (slots.empty()) continue;
        if (const Tightest own = tightest(slots, limits); own.worst > tight.worst) {
            tight = own;
            tight_hand = hand;
        }
        const std::vector<double> lead = leads(slots, shown, best + rounding);
        for (std::size_t i = 0; i < slots.size(); ++i) {
            Placed placed;
            placed.task = slots[i].task;
            placed.hand = static_cast<int>(hand);
            placed.most_minutes = lead[i];
            placed.least_minutes = lead[i] - slots[i].apply;
            placed.over_percent = std::max(0.0, 100 * (placed.most_minutes / slots[i].need - 1));
            placed.under_percent = std::max(0.0, 100 * (1 - placed.least_minutes / slots[i].need));
            placed.within = placed.over_percent <= 100 * application.over + 1e-6 &&
                            placed.under_percent <= 100 * application.under + 1e-6 &&
                            placed.most_minutes <= application.most_minutes + 1e-6;
            timeline.rinse_minutes = std::max(timeline.rinse_minutes, lead[i]);
            timeline.order.push_back(placed);
        }
    }
    for (Placed& placed : timeline.order) {
        placed.start_minutes = timeline.rinse_minutes - placed.most_minutes;
        placed.end_minutes = timeline.rinse_minutes - placed.least_minutes;
    }
    std::stable_sort(timeline.order.begin(), timeline.order.end(), [](const Placed& a, const Placed& b) {
        return a.start_minutes != b.start_minutes ? a.start_minutes < b.start_minutes : a.hand < b.hand;
    });
    if (!timeline.works) timeline.why_not = reason_of(application, shared[tight_hand], tight);
    return timeline;
}

Result<Application> application_of(const Setting& setting, const Coverage& coverage) {
    if (!sensible(setting.strand_minutes)) return invalid("The strand test has no minutes.");
    if (coverage.put_on.empty()) return invalid("There is no hair to put the product on.");
    const auto covered = [&](Part part) {
        return std::any_of(coverage.put_on.begin(), coverage.put_on.end(),
                           [&](const Stretch& stretch) { return stretch.part == part; });
    };
    Application application;
    application.most_minutes = setting.most_minutes;
    application.hands = setting.hands;
    const double roots = setting.roots_minutes.value_or(setting.strand_minutes / roots_rate);
    const double ends =
        setting.ends_minutes.value_or(setting.strand_minutes / ends_rate(setting.ends_porosity.value_or(4)));
    for (const SectionMinutes& section : setting.sections) {
        for (const double minutes : {section.roots, section.mid_shaft, section.ends})
            if (!std::isfinite(minutes) || minutes < 0) return invalid("Minutes to apply are no number of minutes.");
        // Without a length the mid-shaft reaches on over the ends, which would then wait as long as it.
        if (section.ends > 0 && !covered(Part::ends) && std::isinf(coverage.put_on.back().span.to_mm))
            return invalid("Ends cannot be told from mid-shaft: measure how long the hair is first.");
        const auto add = [&](Part part, double apply, double needed) {
            if (apply > 0 && covered(part)) application.tasks.push_back({part, section.name, apply, needed});
        };
        add(Part::mid_shaft, section.mid_shaft, setting.strand_minutes);
        add(Part::ends, section.ends, ends);
        add(Part::roots, section.roots, roots);
    }
    if (const Status status = checked(application); !status) return status.error();
    return application;
}

}  // namespace kempt::care
