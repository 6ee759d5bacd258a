// What the hair has been through, what is planned, care at home and the next dates.
#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

// A hand places a product to a millimetre at best; a tenth of an inch where inches are asked for.
QString length_of(double mm, LengthUnit length, const Speech& say) {
    return plain_figure(mm, length == LengthUnit::inches ? 2.54 : 1, QStringLiteral("mm"), length, say);
}

QString text_of(const Stretch& hair, LengthUnit length, const Speech& say) {
    if (hair.to_mm && hair.from_mm <= 0) return say("up to %1").arg(length_of(*hair.to_mm, length, say));
    if (hair.to_mm)
        return say("%1 to %2").arg(length_of(hair.from_mm, length, say), length_of(*hair.to_mm, length, say));
    return hair.from_mm > 0 ? say("beyond %1").arg(length_of(hair.from_mm, length, say)) : say("all of it");
}

QString text_of(const QVector<Stretch>& hair, LengthUnit length, const Speech& say) {
    QStringList parts;
    for (const Stretch& one : hair) parts << QStringLiteral("%1, %2").arg(say(one.part), text_of(one, length, say));
    return parts.join(QStringLiteral("; "));
}

QString past_of(const PartLine& part, LengthUnit length, const Speech& say) {
    QStringList past;
    for (const PastLine& one : part.been_through)
        past << (one.surely ? say("%1 of %2 (%3)") : say("perhaps %1 of %2 (%3)"))
                    .arg(say(one.kind), day(one.date, say), text_of(one.hair, length, say));
    if (past.isEmpty()) past << say("nothing on record");
    return past.join(QStringLiteral("; "));
}

QString clock_of(double minutes) {
    const int half_minutes = static_cast<int>(minutes * 2 + 0.5);
    return QStringLiteral("%1:%2").arg(half_minutes / 2).arg(half_minutes % 2 * 30, 2, 10, QLatin1Char('0'));
}

QString minutes_of(double minutes, const Speech& say) {
    return say.figures(QString::number(static_cast<int>(minutes * 2 + 0.5) / 2.0));
}

Cell level_of(const PlanFinding& finding, const Speech& say) {
    Cell cell{.text = capitalised(say(finding.level)), .bold = true};
    if (finding.level == u"stop") cell.colour = ink::worse;
    return cell;
}

QStringList said(const QStringList& all, const Speech& say) {
    QStringList out;
    for (const QString& one : all) out << say(one);
    return out;
}

void add_findings(Blocks& blocks, const Planned& planned, double width, const Speech& say) {
    QVector<TableRow> rows;
    for (const PlanFinding& finding : planned.findings) {
        QStringList below;
        QStringList places;
        for (const QString& place : finding.where) places << say(place);
        if (!places.isEmpty()) below << say("Where: %1.").arg(places.join(QStringLiteral("; ")));
        below << say("Source: %1.").arg(say(finding.source));
        rows << TableRow{.cells = {level_of(finding, say), {.text = say(finding.text), .below = below.join(u' ')}}};
    }
    add_table(blocks, {{say("Level"), 1}, {say("What speaks against it, and what helps"), 6}}, rows, width);
}

void add_work(Blocks& blocks, const PlannedWork& work, const Context& context) {
    const LengthUnit length = context.options.length;
    const Speech& say = context.say;
    add_subheading(blocks, capitalised(say(work.kind)), context.width);
    QStringList facts;
    if (work.stopped && work.no_order.isEmpty()) facts << say("A stop speaks against it; see above.");
    if (!work.put_on.isEmpty()) facts << say("Put on: %1.").arg(text_of(work.put_on, length, say));
    if (!work.keep_off.isEmpty()) facts << say("Keep off: %1.").arg(text_of(work.keep_off, length, say));
    if (work.unsure)
        facts << say(
            "The record does not say what all of this hair has been through: find the line of "
            "demarcation by eye first.");
    if (!work.no_order.isEmpty()) facts << say(work.no_order);
    for (const QString& help : work.would_help) facts << say("What would work: %1").arg(say(help));
    if (!facts.isEmpty()) add_list(blocks, facts, context.width);
    if (work.order.isEmpty()) return;
    QVector<TableRow> rows;
    for (const WorkStep& step : work.order) {
        const QString carries =
            say("%1 to %2").arg(minutes_of(step.least_minutes, say), minutes_of(step.most_minutes, say));
        rows << TableRow{
            .cells = {
                {.text = say("%1 to %2").arg(clock_of(step.start_minutes), clock_of(step.end_minutes))},
                {.text = capitalised(step.section.isEmpty() ? say(step.part)
                                                            : say("%1 of %2").arg(say(step.part), say(step.section))),
                 .below = work.people > 1 ? say("person %1").arg(step.person) : QString()},
                {.text = minutes_of(step.needed_minutes, say)},
                {.text = carries, .below = step.within ? QString() : say("beyond what is tolerated")}}};
    }
    rows << TableRow{
        .cells = {{.text = clock_of(work.rinse_minutes), .bold = true}, {.text = say("Rinse all"), .bold = true}}};
    add_table(blocks,
              {{say("From the first stroke"), 1.4},
               {say("Where"), 2.6},
               {say("Minutes it needs"), 1.2},
               {say("Minutes it carries it"), 1.4}},
              rows, context.width);
}

}  // namespace

void add_hair(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    if (model.hair.isEmpty()) return;
    const LengthUnit length = context.options.length;
    const Speech& say = context.say;
    add_heading(blocks, say("What this hair has been through"), context.width);
    add_lead(blocks,
             say("Each service moves outward as the hair grows; lengths are from the scalp, as the hair is "
                 "today."),
             context.width);
    QVector<TableRow> rows;
    for (const PartLine& part : model.hair)
        rows << TableRow{
            .cells = {{.text = capitalised(say(part.hair.part)), .below = text_of(part.hair, length, say)},
                      {.text = capitalised(past_of(part, length, say)),
                       .below = part.complete ? QString() : say("What came before the record is not known.")}}};
    add_table(blocks, {{say("Part"), 1}, {say("On record, newest first"), 4}}, rows, context.width);
    for (const GrowthLine& growth : model.growth)
        add_paragraph(
            blocks,
            say("New growth since %1 of %2: %3. Source: %4.")
                .arg(say(growth.kind), day(growth.since, say),
                     figure({growth.since, growth.mm, growth.low, growth.high, 1}, QStringLiteral("mm"), length, say),
                     say(growth.source)),
            context.width, ink::quiet, 8);
}

void add_planned(Blocks& blocks, const Context& context) {
    const Planned& planned = context.model.planned;
    if (planned.services.isEmpty()) return;
    const Speech& say = context.say;
    add_heading(blocks, say("What is planned"), context.width);
    add_lead(blocks,
             say("What speaks against it on the record, and what to check first. Nothing here clears a "
                 "service."),
             context.width);
    add_findings(blocks, planned, context.width, say);
    if (!planned.questions.isEmpty()) {
        add_subheading(blocks,
                       planned.stop_questions > 0
                           ? say("Check first (a stop may hang on the first %1)").arg(planned.stop_questions)
                           : say("Check first"),
                       context.width);
        add_list(blocks, said(planned.questions, say), context.width);
    }
    for (const PlannedWork& work : planned.services) add_work(blocks, work, context);
    add_subheading(blocks, say("Always"), context.width);
    add_list(blocks, said(planned.always, say), context.width, true);
}

void add_next(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    const Speech& say = context.say;
    if (!model.home_care.isEmpty()) {
        add_heading(blocks, say("Care at home"), context.width);
        QStringList tips, sources;
        for (const Tip& tip : model.home_care) {
            tips << say(tip.text);
            for (const QString& source : tip.source.split(QStringLiteral("; ")))
                if (!source.isEmpty() && !sources.contains(say(source))) sources << say(source);
        }
        add_list(blocks, tips, context.width);
        if (!sources.isEmpty()) blocks.back().keep_with_next = true;
        if (!sources.isEmpty())
            add_paragraph(blocks, say("Sources: %1.").arg(sources.join(QStringLiteral("; "))), context.width,
                          ink::quiet, 7.5);
    }
    if (model.next_dates.isEmpty()) return;
    add_heading(blocks, say("Next dates"), context.width);
    QVector<TableRow> rows;
    for (const NextDate& next : model.next_dates)
        rows << TableRow{
            .cells = {{.text = capitalised(say(next.what))},
                      {.text = days(next.from, next.to, say), .below = next.passed ? say("has passed") : QString()},
                      {.text = say(next.why),
                       .below = next.source.isEmpty() ? QString() : say("Source: %1.").arg(say(next.source))}}};
    add_table(blocks, {{say("What"), 1}, {say("When"), 1.8}, {say("Why"), 4}}, rows, context.width);
}

}  // namespace kempt::report
