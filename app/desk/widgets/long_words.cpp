#include "desk/widgets/long_words.h"

#include "speech/language.h"

namespace kempt::desk {
namespace {

constexpr int longest = 24;  // letters; the longest words of a dictionary that stand in a column of 300 px
constexpr int step = 12;

}  // namespace

QString breakable(const QString& text) {
    QString out;
    int run = 0;
    qsizetype word = 0;  // where the word begins in `out`
    const auto break_word = [&] {
        if (run <= longest) return;
        qsizetype letters = 0;
        for (qsizetype i = word; i < out.size(); ++i) {
            // Never inside a surrogate pair, nor before a mark that belongs to the letter before it.
            const bool joins = out[i].isLowSurrogate() || out[i].isMark();
            if (letters >= step && !joins) {
                out.insert(i, QChar(0x200B));
                ++i;
                letters = 0;
            }
            ++letters;
        }
    };
    for (const QChar c : text) {
        if (c.isSpace()) {
            break_word();
            out += c;
            word = out.size();
            run = 0;
        } else {
            out += c;
            ++run;
        }
    }
    break_word();
    return out;
}

QString shortened(const QString& name) {
    constexpr int most = 28;  // letters: half of the smallest window with text of twice the size
    if (name.size() <= most) return speech::set_apart(name);
    const int kept = name[most - 2].isHighSurrogate() ? most - 2 : most - 1;
    return speech::set_apart(name.left(kept) + QStringLiteral("…"));
}

QString name_within(const QString& name) {
    return speech::set_apart(breakable(name));
}

QString in_two_lines(QString words) {
    const qsizetype middle = words.size() / 2;
    const qsizetype before = words.lastIndexOf(QLatin1Char(' '), middle),
                    after = words.indexOf(QLatin1Char(' '), middle);
    const qsizetype at = before < 0 || (after >= 0 && after - middle < middle - before) ? after : before;
    if (at >= 0) words[at] = QLatin1Char('\n');
    return words;
}

}  // namespace kempt::desk
