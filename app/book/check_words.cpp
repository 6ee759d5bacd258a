#include "book/check_words.h"

#include <QJsonArray>
#include <QJsonDocument>

#include "domain/questions.h"
#include "domain/words.h"

namespace kempt::sql {

namespace {

// One field of one record.
struct Held {
    qint64 record = 0;
    QString text;
    bool is_null = false;
};

Held held_of(Row& row) {
    Held held;
    held.record = row.number();
    const auto text = row.text_or_null();
    held.is_null = !text.has_value();
    held.text = text.value_or(QString());
    return held;
}

// A column of a table; what is wrong with a value, empty: nothing.
struct Column {
    const char *table, *id, *name;
    const char* record;  // "Service"
    QString (*wrong)(const QString& text);
    bool unreadable;  // a problem, not only a word that is unknown
};

QString among(const QStringList& words, const QString& text, const char* what) {
    if (text.isEmpty() || words.contains(text)) return {};
    return QStringLiteral("%1 that is unknown, \"%2\"").arg(QLatin1String(what), text);
}

QString wrong_day(const QString& text) {
    if (QDate::fromString(text, Qt::ISODate).isValid()) return {};
    return QStringLiteral("a day that is none, \"%1\"").arg(text);
}
QString wrong_sections(const QString& text) {
    const QJsonDocument json = QJsonDocument::fromJson(text.toUtf8());
    if (!json.isArray()) return QStringLiteral("no list of head sections");
    for (const QJsonValue& section : json.array())
        if (!head_sections().contains(section.toString()))
            return QStringLiteral("a head section that is none, \"%1\"").arg(section.toString());
    return {};
}
QString wrong_kind(const QString& text) {
    return among(service_kinds(), text, "a kind");
}
QString wrong_strength(const QString& text) {
    return among(strengths(), text, "a strength");
}
QString wrong_result(const QString& text) {
    return among(test_results(), text, "a result of a test");
}
QString wrong_texture(const QString& text) {
    return among(hair_textures(), text, "a texture");
}
QString wrong_group(const QString& text) {
    return among(hair_groups(), text, "a group of hair");
}
QString wrong_question(const QString& text) {
    return find_question(text) ? QString() : QStringLiteral("a question that is unknown, \"%1\"").arg(text);
}
QString wrong_zone(const QString& text) {
    return grade_zone_from_word(text) ? QString() : QStringLiteral("a zone that is unknown, \"%1\"").arg(text);
}
QString wrong_quality(const QString& text) {
    return among(grade_qualities(), text, "a quality");
}

constexpr Column columns[] = {
    {"service", "id", "done_on", "Service", wrong_day, true},
    {"service", "id", "patch_test_on", "Service", wrong_day, true},
    {"service", "id", "line_on", "Service", wrong_day, true},
    {"service", "id", "sections", "Service", wrong_sections, true},
    {"service", "id", "kind", "Service", wrong_kind, false},
    {"service", "id", "strength", "Service", wrong_strength, false},
    {"service", "id", "strand_test", "Service", wrong_result, false},
    {"service", "id", "patch_test", "Service", wrong_result, false},
    {"client_profile", "client", "born", "The profile of client", wrong_day, true},
    {"client_profile", "client", "age_on", "The profile of client", wrong_day, true},
    {"client_profile", "client", "length_on", "The profile of client", wrong_day, true},
    {"client_profile", "client", "history_from", "The profile of client", wrong_day, true},
    {"client_profile", "client", "history_told_on", "The profile of client", wrong_day, true},
    {"client_profile", "client", "texture", "The profile of client", wrong_texture, false},
    {"client_profile", "client", "hair_group", "The profile of client", wrong_group, false},
    {"daily_life", "id", "told_on", "Daily life", wrong_day, true},
    {"answer", "id", "answered_on", "Answer", wrong_day, true},
    {"answer", "id", "question", "Answer", wrong_question, false},
    {"grade", "id", "zone", "Grade", wrong_zone, false},
    {"grade", "id", "quality", "Grade", wrong_quality, false},
};

}  // namespace

Result<WordReport> read_words(Connection& connection) {
    WordReport report;
    for (const Column& column : columns) {
        const auto all =
            sql::all<Held>(connection,
                           QStringLiteral("SELECT %2, %3 FROM %1 ORDER BY %2")
                               .arg(QLatin1String(column.table), QLatin1String(column.id), QLatin1String(column.name)),
                           {}, held_of);
        if (!all) return all.error();
        for (const Held& held : *all) {
            const QString wrong = held.is_null ? QString() : column.wrong(held.text);
            if (wrong.isEmpty()) continue;
            (column.unreadable ? report.problems : report.unknown)
                << QStringLiteral("%1 %2 holds %3.").arg(QLatin1String(column.record)).arg(held.record).arg(wrong);
        }
    }
    return report;
}

}  // namespace kempt::sql
