#include "work/plan_json.h"

#include <QJsonArray>
#include <cmath>

#include "work/care_json.h"
#include "work/measure_json.h"

namespace kempt::work {

namespace {

QString text(std::string_view words) {
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString day(care::Day day) {
    return date_of(day).toString(Qt::ISODate);
}

// Infinity has no JSON: a stretch that goes to the ends.
QJsonValue number(double value) {
    return std::isfinite(value) ? QJsonValue(rounded(value)) : QJsonValue(QJsonValue::Null);
}

template <class Value>
QJsonValue maybe(const std::optional<Value>& value) {
    return value ? QJsonValue(rounded(*value)) : QJsonValue(QJsonValue::Null);
}

QJsonArray texts(const std::vector<std::string>& list) {
    QJsonArray array;
    for (const std::string& one : list) array.append(text(one));
    return array;
}

QJsonObject json_of(const care::Place& place) {
    return {{"service", place.service ? QJsonValue(text(word_of(*place.service))) : QJsonValue::Null},
            {"part", place.part ? QJsonValue(text(word_of(*place.part))) : QJsonValue::Null},
            {"section", place.section.empty() ? QJsonValue::Null : QJsonValue(text(place.section))}};
}

QJsonObject json_of(const care::Finding& finding) {
    QJsonArray where;
    for (const care::Place& place : finding.where) where.append(json_of(place));
    const bool holds = finding.sort == care::FindingSort::speaks_against;
    return {{"rule", text(finding.rule)},
            {"level", text(word_of(finding.level))},
            {"sort", holds ? "speaks against" : "check first"},
            {"reason", text(finding.reason)},
            {"remedy", text(finding.remedy)},
            {"source", text(finding.source)},
            {"where", where},
            {"questions", texts(finding.questions)},
            {"wait_until", finding.wait_until ? QJsonValue(day(*finding.wait_until)) : QJsonValue::Null},
            {"choose", finding.choose ? QJsonValue(text(word_of(*finding.choose))) : QJsonValue::Null}};
}

QJsonArray json_of(const std::vector<care::Stretch>& stretches) {
    QJsonArray array;
    for (const care::Stretch& stretch : stretches)
        array.append(QJsonObject{{"part", text(word_of(stretch.part))},
                                 {"from_mm", number(stretch.span.from_mm)},
                                 {"to_mm", number(stretch.span.to_mm)}});
    return array;
}

QJsonObject json_of(const care::Application& application, const care::Timeline& timeline) {
    QJsonArray order;
    for (const care::Placed& placed : timeline.order) {
        const care::Task& task = application.tasks[placed.task];
        order.append(QJsonObject{{"part", text(word_of(task.part))},
                                 {"section", text(task.section)},
                                 {"person", placed.hand + 1},
                                 {"start_minutes", number(placed.start_minutes)},
                                 {"end_minutes", number(placed.end_minutes)},
                                 {"needed_minutes", number(task.needed_minutes)},
                                 {"least_minutes", number(placed.least_minutes)},
                                 {"most_minutes", number(placed.most_minutes)},
                                 {"under_percent", number(placed.under_percent)},
                                 {"over_percent", number(placed.over_percent)},
                                 {"within", placed.within}});
    }
    return {{"works", timeline.works},
            {"why_not", timeline.why_not.empty() ? QJsonValue::Null : QJsonValue(text(timeline.why_not))},
            {"people", application.hands},
            {"most_minutes", number(application.most_minutes)},
            {"tolerated_under", number(application.under)},
            {"tolerated_over", number(application.over)},
            {"worst", number(timeline.worst)},
            {"rinse_minutes", number(timeline.rinse_minutes)},
            {"order", order}};
}

QString word_of_remedy(care::RemedySort sort) {
    switch (sort) {
        case care::RemedySort::more_hands:
            return QStringLiteral("more people");
        case care::RemedySort::rounds:
            return QStringLiteral("rounds");
        case care::RemedySort::smaller_sections:
            return QStringLiteral("smaller sections");
        case care::RemedySort::milder:
            break;
    }
    return QStringLiteral("milder");
}

QJsonObject json_of(const PlannedTimeline& planned) {
    QJsonObject json = json_of(planned.application, planned.timeline);
    QJsonArray help;
    for (const ProvenRemedy& proven : planned.would_help) {
        QJsonArray rounds;
        for (std::size_t i = 0; i < proven.rounds.size(); ++i)
            rounds.append(json_of(proven.remedy.rounds[i], proven.rounds[i]));
        help.append(QJsonObject{{"sort", word_of_remedy(proven.remedy.sort)},
                                {"text", text(proven.remedy.text)},
                                {"least_factor", number(proven.remedy.least_factor)},
                                {"most_factor", number(proven.remedy.most_factor)},
                                {"rounds", rounds}});
    }
    json["would_help"] = help;
    return json;
}

QJsonObject json_of(const ServicePlan& plan) {
    return {{"kind", text(word_of(plan.service.kind))},
            {"stopped", plan.stopped},
            {"put_on", json_of(plan.coverage.put_on)},
            {"keep_off", json_of(plan.coverage.keep_off)},
            {"unsure", plan.coverage.unsure},
            {"timeline", plan.timeline ? QJsonValue(json_of(*plan.timeline)) : QJsonValue::Null},
            {"no_timeline", plan.no_timeline.empty() ? QJsonValue::Null : QJsonValue(text(plan.no_timeline))}};
}

QJsonObject json_of(const PartRecord& record) {
    QJsonArray past;
    for (const Past& one : record.been_through)
        past.append(QJsonObject{{"kind", text(word_of(one.kind))},
                                {"day", day(one.day)},
                                {"surely", one.surely},
                                {"from_mm", number(one.span.from_mm)},
                                {"to_mm", number(one.span.to_mm)}});
    return {{"part", text(word_of(record.part))},
            {"from_mm", number(record.span.from_mm)},
            {"to_mm", number(record.span.to_mm)},
            {"been_through", past},
            {"complete", record.complete}};
}

QJsonObject growth_json(const CarePlan& plan) {
    QJsonArray since;
    for (const GrowthNow& growth : plan.growth)
        since.append(QJsonObject{{"kind", text(word_of(growth.kind))},
                                 {"day", day(growth.since)},
                                 {"mm", number(growth.new_growth_mm.value)},
                                 {"low", number(growth.new_growth_mm.low)},
                                 {"high", number(growth.new_growth_mm.high)},
                                 {"measured", growth.measured},
                                 {"by_tape", growth.measured && growth.by_tape},
                                 {"source", text(growth.source)}});
    return {{"um_per_day", number(plan.rate.um_per_day)},
            {"sd_um_per_day", number(plan.rate.sd_um_per_day)},
            {"text", text(plan.rate_from)},
            {"since", since}};
}

QJsonArray json_of(const std::vector<care::Tip>& tips) {
    QJsonArray array;
    for (const care::Tip& tip : tips)
        array.append(QJsonObject{{"id", text(tip.id)},
                                 {"group", text(tip.group)},
                                 {"text", text(tip.text)},
                                 {"minutes_a_week", number(tip.minutes_a_week)},
                                 {"source", text(tip.source)}});
    return array;
}

QJsonObject json_of(const care::HomeCarePlan& home) {
    return {{"tips", json_of(home.tips)},
            {"left_out", json_of(home.left_out)},
            {"minutes_a_week", number(home.minutes_a_week)},
            {"minutes_there_are", maybe(home.minutes_there_are)},
            {"questions", texts(home.questions)}};
}

}  // namespace

QJsonObject json_of_date(const care::DateRange& range) {
    return {{"what", text(word_of(range.sort))},
            {"from", day(range.from)},
            {"to", day(range.to)},
            {"likeliest", range.expected ? QJsonValue(day(*range.expected)) : QJsonValue::Null},
            {"reason", text(range.reason)},
            {"source", text(range.source)}};
}

QJsonObject json_of_plan(const CarePlan& plan) {
    QJsonArray findings, services, hair, dates, cautions, unanswered;
    for (const Service& service : plan.unanswered) unanswered.append(json_of_service(service));
    for (const care::Finding& finding : plan.advice.findings) findings.append(json_of(finding));
    for (const ServicePlan& service : plan.services) services.append(json_of(service));
    for (const PartRecord& record : plan.hair) hair.append(json_of(record));
    for (const care::DateRange& range : plan.dates) dates.append(json_of_date(range));
    for (const care::Caution& caution : plan.advice.always)
        cautions.append(
            QJsonObject{{"id", text(caution.id)}, {"text", text(caution.text)}, {"source", text(caution.source)}});
    return {{"today", plan.today.toString(Qt::ISODate)},
            {"stopped", plan.advice.stopped},
            {"findings", findings},
            {"questions", texts(plan.questions)},
            {"services", services},
            {"hair", hair},
            {"growth", growth_json(plan)},
            {"dates", dates},
            {"home_care", json_of(plan.home_care)},
            {"was_it_done", unanswered},
            {"ask_history_again", plan.history_told_on.has_value()},
            {"cautions", cautions}};
}

}  // namespace kempt::work
