// Who, when, and what changed in one glance.
#include <QPainter>
#include <algorithm>

#include "domain/words.h"
#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

constexpr int name_lines = 6;  // a name of 300 letters and more; what is longer stands whole in the book
constexpr int long_name = 60;  // letters; longer names are set smaller

QString visits_line(const Model& model, const Speech& say) {
    if (model.visits == 0) return say("No visits yet");
    return QStringLiteral("%1, %2").arg(counted(model.visits, say("visit"), say("visits")),
                                        days(model.first_visit, model.last_visit, say));
}

}  // namespace

void add_title(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    const Speech& say = context.say;
    const TextBox title(say("Condition report"), heading_font(11), ink::accent, context.width);
    const TextBox name(speech::set_apart(model.client_name),
                       heading_font(model.client_name.size() > long_name ? 13 : 20), ink::text, context.width);
    QStringList facts = {visits_line(model, say)};
    if (!printable(model.salon_name).isEmpty()) facts << say("Prepared by %1").arg(printable(model.salon_name));
    facts << say("Report of %1, %2")
                 .arg(day(model.today, say),
                      context.options.copy == Copy::client ? say("client's copy") : say("record copy"));
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
    const Speech& say = context.say;
    add_heading(blocks, say("In short"), context.width);
    QVector<TableRow> rows;
    for (const Outcome outcome : {Outcome::improved, Outcome::worse, Outcome::changed, Outcome::no_detectable_change,
                                  Outcome::not_comparable}) {
        // "left temple: edge coverage, fill depth; nape: edge coverage"
        QStringList views;
        QString view;
        for (const Row& row : context.model.rows) {
            if (row.outcome != outcome) continue;
            const QString of_view = word_of(row.view);
            if (of_view == view)
                views.last() += QStringLiteral(", ") + say(title_of_reading(row.reading));
            else
                views << name_of(row.view, row.reading, say);
            view = of_view;
        }
        if (views.isEmpty()) continue;
        Cell word{.text = capitalised(words_of(outcome, say)), .colour = colour_of(outcome), .bold = true};
        rows << TableRow{.cells = {word, Cell{.text = views.join(QStringLiteral("; "))}}};
    }
    add_table(blocks, {{say("Verdict"), 1}, {say("Readings"), 3}}, rows, context.width);
}

}  // namespace kempt::report
