#include "report/style.h"

#include <cmath>

namespace kempt::report {
namespace {

QFont made(const QStringList& families, double size, double scale) {
    QFont font;
    font.setFamilies(families);
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(size * scale))));
    font.setHintingPreference(QFont::PreferNoHinting);
    // Qt joins no ligatures where letters are spaced; its spacing counts in 1/64 of a pixel, which nobody sees.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

}  // namespace

QFont body_font(double size, bool bold, double scale) {
    QFont font = made({"DejaVu Sans", "Noto Sans", "Liberation Sans", "sans-serif"}, size, scale);
    font.setBold(bold);
    return font;
}

QFont heading_font(double size, double scale) {
    return made({"DejaVu Serif", "Noto Serif", "Liberation Serif", "DejaVu Sans", "serif"}, size, scale);
}

QFont code_font(double size, double scale) {
    return made({"DejaVu Sans Mono", "Noto Sans Mono", "Liberation Mono", "monospace"}, size, scale);
}

QColor colour_of(Outcome outcome) {
    switch (outcome) {
        case Outcome::improved:
            return ink::better;
        case Outcome::worse:
            return ink::worse;
        case Outcome::changed:
        case Outcome::no_detectable_change:
            return ink::text;
        case Outcome::not_comparable:
            break;
    }
    return ink::quiet;
}

}  // namespace kempt::report
