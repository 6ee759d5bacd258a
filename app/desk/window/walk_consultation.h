// The steps of a walk through the consultation: a service of the record, grades, what a client told.
#pragma once

#include "core/result.h"
#include "desk/window/walk_plan.h"
#include "work/book_fwd.h"

namespace kempt::desk {

struct ConsultationSights {
    Place service, grades, profile;
};
// The service of which most was written down, the visit with most grades, the client who told most.
[[nodiscard]] Result<ConsultationSights> consultation_sights(Book& book);
[[nodiscard]] QVector<PlanStep> consultation_steps(MainWindow& window, const ConsultationSights& sights);

}  // namespace kempt::desk
