#include "report/report_pages.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <cmath>

#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

// Margins of the text; the running lines stand in them. 18 mm: every office printer reaches that far.
constexpr double side = 18 * mm, top = 24 * mm, bottom = 22 * mm;

Blocks blocks_of(const Context& context) {
    Blocks blocks;
    const Parts& parts = context.options.parts;
    add_title(blocks, context);
    add_in_short(blocks, context);
    if (parts.pictures) add_pictures(blocks, context);
    if (parts.readings) add_readings(blocks, context);
    if (parts.charts) add_charts(blocks, context);
    if (parts.targets) add_targets(blocks, context);
    if (parts.services) add_services(blocks, context);
    if (parts.hair) add_hair(blocks, context);
    if (parts.grades) add_grades(blocks, context);
    if (parts.plan) add_planned(blocks, context);
    if (parts.next) add_next(blocks, context);
    if (parts.left_out) add_left_out(blocks, context);
    add_method(blocks, context);
    add_cautions(blocks, context);
    add_history(blocks, context);
    return blocks;
}

void draw_running_lines(QPainter& painter, const Model& model, const Speech& say, const QSizeF& page, int number,
                        int of) {
    const double width = page.width() - 2 * side;
    const QFont small = body_font(7.5);
    if (number > 1) {
        const TextBox what(say("Condition report, %1").arg(day(model.today, say)), small, ink::quiet, width,
                           Qt::AlignRight);
        const double room = width - what.natural_width() - 12 * pt;
        const QString name = QFontMetricsF(small).elidedText(speech::set_apart(printable(model.client_name)),
                                                             Qt::ElideRight, room - 2 * pt);
        const double y = top - 8 * mm;
        TextBox(name, small, ink::quiet, room).draw(painter, {side, y}, 0, 1);
        what.draw(painter, {side, y});
        painter.fillRect(QRectF(side, y + what.height() + 2 * pt, width, 0.5 * pt), ink::line);
    }
    const double y = page.height() - bottom + 7 * mm;
    painter.fillRect(QRectF(side, y - 3 * pt, width, 0.5 * pt), ink::line);
    TextBox(say("Measuring is no diagnosis."), small, ink::quiet, width / 2).draw(painter, {side, y});
    TextBox(say("Page %1 of %2").arg(number).arg(of), small, ink::quiet, width / 2, Qt::AlignRight)
        .draw(painter, {side + width / 2, y});
}

}  // namespace

struct ReportPages::Kept {
    std::shared_ptr<const Model> model;
    Options options;
    QSizeF page;  // units
    Blocks blocks;
    Pages pages;  // point at the blocks
};

ReportPages::ReportPages(std::unique_ptr<Kept> kept) : kept_(std::move(kept)) {}
ReportPages::~ReportPages() = default;

Result<std::shared_ptr<const ReportPages>> ReportPages::lay_out(std::shared_ptr<const Model> model,
                                                                const Options& options) {
    if (printable(model->client_name).isEmpty())
        return Error{ErrorKind::invalid, "client-without-name", "The client has no name.", "Nothing was written.",
                     "Give the client a name first."};
    if (qGuiApp == nullptr)
        return Error{ErrorKind::unsupported, "no-fonts", "The program was started without fonts.",
                     "Nothing was written.", "Start the program with QT_QPA_PLATFORM=offscreen."};
    try {
        auto kept = std::make_unique<Kept>();
        kept->model = std::move(model);
        kept->options = options;
        kept->page = QPageSize(options.paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter).size(QPageSize::Inch) *
                     units_per_inch;
        const Context context{*kept->model, kept->options, kept->page.width() - 2 * side,
                              kept->page.height() - top - bottom};
        kept->blocks = blocks_of(context);
        kept->pages = paginate(kept->blocks, context.page_height);
        return std::shared_ptr<const ReportPages>(new ReportPages(std::move(kept)));
    } catch (const std::exception&) {
        return Error{ErrorKind::io, "report-not-produced", "There was not enough memory for the report.",
                     "Nothing was written.", "Close other programs and try again."};
    }
}

int ReportPages::count() const {
    return static_cast<int>(kept_->pages.size());
}

QSizeF ReportPages::size_points() const {
    return kept_->page / pt;
}

void ReportPages::paint(QPainter& painter, int page, double units_per_point) const {
    if (page < 0 || page >= count()) return;
    painter.save();
    painter.scale(units_per_point / pt, units_per_point / pt);
    draw_running_lines(painter, *kept_->model, kept_->options.speech, kept_->page, page + 1, count());
    for (const Placed& one : kept_->pages[static_cast<std::size_t>(page)]) {
        painter.save();
        one.block->paint(painter, QRectF(side, top + one.top, kept_->page.width() - 2 * side, one.block->height));
        painter.restore();
    }
    painter.restore();
}

QImage ReportPages::picture(int page, int width_px) const {
    const double scale = width_px / size_points().width();
    QImage image(width_px, static_cast<int>(std::lround(size_points().height() * scale)), QImage::Format_RGB32);
    if (image.isNull()) return image;
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
    paint(painter, page, scale);
    return image;
}

}  // namespace kempt::report
