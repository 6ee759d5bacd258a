// What would make an order work; every answer is solved again before it is given.
#include <algorithm>
#include <cmath>
#include <limits>

#include "care/sequence.h"
#include "care/sharing.h"
#include "care/timeline.h"

namespace kempt::care {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

bool works(const Application& application) {
    const auto timeline = solve(application);
    return timeline && timeline->works;
}

Application part_of(const Application& application, const std::vector<std::string>& sections) {
    Application part = application;
    std::erase_if(part.tasks, [&](const Task& task) {
        return std::find(sections.begin(), sections.end(), task.section) == sections.end();
    });
    return part;
}

// Each section in two halves.
Application halved(const Application& application) {
    Application half = application;
    half.tasks.clear();
    for (const Task& task : application.tasks)
        for (const char* which : {", first half", ", second half"}) {
            Task piece = task;
            piece.section += which;
            piece.apply_minutes /= 2;
            half.tasks.push_back(piece);
        }
    return half;
}

// The fewest rounds of neighbouring sections that work, filling each round as far as it works (fewer sections in a
// round never hurt it, so filling up needs the fewest). Empty: a section does not work even alone.
std::vector<Application> rounds_of(const Application& application) {
    const std::vector<std::string> names = sections_of(application);
    std::vector<Application> rounds;
    for (std::size_t at = 0; at < names.size();) {
        std::vector<std::string> taken;
        Application round;
        while (at < names.size()) {
            taken.push_back(names[at]);
            const Application larger = part_of(application, taken);
            if (!works(larger)) break;
            round = larger;
            ++at;
        }
        if (round.tasks.empty()) return {};
        rounds.push_back(round);
    }
    return rounds;
}

Application slower(const Application& application, double factor) {
    Application slow = application;
    for (Task& task : slow.tasks) task.needed_minutes *= factor;
    return slow;
}

std::optional<Remedy> milder(const Application& application) {
    const Limits limits{application.most_minutes, application.under, application.over};
    Factors best{endless, 0};
    for_each_sharing(application, [&](const std::vector<std::vector<Slot>>& hands) {
        Factors all{1, endless};
        for (const std::vector<Slot>& slots : hands) {
            const Factors own = factors_that_work(slots, limits);
            all.low = std::max(all.low, own.low);
            all.high = std::min(all.high, own.high);
        }
        if (all.low <= all.high && all.low < best.low) best = all;
    });
    if (!(best.low <= best.high) || best.low <= 1) return std::nullopt;
    if (!works(slower(application, best.low)) || !works(slower(application, best.high))) return std::nullopt;
    Remedy remedy{RemedySort::milder, "", {slower(application, best.low)}, best.low, best.high};
    const auto percent = [](double factor, bool up) {
        return std::to_string(static_cast<int>(up ? std::ceil(100 * (factor - 1)) : std::floor(100 * (factor - 1))));
    };
    remedy.text = "A milder strength, if its strand test takes " + percent(best.low, true) + " to " +
                  percent(best.high, false) +
                  " % longer than this one and its maximum is no shorter; test again first.";
    if (std::ceil(100 * (best.low - 1)) > std::floor(100 * (best.high - 1))) return std::nullopt;  // too narrow to hit
    return remedy;
}

}  // namespace

std::vector<Remedy> what_would_help(const Application& application) {
    std::vector<Remedy> remedies;
    const auto now = solve(application);
    if (!now || now->works) return remedies;
    const std::size_t sections = sections_of(application).size();
    for (int hands = application.hands + 1; hands <= 3 && sections <= 8; ++hands) {
        Application more = application;
        more.hands = hands;
        if (!works(more)) continue;
        remedies.push_back({RemedySort::more_hands,
                            "With " + std::string(hands == 2 ? "two" : "three") + " people applying it works.",
                            {more},
                            1,
                            1});
        break;
    }
    if (auto rounds = rounds_of(application); rounds.size() > 1) {
        const std::string text = "In " + std::to_string(rounds.size()) +
                                 " rounds: apply and rinse some sections before the next ones are begun.";
        remedies.push_back({RemedySort::rounds, text, std::move(rounds), 1, 1});
    } else if (rounds.empty() && sections <= 8 && (application.hands == 1 || sections <= 4)) {
        if (auto halves = rounds_of(halved(application)); !halves.empty()) {
            const std::string text = "With the sections halved, in " + std::to_string(halves.size()) + " rounds.";
            remedies.push_back({RemedySort::smaller_sections, text, std::move(halves), 1, 1});
        }
    }
    if (const auto mild = milder(application)) remedies.push_back(*mild);
    return remedies;
}

}  // namespace kempt::care
