#include "report/blocks.h"

#include <QPainter>
#include <algorithm>

namespace kempt::report {
namespace {

// One block a line, so that the flow may break between lines; two lines at least stay together at either end.
void add_lines(Blocks& blocks, const TextBox& box, double left, double space_before,
               const std::function<void(QPainter&, const QRectF&)>& beside_first = {}) {
    const int lines = box.lines();
    for (int i = 0; i < lines; ++i) {
        Block block;
        block.height = i + 1 < lines ? box.height(0, i + 2) - box.height(0, i + 1) : box.height(i, i + 1);
        block.space_before = i == 0 ? space_before : 0;
        block.keep_with_next = lines <= 3 ? i + 1 < lines : i == 0 || i == lines - 2;
        block.paint = [box, left, i, beside_first](QPainter& painter, const QRectF& rect) {
            if (i == 0 && beside_first) beside_first(painter, rect);
            box.draw(painter, rect.topLeft() + QPointF(left, 0), i, i + 1);
        };
        blocks.push_back(std::move(block));
    }
}

}  // namespace

void add_heading(Blocks& blocks, const QString& text, double width) {
    const TextBox box(text, heading_font(13), ink::accent, width);
    Block block;
    block.height = box.height() + 7 * pt;
    block.space_before = 17 * pt;
    block.keep_with_next = true;
    block.paint = [box](QPainter& painter, const QRectF& rect) {
        box.draw(painter, rect.topLeft());
        painter.fillRect(QRectF(rect.left(), rect.top() + box.height() + 2 * pt, rect.width(), 0.6 * pt), ink::line);
    };
    blocks.push_back(std::move(block));
}

void add_subheading(Blocks& blocks, const QString& text, double width) {
    const TextBox box(text, body_font(9.5, true), ink::text, width);
    Block block;
    block.height = box.height() + 2 * pt;
    block.space_before = 8 * pt;
    block.keep_with_next = true;
    block.paint = [box](QPainter& painter, const QRectF& rect) { box.draw(painter, rect.topLeft()); };
    blocks.push_back(std::move(block));
}

void add_paragraph(Blocks& blocks, const QString& text, double width, const QColor& colour, double size) {
    add_lines(blocks, TextBox(text, body_font(size), colour, width), 0, 4 * pt);
}

void add_lead(Blocks& blocks, const QString& text, double width) {
    const std::size_t before = blocks.size();
    add_paragraph(blocks, text, width, ink::quiet, 8);
    for (std::size_t i = before; i < blocks.size(); ++i) blocks[i].keep_with_next = true;
}

void add_list(Blocks& blocks, const QStringList& items, double width, bool together) {
    constexpr double indent = 11 * pt;
    for (int i = 0; i < items.size(); ++i) {
        const TextBox box(items[i], body_font(9), ink::text, width - indent);
        const TextBox dash(QStringLiteral("–"), body_font(9), ink::accent, indent);
        add_lines(blocks, box, indent, 4 * pt,
                  [dash](QPainter& painter, const QRectF& rect) { dash.draw(painter, rect.topLeft()); });
        if (i + 2 == items.size() || (together && i + 1 < items.size())) blocks.back().keep_with_next = true;
    }
}

}  // namespace kempt::report
