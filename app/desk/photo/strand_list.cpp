#include "desk/photo/strand_list.h"

#include <QHash>
#include <QKeyEvent>
#include <QPainter>
#include <QSignalBlocker>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/photo/strokes.h"
#include "desk/photo/whole_figure.h"

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
    const QString length = whole_figure(strand.length_mm, half);
    QStringList words{strand.cut_off ? StrandList::tr("%1 or more").arg(length) : length};
    if (strand.curve_diameter_mm > 0)
        words.append(
            StrandList::tr("curve %1").arg(whole_figure(strand.curve_diameter_mm, strand.curve_diameter_mm / 20)));
    if (strand.perhaps_longer && !strand.cut_off) words.append(StrandList::tr("perhaps longer"));
    if (strand.doubtful) words.append(StrandList::tr("doubtful"));
    return words.join(QStringLiteral(", "));
}

StrandList::StrandList(QWidget* parent) : QListWidget(parent) {
    setAccessibleName(tr("Strands, longest first"));
    setMouseTracking(true);
    setWordWrap(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
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
    fit_rows();
}

// Every row as high as its words need: Qt gives each the height of one line, whatever it wraps.
void StrandList::fit_rows() {
    fitted_ = viewport()->width();
    int height = 2 * frameWidth() + measures().gap(1);
    const int beside = iconSize().width() + measures().gap(10);  // the sample, and what a row keeps clear
    for (int i = 0; i < count(); ++i) {
        item(i)->setSizeHint({});
        const int line = fontMetrics().height(), one = sizeHintForRow(i);
        const QRect room(0, 0, std::max(line, fitted_ - beside), QWIDGETSIZE_MAX);
        const int words = fontMetrics().boundingRect(room, Qt::TextWordWrap, item(i)->text()).height();
        const int row = std::max(one, one - line + words);
        item(i)->setSizeHint({0, row});
        if (i < most_rows) height += row;
    }
    setFixedHeight(height);
}

void StrandList::resizeEvent(QResizeEvent* event) {
    QListWidget::resizeEvent(event);
    if (viewport()->width() != fitted_) fit_rows();
}

void StrandList::choose(int strand) {
    const QSignalBlocker block(this);
    if (strand < 0) clearSelection();
    setCurrentRow(strand);
}

void StrandList::keyPressEvent(QKeyEvent* event) {
    const bool plain = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
    if (currentRow() >= 0 && plain) {
        if (event->key() == Qt::Key_Delete) return emit drop_asked(currentRow());
        if (event->key() == Qt::Key_J) return emit join_asked(currentRow());
        if (event->key() == Qt::Key_O) return emit whole_asked(currentRow());
    }
    QListWidget::keyPressEvent(event);
}

void StrandList::leaveEvent(QEvent* event) {
    QListWidget::leaveEvent(event);
    emit pointed_at(-1);
}

}  // namespace kempt::desk
