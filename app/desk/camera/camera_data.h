// What the camera page needs of a visit: whose it is, what it lacks, and the last photo of each view as a guide.
#pragma once

#include <QHash>

#include "core/progress.h"
#include "work/keep_records.h"

namespace kempt::desk {

struct Guide {
    Id photo = 0;
    QDate day;
};
struct CameraData {
    Client client;
    Visit visit;
    QHash<View, int> shots;     // of this visit; refused ones do not count
    QVector<View> wanted;       // views that the visit before had; those where edges are read when there was none
    QHash<View, Guide> guides;  // the best shot of the latest earlier visit that has the view
};
[[nodiscard]] Result<CameraData> camera_data(Book& book, Id visit, const Progress& progress);

// Two shots of a view tell a real change from chance (user guide): the first wanted view with fewer, the one at hand
// before the others; nothing when all have them.
[[nodiscard]] std::optional<View> next_view(const CameraData& data, std::optional<View> at_hand);

}  // namespace kempt::desk
