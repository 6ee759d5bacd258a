#include "report/pair_picture.h"

#include <QBuffer>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

#include "report/pair_drawing.h"
#include "report/style.h"

namespace kempt::report {
namespace {

constexpr double mm_per_inch = 25.4;     // exact by definition (international inch, 1959)
constexpr int max_input_px = 20000;      // longest side; a photo of 200 megapixels, the intake's limit, has about 17000
constexpr double points_across = 220;    // a photo is lettered as if it were printed 220 pt (78 mm) wide
constexpr double smallest_scale = 1.25;  // px a point: text of 8 pt is then 10 px high, the least that reads well

Error invalid(const QString& what, const QString& remedy) {
    return {ErrorKind::invalid, "pair-invalid", what.toStdString(), "", remedy.toStdString()};
}

Error no_memory() {
    return {ErrorKind::too_large, "pair-too-large", "There is not enough memory for the picture.", "",
            "Ask for smaller photos."};
}

}  // namespace

ScaleBar scale_bar_within(double max_mm, LengthUnit length) {
    if (!(max_mm > 0) || !std::isfinite(max_mm)) return {};
    if (length == LengthUnit::inches) {
        struct Inch {
            double inches;
            const char* label;
        };
        constexpr std::array<Inch, 9> steps{{{20, "20 in"},
                                             {10, "10 in"},
                                             {5, "5 in"},
                                             {2, "2 in"},
                                             {1, "1 in"},
                                             {0.5, "1/2 in"},
                                             {0.25, "1/4 in"},
                                             {0.125, "1/8 in"},
                                             {0.0625, "1/16 in"}}};
        for (const Inch& step : steps)
            if (step.inches * mm_per_inch <= max_mm)
                return {step.inches * mm_per_inch, QString::fromLatin1(step.label)};
        return {};
    }
    const double power = std::pow(10, std::floor(std::log10(max_mm)));
    if (power < 0.01) return {};  // finer than any camera of the trade can show
    for (const double step : {5.0, 2.0, 1.0})
        if (step * power <= max_mm * (1 + 1e-9)) return {step * power, QStringLiteral("%1 mm").arg(step * power)};
    return {};
}

namespace {

Result<QImage> painted(const PairPicture& pair) {
    if (pair.before.isNull() && pair.after.isNull())
        return invalid(QStringLiteral("There is no picture to paint."),
                       QStringLiteral("Choose visits with photos of this view."));
    if (!pair.before.isNull() && !pair.after.isNull() && pair.before.size() != pair.after.size())
        return invalid(QStringLiteral("The two pictures differ in size."), QStringLiteral("Align them first."));
    const QSize size = (pair.before.isNull() ? pair.after : pair.before).size();
    if (std::max(size.width(), size.height()) > max_input_px)
        return Error{ErrorKind::too_large, "pair-too-large", "The pictures are larger than 20000 pixels.", "",
                     "Reduce them first."};
    const PairPicture small = prepared(pair, std::clamp(pair.max_image_width_px, 100, max_input_px));
    const double photo = (small.before.isNull() ? small.after : small.before).width();
    const double photo_height = (small.before.isNull() ? small.after : small.before).height();
    const double scale = std::max(smallest_scale, photo / points_across);
    const double margin = 12 * scale;
    // Narrow pictures still leave room for their captions.
    const double width = std::max(2 * photo + 10 * scale, 260 * scale);
    const PairDrawing drawing(small, width, photo_height, scale);
    QImage canvas(static_cast<int>(std::ceil(width + 2 * margin)),
                  static_cast<int>(std::ceil(drawing.height() + 2 * margin)), QImage::Format_RGB32);
    if (canvas.isNull()) return no_memory();
    canvas.fill(Qt::white);
    if (small.px_per_mm > 0) {
        const double px_per_mm = small.px_per_mm * drawing.picture_width() / photo;
        canvas.setDotsPerMeterX(static_cast<int>(std::lround(px_per_mm * 1000)));
        canvas.setDotsPerMeterY(canvas.dotsPerMeterX());
    }
    QPainter painter(&canvas);
    drawing.draw(painter, {margin, margin});
    painter.end();
    return canvas;
}

}  // namespace

Result<QImage> paint_pair(const PairPicture& pair) {
    try {
        return painted(pair);
    } catch (const std::exception&) {
        return no_memory();
    }
}

Result<QByteArray> pair_png(const PairPicture& pair) {
    Result<QImage> image = paint_pair(pair);
    if (!image.ok()) return image.error();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly) || !image->save(&buffer, "PNG"))
        return Error{ErrorKind::io, "pair-not-written", "The picture could not be turned into PNG.", "", "Try again."};
    return bytes;
}

}  // namespace kempt::report
