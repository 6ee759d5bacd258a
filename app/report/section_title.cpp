// Who, when, and what changed in one glance.
#include <QPainter>
#include <algorithm>

#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

constexpr int name_lines = 6;  // a name of 300 letters and more; what is longer stands whole in the book
constexpr int long_name = 60;  // letters; longer names are set smaller

QString visits_line(const Model& model) {
    if (model.visits == 0) return QStringLiteral("No visits yet");
    return QStringLiteral("%1, %2").arg(counted(model.visits, QStringLiteral("visit"), QStringLiteral("visits")),
                                        days(model.first_visit, model.last_visit));
}

}  // namespace

void add_title(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    const TextBox title(QStringLiteral("Condition report"), heading_font(11), ink::accent, context.width);
    const TextBox name(model.client_name, heading_font(model.client_name.size() > long_name ? 13 : 20), ink::text,
                       context.width);
    QStringList facts = {visits_line(model)};
    if (!printable(model.salon_name).isEmpty())
        facts << QStringLiteral("Prepared by %1").arg(printable(model.salon_name));
    facts << QStringLiteral("Report of %1, %2")
                 .arg(day(model.today), context.options.copy == Copy::client ? QStringLiteral("client's copy")
                                                                             : QStringLiteral("record copy"));
    QVector<TextBox> lines;
    double height = title.height() + 2 * pt + name.height(0, name_lines) + 6 * pt;
    for (const QString& fact : facts) {
        lines << TextBox(fact, body_font(9), ink::quiet, context.width);
        height += lines.last().height() + 2 * pt;
    }
    Block block;
    block.height = height + 4 * pt;
    block.paint = [title, name, lines](QPainter& painter, const QRectF& rect) {
        QPointF at = rect.topLeft();
        title.draw(painter, at);
        at.ry() += title.height() + 2 * pt;
        name.draw(painter, at, 0, name_lines);
        at.ry() += name.height(0, name_lines) + 6 * pt;
        for (const TextBox& line : lines) {
            line.draw(painter, at);
            at.ry() += line.height() + 2 * pt;
        }
        painter.fillRect(QRectF(rect.left(), rect.bottom() - 1.2 * pt, rect.width(), 1.2 * pt), ink::accent);
    };
    blocks.push_back(std::move(block));
}

void add_in_short(Blocks& blocks, const Context& context) {
    if (context.model.rows.isEmpty()) return;
    add_heading(blocks, QStringLiteral("In short"), context.width);
    QVector<TableRow> rows;
    for (const Outcome outcome : {Outcome::improved, Outcome::worse, Outcome::changed, Outcome::no_detectable_change,
                                  Outcome::not_comparable}) {
        // "left temple: edge coverage, fill depth; nape: edge coverage"
        QStringList views;
        QString view;
        for (const Row& row : context.model.rows) {
            if (row.outcome != outcome) continue;
            const QString name = name_of(row.view, row.reading);
            const QString of_view = name.section(u':', 0, 0);
            if (of_view == view)
                views.last() += QStringLiteral(", ") + name.section(u':', 1).trimmed();
            else
                views << name;
            view = of_view;
        }
        if (views.isEmpty()) continue;
        Cell word{.text = capitalised(words_of(outcome)), .colour = colour_of(outcome), .bold = true};
        rows << TableRow{.cells = {word, Cell{.text = views.join(QStringLiteral("; "))}}};
    }
    add_table(blocks, {{QStringLiteral("Verdict"), 1}, {QStringLiteral("Readings"), 3}}, rows, context.width);
}

}  // namespace kempt::report
