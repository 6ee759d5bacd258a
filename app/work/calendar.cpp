#include "work/calendar.h"

namespace kempt::work {

namespace {

QByteArray day_of(QDate day) {
    return day.toString(QStringLiteral("yyyyMMdd")).toLatin1();
}

bool continues_a_character(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0) == 0x80;
}

void add_event(const CalendarEvent& event, const QByteArray& stamp, QByteArray& bytes) {
    bytes += folded_line("BEGIN:VEVENT");
    bytes += folded_line("UID:" + escaped_text(event.uid));
    bytes += folded_line("DTSTAMP:" + stamp);
    bytes += folded_line("DTSTART;VALUE=DATE:" + day_of(event.from));
    bytes += folded_line("DTEND;VALUE=DATE:" + day_of(event.to.addDays(1)));  // the first day that is not part of it
    bytes += folded_line("SUMMARY:" + escaped_text(event.summary));
    if (!event.description.isEmpty()) bytes += folded_line("DESCRIPTION:" + escaped_text(event.description));
    bytes += folded_line("CLASS:PRIVATE");
    bytes += folded_line("TRANSP:TRANSPARENT");
    bytes += folded_line("END:VEVENT");
}

}  // namespace

QByteArray escaped_text(const QString& text) {
    QString plain = text;
    plain.replace(QStringLiteral("\r\n"), QStringLiteral("\n")).replace(u'\r', u'\n');
    QString out;
    for (const QChar one : plain) {
        if (one == u'\n')
            out += QStringLiteral("\\n");
        else if (one == u'\\' || one == u';' || one == u',')
            out += QStringLiteral("\\") + one;
        else if (one == u'\t' || (one.unicode() >= 0x20 && one.unicode() != 0x7F))
            out += one;
    }
    return out.toUtf8();
}

QByteArray folded_line(const QByteArray& line) {
    constexpr qsizetype most = 75;
    QByteArray out;
    qsizetype at = 0, room = most;
    while (line.size() - at > room) {
        qsizetype end = at + room;
        while (end > at + 1 && continues_a_character(line[end])) --end;
        out += line.mid(at, end - at) + "\r\n ";
        at = end;
        room = most - 1;  // the space counts
    }
    return out + line.mid(at) + "\r\n";
}

QByteArray calendar_bytes(const QVector<CalendarEvent>& events, const QDateTime& stamp) {
    QByteArray bytes;
    bytes += folded_line("BEGIN:VCALENDAR");
    bytes += folded_line("VERSION:2.0");
    bytes += folded_line("PRODID:-//Kempt//Kempt " KEMPT_VERSION "//EN");
    bytes += folded_line("CALSCALE:GREGORIAN");
    const QByteArray written = stamp.toUTC().toString(QStringLiteral("yyyyMMdd'T'HHmmss'Z'")).toLatin1();
    for (const CalendarEvent& event : events)
        if (event.from.isValid() && event.to.isValid() && event.from <= event.to) add_event(event, written, bytes);
    bytes += folded_line("END:VCALENDAR");
    return bytes;
}

}  // namespace kempt::work
