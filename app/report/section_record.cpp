// Services, grades, what comes next, what was left out, and the record copy's list of every reading.
#include <QSet>
#include <algorithm>

#include "domain/words.h"
#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

// "2: one continuous line" without its step, which has a column of its own.
QString without_step(const GradeLine& grade) {
    const QString step = QStringLiteral("%1: ").arg(grade.value);
    return grade.anchor.startsWith(step) ? grade.anchor.mid(step.size()) : grade.anchor;
}

// The client's copy shows the first and the latest grade of each zone and quality, the record copy all.
QVector<GradeLine> grades_shown(const Model& model, Copy copy) {
    if (copy == Copy::record) return model.grades;
    const auto key = [](const GradeLine& grade) { return grade.zone + u'\n' + grade.quality; };
    QVector<GradeLine> out;
    QSet<QString> done;
    for (const GradeLine& grade : model.grades) {
        if (done.contains(key(grade))) continue;
        done << key(grade);
        const GradeLine *first = &grade, *latest = &grade;
        for (const GradeLine& other : model.grades) {
            if (key(other) != key(grade)) continue;
            if (other.date < first->date) first = &other;
            if (other.date > latest->date) latest = &other;
        }
        out << *first;
        if (latest != first) out << *latest;
    }
    return out;
}

}  // namespace

void add_services(Blocks& blocks, const Context& context) {
    if (context.model.services.isEmpty()) return;
    const Speech& say = context.say;
    add_heading(blocks, say("Services"), context.width);
    QVector<TableRow> rows;
    for (const ServiceLine& service : context.model.services) {
        QStringList facts;
        for (const QString& detail : service.details) facts << say(detail);
        if (!service.result.isEmpty()) facts << service.result;
        const QString kind = say(service.kind);
        rows << TableRow{.cells = {{.text = day(service.date, say)},
                                   {.text = capitalised(service.planned ? say("%1 (planned)").arg(kind) : kind)},
                                   facts.isEmpty() ? Cell{.text = service.note, .colour = ink::quiet}
                                                   : Cell{.text = capitalised(facts.join(QStringLiteral("; "))),
                                                          .below = service.note}}};
    }
    add_table(blocks, {{say("Date"), 1}, {say("Service"), 2}, {say("Where and how"), 3}}, rows, context.width);
}

void add_grades(Blocks& blocks, const Context& context) {
    if (context.model.grades.isEmpty()) return;
    const Speech& say = context.say;
    add_heading(blocks, say("The stylist's grades"), context.width);
    add_lead(blocks,
             say("A judgement by eye from 0 to 4; 4 is hair or scalp at its best. The words beside each grade "
                 "are the anchor of that step."),
             context.width);
    QVector<TableRow> rows;
    for (const GradeLine& grade : grades_shown(context.model, context.options.copy)) {
        QString value = say("%1 of 4").arg(grade.value);
        QString below = grade.second ? say("again: %1").arg(*grade.second) : QString();
        rows << TableRow{.cells = {{.text = day(grade.date, say)},
                                   {.text = capitalised(say(grade.zone))},
                                   {.text = capitalised(say(grade.quality))},
                                   {.text = value, .below = below, .bold = true},
                                   {.text = capitalised(say(without_step(grade)))}}};
    }
    add_table(blocks,
              {{say("Date"), 1.1}, {say("Zone"), 1.2}, {say("Quality"), 1}, {say("Grade"), 0.8}, {say("Anchor"), 3.4}},
              rows, context.width);
    if (!context.model.grade_agreement.isEmpty())
        add_paragraph(blocks, say(context.model.grade_agreement), context.width, ink::quiet, 8);
}

void add_left_out(Blocks& blocks, const Context& context) {
    if (context.model.visits == 0 && context.model.left_out.isEmpty()) return;
    const Speech& say = context.say;
    add_heading(blocks, say("Left out, and why"), context.width);
    if (context.model.left_out.isEmpty()) {
        add_paragraph(blocks, say("Nothing was refused."), context.width);
        return;
    }
    QVector<TableRow> rows;
    for (const LeftOut& out : context.model.left_out)
        rows << TableRow{.cells = {{.text = day(out.date, say)},
                                   {.text = capitalised(say(word_of(out.view)))},
                                   {.text = capitalised(say(out.what))},
                                   {.text = capitalised(say(out.reason)), .below = capitalised(say(out.remedy))}}};
    add_table(blocks, {{say("Date"), 1}, {say("View"), 1.1}, {say("What"), 1.2}, {say("Why, and what helps"), 3.6}},
              rows, context.width);
}

void add_method(Blocks& blocks, const Context& context) {
    const Speech& say = context.say;
    add_heading(blocks, say("How it was measured"), context.width);
    add_list(blocks, method_sentences(context.model, say), context.width);
}

void add_cautions(Blocks& blocks, const Context& context) {
    const Speech& say = context.say;
    add_heading(blocks, say("Cautions"), context.width);
    QStringList all;
    for (const Tip& caution : context.model.cautions)
        all << QStringLiteral("%1 (%2)").arg(say(caution.text), say(caution.source));
    add_list(blocks, all + standing_cautions(say), context.width, true);
}

void add_history(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    const Speech& say = context.say;
    if (context.options.copy != Copy::record || model.history.isEmpty()) return;
    add_heading(blocks, say("Every reading of every visit"), context.width);
    QVector<TableRow> rows, photos;
    QSet<QString> seen;
    for (const HistoryLine& line : model.history) {
        Cell value{.text =
                       figure({line.date, line.value, line.low, line.high, 1}, line.unit, context.options.length, say)};
        if (line.refused) value = {.text = say("Refused: %1").arg(say(line.refusal)), .colour = ink::quiet};
        rows << TableRow{.cells = {{.text = day(line.date, say)},
                                   {.text = capitalised(say(word_of(line.view)))},
                                   {.text = QString::number(line.shot)},
                                   {.text = capitalised(say(title_of_reading(line.reading)))},
                                   value,
                                   {.text = QString::number(line.analysis_version)}}};
        if (line.photo_sha256.isEmpty() || seen.contains(line.photo_sha256)) continue;
        seen << line.photo_sha256;
        photos << TableRow{.cells = {{.text = day(line.date, say)},
                                     {.text = capitalised(say(word_of(line.view)))},
                                     {.text = QString::number(line.shot)},
                                     {.text = line.photo_sha256, .code = true}}};
    }
    add_table(blocks,
              {{say("Date"), 1.1},
               {say("View"), 1.2},
               {say("Shot"), 0.4},
               {say("Reading"), 1.6},
               {say("Value and 95 % interval"), 2.4},
               {say("Method version"), 0.7}},
              rows, context.width);
    if (photos.isEmpty()) return;
    add_heading(blocks, say("The photographs behind them"), context.width);
    add_lead(blocks, say("SHA-256 of each original file, kept untouched in the book."), context.width);
    add_table(blocks, {{say("Date"), 1.1}, {say("View"), 1.2}, {say("Shot"), 0.4}, {QStringLiteral("SHA-256"), 4.2}},
              photos, context.width);
}

}  // namespace kempt::report
