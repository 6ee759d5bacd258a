// What the photo page shows of a measurement. Plain values: the analysis itself stays behind MeasureFunction.
#pragma once

#include <QPolygonF>
#include <QString>
#include <QVector>
#include <functional>

#include "core/progress.h"
#include "core/result.h"
#include "desk/photo/overlay.h"
#include "desk/photo/picture.h"
#include "domain/readings.h"

namespace kempt::desk {

struct ShownFinding {
    enum class Level { note, warning, refused };
    QString code;
    Level level = Level::note;
    QString text, remedy;
};

struct ShownReading {
    QString name, unit;
    double value = 0, low = 0, high = 0;
    bool refused = false;
    QString refusal;  // one sentence
};

struct Measured {
    Marks marks;  // that were measured; the meter sets it
    QVector<ReadingGroup> asked;
    QVector<ShownReading> readings;  // of all that was asked, in the order of all_reading_names(), refused ones too
    QString quality;                 // "good", "usable", "refused"
    QVector<ShownFinding> findings;
    double px_per_mm = 0, tilt_deg = 0, line_length_mm = 0;
    QString scale_from;  // "card", "sheet", "points", "none"
    QString curl;        // "loose curl"; empty when no pattern was measured
    Overlay overlay;
};

// Measures one opened photo with these marks. Called on a worker thread; must ask progress often enough to be stopped
// within about a tenth of a second.
using MeasureFunction = std::function<Result<Measured>(const Marks& marks, bool with_cover, const Progress& progress)>;

// A photo opened for work: what is shown and how it is measured.
struct OpenedPhoto {
    Picture picture;
    MeasureFunction measure;
};
using OpenFunction = std::function<Result<OpenedPhoto>(const QByteArray& bytes, double printer_scale, const Progress&)>;

// The real one: intake, card and edge readings through the use cases.
[[nodiscard]] OpenFunction open_with_analysis();

}  // namespace kempt::desk
