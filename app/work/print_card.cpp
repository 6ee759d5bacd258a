#include "work/print_card.h"

#include <QBuffer>
#include <QImage>

#include "report/gauge_pdf.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

// The check line must come out between these for the correction to be a printer's tolerance.
constexpr double check_line_mm = 50, least_mm = 45, most_mm = 55;

Result<QByteArray> png_of(const PrintCardOptions& options) {
    if (!(options.px_per_mm >= 4 && options.px_per_mm <= 60))
        return invalid("bad-px-per-mm", "A PNG of the card takes 4 to 60 pixels per mm.");
    const cv::Mat drawn = card::draw(options.kind, options.paper, options.px_per_mm, options.ground);
    QImage image(drawn.data, drawn.cols, drawn.rows, static_cast<qsizetype>(drawn.step),
                 drawn.channels() == 3 ? QImage::Format_RGB888 : QImage::Format_Grayscale8);
    const int dots_per_metre = static_cast<int>(options.px_per_mm * 1000 + 0.5);
    image.setDotsPerMeterX(dots_per_metre);
    image.setDotsPerMeterY(dots_per_metre);
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "PNG")) return disk(options.path, QStringLiteral("the picture could not be made"));
    return png;
}

}  // namespace

Status print_card(const PrintCardOptions& options) {
    if (options.path.isEmpty()) return invalid("no-file", "Say into which file to write.");
    const auto bytes =
        options.png
            ? png_of(options)
            : report::gauge_pdf({options.kind, options.paper, options.printer_scale, options.speech, options.ground});
    if (!bytes) return bytes.error();
    return write_file(options.path, bytes.value());
}

Result<double> printer_scale_from(double measured_mm) {
    if (!(measured_mm >= least_mm && measured_mm <= most_mm))
        return invalid("bad-check-line",
                       "The check line should measure about 50 mm; more than 10 % off is not a printer's tolerance.",
                       "Print again at 100 % ('actual size'), without fitting to the page.");
    return measured_mm / check_line_mm;
}

}  // namespace kempt::work
