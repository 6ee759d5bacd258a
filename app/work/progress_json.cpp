#include "work/progress_json.h"

#include <cmath>

#include <QJsonArray>

#include "domain/words.h"
#include "work/measure_json.h"

namespace kempt::work {

namespace {

QJsonValue day(const std::optional<QDate>& date) {
    return date ? QJsonValue(date->toString(Qt::ISODate)) : QJsonValue::Null;
}

QString scale_word(change::Scale::Kind kind) {
    switch (kind) {
        case change::Scale::Kind::root:
            return QStringLiteral("root");
        case change::Scale::Kind::logarithm:
            return QStringLiteral("logarithm");
        case change::Scale::Kind::lack:
            return QStringLiteral("lack");
        case change::Scale::Kind::value:
            break;
    }
    return QStringLiteral("value");
}

QJsonValue number(const std::optional<double>& value) {
    return value ? QJsonValue(rounded(*value)) : QJsonValue::Null;
}

QJsonObject hair_json(const HairState& hair) {
    return {{"wet", hair.wet}, {"styled", hair.styled}, {"product", hair.product}};
}

QJsonObject point_json(const VisitPoint& point) {
    QJsonArray shots;
    for (const ShotValue& shot : point.shots)
        shots.append(QJsonObject{{"photo", shot.photo},
                                 {"shot", shot.shot},
                                 {"value", rounded(shot.value)},
                                 {"low", rounded(shot.low)},
                                 {"high", rounded(shot.high)}});
    return {{"visit", point.visit},
            {"date", day(point.date)},
            {"hair", hair_json(point.hair)},
            {"mean", number(point.mean)},
            {"low", point.mean ? QJsonValue(rounded(point.low)) : QJsonValue::Null},
            {"high", point.mean ? QJsonValue(rounded(point.high)) : QJsonValue::Null},
            {"shots", shots},
            {"scale", point.scale_source},
            {"in_trend", point.in_trend},
            {"left_out", QJsonArray::fromStringList(point.left_out)},
            {"not_comparable", QJsonArray::fromStringList(point.not_comparable)}};
}

QJsonObject verdict_json(const PairVerdict& pair) {
    const bool compared = pair.judgement.verdict != change::Verdict::not_comparable;
    return {
        {"from", pair.from},
        {"to", pair.to},
        {"verdict", word_of(pair.judgement.verdict)},
        {"difference", compared ? QJsonValue(rounded(pair.judgement.difference)) : QJsonValue::Null},
        {"smallest_detectable", compared ? QJsonValue(rounded(pair.judgement.smallest_detectable)) : QJsonValue::Null},
        {"reason", QString::fromStdString(pair.judgement.reason)}};
}

QJsonValue trend_json(const Series& series) {
    if (!series.trend) return QJsonValue::Null;
    const change::Trend& trend = *series.trend;
    return QJsonObject{
        {"origin", day(series.trend_origin)},
        {"per_day", rounded(trend.slope)},
        {"per_day_low", trend.interval_known ? QJsonValue(rounded(trend.slope_low)) : QJsonValue::Null},
        {"per_day_high", trend.interval_known ? QJsonValue(rounded(trend.slope_high)) : QJsonValue::Null},
        {"at_origin", rounded(trend.intercept)},
        {"mann_kendall_s", trend.S},
        {"p", rounded(trend.p)}};
}

QJsonValue target_json(const Series& series) {
    if (!series.target) return QJsonValue::Null;
    const TargetWay& way = *series.target;
    return QJsonObject{{"id", way.target.id},        {"value", rounded(way.target.value)},
                       {"share", number(way.share)}, {"earliest", day(way.earliest)},
                       {"middle", day(way.middle)},  {"latest", day(way.latest)},
                       {"text", way.forecast_text}};
}

QJsonObject series_json(const Series& series) {
    QJsonArray visits, verdicts;
    for (const VisitPoint& point : series.visits) visits.append(point_json(point));
    for (const PairVerdict& pair : series.verdicts) verdicts.append(verdict_json(pair));
    const change::Scale& scale = series.spread.scale;
    const bool fixed = series.spread.df > 1e6;  // a documented default alone: no finite number stands for it
    return {{"view", word_of(series.view)},
            {"reading", series.reading},
            {"unit", series.unit},
            {"visits", visits},
            {"spread", QJsonObject{{"sd", rounded(series.spread.sd)},
                                   {"setup_sd", rounded(series.spread.setup_sd)},
                                   {"scale", scale_word(scale.kind)},
                                   {"less", scale.less},
                                   {"straight_at", std::isfinite(scale.straight_at) ? QJsonValue(scale.straight_at)
                                                                                    : QJsonValue::Null},
                                   {"df", fixed ? QJsonValue::Null : QJsonValue(rounded(series.spread.df))},
                                   {"text", series.spread_from}}},
            {"verdicts", verdicts},
            {"trend", trend_json(series)},
            {"trend_text", series.trend_text},
            {"target", target_json(series)}};
}

}  // namespace

QString word_of(change::Verdict verdict) {
    switch (verdict) {
        case change::Verdict::improved:
            return QStringLiteral("improved");
        case change::Verdict::worse:
            return QStringLiteral("worse");
        case change::Verdict::changed:
            return QStringLiteral("changed");
        case change::Verdict::no_detectable_change:
            return QStringLiteral("no detectable change");
        case change::Verdict::not_comparable:
            break;
    }
    return QStringLiteral("not comparable");
}

QJsonObject json_of_progress(const ClientProgress& progress) {
    QJsonArray visits, services, series, asymmetry;
    for (const Visit& visit : progress.visits)
        visits.append(QJsonObject{{"id", visit.id}, {"date", day(visit.date)}, {"hair", hair_json(visit.hair)}});
    for (const Service& service : progress.services)
        services.append(QJsonObject{{"id", service.id}, {"date", day(service.date)}, {"kind", service.kind}});
    for (const Series& one : progress.series) series.append(series_json(one));
    for (const Asymmetry& one : progress.asymmetry)
        asymmetry.append(QJsonObject{{"visit", one.visit},
                                     {"date", day(one.date)},
                                     {"reading", one.reading},
                                     {"unit", one.unit},
                                     {"left", rounded(one.left)},
                                     {"right", rounded(one.right)},
                                     {"difference", rounded(one.difference)}});
    return {{"client", QJsonObject{{"id", progress.client.id}, {"name", progress.client.name}}},
            {"visits", visits},
            {"services", services},
            {"series", series},
            {"asymmetry", asymmetry}};
}

}  // namespace kempt::work
