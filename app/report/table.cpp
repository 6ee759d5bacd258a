// Tables of the report: see blocks.h.
#include <QPainter>
#include <algorithm>

#include "report/blocks.h"

namespace kempt::report {
namespace {

constexpr double gap = 6 * pt;        // between columns
constexpr double padding = 3.2 * pt;  // above and below the text of a row
constexpr int lines_together = 24;    // a cell of more lines than these (about a third of a page) is split over rows

struct LaidCell {
    TextBox text, below;
    double left = 0;
};
struct LaidRow {
    QVector<LaidCell> cells;
    TextBox across;
    int from = 0, to = 0;  // lines of the cells' first texts
    bool last_part = true;
};

QVector<double> widths_of(const QVector<Column>& columns, double width) {
    double shares = 0;
    for (const Column& column : columns) shares += column.share;
    QVector<double> widths;
    for (const Column& column : columns)
        widths << (width - gap * static_cast<double>(columns.size() - 1)) * column.share / shares;
    return widths;
}

double cells_height(const LaidRow& row) {
    double height = 0;
    for (const LaidCell& cell : row.cells)
        height = std::max(height, cell.text.height(row.from, row.to) + (row.last_part ? cell.below.height() : 0));
    return height;
}

Block block_of(const LaidRow& row) {
    const double cells = cells_height(row);
    const double across = row.last_part && row.across.lines() > 0 ? row.across.height() + 1.5 * pt : 0;
    Block block;
    block.height = padding + cells + across + (row.last_part ? padding : 0);
    block.paint = [row, cells](QPainter& painter, const QRectF& rect) {
        for (const LaidCell& cell : row.cells) {
            const QPointF at = rect.topLeft() + QPointF(cell.left, padding);
            cell.text.draw(painter, at, row.from, row.to);
            if (row.last_part) cell.below.draw(painter, at + QPointF(0, cell.text.height(row.from, row.to)));
        }
        if (!row.last_part) return;
        row.across.draw(painter, rect.topLeft() + QPointF(0, padding + cells + 1.5 * pt));
        painter.fillRect(QRectF(rect.left(), rect.bottom() - 0.4 * pt, rect.width(), 0.4 * pt), ink::line);
    };
    return block;
}

// The column titles, and the group's name under them when there is one.
Block head_of(const QVector<Column>& columns, const QVector<double>& widths, const QString& group, double width) {
    QVector<LaidCell> cells;
    double left = 0, height = 0;
    for (int i = 0; i < columns.size(); ++i) {
        LaidCell cell;
        cell.text = TextBox(columns[i].title, body_font(7.5), ink::quiet, widths[i], columns[i].alignment);
        cell.left = left;
        left += widths[i] + gap;
        height = std::max(height, cell.text.height());
        cells << cell;
    }
    const TextBox name(group, body_font(9, true), ink::accent, width);
    const double titles = height + 2 * padding;
    Block block;
    block.height = titles + (name.lines() > 0 ? name.height() + 2 * padding : 0);
    block.keep_with_next = true;
    block.paint = [cells, name, titles, height](QPainter& painter, const QRectF& rect) {
        painter.fillRect(QRectF(rect.left(), rect.top(), rect.width(), titles), ink::fill);
        for (const LaidCell& cell : cells)
            cell.text.draw(painter, rect.topLeft() + QPointF(cell.left, padding + height - cell.text.height()));
        name.draw(painter, rect.topLeft() + QPointF(0, titles + 1.6 * padding));
    };
    return block;
}

Block group_of(const QString& group, double width) {
    const TextBox name(group, body_font(9, true), ink::accent, width);
    Block block;
    block.height = name.height() + 2 * padding;
    block.keep_with_next = true;
    block.paint = [name](QPainter& painter, const QRectF& rect) {
        name.draw(painter, rect.topLeft() + QPointF(0, 1.6 * padding));
    };
    return block;
}

LaidRow laid(const TableRow& row, const QVector<Column>& columns, const QVector<double>& widths, double width) {
    LaidRow out;
    double left = 0;
    for (int i = 0; i < columns.size(); ++i) {
        const Cell cell = i < row.cells.size() ? row.cells[i] : Cell{};
        LaidCell box;
        box.text = TextBox(cell.text, cell.code ? code_font(6.6) : body_font(8.5, cell.bold),
                           cell.colour.value_or(ink::text), widths[i], columns[i].alignment);
        box.below = TextBox(cell.below, body_font(7), ink::quiet, widths[i], columns[i].alignment);
        box.left = left;
        left += widths[i] + gap;
        out.to = std::max(out.to, box.text.lines());
        out.cells << box;
    }
    out.across = TextBox(row.across, body_font(7.8), ink::quiet, width);
    return out;
}

}  // namespace

void add_table(Blocks& blocks, const QVector<Column>& columns, const QVector<TableRow>& rows, double width) {
    if (rows.isEmpty()) return;
    const QVector<double> widths = widths_of(columns, width);
    Block first = head_of(columns, widths, {}, width);
    first.space_before = 4 * pt;
    blocks.push_back(std::move(first));
    QString group;
    std::shared_ptr<const Block> head = std::make_shared<Block>(head_of(columns, widths, {}, width));
    for (int i = 0; i < rows.size(); ++i) {
        if (rows[i].group != group) {
            group = rows[i].group;
            Block name = group_of(group, width);
            name.head = std::make_shared<Block>(head_of(columns, widths, {}, width));
            blocks.push_back(std::move(name));
            head = std::make_shared<Block>(head_of(columns, widths, group, width));
        }
        LaidRow row = laid(rows[i], columns, widths, width);
        const int lines = row.to;
        do {
            row.to = std::min(lines, row.from + lines_together);
            row.last_part = row.to == lines;
            Block block = block_of(row);
            block.head = head;
            // Two rows at least at the end of a table or of a group.
            block.keep_with_next = i + 2 == rows.size() || (i + 1 < rows.size() && i == 0);
            blocks.push_back(std::move(block));
            row.from = row.to;
        } while (row.from < lines);
    }
}

}  // namespace kempt::report
