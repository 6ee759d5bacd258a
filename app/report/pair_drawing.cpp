#include "report/pair_drawing.h"

#include <QColorSpace>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "report/style.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

QImage opaque_srgb(const QImage& image, int max_width_px) {
    if (image.isNull()) return {};
    QImage out = image;
    if (out.width() > max_width_px) out = out.scaledToWidth(max_width_px, Qt::SmoothTransformation);
    if (out.colorSpace().isValid() && out.colorSpace() != QColorSpace(QColorSpace::SRgb))
        out.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    if (out.hasAlphaChannel()) {
        QImage ground(out.size(), QImage::Format_RGB32);
        ground.fill(Qt::white);
        QPainter painter(&ground);
        painter.drawImage(0, 0, out);
        painter.end();
        return ground;
    }
    return out.convertToFormat(QImage::Format_RGB32);
}

}  // namespace

PairPicture prepared(const PairPicture& pair, int max_width_px) {
    PairPicture out = pair;
    const int width = pair.before.isNull() ? pair.after.width() : pair.before.width();
    out.before = opaque_srgb(pair.before, max_width_px);
    out.after = opaque_srgb(pair.after, max_width_px);
    if (width > max_width_px) out.px_per_mm *= static_cast<double>(max_width_px) / width;
    return out;
}

PairDrawing::PairDrawing(const PairPicture& pair, double width, double max_picture_height, double scale)
    : pair_(pair), gap_(10 * scale), scale_(scale) {
    QSizeF size = (pair.before.isNull() ? pair.after : pair.before).size();
    if (size.isEmpty()) size = {4, 3};
    const double widest = (width - gap_) / 2;
    const double zoom = std::min(widest / size.width(), max_picture_height / size.height());
    picture_ = size * zoom;

    const Speech& say = pair.speech;
    title_ = TextBox(capitalised(say(pair.title)), body_font(9.5, true, scale), ink::text, width);
    top_ = title_.lines() > 0 ? title_.height() + 4 * scale : 0;
    // Captions may use the whole half of the width, also under narrow pictures.
    const double caption_width = std::max(picture_.width(), widest * 0.45);
    before_ = TextBox(QStringLiteral("%1, %2").arg(say(pair.before_word), day(pair.before_date, say)),
                      body_font(8, true, scale), ink::text, caption_width);
    after_ = TextBox(QStringLiteral("%1, %2").arg(say(pair.after_word), day(pair.after_date, say)),
                     body_font(8, true, scale), ink::text, caption_width);
    no_picture_ =
        TextBox(say("no picture"), body_font(8, false, scale), ink::quiet, picture_.width(), Qt::AlignHCenter);
    captions_top_ = top_ + picture_.height() + 4 * scale;
    bar_top_ = captions_top_ + std::max(before_.height(), after_.height()) + 4 * scale;

    const double units_per_mm = pair.px_per_mm > 0 ? pair.px_per_mm * zoom : 0;
    const bool both = !pair.before.isNull() && !pair.after.isNull();
    const ScaleBar bar =
        units_per_mm > 0 ? scale_bar_within(0.5 * picture_.width() / units_per_mm, pair.length) : ScaleBar{};
    bar_length_ = bar.length_mm * units_per_mm;
    bar_ = TextBox(say(bar.label), body_font(7.5, false, scale), ink::text, width);
    one_scale_ =
        TextBox(bar_length_ > 0 ? both ? say("both pictures at this scale") : say("the picture is at this scale")
                                : say("scale not known: to compare by eye only"),
                body_font(7.5, false, scale), ink::quiet, width);
    verdict_top_ = bar_top_ + one_scale_.height() + 5 * scale;
    verdict_ = TextBox(capitalised(say(pair.verdict)), body_font(9, false, scale), ink::text, width);
    height_ = verdict_.lines() > 0 ? verdict_top_ + verdict_.height() : verdict_top_ - 5 * scale;
}

void PairDrawing::draw(QPainter& painter, QPointF at) const {
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setRenderHint(QPainter::Antialiasing);
    title_.draw(painter, at);
    const double step = std::max(picture_.width(), std::max(before_.natural_width(), after_.natural_width())) + gap_;
    const std::array<const QImage*, 2> images = {&pair_.before, &pair_.after};
    for (int i = 0; i < 2; ++i) {
        const QRectF frame(at + QPointF(i * step, top_), picture_);
        const QImage& image = *images[static_cast<std::size_t>(i)];
        if (image.isNull()) {
            painter.fillRect(frame, ink::fill);
            no_picture_.draw(painter, QPointF(frame.left(), frame.center().y() - no_picture_.height() / 2));
        } else {
            painter.drawImage(frame, image);
        }
        (i == 0 ? before_ : after_).draw(painter, QPointF(frame.left(), at.y() + captions_top_));
    }
    double x = at.x();
    const double middle = at.y() + bar_top_ + one_scale_.height() / 2;
    if (bar_length_ > 0) {
        const double thick = 1.2 * scale_, tick = 3 * scale_;
        painter.fillRect(QRectF(x, middle - thick / 2, bar_length_, thick), ink::text);
        for (const double end : {x, x + bar_length_ - thick})
            painter.fillRect(QRectF(end, middle - tick, thick, 2 * tick), ink::text);
        x += bar_length_ + 5 * scale_;
        bar_.draw(painter, QPointF(x, at.y() + bar_top_));
        x += bar_.natural_width() + 8 * scale_;
    }
    one_scale_.draw(painter, QPointF(x, at.y() + bar_top_));
    verdict_.draw(painter, at + QPointF(0, verdict_top_));
    painter.restore();
}

}  // namespace kempt::report
