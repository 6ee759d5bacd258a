#include "desk/compare/time_strip.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>

#include "desk/compare/pair_on_show.h"
#include "desk/look/look.h"

namespace kempt::desk {
namespace {

// The room that the words beneath take from the picture; longer ones make the row higher, and it scrolls.
constexpr int least_told_lines = 2, most_told_lines = 4;

int inset_apart() {
    return measures().px(4) + measures().gap(1.5);
}

}  // namespace

TimeStrip::TimeStrip(QWidget* parent) : QAbstractScrollArea(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(QFrame::NoFrame);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);  // as high as what it stands in
    setAccessibleName(tr("All visits, one beside the other"));
    viewport()->setAutoFillBackground(false);
}

void TimeStrip::set_cells(const QVector<Cell>& cells, QSize picture) {
    cells_ = cells;
    if (!picture.isEmpty()) picture_ = picture;
    current_ = std::max<int>(0, static_cast<int>(cells_.size()) - 1);
    lay_out();
    verticalScrollBar()->setValue(verticalScrollBar()->maximum());  // the newest is seen first
    describe();
    emit current_changed(current_);
}

void TimeStrip::set_picture_size(QSize picture) {
    if (picture.isEmpty() || picture == picture_) return;
    picture_ = picture;
    lay_out();
    set_current(current_);
}

void TimeStrip::set_cell(int index, const Cell& cell) {
    if (index < 0 || index >= cells_.size()) return;
    const bool other_words = cells_[index].told != cell.told || cells_[index].state != cell.state;
    cells_[index] = cell;
    const int before = told_lines_;
    if (other_words) lay_out();
    if (told_lines_ != before) set_current(current_);  // stays in sight
    viewport()->update(cell_rect(index));
    if (index == current_) {
        describe();
        emit current_changed(current_);
    }
}

void TimeStrip::lay_out() {
    gap_ = measures().gap(3);
    // As wide as is good to look at, but never higher than what is seen at once; then as many beside each other as
    // stand.
    const int width = std::max(1, viewport()->width()), line = fontMetrics().height();
    const auto high = [&] {
        const int lines = 2 + std::min(told_lines_, most_told_lines);
        return std::max(90, viewport()->height() - lines * line - static_cast<int>(measures().gap(2)));
    };
    const auto told_at = [&](int cell) {
        int lines = least_told_lines;
        for (const Cell& one : cells_) lines = std::max(lines, lines_of(one, cell));
        return lines;
    };
    const auto wide = [&](int columns) { return (width - (columns - 1) * gap_ - 2) / columns; };
    const int count = static_cast<int>(cells_.size());
    told_lines_ = least_told_lines;
    const QSize wanted = picture_.scaled(measures().px(360), high(), Qt::KeepAspectRatio);
    const int least = std::max(wanted.width(), measures().px(170));  // of the words beneath
    columns_ = std::clamp((width + gap_) / (least + gap_), 1, 8);
    // On a large screen all visits may stand in sight at once and larger than that: then as large as they can.
    QSize largest(0, 0);
    for (int columns = 1; columns <= std::min(8, count) && wide(columns) >= measures().px(170); ++columns) {
        const int rows = (count + columns - 1) / columns, words = line * (2 + told_at(wide(columns)));
        const int room = (viewport()->height() + gap_) / rows - gap_ - words - static_cast<int>(measures().gap(2));
        if (room < 1) continue;
        const QSize size = picture_.scaled(std::min(wide(columns), measures().px(720)), room, Qt::KeepAspectRatio);
        if (size.width() > std::max(wanted.width(), largest.width())) largest = size, columns_ = columns;
    }
    const int cell = wide(columns_);
    told_lines_ = told_at(cell);
    shown_ = largest.isEmpty() ? picture_.scaled(cell, high(), Qt::KeepAspectRatio).expandedTo({80, 50}) : largest;
    step_x_ = cell + gap_;
    step_y_ = shown_.height() + line * (2 + told_lines_) + measures().gap(2) + gap_;
    const int rows = (count + columns_ - 1) / columns_;
    verticalScrollBar()->setRange(0, std::max(0, rows * step_y_ - gap_ - viewport()->height()));
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(step_y_ / 4);
    viewport()->update();
}

int TimeStrip::lines_of(const Cell& cell, int width) const {
    const int room = width - (cell.state == Cell::State::apart ? inset_apart() : 0), line = fontMetrics().height();
    const int high = fontMetrics().boundingRect(QRect(0, 0, room, 10000), Qt::TextWordWrap, cell.told).height();
    return (high + line - 1) / std::max(1, line);
}

QRect TimeStrip::cell_rect(int index) const {
    return {(index % columns_) * step_x_ + 1, (index / columns_) * step_y_ - verticalScrollBar()->value(),
            step_x_ - gap_, step_y_ - gap_};
}

int TimeStrip::cell_at(QPoint at) const {
    for (int i = 0; i < cells_.size(); ++i)
        if (cell_rect(i).contains(at)) return i;
    return -1;
}

void TimeStrip::paint_cell(QPainter& painter, int index, const QRect& rect) const {
    const Cell& cell = cells_[index];
    const Colours& c = colours();
    const QRect bed(rect.topLeft(), shown_);
    painter.fillRect(bed, c.sunken);
    if (!cell.picture.isNull()) {
        painter.setOpacity(cell.state == Cell::State::waiting ? 0.45 : 1);
        painter.drawPixmap(fitted(cell.picture.size(), bed), cell.picture, QRectF(cell.picture.rect()));
        painter.setOpacity(1);
    } else {
        painter.setPen(c.ink_soft);
        painter.drawText(bed, Qt::AlignCenter, cell.state == Cell::State::none ? tr("no photo") : QString());
    }
    const int line = fontMetrics().height();
    if (cell.state == Cell::State::apart) {  // a bar on the left, as beside every finding
        painter.fillRect(QRect(rect.left(), bed.bottom() + 1, measures().px(4), rect.bottom() - bed.bottom()),
                         c.caution);
    }
    const int inset = cell.state == Cell::State::apart ? inset_apart() : 0;
    QRect words(rect.left() + inset, bed.bottom() + measures().gap(1), rect.width() - inset, line);
    QFont strong = font();
    strong.setBold(true);
    painter.setFont(strong);
    painter.setPen(c.ink);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(strong).elidedText(cell.date, Qt::ElideRight, words.width()));
    painter.setFont(font());
    words.translate(0, line);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                     fontMetrics().elidedText(cell.value, Qt::ElideRight, words.width()));
    words.translate(0, line);
    words.setHeight(line * told_lines_);
    painter.setPen(c.ink_soft);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, cell.told);
    if (index != current_) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(hasFocus() ? c.focus : c.accent, hasFocus() ? 3 : 2));
    painter.drawRect(QRectF(bed).adjusted(1, 1, -1, -1));
}

void TimeStrip::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    for (int i = 0; i < cells_.size(); ++i) {
        const QRect rect = cell_rect(i);
        if (!rect.intersects(event->rect())) continue;
        painter.save();
        painter.setClipRect(rect);
        paint_cell(painter, i, rect);
        painter.restore();
    }
}

void TimeStrip::resizeEvent(QResizeEvent*) {
    lay_out();
    set_current(current_);
}

void TimeStrip::describe() {
    if (current_ < 0 || current_ >= cells_.size()) return setAccessibleDescription({});
    const Cell& cell = cells_[current_];
    setAccessibleDescription(tr("%1 of %2: %3. %4. %5 Arrows walk the visits, Enter compares.")
                                 .arg(current_ + 1)
                                 .arg(cells_.size())
                                 .arg(cell.date, cell.reading, cell.told));
}

void TimeStrip::set_current(int index) {
    if (cells_.isEmpty()) return;
    const int held = std::clamp(index, 0, static_cast<int>(cells_.size()) - 1);
    const bool other = held != current_;
    current_ = held;
    const QRect rect = cell_rect(current_);
    QScrollBar* bar = verticalScrollBar();
    if (rect.top() < 0)
        bar->setValue(bar->value() + rect.top());
    else if (rect.bottom() > viewport()->height())
        bar->setValue(bar->value() + std::min(rect.top(), rect.bottom() - viewport()->height()));
    viewport()->update();
    if (!other) return;
    describe();
    emit current_changed(current_);
}

void TimeStrip::mousePressEvent(QMouseEvent* event) {
    if (const int at = cell_at(event->pos()); at >= 0) set_current(at);
}

void TimeStrip::mouseDoubleClickEvent(QMouseEvent* event) {
    if (const int at = cell_at(event->pos()); at >= 0) emit opened(at);
}

void TimeStrip::keyPressEvent(QKeyEvent* event) {
    const int rows = std::max(1, viewport()->height() / std::max(1, step_y_));
    switch (event->key()) {
        case Qt::Key_Left:
            return set_current(current_ - 1);
        case Qt::Key_Right:
            return set_current(current_ + 1);
        case Qt::Key_Up:
            return set_current(current_ >= columns_ ? current_ - columns_ : current_);
        case Qt::Key_Down:
            return set_current(std::min(current_ + columns_, static_cast<int>(cells_.size()) - 1));
        case Qt::Key_PageUp:
            return set_current(std::max(current_ - rows * columns_, 0));
        case Qt::Key_PageDown:
            return set_current(current_ + rows * columns_);
        case Qt::Key_Home:
            return set_current(0);
        case Qt::Key_End:
            return set_current(static_cast<int>(cells_.size()) - 1);
        case Qt::Key_Return:
        case Qt::Key_Enter:
            emit opened(current_);
            return;
        default:
            QAbstractScrollArea::keyPressEvent(event);
    }
}

void TimeStrip::focusInEvent(QFocusEvent*) {
    viewport()->update();
}

void TimeStrip::focusOutEvent(QFocusEvent*) {
    viewport()->update();
}

}  // namespace kempt::desk
