// What the visit page shows, read in one go.
#pragma once

#include "core/progress.h"
#include "work/keep_records.h"

namespace kempt::desk {

struct VisitData {
    Client client;
    Visit visit;
    QVector<work::PhotoRow> photos;
    QVector<Service> services;                     // of the client
    QVector<View> followed;                        // views that her visit before has photos of
    QVector<Grade> grades;                         // of the visit
    bool life_told = false, profile_told = false;  // and not too long ago to count on that day
};

[[nodiscard]] Result<VisitData> visit_data(Book& book, Id visit, const Progress& progress);

}  // namespace kempt::desk
