#include "desk/plan/stretch_bar.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/plan/plan_words.h"
#include "desk/translations/said.h"

namespace kempt::desk {
namespace {

QString stretch_words(const std::vector<care::Stretch>& stretches) {
    QStringList words;
    for (const care::Stretch& one : stretches)
        words.append(QObject::tr("%1 (%2)").arg(said(word_of(one.part)), span_words(one.span)));
    return words.join(QStringLiteral(", "));
}

// Neighbours touch: the parts are told apart by the words, not by gaps.
double far_end(const care::Coverage& coverage) {
    double end = 0;
    bool endless = false;
    for (const auto* list : {&coverage.put_on, &coverage.keep_off})
        for (const care::Stretch& one : *list) {
            endless = endless || !std::isfinite(one.span.to_mm);
            end = std::max(end, std::isfinite(one.span.to_mm) ? one.span.to_mm : one.span.from_mm);
        }
    return endless ? std::max(end * 1.4, end + 60) : end;
}

}  // namespace

QString coverage_words(const care::Coverage& coverage) {
    QStringList words;
    if (!coverage.put_on.empty()) words.append(QObject::tr("Put it on %1.").arg(stretch_words(coverage.put_on)));
    if (!coverage.keep_off.empty()) words.append(QObject::tr("Keep it off %1.").arg(stretch_words(coverage.keep_off)));
    return words.join(QLatin1Char(' '));
}

StretchBar::StretchBar(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize StretchBar::sizeHint() const {
    return {measures().px(200), measures().px(26)};
}

void StretchBar::set_coverage(const care::Coverage& coverage, const std::optional<double>& length_mm) {
    coverage_ = coverage;
    length_mm_ = length_mm;
    words_ = coverage_words(coverage);
    setAccessibleName(words_);
    setToolTip(words_);
    setVisible(!words_.isEmpty());
    update();
}

// A lock of hair lying on its side, the scalp on the left: brushed full where the product goes, barred where it stays
// off, thin where nothing is planned.
void StretchBar::paintEvent(QPaintEvent*) {
    const double end = length_mm_ ? std::max(*length_mm_, 1.0) : far_end(coverage_);
    if (!(end > 0)) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const double left = measures().px(12), right = width() - 4.0, middle = height() / 2.0, half = height() * 0.28;
    const auto x_of = [&](double mm) { return left + (right - left) * std::min(mm, end) / end; };
    painter.setPen(QPen(c.outline, 2.4, Qt::SolidLine, Qt::RoundCap));
    QPainterPath scalp(QPointF(left - 7, 2));
    scalp.quadTo(left + 1, middle, left - 7, height() - 2.0);
    painter.drawPath(scalp);
    painter.setPen(QPen(c.outline, 1.2));
    painter.drawLine(QPointF(left, middle), QPointF(right, middle));
    for (const care::Stretch& one : coverage_.put_on) {
        const QRectF box(QPointF(x_of(one.span.from_mm), middle - half), QPointF(x_of(one.span.to_mm), middle + half));
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.accent);
        painter.drawRoundedRect(box, 3, 3);
    }
    for (const care::Stretch& one : coverage_.keep_off) {
        const QRectF box(QPointF(x_of(one.span.from_mm), middle - half), QPointF(x_of(one.span.to_mm), middle + half));
        painter.setPen(QPen(c.worse, 1.4));
        painter.setBrush(QBrush(c.worse, Qt::FDiagPattern));
        painter.drawRoundedRect(box, 3, 3);
    }
}

}  // namespace kempt::desk
