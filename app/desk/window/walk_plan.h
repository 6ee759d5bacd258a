// The walk's steps on the plan page: a client whose record is long, with services planned that show every part of it.
#pragma once

#include <QString>
#include <QVector>
#include <functional>

#include "core/result.h"
#include "desk/window/place.h"
#include "work/book_fwd.h"

namespace kempt::desk {

class MainWindow;

struct PlanStep {
    QString name;  // empty: no picture
    std::function<void()> act;
};

// The client with most colour in the record, which is what is planned; nobody when none is recorded.
[[nodiscard]] Result<Place> plan_sight(Book& book);
// What is planned there before the walk is put back at its end.
[[nodiscard]] QVector<PlanStep> plan_steps(MainWindow& window, const Place& place);

}  // namespace kempt::desk
