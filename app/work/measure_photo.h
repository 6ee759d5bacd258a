// Measures one photo: bytes to pixels, scale and light, the gate, the edge readings. Needs no book.
#pragma once

#include <QByteArray>
#include <QPointF>
#include <QStringList>
#include <QVector>
#include <memory>

#include "card/calibration.h"
#include "card/gate.h"
#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "edges/edges.h"
#include "intake/intake.h"

namespace kempt::work {

struct MeasureOptions {
    double printer_scale = 1.0;  // length of the card's printed check line / 50 mm, 0.9..1.1
    double focal_px = 0;         // 0: unknown, the tilt assumes a phone's main camera
    edges::EdgeOptions edges;
    bool with_overlay = false;  // fills MeasureResult::edges.overlay_px (photo size; for showing only)
    bool with_sha256 = true;    // fills MeasureResult::sha256
    intake::Limits limits;

    // Errors: invalid, naming the field.
    [[nodiscard]] Status check() const;
};

// A photo that has been decoded and whose card has been looked for: what does not change while marks are dragged.
struct OpenPhoto {
    intake::Decoded decoded;
    card::Calibration card;  // from the card or sheet alone; card.card_found may be false
};

struct MeasureResult {
    intake::Header header;
    QString sha256;                 // empty when it was not wanted
    QStringList notes;              // of the intake: "alpha laid over white"
    card::Calibration calibration;  // the one that was used: the card's, or from the two points
    card::GateReport quality;
    edges::EdgeReadings edges;  // readings and refusals; empty when there was no edge line
    bool edge_asked = false;    // the marks held an edge line
    double px_per_mm = 0;       // at the middle of the edge line, else at the card; 0 without a scale
};

// Decodes and looks for the card. Errors: those of intake::decode; invalid options; cancelled.
[[nodiscard]] Result<std::shared_ptr<const OpenPhoto>> open_photo(const QByteArray& bytes,
                                                                  const MeasureOptions& options,
                                                                  const Progress& progress = {});

// Measures with these marks. A photo that the gate refuses, or that has no scale, still gives a result: its readings
// are then all in `edges.refused`, each with the reason. Errors: invalid marks; cancelled.
[[nodiscard]] Result<MeasureResult> measure_open_photo(const OpenPhoto& photo, const Marks& marks,
                                                       const MeasureOptions& options, const Progress& progress = {});

// Both in turn.
[[nodiscard]] Result<MeasureResult> measure_photo(const QByteArray& bytes, const Marks& marks,
                                                  const MeasureOptions& options = {}, const Progress& progress = {});

// Marks of the analysis from marks of the book.
[[nodiscard]] edges::EdgeMarks edge_marks_from(const Marks& marks);
// Part of the photo that the readings use: the band of the edge line widened to both sides, or the marked region;
// empty when there are no marks. Photo pixels.
[[nodiscard]] std::vector<cv::Point2d> region_of(const Marks& marks, const card::Calibration& calibration);

}  // namespace kempt::work
