// Readings of the book, with their verdicts, as the care rules ask for them.
#include "domain/words.h"
#include "work/care_freshness.h"
#include "work/care_parts.h"
#include "work/progress_of.h"

namespace kempt::work {

namespace {

// What the rules look at.
const QStringList& asked_readings() {
    static const QStringList names = {QStringLiteral("edge_coverage"), QStringLiteral("short_share"),
                                      QStringLiteral("tone_spread")};
    return names;
}

// A reading that has no better and worse gives none.
std::optional<care::Direction> direction_of(change::Verdict verdict) {
    switch (verdict) {
        case change::Verdict::improved:
            return care::Direction::improved;
        case change::Verdict::worse:
            return care::Direction::worse;
        case change::Verdict::no_detectable_change:
            return care::Direction::no_detectable_change;
        case change::Verdict::not_comparable:
            return care::Direction::not_comparable;
        case change::Verdict::changed:
            break;
    }
    return std::nullopt;
}

void add_series(const Series& series, QDate today, care::ClientState& state) {
    const VisitPoint *newest = nullptr, *before = nullptr;
    for (const VisitPoint& point : series.visits) {
        if (point.date > today || !point.mean) continue;
        before = newest;
        newest = &point;
    }
    if (!newest || newest->date.daysTo(today) > reading_days) return;
    care::Measured measured{
        series.reading.toStdString(), word_of(series.view).toStdString(), *newest->mean, newest->low, newest->high, {}};
    if (before)
        if (const PairVerdict* pair = series.verdict(before->visit, newest->visit))
            measured.verdict = direction_of(pair->judgement.verdict);
    state.readings.push_back(measured);
}

// "tone_step": the strongest line of demarcation of each view's newest visit that shows one.
Status add_steps(Book& book, Id client, QDate today, care::ClientState& state) {
    const auto lines = lines_of_client(book, client, today);
    if (!lines) return lines.error();
    for (const View view : all_views()) {
        const SeenLine* strongest = nullptr;
        for (const SeenLine& line : lines.value()) {  // by date
            if (line.view != view || line.date.daysTo(today) > reading_days) continue;
            if (!strongest || line.date > strongest->date || line.step.value > strongest->step.value) strongest = &line;
        }
        if (strongest)
            state.readings.push_back({"tone_step",
                                      word_of(view).toStdString(),
                                      strongest->step.value,
                                      strongest->step.low,
                                      strongest->step.high,
                                      {}});
    }
    return Done{};
}

}  // namespace

Status add_readings(Book& book, Id client, QDate today, care::ClientState& state) {
    for (const QString& name : asked_readings()) {
        ProgressOptions options;
        options.client = client;
        options.reading = name;
        const auto progress = progress_of(book, options);
        if (!progress) return progress.error();
        for (const Series& series : progress->series) add_series(series, today, state);
    }
    return add_steps(book, client, today, state);
}

}  // namespace kempt::work
