// What the next dates of every client depend on, read for all clients at once.
#pragma once

#include <QDate>
#include <QString>
#include <optional>
#include <vector>

#include "care/client_state.h"
#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

struct DueState {
    Id client = 0;
    QString name;
    care::ClientState state;  // only what care::next_dates asks for
    std::optional<QDate> photographed, dye_day;
    std::optional<QDate> patch_tested;  // for that dye, already
    QVector<Service> unanswered;        // planned for a day that has passed: was it done?
};

// By name. Errors: cancelled, io.
[[nodiscard]] Result<std::vector<DueState>> due_states(Book& book, QDate today, const Progress& progress = {});

}  // namespace kempt::work
