#include "desk/translations/said.h"

#include <QCoreApplication>
#include <QHash>
#include <QLocale>
#include <QRegularExpression>
#include <QVector>
#include <algorithm>
#include <optional>

#include "desk/translations/language.h"
#include "desk/translations/sayings.h"

namespace kempt::desk {
namespace {

constexpr int deepest = 4;             // a sentence within a sentence within ...: none has more
constexpr qsizetype most_kept = 4000;  // answers kept; a long day's sentences, about a megabyte

// A sentence with %1, %2 ...: how it is recognised, and in which order its figures stand.
struct Pattern {
    QString source;
    QRegularExpression shape;
    QVector<int> order;  // of the placeholders as they stand in the sentence
    qsizetype letters;   // without placeholders: the more there are, the surer the match
};

Pattern pattern_of(const QString& source) {
    static const QRegularExpression place(QStringLiteral("%([1-9])"));
    Pattern pattern{source, {}, {}, 0};
    QString shape;
    qsizetype at = 0;
    auto found = place.globalMatch(source);
    while (found.hasNext()) {
        const auto one = found.next();
        shape += QRegularExpression::escape(source.mid(at, one.capturedStart() - at));
        pattern.letters += one.capturedStart() - at;
        shape += QStringLiteral("(.+?)");
        pattern.order.append(one.captured(1).toInt());
        at = one.capturedEnd();
    }
    shape += QRegularExpression::escape(source.mid(at));
    pattern.letters += source.size() - at;
    pattern.shape.setPattern(QRegularExpression::anchoredPattern(shape));
    return pattern;
}

const QVector<Pattern>& patterns() {
    static const QVector<Pattern> all = [] {
        QVector<Pattern> made;
        for (const QString& source : known_sayings())
            if (source.contains(QStringLiteral("%1"))) made.append(pattern_of(source));
        std::stable_sort(made.begin(), made.end(),
                         [](const Pattern& a, const Pattern& b) { return a.letters > b.letters; });
        return made;
    }();
    return all;
}

std::optional<QString> translated(const QString& english) {
    const QByteArray key = english.toUtf8();
    // A translation may equal its source ("no", "gel"): then it must be one of ours.
    const QString words = QCoreApplication::translate("said", key.constData());
    if (words != english) return words;
    static const QSet<QString> known(known_sayings().begin(), known_sayings().end());
    if (known.contains(english)) return words;
    return std::nullopt;
}

bool only_figures(const QString& words) {
    return std::none_of(words.begin(), words.end(), [](QChar c) { return c.isLetter(); });
}

std::optional<QString> known(const QString& english, int depth);

std::optional<QString> by_pattern(const QString& english, int depth) {
    for (const Pattern& pattern : patterns()) {
        const auto match = pattern.shape.match(english);
        if (!match.hasMatch()) continue;
        QString words = QCoreApplication::translate("said", pattern.source.toUtf8().constData());
        // Placeholders may stand in another order; what is put in is not looked through again.
        QString out;
        for (qsizetype i = 0; i < words.size(); ++i) {
            if (words[i] != u'%' || i + 1 >= words.size() || !words[i + 1].isDigit()) {
                out += words[i];
                continue;
            }
            const qsizetype which = pattern.order.indexOf(words[++i].digitValue());
            const QString part = match.captured(static_cast<int>(which) + 1);
            out += known(part, depth + 1).value_or(in_figures(part));
        }
        return out;
    }
    return std::nullopt;
}

// "A is so. B is not." each by itself; nothing when any of them is not known.
std::optional<QString> by_sentences(const QString& english, int depth) {
    static const QRegularExpression between(QStringLiteral("(?<=[.!?:;]) "));
    const QStringList parts = english.split(between);
    if (parts.size() < 2) return std::nullopt;
    QStringList out;
    for (const QString& part : parts) {
        const auto words = known(part, depth);
        if (!words) return std::nullopt;
        out.append(*words);
    }
    return out.join(QLatin1Char(' '));
}

std::optional<QString> known(const QString& english, int depth) {
    if (english.isEmpty() || depth > deepest) return std::nullopt;
    if (only_figures(english)) return in_figures(english);
    if (auto words = translated(english)) return words;
    if (auto words = by_pattern(english, depth)) return words;
    return by_sentences(english, depth);
}

QHash<QString, QString>& kept() {
    static QHash<QString, QString> answers;
    return answers;
}

}  // namespace

QString in_figures(QString words) {
    const QString point = QLocale().decimalPoint();
    if (point == u".") return words;
    static const QRegularExpression decimal(QStringLiteral("(?<=\\d)\\.(?=\\d)"));
    return words.replace(decimal, point);
}

bool is_said(const QString& english) {
    return known(english, 0).has_value();
}

QString said(const QString& english) {
    if (spoken() == Language::english) return english;
    QHash<QString, QString>& answers = kept();
    const auto at = answers.constFind(english);
    if (at != answers.cend()) return at.value();
    if (answers.size() > most_kept) answers.clear();
    QString words = known(english, 0).value_or(QString());
    if (words.isEmpty()) {
        // As much of it as is known: a sentence in English is better than none.
        static const QRegularExpression between(QStringLiteral("(?<=[.!?]) "));
        QStringList parts = english.split(between);
        for (QString& part : parts) part = known(part, 0).value_or(part);
        words = parts.join(QLatin1Char(' '));
    }
    answers.insert(english, words);
    return words;
}

QStringList said(const QStringList& english) {
    QStringList out;
    for (const QString& one : english) out.append(said(one));
    return out;
}

void forget_said() {
    kept().clear();
}

const QStringList& known_sayings() {
    static const QStringList all = [] {
        QStringList words;
        for (const char* const* list : {said_words, said_sentences, said_rules})
            for (; *list != nullptr; ++list) words.append(QString::fromUtf8(*list));
        return words;
    }();
    return all;
}

}  // namespace kempt::desk
