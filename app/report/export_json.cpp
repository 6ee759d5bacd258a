#include "report/export_json.h"

#include <QJsonDocument>
#include <QJsonObject>

#include "domain/words.h"

namespace kempt::report {
namespace {

QJsonValue object_of(const QString& json) {
    const QJsonDocument document = QJsonDocument::fromJson(json.toUtf8());
    return document.isObject() ? QJsonValue(document.object()) : QJsonValue(QJsonValue::Null);
}

}  // namespace

QJsonArray readings_json(const QVector<ExportedReading>& readings) {
    QJsonArray out;
    for (const ExportedReading& one : readings) {
        const ReadingRecord& reading = one.reading;
        const auto value = [&](double figure) {
            return reading.refused ? QJsonValue(QJsonValue::Null) : QJsonValue(figure);
        };
        out.append(QJsonObject{{QStringLiteral("client"), one.client},
                               {QStringLiteral("visit"), one.visit.toString(Qt::ISODate)},
                               {QStringLiteral("view"), word_of(one.view)},
                               {QStringLiteral("shot"), one.shot},
                               {QStringLiteral("file"), one.file_name},
                               {QStringLiteral("reading"), reading.name},
                               {QStringLiteral("value"), value(reading.value)},
                               {QStringLiteral("unit"), reading.unit},
                               {QStringLiteral("low"), value(reading.low)},
                               {QStringLiteral("high"), value(reading.high)},
                               {QStringLiteral("refused"), reading.refused},
                               {QStringLiteral("refusal_code"), reading.refusal_code},
                               {QStringLiteral("refusal_text"), reading.refusal_text},
                               {QStringLiteral("analysis_version"), reading.analysis_version},
                               {QStringLiteral("options"), object_of(reading.options)},
                               {QStringLiteral("card"), object_of(reading.card)},
                               {QStringLiteral("photo_sha256"), reading.photo_sha256},
                               {QStringLiteral("measured_at"), reading.measured_at.toUTC().toString(Qt::ISODate)}});
    }
    return out;
}

}  // namespace kempt::report
