// The walk's steps where photos come in: the tray of new ones, the camera page, the steps of a visit.
#pragma once

#include <QByteArray>

#include "core/result.h"
#include "desk/window/walk_plan.h"
#include "work/book_fwd.h"

namespace kempt::desk {

struct PhotoSights {
    Place client, visit;           // with an earlier visit
    Place begun;                   // a visit that lacks something
    QVector<QByteArray> pictures;  // one a view of that visit, as they lie in the book
    QDate day;
};
[[nodiscard]] Result<PhotoSights> photo_sights(Book& book, const Place& visit, const Place& begun);
[[nodiscard]] QVector<PlanStep> photo_steps(MainWindow& window, const PhotoSights& sights);

}  // namespace kempt::desk
