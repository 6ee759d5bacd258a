#include "report/export_csv.h"

#include <QLocale>

#include "domain/words.h"

namespace kempt::report {
namespace {

bool would_be_run(const QString& field) {
    if (field.isEmpty()) return false;
    const QChar first = field.front();
    if (first == u'-' || first == u'+') {
        bool number = false;
        field.toDouble(&number);
        return !number;
    }
    return first == u'=' || first == u'@' || first == u'\t' || first == u'\r';
}

QString quoted(QString field) {
    if (would_be_run(field)) field.prepend(u'\'');
    const bool needed = field.contains(u'"') || field.contains(u',') || field.contains(u'\n') ||
                        field.contains(u'\r') || field.startsWith(u' ') || field.endsWith(u' ');
    if (!needed) return field;
    return u'"' + field.replace(u'"', QStringLiteral("\"\"")) + u'"';
}

// The shortest text that reads back as the same number.
QString number(double value) {
    return QString::number(value, 'g', QLocale::FloatingPointShortest);
}

}  // namespace

QByteArray csv_line(const QStringList& fields) {
    QStringList out;
    for (const QString& field : fields) out << quoted(field);
    return out.join(u',').toUtf8() + "\r\n";
}

QByteArray readings_csv(const QVector<ExportedReading>& readings) {
    QByteArray out =
        csv_line({QStringLiteral("client"), QStringLiteral("visit"), QStringLiteral("view"), QStringLiteral("shot"),
                  QStringLiteral("file"), QStringLiteral("reading"), QStringLiteral("value"), QStringLiteral("unit"),
                  QStringLiteral("low"), QStringLiteral("high"), QStringLiteral("refused"),
                  QStringLiteral("refusal_code"), QStringLiteral("refusal_text"), QStringLiteral("analysis_version"),
                  QStringLiteral("photo_sha256"), QStringLiteral("measured_at")});
    for (const ExportedReading& one : readings) {
        const ReadingRecord& reading = one.reading;
        const auto value = [&](double figure) { return reading.refused ? QString() : number(figure); };
        out += csv_line({one.client, one.visit.toString(Qt::ISODate), word_of(one.view), QString::number(one.shot),
                         one.file_name, reading.name, value(reading.value), reading.unit, value(reading.low),
                         value(reading.high), reading.refused ? QStringLiteral("yes") : QStringLiteral("no"),
                         reading.refusal_code, reading.refusal_text, QString::number(reading.analysis_version),
                         reading.photo_sha256, reading.measured_at.toUTC().toString(Qt::ISODate)});
    }
    return out;
}

}  // namespace kempt::report
