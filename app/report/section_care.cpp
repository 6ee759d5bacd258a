// What the hair has been through, what is planned, care at home and the next dates.
#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

// A hand places a product to a millimetre at best; a tenth of an inch where inches are asked for.
QString length_of(double mm, LengthUnit length) {
    return plain_figure(mm, length == LengthUnit::inches ? 2.54 : 1, QStringLiteral("mm"), length);
}

QString text_of(const Stretch& hair, LengthUnit length) {
    if (hair.to_mm && hair.from_mm <= 0) return QStringLiteral("up to %1").arg(length_of(*hair.to_mm, length));
    if (hair.to_mm)
        return QStringLiteral("%1 to %2").arg(length_of(hair.from_mm, length), length_of(*hair.to_mm, length));
    return hair.from_mm > 0 ? QStringLiteral("beyond %1").arg(length_of(hair.from_mm, length))
                            : QStringLiteral("all of it");
}

QString text_of(const QVector<Stretch>& hair, LengthUnit length) {
    QStringList parts;
    for (const Stretch& one : hair) parts << QStringLiteral("%1, %2").arg(one.part, text_of(one, length));
    return parts.join(QStringLiteral("; "));
}

QString past_of(const PartLine& part, LengthUnit length) {
    QStringList past;
    for (const PastLine& one : part.been_through)
        past << QStringLiteral("%1%2 of %3 (%4)")
                    .arg(one.surely ? QString() : QStringLiteral("perhaps "), one.kind, day(one.date),
                         text_of(one.hair, length));
    if (past.isEmpty()) past << QStringLiteral("nothing on record");
    return past.join(QStringLiteral("; "));
}

QString clock_of(double minutes) {
    const int half_minutes = static_cast<int>(minutes * 2 + 0.5);
    return QStringLiteral("%1:%2").arg(half_minutes / 2).arg(half_minutes % 2 * 30, 2, 10, QLatin1Char('0'));
}

QString minutes_of(double minutes) {
    return QString::number(static_cast<int>(minutes * 2 + 0.5) / 2.0);
}

Cell level_of(const PlanFinding& finding) {
    Cell cell{.text = capitalised(finding.level), .bold = true};
    if (finding.level == u"stop") cell.colour = ink::worse;
    return cell;
}

void add_findings(Blocks& blocks, const Planned& planned, double width) {
    QVector<TableRow> rows;
    for (const PlanFinding& finding : planned.findings) {
        QStringList below;
        if (!finding.where.isEmpty()) below << QStringLiteral("Where: %1.").arg(finding.where);
        below << QStringLiteral("Source: %1.").arg(finding.source);
        rows << TableRow{.cells = {level_of(finding), {.text = finding.text, .below = below.join(u' ')}}};
    }
    add_table(blocks, {{QStringLiteral("Level"), 1}, {QStringLiteral("What speaks against it, and what helps"), 6}},
              rows, width);
}

void add_work(Blocks& blocks, const PlannedWork& work, const Context& context) {
    const LengthUnit length = context.options.length;
    add_subheading(blocks, capitalised(work.kind), context.width);
    QStringList facts;
    if (work.stopped && work.no_order.isEmpty()) facts << QStringLiteral("A stop speaks against it; see above.");
    if (!work.put_on.isEmpty()) facts << QStringLiteral("Put on: %1.").arg(text_of(work.put_on, length));
    if (!work.keep_off.isEmpty()) facts << QStringLiteral("Keep off: %1.").arg(text_of(work.keep_off, length));
    if (work.unsure)
        facts << QStringLiteral(
            "The record does not say what all of this hair has been through: find the line of "
            "demarcation by eye first.");
    if (!work.no_order.isEmpty()) facts << work.no_order;
    facts << work.would_help;
    if (!facts.isEmpty()) add_list(blocks, facts, context.width);
    if (work.order.isEmpty()) return;
    QVector<TableRow> rows;
    for (const WorkStep& step : work.order) {
        const QString carries =
            QStringLiteral("%1 to %2").arg(minutes_of(step.least_minutes), minutes_of(step.most_minutes));
        rows << TableRow{
            .cells = {
                {.text = QStringLiteral("%1 to %2").arg(clock_of(step.start_minutes), clock_of(step.end_minutes))},
                {.text = capitalised(step.where),
                 .below = work.people > 1 ? QStringLiteral("person %1").arg(step.person) : QString()},
                {.text = minutes_of(step.needed_minutes)},
                {.text = carries, .below = step.within ? QString() : QStringLiteral("beyond what is tolerated")}}};
    }
    rows << TableRow{.cells = {{.text = clock_of(work.rinse_minutes), .bold = true},
                               {.text = QStringLiteral("Rinse all"), .bold = true}}};
    add_table(blocks,
              {{QStringLiteral("From the first stroke"), 1.4},
               {QStringLiteral("Where"), 2.6},
               {QStringLiteral("Minutes it needs"), 1.2},
               {QStringLiteral("Minutes it carries it"), 1.4}},
              rows, context.width);
}

}  // namespace

void add_hair(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    if (model.hair.isEmpty()) return;
    const LengthUnit length = context.options.length;
    add_heading(blocks, QStringLiteral("What this hair has been through"), context.width);
    add_lead(blocks,
             QStringLiteral("Each service moves outward as the hair grows; lengths are from the scalp, as the hair is "
                            "today."),
             context.width);
    QVector<TableRow> rows;
    for (const PartLine& part : model.hair)
        rows << TableRow{
            .cells = {
                {.text = capitalised(part.hair.part), .below = text_of(part.hair, length)},
                {.text = capitalised(past_of(part, length)),
                 .below = part.complete ? QString() : QStringLiteral("What came before the record is not known.")}}};
    add_table(blocks, {{QStringLiteral("Part"), 1}, {QStringLiteral("On record, newest first"), 4}}, rows,
              context.width);
    for (const GrowthLine& growth : model.growth)
        add_paragraph(
            blocks,
            QStringLiteral("New growth since %1 of %2: %3. Source: %4.")
                .arg(growth.kind, day(growth.since),
                     figure({growth.since, growth.mm, growth.low, growth.high, 1}, QStringLiteral("mm"), length),
                     growth.source),
            context.width, ink::quiet, 8);
}

void add_planned(Blocks& blocks, const Context& context) {
    const Planned& planned = context.model.planned;
    if (planned.services.isEmpty()) return;
    add_heading(blocks, QStringLiteral("What is planned"), context.width);
    add_lead(blocks,
             QStringLiteral("What speaks against it on the record, and what to check first. Nothing here clears a "
                            "service."),
             context.width);
    add_findings(blocks, planned, context.width);
    if (!planned.questions.isEmpty()) {
        add_subheading(blocks,
                       planned.stop_questions > 0
                           ? QStringLiteral("Check first (a stop may hang on the first %1)").arg(planned.stop_questions)
                           : QStringLiteral("Check first"),
                       context.width);
        add_list(blocks, planned.questions, context.width);
    }
    for (const PlannedWork& work : planned.services) add_work(blocks, work, context);
    add_subheading(blocks, QStringLiteral("Always"), context.width);
    add_list(blocks, planned.always, context.width, true);
}

void add_next(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    if (!model.home_care.isEmpty()) {
        add_heading(blocks, QStringLiteral("Care at home"), context.width);
        QStringList tips, sources;
        for (const Tip& tip : model.home_care) {
            tips << tip.text;
            for (const QString& source : tip.source.split(QStringLiteral("; ")))
                if (!source.isEmpty() && !sources.contains(source)) sources << source;
        }
        add_list(blocks, tips, context.width);
        if (!sources.isEmpty()) blocks.back().keep_with_next = true;
        if (!sources.isEmpty())
            add_paragraph(blocks, QStringLiteral("Sources: %1.").arg(sources.join(QStringLiteral("; "))), context.width,
                          ink::quiet, 7.5);
    }
    if (model.next_dates.isEmpty()) return;
    add_heading(blocks, QStringLiteral("Next dates"), context.width);
    QVector<TableRow> rows;
    for (const NextDate& next : model.next_dates)
        rows << TableRow{
            .cells = {
                {.text = capitalised(next.what)},
                {.text = days(next.from, next.to), .below = next.passed ? QStringLiteral("has passed") : QString()},
                {.text = next.why,
                 .below = next.source.isEmpty() ? QString() : QStringLiteral("Source: %1.").arg(next.source)}}};
    add_table(blocks, {{QStringLiteral("What"), 1}, {QStringLiteral("When"), 1.8}, {QStringLiteral("Why"), 4}}, rows,
              context.width);
}

}  // namespace kempt::report
