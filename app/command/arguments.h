// The words after `kempt COMMAND [VERB]`, checked against what the verb takes. Values are checked here, so that
// commands read them without asking again.
#pragma once

#include <QDate>
#include <QHash>
#include <QStringList>
#include <QVector>
#include <optional>

#include "core/result.h"
#include "domain/records.h"

namespace kempt::command {

enum class Type { flag, text, id, number, day, view };

struct Option {
    QString name;  // without the dashes
    Type type = Type::flag;
    QString value;  // how the usage line calls it: "FILE"; empty for flags
    QString help;
    bool required = false;
    QStringList choices;   // empty: anything of the type
    bool or_none = false;  // the word "none" too: it takes back what was written down
};

struct Taken {
    QString name;       // "BOOK"
    bool many = false;  // one or more; only the last
    bool optional = false;
};

class Arguments {
  public:
    // Errors: invalid with code "usage"; the sentence names the word that is wrong.
    static Result<Arguments> parse(const QStringList& words, const QVector<Taken>& taken,
                                   const QVector<Option>& options);

    [[nodiscard]] bool has(const QString& name) const { return values_.contains(name); }
    [[nodiscard]] QString text(const QString& name) const { return values_.value(name); }
    [[nodiscard]] Id id(const QString& name) const { return values_.value(name).toLongLong(); }
    [[nodiscard]] double number(const QString& name, double otherwise = 0) const;
    [[nodiscard]] QDate day(const QString& name) const;
    // Of options that take "none" too: nullopt for that word.
    [[nodiscard]] bool is_none(const QString& name) const { return text(name) == u"none"; }
    [[nodiscard]] std::optional<double> number_or_none(const QString& name) const;
    [[nodiscard]] std::optional<QDate> day_or_none(const QString& name) const;
    [[nodiscard]] View view(const QString& name) const;
    [[nodiscard]] const QStringList& rest() const { return rest_; }
    [[nodiscard]] QString book() const { return rest_.isEmpty() ? QString() : rest_.front(); }

  private:
    QHash<QString, QString> values_;
    QStringList rest_;
};

}  // namespace kempt::command
