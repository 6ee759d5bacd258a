// The palette of the desk, light and dark. Every pair that carries text is at least 4.5:1 (WCAG 2.1, success criterion
// 1.4.3); every pair that carries only a shape is at least 3:1 (1.4.11). Proven in tests/app/desk.
#pragma once

#include <QColor>
#include <QPair>
#include <QString>
#include <QVector>

namespace kempt::desk {

struct Colours {
    bool dark = false;
    QColor ground;       // behind everything: plaster
    QColor surface;      // panels that carry content
    QColor sunken;       // the client list, wells, the bed of a photo
    QColor raised;       // controls at rest
    QColor raised_over;  // controls under the pointer
    QColor line;         // hairlines between things; carries no meaning
    QColor outline;      // the border of a control, 3:1 on surface
    QColor ink;          // text
    QColor ink_soft;     // secondary text
    QColor accent;       // the one colour of action and selection: mulberry
    QColor accent_over;  // the same under the pointer
    QColor on_accent;    // text on accent
    QColor accent_wash;  // selected rows
    QColor focus;        // the ring round whatever has the keyboard
    QColor better;       // a change for the better: bay leaf
    QColor worse;        // a change for the worse: rust
    QColor caution;      // look here before going on: honey
    QColor better_wash, worse_wash, caution_wash;
};

[[nodiscard]] const Colours& light_colours();
[[nodiscard]] const Colours& dark_colours();

// Contrast ratio of WCAG 2.1 (relative luminance of sRGB), 1..21.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

// Every pair of the palette in which `first` is written on `second`, with its name.
struct TextPair {
    QString name;
    QColor text, ground;
};
[[nodiscard]] QVector<TextPair> text_pairs(const Colours& colours);

// On photographs: colours that neither hair nor skin has, each drawn inside a dark casing.
struct MarkColours {
    QColor casing{24, 18, 16, 215};
    QColor line{96, 226, 232};     // the edge line and its teeth
    QColor picked{255, 236, 110};  // the point that the keyboard moves
    QColor hair{196, 160, 255};    // a tap on hair
    QColor scalp{150, 240, 150};   // a tap on scalp
    QColor ruler{255, 255, 255};   // two points a known distance apart
    QColor cover{255, 64, 200};    // estimated cover
};

[[nodiscard]] const MarkColours& mark_colours();

}  // namespace kempt::desk
