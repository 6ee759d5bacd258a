#include "speech/speech.h"

#include <QHash>
#include <QMutex>
#include <QRegularExpression>
#include <QTranslator>
#include <QVector>
#include <algorithm>

#include "speech/sayings.h"

// The room is a static library: its compiled-in file must be asked for, outside any namespace.
static void take_sayings() {
    Q_INIT_RESOURCE(said);
}

namespace kempt::speech {
namespace {

constexpr int deepest = 4;              // a sentence within a sentence within ...: none has more
constexpr qsizetype sure_letters = 11;  // a pattern of so many is a sentence of its own; own choice
constexpr qsizetype most_kept = 4000;   // answers kept; a long day's sentences, about a megabyte

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

// Figures with their units: no words, whatever the language.
bool only_figures(QString words) {
    static const QRegularExpression units(QStringLiteral(
        "(?<![A-Za-z])(?:mm\u00b2?|mm2|cm|in\u00b2|in2|px|um|min|pH|dE00|\u0394E|L\\*|a\\*|b\\*|\u00b0C|MP|p)"
        "(?![A-Za-z])"));
    words.remove(units);
    return std::none_of(words.begin(), words.end(), [](QChar c) { return c.isLetter(); });
}

}  // namespace

struct Speech::Kept {
    QLocale locale;
    bool english = true;
    Dictionary dictionary;
    QMutex mutex;
    QHash<QString, QString> answers;

    // Parts that stay English are put into `left`.
    std::optional<QString> known(const QString& words, int depth, QStringList* left) const;

  private:
    std::optional<QString> by_pattern(const QString& words, int depth, QStringList* left) const;
    std::optional<QString> by_sentences(const QString& words, int depth, QStringList* left) const;
};

std::optional<QString> Speech::Kept::by_pattern(const QString& words, int depth, QStringList* left) const {
    for (const Pattern& pattern : patterns()) {
        const auto match = pattern.shape.match(words);
        if (!match.hasMatch()) continue;
        const auto said = dictionary(pattern.source);
        if (!said) continue;
        // Placeholders may stand in another order; what is put in is not looked through again.
        QString out;
        QStringList unknown;
        for (qsizetype i = 0; i < said->size(); ++i) {
            if (said->at(i) != u'%' || i + 1 >= said->size() || !said->at(i + 1).isDigit()) {
                out += said->at(i);
                continue;
            }
            const qsizetype which = pattern.order.indexOf(said->at(++i).digitValue());
            const QString part = match.captured(static_cast<int>(which) + 1);
            const auto inner = known(part, depth + 1, nullptr);
            if (!inner) unknown.append(part);
            out += inner.value_or(in_figures(part, locale));
        }
        // "%1 of %2" fits nearly anything: it counts only where its parts are known.
        if (!unknown.isEmpty() && pattern.letters < sure_letters) continue;
        if (left) left->append(unknown);
        return out;
    }
    return std::nullopt;
}

// "A is so. B is not." each by itself, then the parts of "A: b; c"; nothing when any of them is not known.
std::optional<QString> Speech::Kept::by_sentences(const QString& words, int depth, QStringList* left) const {
    static const QRegularExpression sentences(QStringLiteral("(?<=[.!?]) ")), clauses(QStringLiteral("(?<=[:;]) "));
    for (const auto* between : {&sentences, &clauses}) {
        const QStringList parts = words.split(*between);
        if (parts.size() < 2) continue;
        QStringList out;
        for (const QString& part : parts) {
            auto one = known(part, depth, left);
            // "a; b": known as "a" alone.
            if (!one && (part.endsWith(u';') || part.endsWith(u':')))
                if (const auto bare = known(part.chopped(1), depth, left)) one = *bare + part.back();
            if (!one) break;
            out.append(*one);
        }
        if (out.size() == parts.size()) return out.join(QLatin1Char(' '));
    }
    return std::nullopt;
}

std::optional<QString> Speech::Kept::known(const QString& words, int depth, QStringList* left) const {
    if (words.isEmpty() || depth > deepest) return std::nullopt;
    if (only_figures(words)) return in_figures(words, locale);
    if (auto date = in_dates(words, locale)) return date;
    if (auto said = dictionary(words)) return said;
    if (words[0].isUpper()) {  // a word of the trade that begins a sentence
        if (auto said = dictionary(words[0].toLower() + words.mid(1)); said && !said->isEmpty())
            return said->at(0).toUpper() + said->mid(1);
    }
    if (auto said = by_pattern(words, depth, left)) return said;
    if (auto said = by_sentences(words, depth, left)) return said;
    // Known as a piece of a longer sentence, without its full stop.
    if (words.endsWith(u'.'))
        if (const auto piece = known(words.chopped(1), depth, left)) return *piece + u'.';
    return std::nullopt;
}

Speech::Speech(Language language) : kept_(std::make_shared<Kept>()) {
    if (language == Language::english) {
        kept_->locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
        return;
    }
    take_sayings();
    static const auto spanish = [] {
        auto translator = std::make_shared<QTranslator>();
        // Compiled in; were it not, sentences would stay English, and the tests would fail.
        if (!translator->load(QStringLiteral(":/speech/said_es.qm"))) qWarning("said_es.qm was not loaded");
        return translator;
    }();
    kept_->english = false;
    kept_->locale = locale_of(language);
    kept_->dictionary = [](const QString& words) -> std::optional<QString> {
        const QString said = spanish->translate("said", words.toUtf8().constData());
        return said.isEmpty() ? std::nullopt : std::optional(said);
    };
}

Speech::Speech(const QLocale& locale, const Dictionary& dictionary) : kept_(std::make_shared<Kept>()) {
    kept_->locale = locale;
    kept_->english = false;
    kept_->dictionary = dictionary;
}

bool Speech::is_english() const {
    return kept_->english;
}

const QLocale& Speech::locale() const {
    return kept_->locale;
}

QString Speech::operator()(const QString& english) const {
    if (kept_->english || english.isEmpty()) return english;
    {
        const QMutexLocker lock(&kept_->mutex);
        const auto at = kept_->answers.constFind(english);
        if (at != kept_->answers.cend()) return at.value();
    }
    QString words = kept_->known(english, 0, nullptr).value_or(QString());
    if (words.isEmpty()) {
        // As much of it as is known: a sentence in English is better than none.
        static const QRegularExpression between(QStringLiteral("(?<=[.!?]) "));
        QStringList parts = english.split(between);
        for (QString& part : parts) part = kept_->known(part, 0, nullptr).value_or(part);
        words = parts.join(QLatin1Char(' '));
    }
    const QMutexLocker lock(&kept_->mutex);
    if (kept_->answers.size() > most_kept) kept_->answers.clear();
    kept_->answers.insert(english, words);
    return words;
}

std::optional<QString> Speech::find(const QString& english) const {
    return kept_->english ? std::optional(english) : kept_->known(english, 0, nullptr);
}

QString Speech::date(const QDate& date, const QString& format) const {
    return kept_->english ? locale().toString(date, format) : date_in(date, format, locale());
}

QStringList Speech::left_english(const QString& english) const {
    if (kept_->english || english.isEmpty()) return {};
    QStringList left;
    if (!kept_->known(english, 0, &left)) left.append(english);
    return left;
}

const QStringList& known_sayings() {
    static const QStringList all = [] {
        QStringList words;
        for (const char* const* list : {said_words, said_sentences, said_report, said_errors, said_rules})
            for (; *list != nullptr; ++list) words.append(QString::fromUtf8(*list));
        words.removeDuplicates();
        return words;
    }();
    return all;
}

}  // namespace kempt::speech
