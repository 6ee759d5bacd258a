// Writes the gauge card or sheet, as vector PDF at 1:1 or as PNG.
#pragma once

#include <QString>

#include "card/card_layout.h"
#include "core/result.h"
#include "speech/speech.h"

namespace kempt::work {

struct PrintCardOptions {
    card::Kind kind = card::Kind::card;
    card::Paper paper = card::Paper::a4;
    card::Ground ground = card::Ground::white;  // of the sheet
    bool png = false;
    double px_per_mm = 12;       // of the PNG, 4..60
    double printer_scale = 1;    // of the PDF: drawn smaller by this, so that a printer that enlarges comes out at 1:1
    QString path;                // replaced atomically
    speech::Speech speech = {};  // of the words on the PDF
};
// PDF needs a QGuiApplication. Errors: invalid, io.
[[nodiscard]] Status print_card(const PrintCardOptions& options);

// The printer correction from the measured length of the 50 mm check line. Errors: invalid (outside 45..55 mm:
// that is another print setting, not a printer's tolerance).
[[nodiscard]] Result<double> printer_scale_from(double measured_mm);

}  // namespace kempt::work
