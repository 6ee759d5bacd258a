#include "desk/photo/tone_details.h"

#include <QBoxLayout>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/photo/whole_figure.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

QString towards(double value, const QString& plus, const QString& minus) {
    const long whole = std::lround(std::abs(value));
    return ToneDetails::tr("%1 towards %2").arg(whole).arg(value >= 0 ? plus : minus);
}

class Patch : public QWidget {
  public:
    explicit Patch(const QColor& colour) : colour_(colour) { setFixedSize(measures().px(34), measures().px(34)); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(colours().outline, 1));
        painter.setBrush(colour_);
        painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
    }

  private:
    QColor colour_;
};

// The colours from scalp to ends, with the lines of demarcation across them.
class Strip : public QWidget {
  public:
    explicit Strip(const ToneOverlay& tone) : tone_(tone) {
        setFixedHeight(measures().px(44));
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        setAccessibleName(ToneDetails::tr("Colours from the scalp to the ends"));
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        QFont font = painter.font();
        font.setPixelSize(measures().caption);
        painter.setFont(font);
        const double below = QFontMetricsF(font).height();
        const QRectF box = QRectF(rect()).adjusted(0, 4, 0, -below - 2);
        const qsizetype n = tone_.profile.size();
        for (qsizetype i = 0; i < n; ++i) {
            const double left = box.left() + box.width() * static_cast<double>(i) / static_cast<double>(n);
            const double right = box.left() + box.width() * static_cast<double>(i + 1) / static_cast<double>(n);
            painter.fillRect(QRectF(left, box.top(), right - left + 0.5, box.height()), tone_.profile[i]);
        }
        painter.setRenderHint(QPainter::Antialiasing);
        for (const ToneLine& line : tone_.lines) {
            if (!(tone_.length_mm > 0)) break;
            const double x = box.left() + box.width() * std::clamp(line.at_mm / tone_.length_mm, 0.0, 1.0);
            for (const auto& [width, colour] : {std::pair{4.5, mark_colours().casing}, {1.8, mark_colours().warning}}) {
                painter.setPen(QPen(colour, width));
                painter.drawLine(QPointF(x, box.top() - 3), QPointF(x, box.bottom() + 2));
            }
        }
        painter.setPen(colours().ink_soft);
        const QRectF words(box.left(), box.bottom() + 2, box.width(), below);
        painter.drawText(words, Qt::AlignLeft, ToneDetails::tr("scalp"));
        painter.drawText(words, Qt::AlignRight, whole_figure(tone_.length_mm, 1));
    }

  private:
    ToneOverlay tone_;
};

}  // namespace

QString words_of(const ToneSwatch& swatch) {
    return ToneDetails::tr("lightness %1, %2, %3")
        .arg(std::lround(swatch.lightness))
        .arg(towards(swatch.a, ToneDetails::tr("red"), ToneDetails::tr("green")),
             towards(swatch.b, ToneDetails::tr("yellow"), ToneDetails::tr("blue")));
}

QString words_of(const ToneLine& line) {
    QString words = ToneDetails::tr("Line of demarcation %1 from the scalp (%2 to %3): a step of %4, over %5.")
                        .arg(whole_figure(line.at_mm, (line.at_high - line.at_low) / 2),
                             whole_figure(line.at_low, (line.at_high - line.at_low) / 2),
                             whole_figure(line.at_high, (line.at_high - line.at_low) / 2),
                             whole_figure(line.step, (line.step_high - line.step_low) / 2, QStringLiteral("dE00")),
                             whole_figure(line.width_mm, 1));
    if (line.weeks_high > 0)
        words += ToneDetails::tr(" Hair takes about %1 to %2 weeks to grow that far.")
                     .arg(std::lround(line.weeks_low))
                     .arg(std::lround(line.weeks_high));
    return words;
}

ToneDetails::ToneDetails(QWidget* parent) : QWidget(parent), column_(column_in(this, 0, 1)) {}

void ToneDetails::show_tone(const ToneOverlay& tone) {
    const QVector<QPair<QString, std::optional<ToneSwatch>>> swatches = {
        {tr("Root"), tone.root}, {tr("Mid-shaft"), tone.mid}, {tr("Ends"), tone.end}};
    QString key = QString::number(tone.length_mm) + look().colours().ink.name() + QString::number(tone.mixed_over_mm);
    for (const auto& [name, swatch] : swatches)
        if (swatch) key += swatch->colour.name() + words_of(*swatch);
    for (const ToneLine& line : tone.lines) key += words_of(line);
    for (const QColor& colour : tone.profile) key += colour.name();
    if (key == shown_) return;
    shown_ = key;
    empty_layout(column_);
    for (const auto& [name, swatch] : swatches) {
        if (!swatch) continue;
        auto* row = new QHBoxLayout;
        row->setSpacing(measures().gap(2));
        row->addWidget(new Patch(swatch->colour), 0, Qt::AlignTop);
        row->addWidget(text(QStringLiteral("%1: %2").arg(name, words_of(*swatch)), "caption"), 1);
        column_->addLayout(row);
    }
    if (!tone.profile.isEmpty()) column_->addWidget(new Strip(tone));
    if (tone.mixed_over_mm > 0)
        column_->addWidget(text(tr("Mixed hair: each colour is the mean of the light and the dark strands over a width "
                                   "of %1.")
                                    .arg(whole_figure(tone.mixed_over_mm, 1)),
                                "caption"));
    for (const ToneLine& line : tone.lines) column_->addWidget(text(words_of(line), "caption"));
    if (tone.lines.isEmpty() && !tone.profile.isEmpty())
        column_->addWidget(text(tr("No line of demarcation found."), "caption"));
    // A just noticeable difference is 1 to 2.3 (Mahy and others 1994, Color Res Appl 19:105-21, from memory).
    column_->addWidget(text(tr("ΔE: how far two colours lie apart to the eye (CIEDE2000). Side by side, 1 to 2 is just "
                               "about seen."),
                            "caption"));
}

}  // namespace kempt::desk
