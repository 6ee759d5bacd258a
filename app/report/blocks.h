// The bricks of the report: headings, paragraphs, lists and tables as blocks that the flow can break into pages.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>
#include <optional>

#include "report/flow.h"
#include "report/style.h"
#include "report/text_box.h"

namespace kempt::report {

void add_heading(Blocks& blocks, const QString& text, double width);
// A smaller heading inside a section.
void add_subheading(Blocks& blocks, const QString& text, double width);
// Long texts break between lines, at least two on either side.
void add_paragraph(Blocks& blocks, const QString& text, double width, const QColor& colour = ink::text,
                   double size = 9);
// A quiet sentence that stays with what it introduces.
void add_lead(Blocks& blocks, const QString& text, double width);
// Paragraphs with a dash before each; the last two stay together, or all of them when asked.
void add_list(Blocks& blocks, const QStringList& items, double width, bool together = false);

struct Cell {
    QString text{};
    QString below{};                 // a second, quieter text under the first
    std::optional<QColor> colour{};  // of the first
    bool bold = false;
    bool code = false;  // in the typewriter face
};
struct Column {
    QString title{};
    double share = 1;  // of the width, in proportion to the other columns
    Qt::Alignment alignment = Qt::AlignLeft;
};
struct TableRow {
    QVector<Cell> cells{};  // one a column; missing ones are blank
    QString across{};       // a sentence under the cells, over the full width
    QString group{};        // set above the row, and in the head of a page, when it differs from the row before
};

// Head repeated on each page; a row is never split unless it is taller than most of a page; no row stands alone on the
// last page. Nothing is added for no rows.
void add_table(Blocks& blocks, const QVector<Column>& columns, const QVector<TableRow>& rows, double width);

}  // namespace kempt::report
