#include "care/sharing.h"

#include <algorithm>

namespace kempt::care {

std::vector<std::string> sections_of(const Application& application) {
    std::vector<std::string> names;
    for (const Task& task : application.tasks)
        if (std::find(names.begin(), names.end(), task.section) == names.end()) names.push_back(task.section);
    return names;
}

void for_each_sharing(const Application& application,
                      const std::function<void(const std::vector<std::vector<Slot>>&)>& call) {
    const std::vector<std::string> names = sections_of(application);
    const std::size_t hands = static_cast<std::size_t>(application.hands);
    std::vector<std::size_t> owner(names.size(), 0);
    while (true) {
        std::vector<std::vector<Slot>> slots(hands);
        for (std::size_t i = 0; i < application.tasks.size(); ++i) {
            const Task& task = application.tasks[i];
            const auto section = std::find(names.begin(), names.end(), task.section) - names.begin();
            slots[owner[static_cast<std::size_t>(section)]].push_back({i, task.apply_minutes, task.needed_minutes});
        }
        for (std::vector<Slot>& own : slots) own = in_order(std::move(own));
        call(slots);
        // Count on, the first section's digit standing still.
        std::size_t digit = names.size();
        while (digit > 1 && owner[digit - 1] + 1 == hands) owner[--digit] = 0;
        if (digit <= 1) return;
        ++owner[digit - 1];
    }
}

}  // namespace kempt::care
