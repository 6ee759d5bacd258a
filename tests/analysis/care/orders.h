// Every sharing of head sections and every order of tasks, tried one by one. Knows nothing of how the solver works.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numeric>

#include "care/timeline.h"

namespace orders {

using namespace kempt::care;

// Does this order, counted back from the rinse, keep every hair within `worst` times the tolerance and the maximum?
// Each task is put as near to the rinse as the ones before it and its own need allow; later never helps those behind.
inline bool keeps(const Application& application, const std::vector<std::size_t>& order, double worst) {
    double at = 0;
    for (const std::size_t i : order) {
        const Task& task = application.tasks[i];
        const double last = std::max(at, task.needed_minutes * (1 - worst * application.under));
        const double first = last + task.apply_minutes;
        // A billionth of a minute for rounding.
        if (first > task.needed_minutes * (1 + worst * application.over) + 1e-9) return false;
        if (first > application.most_minutes + 1e-9) return false;
        at = first;
    }
    return true;
}

inline bool some_order_keeps(const Application& application, std::vector<std::size_t> tasks, double worst) {
    std::sort(tasks.begin(), tasks.end());
    do
        if (keeps(application, tasks, worst)) return true;
    while (std::next_permutation(tasks.begin(), tasks.end()));
    return false;
}

inline bool some_order_works(const Application& application, double worst = 1) {
    std::map<std::string, int> sections;
    for (const Task& task : application.tasks) sections.insert({task.section, 0});
    long sharings = 1;
    for (std::size_t i = 0; i < sections.size(); ++i) sharings *= application.hands;
    for (long n = 0; n < sharings; ++n) {
        long digits = n;
        for (auto& [name, hand] : sections) {
            hand = static_cast<int>(digits % application.hands);
            digits /= application.hands;
        }
        bool all = true;
        for (int hand = 0; all && hand < application.hands; ++hand) {
            std::vector<std::size_t> own;
            for (std::size_t i = 0; i < application.tasks.size(); ++i)
                if (sections[application.tasks[i].section] == hand) own.push_back(i);
            all = some_order_keeps(application, own, worst);
        }
        if (all) return true;
    }
    return false;
}

// By halving; infinity when no tolerance is enough for the maximum.
inline double least_worst(const Application& application) {
    double low = 0, high = 1;
    while (!some_order_works(application, high)) {
        low = high;
        high *= 2;
        if (high > 1e6) return std::numeric_limits<double>::infinity();
    }
    if (some_order_works(application, 0)) return 0;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (some_order_works(application, middle) ? high : low) = middle;
    }
    return high;
}

}  // namespace orders
