// Tables as CSV (RFC 4180): UTF-8, commas, lines ended by CR LF, fields quoted where needed.
#pragma once

#include <QByteArray>
#include <QStringList>
#include <QVector>

#include "domain/records.h"

namespace kempt::report {

// One line with its CR LF. Text that a spreadsheet would run as a formula (it begins with = + @, a tab, or with - and
// is no number) gets an apostrophe before it: common practice against names and notes that carry commands.
[[nodiscard]] QByteArray csv_line(const QStringList& fields);

// A stored reading with the visit and the photo it belongs to.
struct ExportedReading {
    QString client;
    QDate visit;
    View view = View::front_hairline;
    int shot = 1;
    QString file_name;
    ReadingRecord reading;
};

// First line the names: client, visit, view, shot, file, reading, value, unit, low, high, refused, refusal_code,
// refusal_text, analysis_version, photo_sha256, measured_at. Numbers with all their digits and a point; dates ISO 8601;
// a refused reading has no value.
[[nodiscard]] QByteArray readings_csv(const QVector<ExportedReading>& readings);

}  // namespace kempt::report
