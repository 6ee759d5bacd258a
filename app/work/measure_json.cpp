#include "work/measure_json.h"

#include <QJsonDocument>
#include <cmath>

#include "domain/readings.h"
#include "work/details_json.h"

namespace kempt::work {

namespace {

QString text(const std::string& from) {
    return QString::fromStdString(from);
}

QString source_of(const card::Calibration& calibration) {
    if (calibration.card_found) return QStringLiteral("card");
    if (calibration.sheet_found) return QStringLiteral("sheet");
    return calibration.two_points ? QStringLiteral("points") : QStringLiteral("none");
}

QJsonValue gains_of(const card::Calibration& calibration) {
    if (!calibration.light) return QJsonValue::Null;
    const cv::Vec3d& gains = calibration.light->gains;
    return QJsonArray{rounded(gains[0]), rounded(gains[1]), rounded(gains[2])};
}

QJsonObject card_json(const card::Calibration& calibration) {
    const bool found = calibration.card_found || calibration.sheet_found;
    const bool scaled = found || calibration.two_points;
    return {{"found", found},
            {"px_per_mm", scaled ? QJsonValue(rounded(calibration.px_per_mm)) : QJsonValue::Null},
            {"tilt_deg", found ? QJsonValue(rounded(calibration.tilt_deg, 4)) : QJsonValue::Null},
            {"gains", gains_of(calibration)}};
}

std::optional<Level> level_from(const QString& word) {
    if (word == u"note") return Level::note;
    if (word == u"warning") return Level::warning;
    if (word == u"refused") return Level::refused;
    return std::nullopt;
}

}  // namespace

double rounded(double value, int digits) {
    if (value == 0 || !std::isfinite(value)) return value;
    const double factor = std::pow(10.0, digits - 1 - static_cast<int>(std::floor(std::log10(std::abs(value)))));
    return std::round(value * factor) / factor;
}

QString word_of(Level level) {
    switch (level) {
        case Level::note:
            return QStringLiteral("note");
        case Level::warning:
            return QStringLiteral("warning");
        case Level::refused:
            break;
    }
    return QStringLiteral("refused");
}

QJsonArray json_of_findings(const std::vector<Finding>& findings) {
    QJsonArray array;
    for (const Finding& finding : findings)
        array.append(QJsonObject{{"code", text(finding.code)},
                                 {"level", word_of(finding.level)},
                                 {"text", text(finding.text)},
                                 {"remedy", text(finding.remedy)}});
    return array;
}

std::vector<Finding> findings_from_json(const QByteArray& json) {
    std::vector<Finding> findings;
    const QJsonArray array = QJsonDocument::fromJson(json).array();
    for (const QJsonValue& value : array) {
        const QJsonObject object = value.toObject();
        findings.push_back({object["code"].toString().toStdString(),
                            level_from(object["level"].toString()).value_or(Level::note),
                            object["text"].toString().toStdString(), object["remedy"].toString().toStdString()});
    }
    return findings;
}

QJsonObject json_of_measure(const MeasureResult& result) {
    QJsonArray readings, refused;
    for (const Quantity& reading : result.readings)
        readings.append(QJsonObject{{"name", text(reading.name)},
                                    {"value", rounded(reading.value)},
                                    {"unit", text(reading.unit)},
                                    {"low", rounded(reading.low)},
                                    {"high", rounded(reading.high)}});
    for (const Refusal& refusal : result.refused)
        refused.append(
            QJsonObject{{"name", text(refusal.name)}, {"code", text(refusal.code)}, {"text", text(refusal.text)}});
    if (result.asked.isEmpty())
        for (const QString& name : edge_reading_names())
            refused.append(QJsonObject{{"name", name},
                                       {"code", "no-edge-line"},
                                       {"text", "The marks hold no edge line, so there is nothing to measure."}});
    QJsonObject object = json_of_details(result);
    if (result.has_asked(ReadingGroup::tone) && !object.contains("tone")) object["tone"] = QJsonValue::Null;
    if (result.has_asked(ReadingGroup::combings) && !object.contains("strands")) object["strands"] = QJsonArray{};
    object["photo"] = QJsonObject{{"width", result.header.size.width()}, {"height", result.header.size.height()}};
    object["card"] = card_json(result.calibration);
    object["quality"] =
        QJsonObject{{"level", text(result.quality.level)}, {"findings", json_of_findings(result.quality.findings)}};
    object["readings"] = readings;
    object["refused"] = refused;
    return object;
}

QJsonObject json_of_calibration(const card::Calibration& calibration) {
    const QString source = source_of(calibration);
    QJsonObject object{{"source", source}};
    if (source == u"none") return object;
    QJsonArray homography;
    for (const double entry : calibration.mm_from_px.val) homography.append(entry);
    object["mm_from_px"] = homography;  // full doubles: marks are carried through it
    object["px_per_mm"] = rounded(calibration.px_per_mm);
    object["px_per_mm_sd"] = rounded(calibration.px_per_mm_sd);
    if (source != u"points") {
        object["tilt_deg"] = rounded(calibration.tilt_deg);
        object["corner_rms_px"] = rounded(calibration.corner_rms_px);
        object["edge_rise_mm"] = rounded(calibration.edge_rise_mm);
    }
    if (calibration.light) {
        const card::Light& light = *calibration.light;
        object["gains"] = gains_of(calibration);
        object["curve_fitted"] = light.curve_fitted;
        object["ramp_residual"] = rounded(light.ramp_residual);
        object["gradient_per_cm"] = rounded(light.gradient_per_cm);
        object["gradient_direction"] =
            QJsonArray{rounded(light.gradient_direction[0]), rounded(light.gradient_direction[1])};
    }
    return object;
}

StoredCalibration calibration_from_json(const QByteArray& json) {
    StoredCalibration stored;
    const QJsonObject object = QJsonDocument::fromJson(json).object();
    const QJsonArray homography = object["mm_from_px"].toArray();
    if (homography.size() != 9) return stored;
    stored.source = object["source"].toString();
    card::Calibration& calibration = stored.calibration;
    calibration.card_found = stored.source == u"card";
    calibration.sheet_found = stored.source == u"sheet";
    calibration.two_points = stored.source == u"points";
    for (int i = 0; i < 9; ++i) calibration.mm_from_px.val[i] = homography[i].toDouble();
    calibration.px_per_mm = object["px_per_mm"].toDouble();
    calibration.px_per_mm_sd = object["px_per_mm_sd"].toDouble();
    calibration.tilt_deg = object["tilt_deg"].toDouble();
    return stored;
}

QJsonObject json_of_options(const MeasureOptions& options) {
    const edges::EdgeOptions& edges = options.edges;
    return {{"printer_scale", options.printer_scale},
            {"focal_px", options.focal_px},
            {"depth_mm", edges.depth_mm},
            {"coverage_depth_mm", edges.coverage_depth_mm},
            {"strand_depth_mm", edges.strand_depth_mm},
            {"bare_share", edges.bare_share},
            {"bare_column_mm", edges.bare_column_mm},
            {"full_zone_mm", QJsonArray{edges.full_zone_from_mm, edges.full_zone_to_mm}},
            {"count_min_px_per_mm", edges.count_min_px_per_mm},
            {"count_max_cover", edges.count_max_cover}};
}

}  // namespace kempt::work
