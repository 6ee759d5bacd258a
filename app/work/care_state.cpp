#include "work/care_state.h"

#include "book/client_store.h"
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

Result<care::ClientState> care_state_for_dates(Book& book, Id client, QDate today) {
    if (!today.isValid())
        return invalid("date-missing", "The day for which the record is asked is no date.", "Give it as YYYY-MM-DD.");
    if (const auto known = store::get_client(book, client); !known) return known.error();
    care::ClientState state;
    state.today = care_day(today);
    for (const auto add : {add_person, add_history, add_lines, add_length, add_grades})
        if (const Status done = add(book, client, today, state); !done) return done.error();
    return state;
}

Result<care::ClientState> care_state(Book& book, Id client, QDate today) {
    auto state = care_state_for_dates(book, client, today);
    if (!state) return state.error();
    if (const Status done = add_readings(book, client, today, state.value()); !done) return done.error();
    return state;
}

}  // namespace kempt::work
