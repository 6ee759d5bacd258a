#include "work/details_json.h"

#include <QJsonArray>
#include <QJsonDocument>

#include "combings/summary.h"
#include "work/measure_json.h"

namespace kempt::work {

namespace {

QJsonValue json_of_lab(const std::optional<colour::Lab>& lab) {
    if (!lab) return QJsonValue::Null;
    return QJsonArray{rounded(lab->L, 4), rounded(lab->a, 4), rounded(lab->b, 4)};
}

// A tenth of a pixel is finer than any path.
QJsonArray json_of_path(const std::vector<cv::Point2d>& path) {
    QJsonArray points;
    for (const cv::Point2d& p : path) points.append(QJsonArray{std::round(10 * p.x) / 10, std::round(10 * p.y) / 10});
    return points;
}

QJsonObject json_of_light(const shine::LightSignature& light) {
    return {{"gradient_along_per_cm", rounded(light.gradient_along_per_cm)},
            {"gradient_across_per_cm", rounded(light.gradient_across_per_cm)},
            {"highlight_at", rounded(light.highlight_at)},
            {"highlight_turn_deg", rounded(light.highlight_turn_deg)}};
}

}  // namespace

QJsonObject json_of_tone(const tone::ToneReadings& tone) {
    QJsonArray lines;
    for (const tone::Demarcation& line : tone.lines)
        lines.append(QJsonObject{{"step", rounded(line.step, 4)},
                                 {"step_low", rounded(line.step_low, 4)},
                                 {"step_high", rounded(line.step_high, 4)},
                                 {"at_mm", rounded(line.at_mm, 4)},
                                 {"at_low", rounded(line.at_low, 4)},
                                 {"at_high", rounded(line.at_high, 4)},
                                 {"width_mm", rounded(line.width_mm, 4)}});
    return {{"root", json_of_lab(tone.root)},
            {"mid", json_of_lab(tone.mid)},
            {"end", json_of_lab(tone.end)},
            {"lane_mm", rounded(tone.lane_mm, 4)},
            {"lines", lines}};
}

QJsonArray json_of_strands(const std::vector<combings::Strand>& strands) {
    QJsonArray list;
    for (const combings::Strand& strand : strands)
        list.append(QJsonObject{{"length_mm", rounded(strand.length_mm, 5)},
                                {"length_low", rounded(strand.length_low, 5)},
                                {"length_high", rounded(strand.length_high, 5)},
                                {"doubtful", strand.doubtful},
                                {"cut_off", strand.cut_off},
                                {"perhaps_longer", combings::perhaps_longer(strand)},
                                {"path", json_of_path(strand.path_px)}});
    return list;
}

QJsonObject json_of_details(const MeasureResult& result) {
    QJsonObject details;
    if (result.tone) details["tone"] = json_of_tone(*result.tone);
    if (result.combings) {
        details["strands"] = json_of_strands(result.combings->strands);
        details["strand_parts"] = result.combings->parts;
        QJsonArray unresolved;
        for (const auto* paths : {&result.combings->unresolved_px, &result.combings->dim_px})
            for (const auto& path : *paths) unresolved.append(json_of_path(path));
        details["unresolved"] = unresolved;
    }
    if (result.pattern) details["strands"] = json_of_strands(result.pattern->strands);
    if (result.shine && result.shine->light) details["light"] = json_of_light(*result.shine->light);
    for (const Quantity& reading : result.readings)
        if (reading.name == "curve_diameter")
            details["curl"] = QString::fromStdString(pattern::word_of(pattern::curl_of(reading.value)));
    return details;
}

std::optional<shine::LightSignature> light_from_details(const QByteArray& json) {
    const QJsonObject light = QJsonDocument::fromJson(json).object()["light"].toObject();
    if (light.isEmpty()) return std::nullopt;
    return shine::LightSignature{light["gradient_along_per_cm"].toDouble(), light["gradient_across_per_cm"].toDouble(),
                                 light["highlight_at"].toDouble(), light["highlight_turn_deg"].toDouble()};
}

}  // namespace kempt::work
