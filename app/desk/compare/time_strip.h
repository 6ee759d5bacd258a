// Pictures of one place at all visits in the order of their dates, with the date, the reading and how the picture was
// laid beneath. Only what is seen is painted, so that 60 visits scroll as six do.
#pragma once

#include <QAbstractScrollArea>
#include <QDate>
#include <QPixmap>
#include <QVector>

namespace kempt::desk {

class TimeStrip : public QAbstractScrollArea {
    Q_OBJECT
  public:
    struct Cell {
        QString date, value, reading;  // value: of the reading, short; reading: with its name
        QString told;                  // how it was laid or why not
        QPixmap picture;               // laid, or the thumbnail until then
        enum class State { waiting, laid, apart, none } state = State::waiting;
        bool leads = false;  // all others are laid over this one
    };
    explicit TimeStrip(QWidget* parent = nullptr);
    void set_cells(const QVector<Cell>& cells, QSize picture);
    void set_picture_size(QSize picture);
    void set_cell(int index, const Cell& cell);
    [[nodiscard]] const QVector<Cell>& cells() const { return cells_; }
    [[nodiscard]] int current() const { return current_; }
    void set_current(int index);
    // Lines of words beneath the pictures that stand whole.
    [[nodiscard]] int told_lines() const { return told_lines_; }
    [[nodiscard]] QSize sizeHint() const override { return {720, 480}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 110}; }

  signals:
    void current_changed(int index);
    void opened(int index);  // Enter, or a double click

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void lay_out();
    [[nodiscard]] int lines_of(const Cell& cell, int width) const;  // of what is told beneath the picture
    [[nodiscard]] QRect cell_rect(int index) const;                 // in the viewport
    [[nodiscard]] int cell_at(QPoint at) const;                     // -1: none
    void paint_cell(QPainter& painter, int index, const QRect& rect) const;
    void describe();

    QVector<Cell> cells_;
    QSize picture_{360, 240}, shown_;  // as made; as painted
    int current_ = 0, columns_ = 1, step_x_ = 1, step_y_ = 1, gap_ = 0, told_lines_ = 2;
};

}  // namespace kempt::desk
