// Reads the members of a JSON object: of a plan's request and of a state. Not for other rooms.
#pragma once

#include <QJsonArray>
#include <QJsonObject>
#include <QStringList>
#include <cmath>
#include <optional>

#include "care/client_state.h"
#include "domain/words.h"
#include "work/errors.h"

namespace kempt::work {

// The first wrong member is kept; reading goes on with nothing, so that the code stays a plain list.
class Reader {
  public:
    Reader(const QJsonObject& object, const QString& where, std::optional<Error>& problem)
        : object_(object), where_(where), problem_(problem) {}
    ~Reader() {
        for (const QString& key : object_.keys())
            if (!known_.contains(key)) fail(key, QStringLiteral("is not known here"));
    }
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;

    void read(const char* name, std::optional<bool>& into) {
        const QJsonValue value = take(name);
        if (value.isBool())
            into = value.toBool();
        else if (!value.isNull())
            fail(QString::fromLatin1(name), QStringLiteral("is neither true nor false"));
    }
    void read(const char* name, bool& into) {
        std::optional<bool> value;
        read(name, value);
        into = value.value_or(into);
    }
    void read(const char* name, std::optional<double>& into) {
        const QJsonValue value = take(name);
        if (value.isDouble())
            into = value.toDouble();
        else if (!value.isNull())
            fail(QString::fromLatin1(name), QStringLiteral("is no number"));
    }
    void read(const char* name, double& into) {
        std::optional<double> value;
        read(name, value);
        into = value.value_or(into);
    }
    // Whole numbers of a few at the most: hands, passes, grades.
    void read(const char* name, std::optional<int>& into) {
        std::optional<double> value;
        read(name, value);
        if (value && (std::floor(*value) != *value || std::abs(*value) > 1000))
            fail(QString::fromLatin1(name), QStringLiteral("is no whole number of a few"));
        else if (value)
            into = static_cast<int>(*value);
    }
    void read(const char* name, int& into) {
        std::optional<int> value;
        read(name, value);
        into = value.value_or(into);
    }
    QString word(const char* name) {
        const QJsonValue value = take(name);
        if (!value.isNull() && !value.isString()) fail(QString::fromLatin1(name), QStringLiteral("is no text"));
        return value.toString();
    }
    void read(const char* name, std::string& into) { into = word(name).toStdString(); }
    void read(const char* name, std::optional<QDate>& into) {
        const QString text = word(name);
        if (text.isEmpty()) return;
        const QDate day = QDate::fromString(text, Qt::ISODate);
        if (!day.isValid()) return fail(QString::fromLatin1(name), QStringLiteral("is no day like 2026-03-14"));
        into = day;
    }
    void read(const char* name, std::optional<care::TestResult>& into) {
        const QString text = word(name);
        if (text == u"passed")
            into = care::TestResult::passed;
        else if (text == u"failed")
            into = care::TestResult::failed;
        else if (!text.isEmpty())
            fail(QString::fromLatin1(name), QStringLiteral("is neither \"passed\" nor \"failed\""));
    }
    void read(const char* name, std::optional<care::Strength>& into) {
        const QString text = word(name);
        if (text.isEmpty()) return;
        for (const care::Strength strength : {care::Strength::mild, care::Strength::regular, care::Strength::super})
            if (text.toStdString() == word_of(strength)) into = strength;
        if (!into) fail(QString::fromLatin1(name), QStringLiteral("is not \"mild\", \"regular\" or \"super\""));
    }
    // A section by another name would not be found in the record, and what was done there would not be heeded.
    void read_sections(const char* name, std::vector<std::string>& into) {
        for (const QJsonValue& value : list(name)) {
            const QString word = value.toString().trimmed().toLower();
            const auto view = view_from_word(word);
            const QString section = view ? word_of(*view) : word;
            if (!head_sections().contains(section))
                return fail(QString::fromLatin1(name), QStringLiteral("names '%1', which is no section of the head: %2")
                                                           .arg(word, head_sections().join(QStringLiteral(", "))));
            into.push_back(section.toStdString());
        }
    }
    QJsonArray list(const char* name) {
        const QJsonValue value = take(name);
        if (!value.isNull() && !value.isArray()) fail(QString::fromLatin1(name), QStringLiteral("is no list"));
        return value.toArray();
    }
    std::optional<QJsonObject> object(const char* name) {
        const QJsonValue value = take(name);
        if (value.isNull()) return std::nullopt;
        return object(value, QString::fromLatin1(name));
    }
    QJsonObject object(const QJsonValue& value, const QString& name) {
        if (!value.isObject()) fail(name, QStringLiteral("is no object"));
        return value.toObject();
    }
    void fail(const QString& name, const QString& what) {
        if (problem_) return;
        problem_ =
            invalid("plan-member", QStringLiteral("In the plan, \"%1%2\" %3.").arg(where_, name, what).toStdString(),
                    "Correct the file and try again.");
    }

  private:
    // null when it is left out
    QJsonValue take(const char* name) {
        known_.append(QString::fromLatin1(name));
        const QJsonValue value = object_.value(QString::fromLatin1(name));
        return value.isUndefined() ? QJsonValue(QJsonValue::Null) : value;
    }

    QJsonObject object_;
    QString where_;
    std::optional<Error>& problem_;
    QStringList known_;
};

}  // namespace kempt::work
