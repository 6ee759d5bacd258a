#include "command/arguments.h"

#include <algorithm>
#include <cmath>

#include "domain/words.h"

namespace kempt::command {

namespace {

Error usage(const QString& what) {
    return {ErrorKind::invalid, "usage", what.toStdString(), "", ""};
}

// nullopt when the value is right, else what is wrong with it.
std::optional<QString> wrong_with(const Option& option, const QString& value) {
    bool good = true;
    if (option.or_none && value == u"none") return std::nullopt;
    switch (option.type) {
        case Type::flag:
        case Type::text:
            if (!option.choices.isEmpty() && !option.choices.contains(value))
                return QStringLiteral("must be one of: ") + option.choices.join(QStringLiteral(", "));
            return std::nullopt;
        case Type::id:
            good = value.toLongLong(&good) > 0 && good;
            return good ? std::nullopt : std::optional(QStringLiteral("must be the number of a record"));
        case Type::number:
            good = std::isfinite(value.toDouble(&good)) && good;
            return good ? std::nullopt
                        : std::optional(option.or_none ? QStringLiteral("must be a number or none")
                                                       : QStringLiteral("must be a number"));
        case Type::day:
            good = QDate::fromString(value, Qt::ISODate).isValid();
            return good ? std::nullopt : std::optional(QStringLiteral("must be a date like 2026-03-14"));
        case Type::view:
            break;
    }
    if (view_from_word(value)) return std::nullopt;
    QStringList known;
    for (const View view : all_views()) known.append(word_of(view));
    return QStringLiteral("must be a view: ") + known.join(QStringLiteral(", "));
}

}  // namespace

Result<Arguments> Arguments::parse(const QStringList& words, const QVector<Taken>& taken,
                                   const QVector<Option>& options) {
    Arguments arguments;
    bool only_names = false;  // after "--"
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString& word = words[i];
        if (only_names || !word.startsWith(u"--")) {
            if (!only_names && word.size() > 1 && word.startsWith(u'-'))
                return usage(QStringLiteral("There is no option '%1'.").arg(word));
            arguments.rest_.append(word);
            continue;
        }
        if (word == u"--") {
            only_names = true;
            continue;
        }
        const qsizetype equals = word.indexOf(u'=');
        const QString name = word.mid(2, equals < 0 ? -1 : equals - 2);
        const auto option =
            std::find_if(options.begin(), options.end(), [&](const Option& one) { return one.name == name; });
        if (option == options.end()) return usage(QStringLiteral("There is no option '--%1'.").arg(name));
        if (arguments.has(name)) return usage(QStringLiteral("Option '--%1' is given twice.").arg(name));
        if (option->type == Type::flag) {
            if (equals >= 0) return usage(QStringLiteral("Option '--%1' takes no value.").arg(name));
            arguments.values_[name] = QStringLiteral("yes");
            continue;
        }
        if (equals < 0 && i + 1 >= words.size()) return usage(QStringLiteral("Option '--%1' needs a value.").arg(name));
        const QString value = equals >= 0 ? word.mid(equals + 1) : words[++i];
        if (const auto wrong = wrong_with(*option, value))
            return usage(QStringLiteral("'%1' after '--%2' %3.").arg(value, name, *wrong));
        arguments.values_[name] = value;
    }
    for (const Option& option : options)
        if (option.required && !arguments.has(option.name))
            return usage(QStringLiteral("Option '--%1' is missing.").arg(option.name));
    const qsizetype least = std::count_if(taken.begin(), taken.end(), [](const Taken& one) { return !one.optional; });
    if (arguments.rest_.size() < least)
        return usage(QStringLiteral("%1 is missing.").arg(taken[arguments.rest_.size()].name));
    if (arguments.rest_.size() > taken.size() && (taken.isEmpty() || !taken.back().many))
        return usage(QStringLiteral("'%1' is one word too many.").arg(arguments.rest_[taken.size()]));
    return arguments;
}

double Arguments::number(const QString& name, double otherwise) const {
    return has(name) ? values_.value(name).toDouble() : otherwise;
}

std::optional<double> Arguments::number_or_none(const QString& name) const {
    return is_none(name) ? std::nullopt : std::optional(number(name));
}

std::optional<QDate> Arguments::day_or_none(const QString& name) const {
    return is_none(name) ? std::nullopt : std::optional(day(name));
}

QDate Arguments::day(const QString& name) const {
    return QDate::fromString(values_.value(name), Qt::ISODate);
}

View Arguments::view(const QString& name) const {
    return view_from_word(values_.value(name)).value_or(View::front_hairline);
}

}  // namespace kempt::command
