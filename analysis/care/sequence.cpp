#include "care/sequence.h"

#include <algorithm>
#include <limits>

namespace kempt::care {
namespace {
constexpr double endless = std::numeric_limits<double>::infinity();
}

std::vector<Slot> in_order(std::vector<Slot> slots) {
    // Of equal needs the later task lies nearer to the rinse, so that they are applied as they were listed.
    std::stable_sort(slots.begin(), slots.end(),
                     [](const Slot& a, const Slot& b) { return a.need != b.need ? a.need < b.need : a.task > b.task; });
    return slots;
}

Tightest tightest(const std::vector<Slot>& slots, const Limits& limits) {
    Tightest found{-1, 0, 0, false};
    for (std::size_t i = 0; i < slots.size(); ++i) {
        double minutes = 0;
        for (std::size_t j = i; j < slots.size(); ++j) {
            minutes += slots[j].apply;
            const double near = slots[i].need, far = slots[j].need;
            const double by_need = std::max((near + minutes - far) / (near * limits.under + far * limits.over),
                                            (minutes - far) / (far * limits.over));
            const double by_most =
                minutes > limits.most ? endless : (near + minutes - limits.most) / (near * limits.under);
            const double worst = std::max({0.0, by_need, by_most});
            if (worst > found.worst) found = {worst, i, j, by_most > by_need};
        }
    }
    found.worst = std::max(0.0, found.worst);
    return found;
}

std::vector<double> leads(const std::vector<Slot>& slots, const Limits& limits, double worst) {
    const std::size_t n = slots.size();
    // In y = lead - minutes applied up to and with the slot, "no two at once" reads: y never falls.
    std::vector<double> applied(n), low(n), high(n), y(n);
    double sum = 0;
    for (std::size_t i = 0; i < n; ++i) {
        sum += slots[i].apply;
        applied[i] = sum;
        const double need = slots[i].need;
        low[i] = std::max(0.0, need * (1 - worst * limits.under)) + slots[i].apply - sum;
        high[i] = std::min(limits.most, need * (1 + worst * limits.over)) - sum;
    }
    for (std::size_t i = 1; i < n; ++i) low[i] = std::max(low[i], low[i - 1]);
    for (std::size_t i = n - 1; i-- > 0;) high[i] = std::min(high[i], high[i + 1]);
    // Pool adjacent violators (isotonic least squares, weighted by 1 / need squared: relative deviations), then into
    // the bounds, which never fall either.
    struct Block {
        double mean, weight;
        std::size_t count;
    };
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < n; ++i) {
        const double need = slots[i].need;
        blocks.push_back({need + slots[i].apply / 2 - applied[i], 1 / (need * need), 1});
        while (blocks.size() > 1 && blocks[blocks.size() - 2].mean > blocks.back().mean) {
            const Block last = blocks.back();
            blocks.pop_back();
            Block& into = blocks.back();
            into.mean = (into.mean * into.weight + last.mean * last.weight) / (into.weight + last.weight);
            into.weight += last.weight;
            into.count += last.count;
        }
    }
    std::size_t i = 0;
    for (const Block& block : blocks)
        for (std::size_t k = 0; k < block.count; ++k, ++i) y[i] = std::max(low[i], std::min(high[i], block.mean));
    for (std::size_t k = 0; k < n; ++k) y[k] += applied[k];
    return y;
}

Factors factors_that_work(const std::vector<Slot>& slots, const Limits& limits) {
    Factors factors{0, endless};
    for (std::size_t i = 0; i < slots.size(); ++i) {
        double minutes = 0;
        for (std::size_t j = i; j < slots.size(); ++j) {
            minutes += slots[j].apply;
            const double least = slots[i].need * (1 - limits.under), most = slots[j].need * (1 + limits.over);
            if (minutes > limits.most || most <= least) return {1, 0};
            factors.low = std::max(factors.low, minutes / (most - std::max(0.0, least)));
            if (least > 0) factors.high = std::min(factors.high, (limits.most - minutes) / least);
        }
    }
    return factors;
}

}  // namespace kempt::care
