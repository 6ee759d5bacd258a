// Ranges of days as an iCalendar file (RFC 5545), to be read by any calendar program.
#pragma once

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QString>
#include <QVector>

namespace kempt::work {

// An event of whole days that blocks no time of day.
struct CalendarEvent {
    QString uid;     // the same in every export, so that a calendar replaces the event instead of adding another
    QDate from, to;  // both included
    QString summary, description;
};

// The whole file: UTF-8, lines of at most 75 octets ended by CRLF. `stamp` is when it was written; events whose days
// are no days, or end before they begin, are left out.
[[nodiscard]] QByteArray calendar_bytes(const QVector<CalendarEvent>& events, const QDateTime& stamp);

// RFC 5545 3.3.11: backslash, semicolon and comma with a backslash before them, a line break as \n; other control
// characters may not stand in a text and are left out.
[[nodiscard]] QByteArray escaped_text(const QString& text);
// RFC 5545 3.1: a content line and its CRLF, folded so that no line is longer than 75 octets without its CRLF and no
// character is torn apart.
[[nodiscard]] QByteArray folded_line(const QByteArray& line);

}  // namespace kempt::work
