// A text broken into lines of a given width, that knows its height and paints itself, whole or some of its lines.
// Right-to-left text is ordered by the Unicode rules; words longer than the line are broken anywhere.
#pragma once

#include <QColor>
#include <QFont>
#include <QPointF>
#include <QString>
#include <memory>

QT_BEGIN_NAMESPACE
class QPainter;
class QTextLayout;
QT_END_NAMESPACE

namespace kempt::report {

class TextBox {
  public:
    TextBox() = default;
    // alignment: Qt::AlignLeft, AlignHCenter or AlignRight, always of the page, whatever the script.
    TextBox(const QString& text, const QFont& font, const QColor& colour, double width,
            Qt::Alignment alignment = Qt::AlignLeft);
    [[nodiscard]] int lines() const;
    [[nodiscard]] double height() const { return height(0, lines()); }
    // Of lines from (included) to to (left out), whatever lies outside of 0..lines() ignored.
    [[nodiscard]] double height(int from, int to) const;
    // Width of the widest line.
    [[nodiscard]] double natural_width() const;
    void draw(QPainter& painter, QPointF top_left) const { draw(painter, top_left, 0, lines()); }
    void draw(QPainter& painter, QPointF top_left, int from, int to) const;

  private:
    std::shared_ptr<QTextLayout> layout_;
    QColor colour_;
};

// The text without line breaks and control characters, runs of blanks made one.
[[nodiscard]] QString printable(const QString& text);

}  // namespace kempt::report
