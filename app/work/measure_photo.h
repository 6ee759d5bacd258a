// Measures one photo: bytes to pixels, scale and light, the gate, and every reading that the marks ask for. Needs no
// book.
#pragma once

#include <QByteArray>
#include <QPointF>
#include <QStringList>
#include <QVector>
#include <memory>

#include "card/calibration.h"
#include "card/gate.h"
#include "combings/combings.h"
#include "core/progress.h"
#include "core/result.h"
#include "domain/readings.h"
#include "domain/records.h"
#include "edges/edges.h"
#include "ends/ends.h"
#include "intake/intake.h"
#include "pattern/pattern.h"
#include "shine/shine.h"
#include "tone/tone.h"

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
    // Of all that was asked for: refused only when every kind of reading is; a finding that refuses some kinds only is
    // a warning here and the reason of those refusals.
    card::GateReport quality;
    QVector<ReadingGroup> asked;     // what the marks asked for
    std::vector<Quantity> readings;  // in the order of all_reading_names()
    std::vector<Refusal> refused;    // the asked ones that are not given, likewise
    double px_per_mm = 0;            // where the readings were taken; 0 without a scale
    // What lies behind the readings, for overlays and charts; their own `readings` and `refused` have moved above.
    edges::EdgeReadings edges;
    std::optional<shine::ShineReadings> shine;
    std::optional<tone::ToneReadings> tone;
    std::optional<ends::EndsReadings> ends;
    std::optional<combings::CombingsReadings> combings;
    std::optional<combings::CombingsReadings> traced;  // the comb-out before her corrections, with its own readings
    std::optional<pattern::PatternReadings> pattern;

    [[nodiscard]] bool has_asked(ReadingGroup group) const { return asked.contains(group); }
};

// Decodes and looks for the card. Errors: those of intake::decode; invalid options; cancelled.
[[nodiscard]] Result<std::shared_ptr<const OpenPhoto>> open_photo(const QByteArray& bytes,
                                                                  const MeasureOptions& options,
                                                                  const Progress& progress = {});

// An earlier measurement of the same photo with the same options, by a hand that draws on: groups whose marks have not
// changed since are taken over from it.
struct Earlier {
    Marks marks;
    MeasureResult result;
};

// Measures with these marks. A photo that the gate refuses, or that has no scale, still gives a result: its readings
// are then all in `refused`, each with the reason. Errors: invalid marks; cancelled.
[[nodiscard]] Result<MeasureResult> measure_open_photo(const OpenPhoto& photo, const Marks& marks,
                                                       const MeasureOptions& options, const Progress& progress = {},
                                                       const Earlier* earlier = nullptr);

// Both in turn.
[[nodiscard]] Result<MeasureResult> measure_photo(const QByteArray& bytes, const Marks& marks,
                                                  const MeasureOptions& options = {}, const Progress& progress = {});

}  // namespace kempt::work
