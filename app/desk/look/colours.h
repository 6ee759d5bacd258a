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
    QColor region{128, 186, 255};  // the four corners of a region
    QColor strand{206, 244, 96};   // the line from root to end
    QColor anchor{255, 176, 222};  // a place that stays where it is
    QColor found{255, 255, 255};   // lines that measuring found
    QColor warning{255, 206, 64};  // stripes over what could not be made out
};

[[nodiscard]] const MarkColours& mark_colours();
// One for each traced strand, repeated when there are more strands. Any two differ by CIEDE2000 of 15 and more (a step
// of 1 is just noticeable), and each is light enough for its dark casing; proven in tests/app/desk.
[[nodiscard]] const QVector<QColor>& strand_colours();

}  // namespace kempt::desk
