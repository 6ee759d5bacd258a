// The JSON of `kempt measure` (the command line's contract), and the JSON kept beside a stored reading.
#pragma once

#include <QJsonArray>
#include <QJsonObject>

#include "work/measure_photo.h"

namespace kempt::work {

// {"photo", "card", "quality", "readings", "refused"}, and "tone", "strands", "strand_parts", "unresolved", "light",
// "curl" where they were asked for and found; numbers rounded to six significant digits.
[[nodiscard]] QJsonObject json_of_measure(const MeasureResult& result);
// [{"code", "level", "text", "remedy"}]
[[nodiscard]] QJsonArray json_of_findings(const std::vector<Finding>& findings);
[[nodiscard]] std::vector<Finding> findings_from_json(const QByteArray& json);
// "note", "warning", "refused"
[[nodiscard]] QString word_of(Level level);

// The calibration as stored with a reading: scale, tilt, light, homography (row by row) and where it came from
// ("card", "sheet", "points", "none").
[[nodiscard]] QJsonObject json_of_calibration(const card::Calibration& calibration);
// What comparing and carrying marks need from a stored calibration: source, homography, scale, tilt.
struct StoredCalibration {
    QString source = QStringLiteral("none");
    card::Calibration calibration;
    [[nodiscard]] bool has_scale() const { return source != QStringLiteral("none"); }
};
[[nodiscard]] StoredCalibration calibration_from_json(const QByteArray& json);
// Options that move a result, as stored with a reading.
[[nodiscard]] QJsonObject json_of_options(const MeasureOptions& options);
// A number rounded to `digits` significant digits, for JSON.
[[nodiscard]] double rounded(double value, int digits = 6);

}  // namespace kempt::work
