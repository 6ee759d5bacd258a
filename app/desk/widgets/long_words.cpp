#include "desk/widgets/long_words.h"

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

}  // namespace kempt::desk
