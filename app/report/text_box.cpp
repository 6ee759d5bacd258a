#include "report/text_box.h"

#include <QPainter>
#include <QTextLayout>
#include <QTextOption>
#include <algorithm>

namespace kempt::report {

QString printable(const QString& text) {
    QString clean;
    clean.reserve(text.size());
    for (const QChar letter : text)
        clean += letter.category() == QChar::Other_Control || letter == QChar::ObjectReplacementCharacter ? QChar(' ')
                                                                                                          : letter;
    return clean.simplified();
}

TextBox::TextBox(const QString& text, const QFont& font, const QColor& colour, double width, Qt::Alignment alignment)
    : colour_(colour) {
    if (text.isEmpty()) return;
    layout_ = std::make_shared<QTextLayout>(printable(text), font);
    QTextOption option(alignment | Qt::AlignAbsolute);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    layout_->setTextOption(option);
    layout_->setCacheEnabled(true);
    constexpr double leading = 1.08;  // of the font's own line height; a little air between lines
    double y = 0;
    layout_->beginLayout();
    for (QTextLine line = layout_->createLine(); line.isValid(); line = layout_->createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, y});
        y += line.height() * leading;
    }
    layout_->endLayout();
}

int TextBox::lines() const {
    return layout_ ? layout_->lineCount() : 0;
}

double TextBox::height(int from, int to) const {
    from = std::clamp(from, 0, lines());
    to = std::clamp(to, from, lines());
    if (from == to) return 0;
    const QTextLine last = layout_->lineAt(to - 1);
    return last.y() + last.height() - layout_->lineAt(from).y();
}

double TextBox::natural_width() const {
    double widest = 0;
    for (int i = 0; i < lines(); ++i) widest = std::max(widest, layout_->lineAt(i).naturalTextWidth());
    return widest;
}

void TextBox::draw(QPainter& painter, QPointF top_left, int from, int to) const {
    from = std::clamp(from, 0, lines());
    to = std::clamp(to, from, lines());
    if (from == to) return;
    painter.setPen(colour_);
    const QPointF origin = top_left - QPointF(0, layout_->lineAt(from).y());
    for (int i = from; i < to; ++i) layout_->lineAt(i).draw(&painter, origin);
}

}  // namespace kempt::report
