// Dates into a calendar file, on a worker.
#pragma once

#include <QString>
#include <functional>

#include "desk/session/session.h"
#include "work/due_list.h"

class QWidget;

namespace kempt::desk {

using CalendarBytes = std::function<Result<QByteArray>(Book&, const work::CalendarOptions&)>;

void choose_calendar_file(QWidget* parent, const QString& name, std::function<void(const QString&)> chosen);
// What came of it is told in the window.
void write_calendar(Session& session, const QString& path, CalendarBytes bytes, bool names);

}  // namespace kempt::desk
