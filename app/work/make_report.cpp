#include "work/make_report.h"

#include <QSet>
#include <algorithm>

#include "book/grade_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "core/version.h"
#include "domain/service_words.h"
#include "domain/words.h"
#include "report/report_pdf.h"
#include "work/compare_pictures.h"
#include "work/errors.h"
#include "work/measure_json.h"
#include "work/open_book.h"
#include "work/photo_consent.h"
#include "work/plan_draft.h"
#include "work/progress_json.h"
#include "work/progress_of.h"
#include "work/report_care.h"
#include "work/report_parts.h"

namespace kempt::work {

namespace {

// The weakest link first: what the gate found, with its remedy.
Finding gravest(const PhotoRecord& photo) {
    Finding gravest;
    for (const Finding& finding : findings_from_json(photo.quality_findings.toUtf8()))
        if (gravest.code.empty() || static_cast<int>(finding.level) > static_cast<int>(gravest.level))
            gravest = finding;
    return gravest;
}

// One line for what is refused for the same reason again and again: the latest date stands.
void add_left_out(report::Model& model, report::LeftOut line, const QString& code, QHash<QString, int>& seen) {
    const QString key = word_of(line.view) + line.what + code;
    if (seen.contains(key)) {
        model.left_out[seen[key]] = line;
        return;
    }
    seen[key] = static_cast<int>(model.left_out.size());
    model.left_out.append(line);
}

void add_history(report::Model& model, const Visit& visit, const PhotoRecord& photo,
                 const QVector<ReadingRecord>& readings) {
    for (const ReadingRecord& reading : readings)
        model.history.append({visit.date, photo.view, photo.shot, reading.name, reading.unit, reading.value,
                              reading.low, reading.high, reading.refused, reading.refusal_text, reading.photo_sha256,
                              reading.analysis_version});
}

Status add_photos(Book& book, const Visit& visit, report::Model& model, QHash<QString, int>& seen,
                  QSet<QString>& sources) {
    const auto photos = store::photos_of_visit(book, visit.id);
    if (!photos) return photos.error();
    for (const PhotoRecord& photo : photos.value()) {
        const auto readings = store::latest_readings(book, photo.id);
        if (!readings) return readings.error();
        add_history(model, visit, photo, readings.value());
        for (const ReadingRecord& reading : readings.value())
            sources.insert(calibration_from_json(reading.card.toUtf8()).source);
        if (photo.quality_level == u"refused") {
            const Finding finding = gravest(photo);
            model.left_out.append({visit.date, photo.view, QStringLiteral("photo %1").arg(photo.shot),
                                   QString::fromStdString(finding.text), QString::fromStdString(finding.remedy)});
            continue;
        }
        for (const ReadingRecord& reading : readings.value())
            if (reading.refused)
                add_left_out(model,
                             {visit.date, photo.view, title_of_reading(reading.name), reading.refusal_text, QString()},
                             reading.name + reading.refusal_code, seen);
    }
    return Done{};
}

void add_other_visits(report::Model& model, const ClientProgress& progress) {
    QSet<QString> told;
    for (const Series& series : progress.series) {
        const PairVerdict* pair = series.first_to_last();
        for (const VisitPoint& point : series.visits) {
            if (point.in_trend || point.shots.empty() || !pair) continue;
            const QString key = word_of(series.view) + QString::number(point.visit);
            if (told.contains(key)) continue;
            told.insert(key);
            const PairVerdict* other = series.verdict(pair->from, point.visit);
            if (!other) other = series.verdict(point.visit, pair->from);
            if (other)
                model.left_out.append({point.date, series.view, QStringLiteral("visit"),
                                       QString::fromStdString(other->judgement.reason), QString()});
        }
    }
}

Status add_grades(Book& book, Id client, report::Model& model) {
    const auto grades = store::grades_of_client(book, client);
    if (!grades) return grades.error();
    std::vector<std::pair<int, int>> pairs;
    for (const store::DatedGrade& dated : grades.value()) {
        const Grade& grade = dated.grade;
        if (grade.round == 2 && !model.grades.isEmpty() && model.grades.back().date == dated.date &&
            model.grades.back().zone == grade.zone && model.grades.back().quality == grade.quality) {
            model.grades.back().second = grade.value;
            pairs.emplace_back(model.grades.back().value, grade.value);
            continue;
        }
        model.grades.append({dated.date, grade.zone, grade.quality, grade.value,
                             grade_anchor(grade.quality, grade.value), std::nullopt});
    }
    if (const auto kappa = change::grade_agreement(pairs))
        model.grade_agreement = QStringLiteral("Graded twice, %1 grades agree with a weighted kappa of %2.")
                                    .arg(pairs.size())
                                    .arg(kappa->kappa, 0, 'f', 2);
    return Done{};
}

Status add_pairs(Book& book, const ReportOptions& options, const ClientProgress& progress, report::Model& model,
                 const Progress& tell_on) {
    // One series a view: edge coverage, else the first of lengths and ends.
    std::vector<const Series*> views;
    for (const Series& series : progress.series) {
        const auto same =
            std::find_if(views.begin(), views.end(), [&](const Series* other) { return other->view == series.view; });
        if (same == views.end())
            views.push_back(&series);
        else if (series.reading == u"edge_coverage")
            *same = &series;
    }
    for (std::size_t i = 0; i < views.size(); ++i) {
        const ReportVisits visits = visits_for(*views[i], {options.from_visit, options.to_visit});
        if (!visits.from || !visits.to || *visits.from == *visits.to) continue;
        const double count = static_cast<double>(views.size());
        const Progress within = part_of(tell_on, static_cast<double>(i) / count, static_cast<double>(i + 1) / count);
        CompareOptions compare;
        compare.client = options.client;
        compare.view = views[i]->view;
        compare.from_visit = *visits.from;
        compare.to_visit = *visits.to;
        compare.measure = options.measure;
        compare.length = options.look.length;
        const auto pictures = compare_pictures(book, compare, within);
        if (!pictures && pictures.error().kind == ErrorKind::cancelled) return pictures.error();
        if (pictures)
            for (const FaceCover& face : pictures->faces) {
                model.photos.append(face.photo);
                if (face.must_look) model.to_look_at.append(face.photo);
            }
        if (!pictures || pictures->must_look()) {
            const Error why = pictures ? look_first() : pictures.error();
            model.left_out.append({QDate(), views[i]->view, QStringLiteral("before/after picture"),
                                   QString::fromStdString(why.what), QString::fromStdString(why.remedy)});
            continue;
        }
        const AlignedPair& pair = pictures->pair;
        model.pairs.append({views[i]->view, pictures->before_date, pictures->after_date, pair.before, pair.after,
                            pair.px_per_mm, pictures->verdict, pair.notes.join(QStringLiteral(" "))});
    }
    return Done{};
}

// How the photos got their scale, from the calibrations kept with the readings.
QString scale_words(const QSet<QString>& sources, double printer_scale) {
    const bool gauge = sources.contains(QStringLiteral("card")) || sources.contains(QStringLiteral("sheet"));
    const bool points = sources.contains(QStringLiteral("points"));
    if (!gauge)
        return points ? QStringLiteral("no gauge card; the scale comes from two points a known distance apart")
                      : QStringLiteral("no photo shows the gauge card");
    QString words = printer_scale == 1.0
                        ? QStringLiteral("gauge card, printer correction not set")
                        : QStringLiteral("gauge card, printed at %1 % of its size").arg(100 * printer_scale, 0, 'f', 1);
    if (points) words += QStringLiteral("; some photos have their scale from two points");
    return words;
}

// What the report is asked to plan: the request, else what was planned in the window for that very day.
Result<PlanRequest> planned_for(Book& book, const ReportOptions& options, QDate today) {
    PlanRequest request = options.plan;
    if (!options.plan_of_desk || !request.services.empty()) return request;
    auto draft = plan_draft_of(book, options.client);
    if (!draft) return draft.error();
    if (!draft->has_value() || (*draft)->day != today) return request;
    for (DraftItem& one : (*draft)->items) request.services.push_back(std::move(one.item));
    return request;
}

Status add_method(Book& book, const ClientProgress& progress, const QSet<QString>& sources, report::Model& model) {
    const auto scale = printer_scale_of(book);
    if (!scale) return scale.error();
    model.method.program_version = QStringLiteral("Kempt " KEMPT_VERSION);
    model.method.analysis_version = analysis_version;
    model.method.card = scale_words(sources, scale.value());
    if (!progress.series.empty()) model.method.spread_source = progress.series.front().spread_from;
    return Done{};
}

}  // namespace

Result<report::Model> report_model_of(Book& book, const ReportOptions& wanted, QDate today, const Progress& tell_on) {
    ReportOptions options = wanted;
    const auto compared =
        progress_of(book, {options.client, std::nullopt, std::nullopt, options.look.length}, part_of(tell_on, 0, 0.2));
    if (!compared) return compared.error();
    const ClientProgress& progress = compared.value();
    for (const std::optional<Id>& asked : {options.from_visit, options.to_visit})
        if (asked && std::none_of(progress.visits.begin(), progress.visits.end(),
                                  [&](const Visit& visit) { return visit.id == *asked; }))
            return missing("no-visit", "Visit " + std::to_string(*asked) + " is not among this client's visits.");
    const auto place_of = [&](Id id) {  // the visits stand in order of their dates
        return std::find_if(progress.visits.begin(), progress.visits.end(), [&](const Visit& v) { return v.id == id; });
    };
    if (options.from_visit && options.to_visit && place_of(*options.from_visit) > place_of(*options.to_visit))
        std::swap(options.from_visit, options.to_visit);
    report::Model model;
    model.client_name = progress.client.name;
    model.salon_name = options.salon;
    model.today = today;
    model.visits = static_cast<int>(progress.visits.size());
    if (!progress.visits.isEmpty()) {
        model.first_visit = progress.visits.front().date;
        model.last_visit = progress.visits.back().date;
    }
    for (const Series& series : progress.series) {
        model.rows.append(row_of(series, visits_for(series, {options.from_visit, options.to_visit})));
        if (series.reading == u"edge_coverage" || series.target)
            model.charts.append(report_chart_of(series, progress.services));
        if (const auto bar = target_bar_of(series)) model.targets.append(*bar);
    }
    for (const Service& service : progress.services) {
        if (asks_whether_done(service, today)) continue;  // nobody knows
        const bool planned = !service.done || service.date > today;
        Service told = service;
        told.done = true;     // said beside its kind
        told.result.clear();  // her own words: never translated
        model.services.append({service.date, service.kind, service.note, details_of(told, options.look.length),
                               service.result.simplified(), planned});
    }
    auto asked = planned_for(book, options, today);
    if (!asked) return asked.error();
    const auto plan = plan_care(book, PlanOptions{options.client, today, std::move(*asked)});
    if (!plan) return plan.error();
    add_care(*plan, model);
    QHash<QString, int> seen;
    QSet<QString> sources;
    for (const Visit& visit : progress.visits)
        if (const Status status = add_photos(book, visit, model, seen, sources); !status) return status.error();
    add_other_visits(model, progress);
    if (const Status status = add_grades(book, options.client, model); !status) return status.error();
    if (const Status agreed = pictures_may_leave(progress.client); !agreed) {
        model.pictures_withheld = QString::fromStdString(agreed.error().what);
    } else if (!options.with_pictures) {
        model.pictures_withheld = QStringLiteral("This report was asked for without pictures.");
    } else if (const Status status = add_pairs(book, options, progress, model, part_of(tell_on, 0.2, 0.9)); !status) {
        return status.error();
    }
    if (const Status status = add_method(book, progress, sources, model); !status) return status.error();
    if (tell(tell_on, 0.9, "writing the report") == Go::stop) return stopped();
    return model;
}

Status make_report(Book& book, const ReportOptions& options, QDate today, const Progress& progress) {
    const auto model = report_model_of(book, options, today, progress);
    if (!model) return model.error();
    if (const Status status = report::write_report(model.value(), options.look, options.path); !status)
        return status.error();
    tell(progress, 1, "the report is written");
    return Done{};
}

}  // namespace kempt::work
