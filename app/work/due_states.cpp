#include "work/due_states.h"

#include "book/client_store.h"
#include "work/errors.h"
#include "work/plan_care.h"

namespace kempt::work {

Result<std::vector<DueState>> due_states(Book& book, QDate today, const Progress& progress) {
    const auto clients = store::list_clients(book);
    if (!clients) return clients.error();
    std::vector<DueState> states;
    for (const auto& row : clients.value()) {
        if (tell(progress, static_cast<double>(states.size()) / static_cast<double>(clients->size()),
                 "looking through the clients") == Go::stop)
            return stopped();
        const auto state = care_state(book, row.client.id, today);
        if (!state) return state.error();
        const auto request = completed(book, PlanOptions{row.client.id, today, {}});
        if (!request) return request.error();
        states.push_back({row.client.id, row.client.name, *state, request->photographed, request->dye_day, {}});
    }
    return states;
}

}  // namespace kempt::work
