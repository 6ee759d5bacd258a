// The gauge card and the gauge sheet as vector PDF at 1:1, with the 50 mm check line and what to do with it.
#pragma once

#include <QByteArray>
#include <QString>

#include "card/card_layout.h"
#include "core/result.h"
#include "speech/speech.h"

namespace kempt::report {

struct GaugeOptions {
    card::Kind kind = card::Kind::card;
    card::Paper paper = card::Paper::a4;
    // Stored correction: length of an earlier print's check line / 50 mm, 0.9..1.1. Everything is drawn that much
    // smaller, so that this print comes out at 1:1; the page then says that its line must measure 50 mm and that the
    // correction of the readings goes back to 50 mm. 1 draws at nominal size. A photo's readings are corrected for the
    // print that lies in it, never twice.
    double printer_scale = 1.0;
    speech::Speech speech = {};                 // of the words on the page
    card::Ground ground = card::Ground::white;  // of the sheet
};

// One page. Black modules and patches are filled paths, text is text: nothing is a raster. Needs a QGuiApplication.
// Errors: invalid (printer_scale out of range), unsupported (no fonts), io.
[[nodiscard]] Result<QByteArray> gauge_pdf(const GaugeOptions& options = {});

// Writes the file whole or not at all. Errors: those above; io when the file cannot be written.
[[nodiscard]] Status write_gauge(const GaugeOptions& options, const QString& path);

}  // namespace kempt::report
