// The look of the printed pages: warm neutrals, one clay accent, DejaVu Sans with a serif for headings. Lengths on
// paper are in tenths of a point (the PDF is painted at 720 dots an inch), so that a font of 90 pixels is 9 pt.
#pragma once

#include <QColor>
#include <QFont>
#include <QString>

#include "report/report_model.h"

namespace kempt::report {

inline constexpr double pt = 10.0;          // units in a point
inline constexpr int units_per_inch = 720;  // 72 pt an inch
inline constexpr double mm = 720.0 / 25.4;  // units in a millimetre

// Opaque colours only: PDF/A-1 knows no transparency. Contrast of every text colour on white is at least 4.5 : 1, the
// WCAG 2.1 level AA ratio.
namespace ink {
inline const QColor text{0x2b, 0x26, 0x22};
inline const QColor quiet{0x6a, 0x60, 0x57};
inline const QColor accent{0x8a, 0x4f, 0x33};  // clay
inline const QColor better{0x2f, 0x62, 0x4c};
inline const QColor worse{0x96, 0x35, 0x2a};
inline const QColor line{0xd9, 0xcf, 0xc3};
inline const QColor fill{0xf4, 0xef, 0xe8};
}  // namespace ink

// size in points, times scale units a point; without hinting or ligatures, so that the text of the PDF can be searched.
[[nodiscard]] QFont body_font(double size, bool bold = false, double scale = pt);
[[nodiscard]] QFont heading_font(double size, double scale = pt);
[[nodiscard]] QFont code_font(double size, double scale = pt);

[[nodiscard]] QColor colour_of(Outcome outcome);

}  // namespace kempt::report
