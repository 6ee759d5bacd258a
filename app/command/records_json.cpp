#include "command/records_json.h"

#include "domain/measure_units.h"
#include "domain/service_words.h"
#include "domain/words.h"
#include "work/care_json.h"
#include "work/measure_json.h"
#include "work/record_json.h"

namespace kempt::command {

namespace {

QString day(const QDate& date) {
    return date.toString(Qt::ISODate);
}

QJsonValue text_or_null(const QString& text) {
    return text.isEmpty() ? QJsonValue(QJsonValue::Null) : QJsonValue(text);
}

QString with_note(const QString& line, const QString& note) {
    return note.isEmpty() ? line : line + QStringLiteral("  ") + note.simplified();
}

}  // namespace

QJsonObject json_of(const Client& client) {
    return {{"id", client.id},
            {"name", client.name},
            {"note", client.note},
            {"since", text_or_null(day(client.since))},
            {"photo_consent", client.photo_consent},
            {"consent_on", client.consent_on ? QJsonValue(day(*client.consent_on)) : QJsonValue::Null}};
}

QJsonObject json_of(const Visit& visit) {
    return {{"id", visit.id},
            {"client", visit.client},
            {"date", day(visit.date)},
            {"hair", work::json_of_hair(visit.hair)},
            {"note", visit.note}};
}

QJsonObject json_of(const PhotoRecord& photo) {
    QJsonObject object = work::json_of_photo_file(photo);
    object["visit"] = photo.visit;
    object["quality"] = text_or_null(photo.quality_level);
    return object;
}

QJsonObject json_of(const ReadingRecord& reading) {
    QJsonObject object{{"name", reading.name},       {"unit", reading.unit},
                       {"refused", reading.refused}, {"analysis_version", reading.analysis_version},
                       {"marks", reading.marks},     {"measured_at", reading.measured_at.toString(Qt::ISODate)}};
    if (reading.refused) {
        object["code"] = reading.refusal_code;
        object["text"] = reading.refusal_text;
    } else {
        object["value"] = work::rounded(reading.value);
        object["low"] = work::rounded(reading.low);
        object["high"] = work::rounded(reading.high);
    }
    return object;
}

QJsonObject json_of(const Grade& grade) {
    return {{"id", grade.id},           {"visit", grade.visit}, {"zone", grade.zone},
            {"quality", grade.quality}, {"value", grade.value}, {"round", grade.round}};
}

QJsonObject json_of(const Service& service) {
    return work::json_of_service(service);
}

QJsonObject json_of(const Target& target) {
    return {{"id", target.id},
            {"client", target.client},
            {"view", word_of(target.view)},
            {"reading", target.reading},
            {"value", work::rounded(target.value)}};
}

QString line_of(const Client& client) {
    return with_note(QStringLiteral("%1  %2").arg(client.id).arg(client.name), client.note);
}

QString line_of(const Visit& visit) {
    QStringList hair{visit.hair.wet ? QStringLiteral("wet") : QStringLiteral("dry")};
    if (visit.hair.styled) hair.append(QStringLiteral("styled"));
    if (visit.hair.product) hair.append(QStringLiteral("with product"));
    return with_note(QStringLiteral("%1  %2  %3").arg(visit.id).arg(day(visit.date), hair.join(QStringLiteral(", "))),
                     visit.note);
}

QString line_of(const PhotoRecord& photo) {
    return QStringLiteral("%1  %2, shot %3  %4  %5")
        .arg(photo.id)
        .arg(word_of(photo.view))
        .arg(photo.shot)
        .arg(photo.file_name, photo.quality_level.isEmpty() ? QStringLiteral("not measured") : photo.quality_level);
}

QString line_of(const ReadingRecord& reading) {
    const QString title = title_of_reading(reading.name);
    if (reading.refused) return QStringLiteral("%1: refused. %2").arg(title, reading.refusal_text);
    return QStringLiteral("%1: %2").arg(title, with_interval(reading.value, reading.low, reading.high, reading.unit));
}

QString line_of(const Grade& grade) {
    return QStringLiteral("%1  %2, %3, round %4: %5")
        .arg(grade.id)
        .arg(grade.zone, grade.quality)
        .arg(grade.round)
        .arg(grade_anchor(grade.quality, grade.value));
}

QString line_of(const Service& service) {
    const QStringList what = QStringList{service.kind} + details_of(service);
    return with_note(
        QStringLiteral("%1  %2  %3").arg(service.id).arg(day(service.date), what.join(QStringLiteral(", "))),
        service.note);
}

QString line_of(const Target& target) {
    return QStringLiteral("%1  %2, %3: %4")
        .arg(target.id)
        .arg(word_of(target.view), title_of_reading(target.reading))
        .arg(target.value);
}

}  // namespace kempt::command
