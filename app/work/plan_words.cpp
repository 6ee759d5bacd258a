#include "work/plan_words.h"

#include <QLocale>
#include <cmath>

namespace kempt::work {

namespace {

QString text(std::string_view words) {
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString whole(double number) {
    return QString::number(std::lround(number));
}

QString half(double minutes) {
    return QLocale::c().toString(std::round(minutes * 2) / 2, 'f', std::fmod(std::round(minutes * 2), 2) == 0 ? 0 : 1);
}

// Minutes and seconds from the first stroke; a clock shows no less than half a minute that matters here.
QString clock_of(double minutes) {
    const long seconds = std::lround(minutes * 2) * 30;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

QString person(int hand, int hands) {
    return hands > 1 ? QStringLiteral(", person %1").arg(hand + 1) : QString();
}

void add_findings(const care::Advice& advice, bool stops, QStringList& lines) {
    for (const care::Finding& finding : advice.findings) {
        if (finding.sort != care::FindingSort::speaks_against) continue;
        if ((finding.level == care::RuleLevel::stop) != stops) continue;
        lines.append(QStringLiteral("  ") + line_of(finding));
        if (const QString places = places_of(finding); !places.isEmpty())
            lines.append(QStringLiteral("    where: ") + places);
        if (finding.wait_until) lines.append(QStringLiteral("    wait until ") + text_of(date_of(*finding.wait_until)));
        lines.append(QStringLiteral("    source: ") + QString::fromStdString(finding.source));
    }
}

void add_check_first(const CarePlan& plan, QStringList& lines) {
    if (plan.questions.empty()) return;
    const qsizetype stops = questions_of_stops(plan);
    lines.append(stops > 0 ? QStringLiteral("Check first (a stop may hang on the first %1):").arg(stops)
                           : QStringLiteral("Check first:"));
    for (const std::string& question : plan.questions)
        lines.append(QStringLiteral("  ") + QString::fromStdString(question));
}

void add_stretches(const char* what, const std::vector<care::Stretch>& stretches, QStringList& lines) {
    QStringList parts;
    for (const care::Stretch& stretch : stretches) parts.append(text_of(stretch));
    if (!parts.isEmpty()) lines.append(QStringLiteral("  %1 %2").arg(text(what), parts.join(QStringLiteral("; "))));
}

void add_service(const ServicePlan& service, QStringList& lines) {
    lines.append(QStringLiteral("Planned: ") + text(word_of(service.service.kind)));
    if (service.stopped) lines.append(QStringLiteral("  A stop speaks against it, see above."));
    add_stretches("put on:", service.coverage.put_on, lines);
    add_stretches("keep off:", service.coverage.keep_off, lines);
    if (service.coverage.unsure)
        lines.append(
            QStringLiteral("  The record does not say what all of this hair has been through: find the line of "
                           "demarcation by eye first."));
    if (!service.no_timeline.empty())
        lines.append(QStringLiteral("  No order of work: ") + QString::fromStdString(service.no_timeline));
    if (!service.timeline) return;
    const PlannedTimeline& planned = *service.timeline;
    if (!planned.timeline.works) {
        lines.append(QStringLiteral("  No order works. ") + QString::fromStdString(planned.timeline.why_not));
        lines.append(planned.would_help.empty()
                         ? QStringLiteral("  Neither more people nor rounds nor a milder strength would make one work.")
                         : QStringLiteral("  What would make one work:"));
        for (const ProvenRemedy& proven : planned.would_help) {
            lines.append(QStringLiteral("  - ") + QString::fromStdString(proven.remedy.text));
            for (std::size_t round = 0; round < proven.rounds.size(); ++round) {
                if (proven.rounds.size() > 1) lines.append(QStringLiteral("    round %1").arg(round + 1));
                for (const QString& line : lines_of(proven.remedy.rounds[round], proven.rounds[round]))
                    lines.append(QStringLiteral("    ") + line);
            }
        }
        return;
    }
    lines.append(QStringLiteral("  Order of work, minutes from the first stroke:"));
    for (const QString& line : lines_of(planned.application, planned.timeline))
        lines.append(QStringLiteral("  ") + line);
}

void add_hair(const CarePlan& plan, QStringList& lines) {
    if (plan.hair.empty()) return;
    lines.append(QStringLiteral("What this hair has been through:"));
    for (const PartRecord& record : plan.hair) {
        QStringList past;
        for (const Past& one : record.been_through)
            past.append(QStringLiteral("%1%2 of %3 (%4)")
                            .arg(one.surely ? QString() : QStringLiteral("perhaps "), text(word_of(one.kind)),
                                 text_of(date_of(one.day)), text_of(one.span)));
        if (past.isEmpty()) past.append(QStringLiteral("nothing on record"));
        if (!record.complete) past.append(QStringLiteral("what came before the record is not known"));
        lines.append(QStringLiteral("  %1, %2: %3")
                         .arg(text(word_of(record.part)), text_of(record.span), past.join(QStringLiteral("; "))));
    }
    for (const GrowthNow& growth : plan.growth) {
        lines.append(QStringLiteral("  ") + line_of(growth));
        lines.append(QStringLiteral("    source: ") + QString::fromStdString(growth.source));
    }
    lines.append(
        QStringLiteral("  growth %1 um a day (SD %2). %3")
            .arg(whole(plan.rate.um_per_day), whole(plan.rate.sd_um_per_day), QString::fromStdString(plan.rate_from)));
}

void add_home_care(const care::HomeCarePlan& home, QStringList& lines) {
    if (home.tips.empty()) return;
    lines.append(QStringLiteral("Care at home (%1 minutes a week%2):")
                     .arg(whole(home.minutes_a_week),
                          home.minutes_there_are
                              ? QStringLiteral(" of the %1 there are").arg(whole(*home.minutes_there_are))
                              : QString()));
    for (const care::Tip& tip : home.tips) {
        lines.append(QStringLiteral("  ") + QString::fromStdString(tip.text));
        lines.append(QStringLiteral("    source: ") + QString::fromStdString(tip.source));
    }
}

}  // namespace

qsizetype questions_of_stops(const CarePlan& plan) {
    care::Advice stops;
    for (const care::Finding& finding : plan.advice.findings)
        if (finding.level == care::RuleLevel::stop) stops.findings.push_back(finding);
    return static_cast<qsizetype>(care::questions_of(stops).size());
}

QString text_of(const care::Span& span) {
    if (!std::isfinite(span.to_mm)) return QStringLiteral("beyond %1 mm").arg(whole(span.from_mm));
    return QStringLiteral("%1-%2 mm").arg(whole(span.from_mm), whole(span.to_mm));
}

QString text_of(const care::Stretch& stretch) {
    return text(word_of(stretch.part)) + QStringLiteral(", ") + text_of(stretch.span);
}

QString text_of(QDate day) {
    return QLocale(QLocale::English, QLocale::UnitedKingdom).toString(day, QStringLiteral("d MMM yyyy"));
}

QString word_of_level(care::RuleLevel level) {
    QString word = text(care::word_of(level));
    word[0] = word[0].toUpper();
    return word;
}

QString places_of(const care::Finding& finding) {
    QStringList places;
    for (const care::Place& place : finding.where)
        if (const QString phrase = QString::fromStdString(care::phrase_of(place)); !phrase.isEmpty())
            places.append(phrase);
    return places.join(QStringLiteral("; "));
}

QString line_of(const care::Finding& finding) {
    return word_of_level(finding.level) + QStringLiteral(": ") + QString::fromStdString(care::sentence_of(finding));
}

QStringList lines_of(const care::Application& application, const care::Timeline& timeline) {
    QStringList lines;
    for (const care::Placed& placed : timeline.order) {
        const care::Task& task = application.tasks[placed.task];
        QString where = text(word_of(task.part));
        if (!task.section.empty()) where += QStringLiteral(" of ") + QString::fromStdString(task.section);
        QString off;
        if (placed.under_percent >= 0.5) off += QStringLiteral(", up to %1 % under").arg(whole(placed.under_percent));
        if (placed.over_percent >= 0.5) off += QStringLiteral(", up to %1 % over").arg(whole(placed.over_percent));
        if (!placed.within) off += QStringLiteral(": beyond what is tolerated");
        lines.append(QStringLiteral("%1 to %2  %3%4; carries it %5-%6 minutes, needs %7%8")
                         .arg(clock_of(placed.start_minutes), clock_of(placed.end_minutes), where,
                              person(placed.hand, application.hands), half(placed.least_minutes),
                              half(placed.most_minutes), half(task.needed_minutes), off));
    }
    lines.append(QStringLiteral("%1  rinse").arg(clock_of(timeline.rinse_minutes)));
    return lines;
}

QString line_of(const care::DateRange& range) {
    QString line = QStringLiteral("%1: %2 to %3")
                       .arg(text(word_of(range.sort)), text_of(date_of(range.from)), text_of(date_of(range.to)));
    if (range.expected) line += QStringLiteral(", likeliest ") + text_of(date_of(*range.expected));
    return line;
}

QString line_of(const GrowthNow& growth) {
    const auto mm = [](double value) { return QLocale::c().toString(value, 'f', value < 10 ? 1 : 0); };
    return QStringLiteral("new growth since %1 of %2: %3 mm (%4-%5), %6")
        .arg(text(word_of(growth.kind)), text_of(date_of(growth.since)), mm(growth.new_growth_mm.value),
             mm(growth.new_growth_mm.low), mm(growth.new_growth_mm.high),
             !growth.measured ? QStringLiteral("from the rate of growth")
             : growth.by_tape ? QStringLiteral("measured by tape at its line of demarcation")
                              : QStringLiteral("measured on a photo at its line of demarcation"));
}

QString was_it_done(const Service& service) {
    return QStringLiteral("was it done? %1 planned for %2 (kempt service change BOOK --service %3 --done)")
        .arg(service.kind, text_of(service.date))
        .arg(service.id);
}

QString history_sentence(const CarePlan& plan) {
    if (!plan.history_told_on) return {};
    return (plan.history_told_on->isValid()
                ? QStringLiteral("It was told on %1 how far the record goes back, too long ago to count.")
                      .arg(text_of(*plan.history_told_on))
                : QStringLiteral("When it was told how far the record goes back was not kept.")) +
           QStringLiteral(" Ask again whether every service is in it, those elsewhere and at home too.");
}

QStringList lines_of(const CarePlan& plan) {
    QStringList lines;
    for (const Service& service : plan.unanswered) {
        QString line = was_it_done(service);
        line[0] = line[0].toUpper();
        lines.append(line);
    }
    if (const QString asked = history_sentence(plan); !asked.isEmpty()) lines.append(asked);
    if (plan.advice.stopped) {
        lines.append(QStringLiteral("Stops:"));
        add_findings(plan.advice, true, lines);
    } else {
        lines.append(
            QStringLiteral("Stops: on what is written down, none of the rules speaks one. That clears nothing."));
    }
    add_check_first(plan, lines);
    QStringList others;
    add_findings(plan.advice, false, others);
    if (!others.isEmpty()) lines.append(QStringLiteral("Cautions and notes:"));
    lines += others;
    for (const ServicePlan& service : plan.services) add_service(service, lines);
    add_hair(plan, lines);
    if (!plan.dates.empty()) lines.append(QStringLiteral("Next dates:"));
    for (const care::DateRange& range : plan.dates) {
        lines.append(QStringLiteral("  ") + line_of(range) +
                     (date_of(range.to) < plan.today ? QStringLiteral(", has passed") : QString()));
        lines.append(QStringLiteral("    %1 Source: %2")
                         .arg(QString::fromStdString(range.reason), QString::fromStdString(range.source)));
    }
    add_home_care(plan.home_care, lines);
    lines.append(QStringLiteral("Always:"));
    for (const care::Caution& caution : plan.advice.always)
        lines.append(QStringLiteral("  ") + QString::fromStdString(caution.text));
    return lines;
}

}  // namespace kempt::work
