#include "desk/photo/strand_list.h"

#include <QHash>
#include <QKeyEvent>
#include <QPainter>
#include <QSignalBlocker>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/photo/strokes.h"
#include "desk/translations/said.h"
#include "domain/measure_units.h"

namespace kempt::desk {
namespace {

constexpr int most_rows = 8;  // seen at once; the others are scrolled to

QPixmap sample_of(const ShownStrand& strand, double ratio) {
    const QSize size(measures().px(34), measures().px(16));
    QPixmap map(size * ratio);
    map.setDevicePixelRatio(ratio);
    map.fill(Qt::transparent);
    QPainter painter(&map);
    painter.setRenderHint(QPainter::Antialiasing);
    const double y = size.height() / 2.0, s = measures().space;
    cased(painter, path_of({QPointF(4, y), QPointF(size.width() - 4, y)}),
          strand_colours()[strand.colour % strand_colours().size()], 3 * s,
          strand.doubtful ? QVector<double>{1.6, 1.3} : QVector<double>());
    return map;
}

}  // namespace

QString words_of(const ShownStrand& strand) {
    // To a millimetre: a hair that is laid down by hand is not told finer.
    const double half = std::max((strand.high - strand.low) / 2, 1.0);
    const QString length = in_figures(plain_value(strand.length_mm, half, QStringLiteral("mm"), look().length()));
    QStringList words{strand.cut_off ? StrandList::tr("%1 or more").arg(length) : length};
    if (strand.curve_diameter_mm > 0)
        words.append(StrandList::tr("curve %1")
                         .arg(in_figures(plain_value(strand.curve_diameter_mm, strand.curve_diameter_mm / 20,
                                                     QStringLiteral("mm"), look().length()))));
    if (strand.perhaps_longer && !strand.cut_off) words.append(StrandList::tr("perhaps longer"));
    if (strand.doubtful) words.append(StrandList::tr("doubtful"));
    return words.join(QStringLiteral(", "));
}

StrandList::StrandList(QWidget* parent) : QListWidget(parent) {
    setAccessibleName(tr("Strands, longest first"));
    setMouseTracking(true);
    setUniformItemSizes(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTextElideMode(Qt::ElideRight);
    setTabKeyNavigation(false);
    setIconSize(QSize(measures().px(34), measures().px(16)));
    connect(this, &QListWidget::itemEntered, this, [this](QListWidgetItem* item) { emit pointed_at(row(item)); });
    connect(this, &QListWidget::currentRowChanged, this, &StrandList::chosen);
}

void StrandList::show_strands(const StrandsOverlay& found) {
    QString key;
    for (const ShownStrand& strand : found.strands)
        key += words_of(strand) + QString::number(strand.colour) + QLatin1Char('|');
    if (key == shown_) return;
    shown_ = key;
    const QSignalBlocker block(this);
    clear();
    QHash<int, QIcon> samples;  // one for each colour, whole and dashed: many strands share them
    for (const ShownStrand& strand : found.strands) {
        QIcon& sample = samples[2 * strand.colour + (strand.doubtful ? 1 : 0)];
        if (sample.isNull()) sample = QIcon(sample_of(strand, devicePixelRatioF()));
        addItem(new QListWidgetItem(sample, words_of(strand)));
    }
    const int row = count() > 0 ? sizeHintForRow(0) : 0;
    setFixedHeight(std::min(count(), most_rows) * row + 2 * frameWidth() + measures().gap(1));
}

void StrandList::choose(int strand) {
    const QSignalBlocker block(this);
    if (strand < 0) clearSelection();
    setCurrentRow(strand);
}

void StrandList::keyPressEvent(QKeyEvent* event) {
    if (currentRow() >= 0 && event->key() == Qt::Key_Delete) return emit drop_asked(currentRow());
    if (currentRow() >= 0 && event->key() == Qt::Key_J) return emit join_asked(currentRow());
    QListWidget::keyPressEvent(event);
}

void StrandList::leaveEvent(QEvent* event) {
    QListWidget::leaveEvent(event);
    emit pointed_at(-1);
}

}  // namespace kempt::desk
