#include "work/care_state.h"

#include "book/client_store.h"
#include "book/service_store.h"
#include "work/care_parts.h"
#include "work/errors.h"

namespace kempt::work {

namespace {
const QDate first_day(1970, 1, 1);
}

care::Day care_day(QDate date) {
    return static_cast<care::Day>(first_day.daysTo(date));
}

QDate date_of(care::Day day) {
    return first_day.addDays(day);
}

Result<care::ClientState> care_state(Book& book, Id client, QDate today) {
    if (!today.isValid())
        return invalid("date-missing", "The day for which the record is asked is no date.", "Give it as YYYY-MM-DD.");
    const auto known = store::get_client(book, client);
    if (!known) return known.error();
    const auto services = store::services_of_client(book, client);
    if (!services) return services.error();
    care::ClientState state;
    state.today = care_day(today);
    for (const Service& service : services.value())
        if (service.date <= today)
            if (auto past = past_service(service)) state.history.services.push_back(std::move(*past));
    if (const Status done = add_grades(book, client, today, state); !done) return done.error();
    if (const Status done = add_readings(book, client, today, state); !done) return done.error();
    return state;
}

}  // namespace kempt::work
