#include "work/report_care.h"

#include <algorithm>
#include <cmath>

#include "work/due_list.h"
#include "work/plan_words.h"

namespace kempt::work {

namespace {

QString words(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

report::Stretch stretch_of(care::Part part, const care::Span& span) {
    return {words(word_of(part)), span.from_mm, std::isfinite(span.to_mm) ? std::optional(span.to_mm) : std::nullopt};
}

report::PartLine part_of(const PartRecord& record) {
    report::PartLine line{stretch_of(record.part, record.span), {}, record.complete};
    for (const Past& past : record.been_through)
        line.been_through.append(
            {date_of(past.day), words(word_of(past.kind)), past.surely, stretch_of(record.part, past.span)});
    return line;
}

report::PlannedWork work_of(const ServicePlan& plan) {
    report::PlannedWork work;
    work.kind = words(word_of(plan.service.kind));
    work.stopped = plan.stopped;
    work.unsure = plan.coverage.unsure;
    work.no_order = words(plan.no_timeline);
    for (const care::Stretch& on : plan.coverage.put_on) work.put_on.append(stretch_of(on.part, on.span));
    for (const care::Stretch& off : plan.coverage.keep_off) work.keep_off.append(stretch_of(off.part, off.span));
    if (!plan.timeline) return work;
    const auto& [application, timeline, would_help] = *plan.timeline;
    work.people = application.hands;
    if (!timeline.works) {
        work.no_order = QStringLiteral("No order of work keeps within what is tolerated. ") + words(timeline.why_not);
        for (const ProvenRemedy& proven : would_help) work.would_help.append(words(proven.remedy.text));
        return work;
    }
    work.rinse_minutes = timeline.rinse_minutes;
    for (const care::Placed& placed : timeline.order) {
        const care::Task& task = application.tasks[placed.task];
        work.order.append({placed.start_minutes, placed.end_minutes, words(word_of(task.part)), words(task.section),
                           placed.hand + 1, task.needed_minutes, placed.least_minutes, placed.most_minutes,
                           placed.within});
    }
    return work;
}

bool is_of_client(const care::Finding& finding) {
    return std::none_of(finding.where.begin(), finding.where.end(),
                        [](const care::Place& place) { return place.service.has_value(); });
}

void add_findings(const CarePlan& plan, report::Model& model) {
    for (const care::Finding& finding : plan.advice.findings) {
        if (finding.sort != care::FindingSort::speaks_against) continue;
        const QString text = words(care::sentence_of(finding));
        const bool of_client = is_of_client(finding);
        if (of_client && finding.level != care::RuleLevel::note) model.cautions.append({text, words(finding.source)});
        if (of_client || plan.services.empty()) continue;
        model.planned.findings.append({words(word_of(finding.level)), text,
                                       places_of(finding).split(QStringLiteral("; "), Qt::SkipEmptyParts),
                                       words(finding.source)});
    }
}

}  // namespace

void add_care(const CarePlan& plan, report::Model& model) {
    for (const PartRecord& record : plan.hair) model.hair.append(part_of(record));
    for (const GrowthNow& growth : plan.growth)
        model.growth.append({words(word_of(growth.kind)), date_of(growth.since), growth.new_growth_mm.value,
                             growth.new_growth_mm.low, growth.new_growth_mm.high, words(growth.source)});
    add_findings(plan, model);
    if (!plan.services.empty()) {
        for (const ServicePlan& service : plan.services) model.planned.services.append(work_of(service));
        for (const std::string& question : plan.questions) model.planned.questions.append(words(question));
        model.planned.stop_questions = questions_of_stops(plan);
        for (const care::Caution& caution : plan.advice.always) model.planned.always.append(words(caution.text));
    }
    for (const care::Tip& tip : plan.home_care.tips) model.home_care.append({words(tip.text), words(tip.source)});
    for (const care::DateRange& range : plan.dates) {
        const QDate last = date_of(range.to);
        if (last.daysTo(plan.today) > DueOptions().overdue_days) continue;  // no next date any more, as in the due list
        model.next_dates.append({words(word_of(range.sort)), date_of(range.from), last, words(range.reason),
                                 words(range.source), last < plan.today});
    }
}

}  // namespace kempt::work
