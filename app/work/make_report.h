// The condition report of a client as PDF.
#pragma once

#include <QDate>
#include <QString>
#include <optional>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "report/report_model.h"
#include "work/book_fwd.h"
#include "work/measure_photo.h"
#include "work/plan_care.h"

namespace kempt::work {

struct ReportOptions {
    Id client = 0;
    std::optional<Id> from_visit, to_visit;  // of the before/after pairs; default: first and last comparable visit
    QString path;                            // of the PDF, replaced atomically
    QString salon;                           // "prepared by"; may be empty
    report::Options look;                    // copy (client or record), paper, length unit
    bool with_pictures = true;  // still withheld without the client's photo consent, and the report says so
    PlanRequest plan;           // services planned for the day of the report; none: nothing is said of a plan
    bool plan_of_desk = false;  // where `plan` has none: what was planned in the window for that day (plan_draft.h)
    MeasureOptions measure;
};
// Everything the report will say. Errors: not_found (client, visit), invalid (a plan that cannot
// be), cancelled.
[[nodiscard]] Result<report::Model> report_model_of(Book& book, const ReportOptions& options, QDate today,
                                                    const Progress& progress = {});
// Writes it. Needs a QGuiApplication. Errors: those of report_model_of; io.
[[nodiscard]] Status make_report(Book& book, const ReportOptions& options, QDate today, const Progress& progress = {});

}  // namespace kempt::work
