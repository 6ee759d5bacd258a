#include "work/report_parts.h"

#include "work/chart_of.h"

namespace kempt::work {

namespace {

const VisitPoint* point_of(const Series& series, const std::optional<Id>& visit) {
    if (visit)
        for (const VisitPoint& point : series.visits)
            if (point.visit == *visit) return &point;
    return nullptr;
}

std::optional<report::Value> value_of(const VisitPoint* point) {
    if (!point || !point->mean) return std::nullopt;
    return report::Value{point->date, *point->mean, point->low, point->high, static_cast<int>(point->shots.size())};
}

const VisitPoint* first_in_trend(const Series& series) {
    for (const VisitPoint& point : series.visits)
        if (point.in_trend) return &point;
    return nullptr;
}

const VisitPoint* last_in_trend(const Series& series) {
    const VisitPoint* last = nullptr;
    for (const VisitPoint& point : series.visits)
        if (point.in_trend) last = &point;
    return last;
}

}  // namespace

report::Outcome outcome_of(change::Verdict verdict) {
    switch (verdict) {
        case change::Verdict::improved:
            return report::Outcome::improved;
        case change::Verdict::worse:
            return report::Outcome::worse;
        case change::Verdict::changed:
            return report::Outcome::changed;
        case change::Verdict::no_detectable_change:
            return report::Outcome::no_detectable_change;
        case change::Verdict::not_comparable:
            break;
    }
    return report::Outcome::not_comparable;
}

ReportVisits visits_for(const Series& series, const ReportVisits& asked) {
    ReportVisits visits = asked;
    const VisitPoint *first = first_in_trend(series), *last = last_in_trend(series);
    if (!visits.from && first) visits.from = first->visit;
    if (!visits.to && last) visits.to = last->visit;
    if (!visits.from && !series.visits.empty()) visits.from = series.visits.front().visit;
    if (!visits.to && !series.visits.empty()) visits.to = series.visits.back().visit;
    return visits;
}

report::Row row_of(const Series& series, const ReportVisits& visits) {
    report::Row row;
    row.view = series.view;
    row.reading = series.reading;
    row.unit = series.unit;
    const VisitPoint *first = point_of(series, visits.from), *latest = point_of(series, visits.to);
    row.first = value_of(first);
    row.latest = value_of(latest);
    if (const PairVerdict* pair = visits.from && visits.to ? series.verdict(*visits.from, *visits.to) : nullptr) {
        const change::Judgement& judgement = pair->judgement;
        row.outcome = outcome_of(judgement.verdict);
        row.reason = QString::fromStdString(judgement.reason);
        if (judgement.verdict != change::Verdict::not_comparable) {
            row.change = judgement.said;  // the table and the sentence below it print the same figure
            row.smallest_detectable = judgement.said_smallest;
            row.step = judgement.said_step;
        }
    } else {
        if (first == latest) row.first = std::nullopt;
        row.reason =
            latest && latest->mean
                ? QStringLiteral("There is one comparable visit only, so nothing can be said about a change yet.")
            : latest && !latest->not_comparable.isEmpty() ? latest->not_comparable.front()
                                                          : QStringLiteral("There is no visit to compare.");
    }
    if (series.trend) row.trend = series.trend_text;
    return row;
}

report::Chart report_chart_of(const Series& series, const QVector<Service>& services) {
    report::Chart chart;
    chart.view = series.view;
    chart.data = chart_of(series, services);
    return chart;
}

std::optional<report::TargetBar> target_bar_of(const Series& series) {
    const VisitPoint *first = first_in_trend(series), *last = last_in_trend(series);
    if (!series.target || !first || !last) return std::nullopt;
    report::TargetBar bar;
    bar.view = series.view;
    bar.reading = series.reading;
    bar.unit = series.unit;
    bar.baseline = *first->mean;
    bar.now = *last->mean;
    bar.baseline_half = (first->high - first->low) / 2;
    bar.now_half = (last->high - last->low) / 2;
    bar.target = series.target->target.value;
    bar.baseline_date = first->date;
    bar.now_date = last->date;
    bar.share = series.target->share;
    bar.forecast = series.target->forecast_text;
    return bar;
}

}  // namespace kempt::work
