// Where the person is: a page and what it shows.
#pragma once

#include <QString>
#include <QVector>

#include "domain/records.h"

namespace kempt::desk {

enum class Where { nobody, client, visit, photo, compare, report, plan, service, grades, profile, inbox, camera };

struct Place {
    Where where = Where::nobody;
    Id client = 0, visit = 0, photo = 0;
    View view = View::left_temple;
    Id from = 0, to = 0;  // visits, for comparing; 0: the page chooses
    Id service = 0;
    bool operator==(const Place&) const = default;
};

// One step of the way here, as shown above the page.
struct TrailStep {
    QString text;
    Place place;
};
using Trail = QVector<TrailStep>;

}  // namespace kempt::desk
