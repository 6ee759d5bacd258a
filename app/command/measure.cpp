#include "work/measure_photo.h"

#include <QFile>

#include "command/commands.h"
#include "command/options.h"
#include "domain/marks_json.h"
#include "domain/measure_units.h"
#include "domain/words.h"
#include "work/measure_json.h"

namespace kempt::command {

namespace {

QStringList lines_of(const work::MeasureResult& result) {
    QStringList lines{q("Photo: %1 (%2 x %3)")
                          .arg(QString::fromStdString(result.quality.level))
                          .arg(result.header.size.width())
                          .arg(result.header.size.height())};
    if (result.px_per_mm > 0) lines[0] += q(", %1 px/mm at the marks").arg(result.px_per_mm, 0, 'f', 1);
    for (const Finding& finding : result.quality.findings)
        lines.append(q("  %1: %2 %3")
                         .arg(work::word_of(finding.level), QString::fromStdString(finding.text),
                              QString::fromStdString(finding.remedy)));
    if (result.asked.isEmpty()) lines.append(q("Nothing to measure: the marks hold no edge line."));
    for (const Quantity& reading : result.readings)
        lines.append(q("%1: %2").arg(
            title_of_reading(QString::fromStdString(reading.name)),
            with_interval(reading.value, reading.low, reading.high, QString::fromStdString(reading.unit))));
    for (const Refusal& refusal : result.refused)
        lines.append(
            q("%1: refused. %2")
                .arg(title_of_reading(QString::fromStdString(refusal.name)), QString::fromStdString(refusal.text)));
    return lines;
}

Result<Answer> measure(const Arguments& arguments, const Progress& progress) {
    work::MeasureOptions options;
    options.printer_scale = arguments.number(q("printer-scale"), 1);
    options.with_sha256 = false;
    options.focal_px = arguments.number(q("focal-px"), 0);
    if (const Status status = options.check(); !status) return usage_error(QString::fromStdString(status.error().what));
    const auto marks_file = intake::read_file(arguments.text(q("marks")));
    if (!marks_file) return marks_file.error();
    const auto marks = marks_from_json(marks_file.value());
    if (!marks) return marks.error();
    const auto bytes = intake::read_file(arguments.rest().front());
    if (!bytes) return bytes.error();
    const auto result = work::measure_photo(bytes.value(), marks.value(), options, progress);
    if (!result) return result.error();
    return Answer{work::json_of_measure(result.value()), lines_of(result.value()), {}};
}

}  // namespace

Command measure_command() {
    return {q("measure"),
            q("readings of one photo, no book needed"),
            false,
            {{q(""),
              q("Finds the gauge card, judges the photo and measures what the marks ask for."),
              {{q("PHOTO"), false, false}},
              {needed("marks", Type::text, "MARKS.json", "what was drawn on the photo"),
               may("printer-scale", Type::number, "S", "length of the printed check line / 50 mm (1)"),
               may("focal-px", Type::number, "N", "focal length in pixels, when known")},
              measure}}};
}

}  // namespace kempt::command
