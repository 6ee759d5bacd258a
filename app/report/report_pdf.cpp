#include "report/report_pdf.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include "domain/files_check.h"
#include "report/report_pages.h"
#include "report/style.h"
#include "report/text_box.h"

namespace kempt::report {
namespace {

Result<QByteArray> produce(const std::shared_ptr<const Model>& model, const Options& options) {
    const Error failed{ErrorKind::io, "report-not-produced", "The report could not be produced.",
                       "Nothing was written.", "Close other programs and try again."};
    const auto laid_out = ReportPages::lay_out(model, options);
    if (!laid_out) return laid_out.error();
    const ReportPages& pages = **laid_out;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return failed;
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(units_per_inch);
    writer.setPageSize(QPageSize(options.paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(options.speech("Condition report: %1").arg(printable(model->client_name)));
    writer.setCreator(model->method.program_version);
    QPainter painter;
    if (!painter.begin(&writer)) return failed;
    for (int page = 0; page < pages.count(); ++page) {
        if (page > 0 && !writer.newPage()) return failed;
        pages.paint(painter, page, pt);
    }
    if (!painter.end() || bytes.isEmpty()) return failed;
    return bytes;
}

}  // namespace

Result<QByteArray> report_pdf(const Model& model, const Options& options) {
    try {
        return produce(std::make_shared<const Model>(model), options);
    } catch (const std::exception&) {
        return Error{ErrorKind::io, "report-not-produced", "There was not enough memory for the report.",
                     "Nothing was written.", "Close other programs and try again."};
    }
}

Status write_report(const Model& model, const Options& options, const QString& path) {
    const Result<QByteArray> bytes = report_pdf(model, options);
    if (!bytes.ok()) return bytes.error();
    if (Status free = not_a_book(path); !free) return free;
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(*bytes) != bytes->size() || !file.commit())
        return Error{
            ErrorKind::io, "report-not-written",
            QStringLiteral("The report could not be written to %1: %2.").arg(path, file.errorString()).toStdString(),
            "A file that was there before is unchanged.", "Choose another folder or free some space."};
    return Done{};
}

}  // namespace kempt::report
