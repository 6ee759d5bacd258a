#include "report/report_pdf.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include "domain/files_check.h"
#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

// Margins of the text; the running lines stand in them. 18 mm: every office printer reaches that far.
constexpr double side = 18 * mm, top = 24 * mm, bottom = 22 * mm;

Blocks blocks_of(const Context& context) {
    Blocks blocks;
    add_title(blocks, context);
    add_in_short(blocks, context);
    add_pictures(blocks, context);
    add_readings(blocks, context);
    add_charts(blocks, context);
    add_targets(blocks, context);
    add_services(blocks, context);
    add_hair(blocks, context);
    add_grades(blocks, context);
    add_planned(blocks, context);
    add_next(blocks, context);
    add_left_out(blocks, context);
    add_method(blocks, context);
    add_cautions(blocks, context);
    add_history(blocks, context);
    return blocks;
}

void draw_running_lines(QPainter& painter, const Model& model, const QSizeF& page, int number, int of) {
    const double width = page.width() - 2 * side;
    const QFont small = body_font(7.5);
    if (number > 1) {
        const TextBox what(QStringLiteral("Condition report, %1").arg(day(model.today)), small, ink::quiet, width,
                           Qt::AlignRight);
        const double room = width - what.natural_width() - 12 * pt;
        const QString name =
            QFontMetricsF(small).elidedText(printable(model.client_name), Qt::ElideRight, room - 2 * pt);
        const double y = top - 8 * mm;
        TextBox(name, small, ink::quiet, room).draw(painter, {side, y}, 0, 1);
        what.draw(painter, {side, y});
        painter.fillRect(QRectF(side, y + what.height() + 2 * pt, width, 0.5 * pt), ink::line);
    }
    const double y = page.height() - bottom + 7 * mm;
    painter.fillRect(QRectF(side, y - 3 * pt, width, 0.5 * pt), ink::line);
    TextBox(QStringLiteral("Measuring is no diagnosis."), small, ink::quiet, width / 2).draw(painter, {side, y});
    TextBox(QStringLiteral("Page %1 of %2").arg(number).arg(of), small, ink::quiet, width / 2, Qt::AlignRight)
        .draw(painter, {side + width / 2, y});
}

Result<QByteArray> produce(const Model& model, const Options& options) {
    const Error failed{ErrorKind::io, "report-not-produced", "The report could not be produced.",
                       "Nothing was written.", "Close other programs and try again."};
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return failed;
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(units_per_inch);
    writer.setPageSize(QPageSize(options.paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(QStringLiteral("Condition report: %1").arg(printable(model.client_name)));
    writer.setCreator(model.method.program_version);

    const QSizeF page =
        QPageSize(options.paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter).size(QPageSize::Inch) *
        units_per_inch;
    const Context context{model, options, page.width() - 2 * side, page.height() - top - bottom};
    const Blocks blocks = blocks_of(context);
    const Pages pages = paginate(blocks, context.page_height);

    QPainter painter;
    if (!painter.begin(&writer)) return failed;
    int number = 0;
    for (const std::vector<Placed>& placed : pages) {
        if (number > 0 && !writer.newPage()) return failed;
        draw_running_lines(painter, model, page, ++number, static_cast<int>(pages.size()));
        for (const Placed& one : placed) {
            painter.save();
            one.block->paint(painter, QRectF(side, top + one.top, context.width, one.block->height));
            painter.restore();
        }
    }
    if (!painter.end() || bytes.isEmpty()) return failed;
    return bytes;
}

}  // namespace

Result<QByteArray> report_pdf(const Model& model, const Options& options) {
    if (printable(model.client_name).isEmpty())
        return Error{ErrorKind::invalid, "client-without-name", "The client has no name.", "Nothing was written.",
                     "Give the client a name first."};
    if (qGuiApp == nullptr)
        return Error{ErrorKind::unsupported, "no-fonts", "The program was started without fonts.",
                     "Nothing was written.", "Start the program with QT_QPA_PLATFORM=offscreen."};
    try {
        return produce(model, options);
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
