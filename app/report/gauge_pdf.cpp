#include "report/gauge_pdf.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>
#include <QSaveFile>

#include "colour/colour.h"
#include "domain/files_check.h"
#include "report/style.h"
#include "report/text_box.h"

namespace kempt::report {
namespace {

constexpr double check_line_mm = 50;

// Paints in millimetres of the page; `shrink` undoes the printer's stretch for everything that must measure right.
class Page {
  public:
    Page(QPainter& painter, QPointF origin_mm, double shrink)
        : painter_(painter), origin_(origin_mm), shrink_(shrink) {}
    [[nodiscard]] QPointF at(double x, double y) const { return (origin_ + QPointF(x, y) * shrink_) * mm; }
    [[nodiscard]] QRectF rect(const cv::Rect2d& r) const {
        return {at(r.x, r.y), QSizeF(r.width, r.height) * (shrink_ * mm)};
    }
    void fill(const cv::Rect2d& r, const QColor& colour) { painter_.fillRect(rect(r), colour); }
    void line(double x1, double y1, double x2, double y2, double width_mm, const QColor& colour) {
        painter_.setPen(QPen(colour, width_mm * mm, Qt::SolidLine, Qt::FlatCap));
        painter_.drawLine(at(x1, y1), at(x2, y2));
    }
    // The dark cells as one path: cells painted one by one show hairlines between them on some printers.
    void marker(int id, cv::Point2d centre, double side) {
        const auto cells = card::marker_cells(id);
        const double cell = side / 6;
        QPainterPath path;
        path.setFillRule(Qt::WindingFill);
        for (size_t y = 0; y < 6; ++y)
            for (size_t x = 0; x < 6; ++x)
                if (!cells[y][x])
                    path.addRect(rect(
                        {centre.x - side / 2 + cell * double(x), centre.y - side / 2 + cell * double(y), cell, cell}));
        painter_.fillPath(path.simplified(), Qt::black);
    }
    // Returns the height in mm.
    double text(double x, double y, double width, const QString& words, const QFont& font,
                const QColor& colour = ink::text, Qt::Alignment alignment = Qt::AlignLeft) {
        const TextBox box(words, font, colour, width * mm, alignment);
        box.draw(painter_, at(x, y));
        return box.height() / mm;
    }

  private:
    QPainter& painter_;
    QPointF origin_;
    double shrink_;
};

void draw_check_line(Page& page, double x, double y, const GaugeOptions& options, double text_width) {
    constexpr double thin = 0.2;
    page.line(x, y, x + check_line_mm, y, thin, Qt::black);
    for (const double end : {x, x + check_line_mm}) page.line(end, y - 2, end, y + 2, thin, Qt::black);
    for (int tick = 10; tick < check_line_mm; tick += 10) page.line(x + tick, y - 1, x + tick, y, thin, Qt::black);
    const speech::Speech& say = options.speech;
    const bool corrected = std::abs(options.printer_scale - 1) > 1e-4;
    page.text(
        x, y + 3, text_width,
        corrected
            ? say("Check line, corrected for your printer. Measure it with a ruler between the middles of the two "
                  "end strokes: it must be 50.0 mm now. Then set the check line's length in Kempt back to 50.0 mm "
                  "for photos with this print.")
            : say("Check line: 50 mm. Measure it with a ruler between the middles of the two end strokes, to a "
                  "quarter of a millimetre. If it is not 50.0 mm, type the length you measured into Kempt: it "
                  "corrects every reading for your printer."),
        body_font(8));
}

void draw_card_page(QPainter& painter, const QSizeF& page_mm, const GaugeOptions& options) {
    const double shrink = 1 / options.printer_scale;
    const speech::Speech& say = options.speech;
    const double left = (page_mm.width() - card::card_width_mm) / 2;
    Page words(painter, {left, 0}, 1);
    words.text(0, 20, card::card_width_mm, say("Gauge card"), heading_font(16));
    words.text(
        0, 29, card::card_width_mm,
        say("Print at 100 % (actual size, no fitting to the page) on plain matt white paper, with colour effects "
            "and toner saving switched off."),
        body_font(8.5), ink::quiet);

    Page face(painter, {left, 48}, shrink);
    for (int id = 0; id < 4; ++id)
        face.marker(id, card::card_marker_centres_mm[static_cast<size_t>(id)], card::card_marker_mm);
    for (const card::Patch& patch : card::card_patches()) {
        const double code = colour::srgb_from_linear(patch.reflectance);
        face.fill(patch.area_mm, QColor::fromRgbF(float(code), float(code), float(code)));
    }
    // Cutting marks stay 1 mm outside, so that no dark stroke is left on the card's white rim.
    constexpr double w = card::card_width_mm, h = card::card_height_mm;
    for (const double x : {0.0, w})
        for (const double y : {0.0, h}) {
            const double dx = x > 0 ? 1 : -1, dy = y > 0 ? 1 : -1;
            face.line(x + dx, y, x + 6 * dx, y, 0.15, ink::quiet);
            face.line(x, y + dy, x, y + 6 * dy, 0.15, ink::quiet);
        }

    Page check(painter, {left, 100}, shrink);
    draw_check_line(check, 0, 0, options, card::card_width_mm);
    words.text(
        0, 130, card::card_width_mm,
        say("Cut along the corner marks and glue the card flat on stiff white board. Lay it beside the hair, in the "
            "same plane and in the same light, all of it in the photo. Wipe or reprint it when it is stained: "
            "the grey steps are what the light is measured by. Use a fresh card for every client."),
        body_font(8.5));
}

void draw_sheet_page(QPainter& painter, const GaugeOptions& options) {
    const speech::Speech& say = options.speech;
    const double shrink = 1 / options.printer_scale;
    const cv::Size2d size = card::paper_size_mm(options.paper);
    Page page(painter, {0, 0}, shrink);
    const auto centres = card::sheet_marker_centres_mm(options.paper);
    const int first_id = card::sheet_first_id(options.ground);
    for (int id = 0; id < 4; ++id) page.marker(id + first_id, centres[static_cast<size_t>(id)], card::sheet_marker_mm);
    const bool blue = options.ground == card::Ground::blue;
    if (blue) {
        const auto code = [](double light) { return static_cast<float>(colour::srgb_from_linear(light)); };
        page.fill(card::blue_area_mm(options.paper),
                  QColor::fromRgbF(code(card::blue_print[0]), code(card::blue_print[1]), code(card::blue_print[2])));
    }
    // Everything else stands in the strip between the upper markers: the rest is backdrop.
    constexpr double left = 32;
    const double width = size.width - 2 * left;
    page.text(
        left, 5, width,
        blue ? say("Blue gauge sheet, for the ends of grey and white hair. Print in colour at 100 % (actual size) on "
                   "matt white paper. Lay the ends on the blue, the gauge card beside them, all four corners in the "
                   "photo.")
             : say("Gauge sheet. Print at 100 % (actual size) on matt white paper. Lay ends or strands on the free "
                   "part, the gauge card beside them, all four corners in the photo."),
        body_font(8), ink::quiet);
    draw_check_line(page, left, 15, options, width);
}

Result<QByteArray> produce(const GaugeOptions& options) {
    const Error failed{ErrorKind::io, "gauge-not-produced", "The gauge could not be drawn.", "Nothing was written.",
                       "Close other programs and try again."};
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return failed;
    QPdfWriter writer(&buffer);
    writer.setResolution(units_per_inch);
    writer.setPageSize(QPageSize(options.paper == card::Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(options.kind == card::Kind::card       ? options.speech("Gauge card")
                    : options.ground == card::Ground::blue ? options.speech("Blue gauge sheet")
                                                           : options.speech("Gauge sheet"));
    writer.setCreator(QStringLiteral("Kempt"));
    QPainter painter;
    if (!painter.begin(&writer)) return failed;
    const cv::Size2d size = card::paper_size_mm(options.paper);
    if (options.kind == card::Kind::card)
        draw_card_page(painter, {size.width, size.height}, options);
    else
        draw_sheet_page(painter, options);
    if (!painter.end() || bytes.isEmpty()) return failed;
    return bytes;
}

}  // namespace

Result<QByteArray> gauge_pdf(const GaugeOptions& options) {
    if (!(options.printer_scale >= 0.9 && options.printer_scale <= 1.1))
        return Error{ErrorKind::invalid, "printer-scale-out-of-range",
                     "The check line's length is not between 45 and 55 mm.", "Nothing was written.",
                     "Print at 100 %, measure the check line again and type its length in mm."};
    if (qGuiApp == nullptr)
        return Error{ErrorKind::unsupported, "no-fonts", "The program was started without fonts.",
                     "Nothing was written.", "Start the program with QT_QPA_PLATFORM=offscreen."};
    try {
        return produce(options);
    } catch (const std::exception&) {
        return Error{ErrorKind::io, "gauge-not-produced", "There was not enough memory to draw the gauge.",
                     "Nothing was written.", "Close other programs and try again."};
    }
}

Status write_gauge(const GaugeOptions& options, const QString& path) {
    const Result<QByteArray> bytes = gauge_pdf(options);
    if (!bytes.ok()) return bytes.error();
    if (Status free = not_a_book(path); !free) return free;
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(*bytes) != bytes->size() || !file.commit())
        return Error{
            ErrorKind::io, "gauge-not-written",
            QStringLiteral("The gauge could not be written to %1: %2.").arg(path, file.errorString()).toStdString(),
            "A file that was there before is unchanged.", "Choose another folder or free some space."};
    return Done{};
}

}  // namespace kempt::report
