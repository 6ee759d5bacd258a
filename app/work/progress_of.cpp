#include "work/progress_of.h"

#include <QHash>

#include "book/client_store.h"
#include "book/reading_store.h"
#include "book/service_store.h"
#include "book/target_store.h"
#include "book/visit_store.h"
#include "domain/words.h"
#include "work/errors.h"
#include "work/series_points.h"
#include "work/series_words.h"

namespace kempt::work {

namespace {

// The book's spread counts for 8 degrees of freedom at most (combine_spread); so many readings, half of them repeats,
// tell its SD to about 2 %.
constexpr int most_book_readings = 2000;

// What a reading's newest values are worth was asked about by the last client already, and stays so until something is
// measured or drawn: kept for the next one. A book and its connection belong to one thread.
Result<const QVector<store::SoundValue>*> values_of_book(Book& book, const QString& reading) {
    struct Kept {
        QString state;
        QVector<store::SoundValue> values;
    };
    thread_local QHash<QString, Kept> all;
    const auto state = store::state_of_newest_values(book, reading, most_book_readings);
    if (!state) return state.error();
    Kept& kept = all[reading];
    if (kept.state != state.value()) {
        auto read = store::newest_values_of_book(book, reading, most_book_readings);
        if (!read) return read.error();
        kept = {state.value(), std::move(read).value()};
    }
    return &kept.values;
}

change::VisitValue value_of(const VisitPoint& point, const QString& unit) {
    change::VisitValue value;
    for (const ShotValue& shot : point.shots) value.shots.push_back(shot.value);
    for (const QString& reason : point.not_comparable) value.not_comparable.push_back(reason.toStdString());
    value.unit = unit.toStdString();
    value.stated = stated_by(point);
    return value;
}

// Of every pair, or of those that a page shows: first to last of the trend, and the last two.
// alike: the spread but for what the shots state of themselves.
void add_verdicts(Series& series, const change::Spread& alike, const ProgressOptions& options) {
    const UnitConversion to_people = conversion_of(series.unit, options.length);
    change::Wording wording;
    wording.name = sentence_start(title_of_reading(series.reading)).toStdString();
    wording.unit = to_people.unit.toStdString();
    wording.factor = to_people.factor;
    const std::size_t count = series.visits.size();
    std::size_t first = count, last = count;
    for (std::size_t i = 0; i < count; ++i) {
        if (!series.visits[i].in_trend) continue;
        if (first == count) first = i;
        last = i;
    }
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = i + 1; j < count; ++j) {
            const bool ends = (i == first && j == last) || (i + 2 == count && j + 1 == count);
            if (options.pairs == Pairs::ends && !ends) continue;
            const VisitPoint &from = series.visits[i], &to = series.visits[j];
            wording.between.clear();
            for (const QString& reason : pair_reasons(from, to)) wording.between.push_back(reason.toStdString());
            series.verdicts.push_back({from.visit, to.visit,
                                       change::judge(series.reading.toStdString(), value_of(from, series.unit),
                                                     value_of(to, series.unit), alike, wording)});
        }
}

Status add_series(Book& book, const ProgressOptions& options, View view, const QString& reading,
                  const QVector<Target>& targets, std::vector<Series>& list) {
    const auto readings = store::readings_of_client(book, options.client, view, reading);
    if (!readings) return readings.error();
    if (readings->isEmpty()) return Done{};
    Series series;
    series.view = view;
    series.reading = reading;
    series.unit = readings->front().reading.unit;
    series.visits = points_from(readings.value());
    const auto own_groups = repeat_groups(readings.value());
    const change::Spread own = change::pooled_for(reading.toStdString(), own_groups);
    const auto all = values_of_book(book, reading);
    if (!all) return all.error();
    const change::Spread rest =
        change::pooled_for(reading.toStdString(), repeat_groups_of_book(**all, options.client, view));
    const change::Spread alike = change::spread_for(reading.toStdString(), own, rest);
    std::vector<change::Stated> stated;
    for (const VisitPoint& point : series.visits) {
        const auto shots = stated_by(point);
        stated.insert(stated.end(), shots.begin(), shots.end());
    }
    series.spread =
        change::allowing_for(change::stated_sd(reading.toStdString(), stated), reading.toStdString(), alike);
    add_noise(series.visits, alike, reading, series.unit);
    series.spread_from = spread_sentence(own, rest, static_cast<int>(own_groups.size()), series, options.length);
    choose_for_trend(series.visits);
    add_verdicts(series, alike, options);
    add_trend(series, options.length);
    for (const Target& target : targets)
        if (target.view == view && target.reading == reading) add_target(series, target);
    list.push_back(std::move(series));
    return Done{};
}

void add_asymmetry(ClientProgress& progress) {
    for (const QString& reading : edge_reading_names()) {
        const Series* left = progress.find(View::left_temple, reading);
        const Series* right = progress.find(View::right_temple, reading);
        if (!left || !right) continue;
        for (const VisitPoint& one : left->visits)
            for (const VisitPoint& other : right->visits)
                if (one.visit == other.visit && one.mean && other.mean)
                    progress.asymmetry.push_back(
                        {one.visit, one.date, reading, left->unit, *one.mean, *other.mean, *one.mean - *other.mean});
    }
}

}  // namespace

const PairVerdict* Series::verdict(Id from, Id to) const {
    for (const PairVerdict& pair : verdicts)
        if (pair.from == from && pair.to == to) return &pair;
    return nullptr;
}

const PairVerdict* Series::first_to_last() const {
    Id first = 0, last = 0;
    for (const VisitPoint& point : visits) {
        if (!point.in_trend) continue;
        if (first == 0) first = point.visit;
        last = point.visit;
    }
    return verdict(first, last);
}

const Series* ClientProgress::find(View view, const QString& reading) const {
    for (const Series& one : series)
        if (one.view == view && one.reading == reading) return &one;
    return nullptr;
}

Result<ClientProgress> progress_of(Book& book, const ProgressOptions& options, const Progress& progress) {
    ClientProgress result;
    auto client = store::get_client(book, options.client);
    if (!client) return client.error();
    result.client = std::move(client).value();
    auto visits = store::visits_of_client(book, options.client);
    if (!visits) return visits.error();
    result.visits = std::move(visits).value();
    auto services = store::services_of_client(book, options.client);
    if (!services) return services.error();
    result.services = std::move(services).value();
    const auto targets = store::targets_of_client(book, options.client);
    if (!targets) return targets.error();
    if (options.reading && !all_reading_names().contains(*options.reading))
        return invalid("unknown-reading", "There is no reading called '" + options.reading->toStdString() + "'.",
                       "Readings: " + all_reading_names().join(QStringLiteral(", ")).toStdString() + ".");
    const QStringList names = options.reading ? QStringList{*options.reading} : all_reading_names();
    const QVector<View> views = options.view ? QVector<View>{*options.view} : all_views();
    const auto measured = store::series_of_client(book, options.client);
    if (!measured) return measured.error();
    for (qsizetype v = 0; v < views.size(); ++v) {
        if (tell(progress, static_cast<double>(v) / static_cast<double>(views.size()), "comparing the visits") ==
            Go::stop)
            return stopped();
        for (const QString& name : names)
            if (!measured->contains({views[v], name}))
                continue;
            else if (const Status status = add_series(book, options, views[v], name, targets.value(), result.series);
                     !status)
                return status.error();
    }
    add_asymmetry(result);
    if (tell(progress, 1, "visits are compared") == Go::stop) return stopped();
    return result;
}

}  // namespace kempt::work
