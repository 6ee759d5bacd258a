// The table of readings between the first and the latest visit, and the way to each target.
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "domain/words.h"
#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

Cell value_cell(const std::optional<Value>& value, const QString& unit, LengthUnit length, const Speech& say) {
    if (!value) return {.text = say("no value"), .colour = ink::quiet};
    return {
        .text = figure(*value, unit, length, say),
        .below = QStringLiteral("%1, %2").arg(day(value->date, say), counted(value->shots, say("shot"), say("shots")))};
}

// The bar of one target: how much of the way lies behind, between the two figures.
void paint_bar(QPainter& painter, const QRectF& bar, double share) {
    painter.fillRect(bar, ink::fill);
    const double done = std::clamp(share, 0.0, 1.0);
    if (done > 0) painter.fillRect(QRectF(bar.left(), bar.top(), bar.width() * done, bar.height()), ink::accent);
    painter.setPen(QPen(ink::line, 0.6 * pt));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
}

QString way_in_words(const TargetBar& target, LengthUnit length, const Speech& say) {
    const QString now =
        say("%1 on %2")
            .arg(plain_figure(target.now, target.now_half, target.unit, length, say), day(target.now_date, say));
    if (!target.share) return say("Now %1. A share of the way cannot be given.").arg(now);
    const long percent = std::lround(*target.share * 100);
    if (percent >= 100) return say("Now %1: the target is reached.").arg(now);
    if (percent < 0) return say("Now %1: farther from the target than at the start.").arg(now);
    return say("Now %1: %2 % of the way.").arg(now).arg(percent);
}

}  // namespace

void add_readings(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    const LengthUnit length = context.options.length;
    const Speech& say = context.say;
    add_heading(blocks, say("Readings"), context.width);
    if (model.rows.isEmpty()) {
        add_paragraph(blocks, say("There is no reading that stands yet."), context.width);
        return;
    }
    add_lead(blocks,
             say("In brackets the 95 % interval. A change counts only when it is larger than the smallest "
                 "detectable change."),
             context.width);
    QVector<TableRow> rows;
    for (const Row& row : model.rows) {
        const double sdc = row.smallest_detectable.value_or(0);
        // As the sentence below prints them. Without one, two digits of the smallest detectable change and as many
        // decimals of the change: an uncertainty is stated with at most two (JCGM 100:2008, 7.2.6).
        const double finest = row.step > 0 ? row.step : sdc / 10;
        TableRow out;
        out.group = capitalised(say(word_of(row.view)));
        out.cells = {
            {.text = capitalised(say(title_of_reading(row.reading)))},
            value_cell(row.first, row.unit, length, say),
            value_cell(row.latest, row.unit, length, say),
            {.text = row.change ? signed_figure(*row.change, finest, row.unit, length, say) : QStringLiteral("–")},
            {.text = row.smallest_detectable
                         ? signed_figure(sdc, finest, row.unit, length, say).replace(u'+', QStringLiteral("± "))
                         : QStringLiteral("–")},
            {.text = capitalised(words_of(row.outcome, say)), .colour = colour_of(row.outcome), .bold = true},
        };
        QStringList sentences;
        for (const QString& sentence : {row.reason, row.trend})
            if (!sentence.isEmpty()) sentences << capitalised(say(sentence));
        out.across = sentences.join(u' ');
        rows << out;
    }
    add_table(blocks,
              {{say("Reading"), 1.15},
               {say("First"), 1.35},
               {say("Latest"), 1.35},
               {say("Change"), 0.85},
               {say("Smallest detectable"), 0.9},
               {say("Verdict"), 1.15}},
              rows, context.width);
}

void add_targets(Blocks& blocks, const Context& context) {
    if (context.model.targets.isEmpty()) return;
    const LengthUnit length = context.options.length;
    const Speech& say = context.say;
    add_heading(blocks, say("The way to the client's own targets"), context.width);
    for (const TargetBar& target : context.model.targets) {
        const TextBox name(capitalised(name_of(target.view, target.reading, say)), body_font(9, true), ink::text,
                           context.width);
        const TextBox from(say("start %1, %2")
                               .arg(plain_figure(target.baseline, target.baseline_half, target.unit, length, say),
                                    day(target.baseline_date, say)),
                           body_font(7.5), ink::quiet, context.width / 2);
        const TextBox to(say("target %1").arg(plain_figure(target.target, 0, target.unit, length, say)), body_font(7.5),
                         ink::quiet, context.width / 2, Qt::AlignRight);
        QString words = way_in_words(target, length, say);
        if (!target.forecast.isEmpty()) words += u' ' + capitalised(say(target.forecast));
        const TextBox way(words, body_font(8.5), ink::text, context.width);
        constexpr double bar = 8 * pt;
        Block block;
        block.height = name.height() + 3 * pt + bar + 2 * pt + from.height() + 2 * pt + way.height();
        block.space_before = 9 * pt;
        const double share = target.share.value_or(0);
        block.paint = [=](QPainter& painter, const QRectF& rect) {
            QPointF at = rect.topLeft();
            name.draw(painter, at);
            at.ry() += name.height() + 3 * pt;
            paint_bar(painter, QRectF(at, QSizeF(rect.width(), bar)), share);
            at.ry() += bar + 2 * pt;
            from.draw(painter, at);
            to.draw(painter, at + QPointF(rect.width() / 2, 0));
            at.ry() += from.height() + 2 * pt;
            way.draw(painter, at);
        };
        blocks.push_back(std::move(block));
    }
}

}  // namespace kempt::report
