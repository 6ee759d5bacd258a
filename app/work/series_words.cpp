#include "work/series_words.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "charts/chart_data.h"
#include "charts/figures.h"
#include "domain/words.h"
#include "work/measure_json.h"

namespace kempt::work {

namespace {

constexpr double days_in_month = 365.25 / 12;
// A date further away than this says nothing that a client could use (three years; common practice, no source).
constexpr double farthest_days = 3 * 365.25;
// So many degrees of freedom of the book leave no room for the documented default (change::combine_spread).
constexpr double expected_df = 8;

QString number(double value) {
    return QString::number(rounded(value, 2), 'g', 6);
}

// Smaller ones say no more, and rest on the tails of an approximation.
constexpr double least_p = 0.001;
QString p_words(double p) {
    return p < least_p ? QStringLiteral("< 0.001") : number(p);
}

QString day(const QDate& date) {
    return QLocale(QLocale::English, QLocale::UnitedKingdom).toString(date, u"d MMM yyyy");
}

std::vector<const VisitPoint*> trend_points(const Series& series) {
    std::vector<const VisitPoint*> points;
    for (const VisitPoint& point : series.visits)
        if (point.in_trend) points.push_back(&point);
    return points;
}

// A value of the series for people: two significant digits and the unit, differences of a share in points.
struct ForPeople {
    UnitConversion to;
    ForPeople(const Series& series, LengthUnit length) : to(conversion_of(series.unit, length)) {}
    [[nodiscard]] QString figure(double value) const { return number(value * to.factor); }
    // With as many decimals as the half-width of its interval can bear, and a true minus sign.
    [[nodiscard]] QString figure(double value, double half) const {
        if (!(half > 0)) return figure(value);
        const int decimals = charts::bearable_decimals(half * to.factor);
        const double scale = std::pow(10, decimals), shown = std::round(value * to.factor * scale) / scale;
        const QString text = QString::number(std::abs(shown), 'f', decimals);
        return shown < 0 ? QChar(0x2212) + text : text;
    }
    [[nodiscard]] QString unit() const {
        return to.unit == u"%" ? QStringLiteral("points") : charts::unit_for_people(to.unit);
    }
};

std::optional<QDate> date_at(const Series& series, const std::optional<double>& t, const QDate& now) {
    if (!t || !std::isfinite(*t) || *t - static_cast<double>(series.trend_origin.daysTo(now)) > farthest_days)
        return std::nullopt;
    return series.trend_origin.addDays(static_cast<qint64>(std::llround(*t)));
}

QString forecast_sentence(const TargetWay& way, const VisitPoint& now) {
    const change::Better better = change::better_direction(way.target.reading.toStdString());
    if (better == change::Better::neither  ? way.share.value_or(0) >= 1
        : better == change::Better::higher ? *now.mean >= way.target.value
                                           : *now.mean <= way.target.value)
        return QStringLiteral("The target is reached.");
    if (way.earliest && way.latest)
        return QStringLiteral("At the pace so far the target may be reached between %1 and %2.")
            .arg(day(*way.earliest), day(*way.latest));
    if (way.earliest)
        return QStringLiteral("At the pace so far the target is not reached before %1; no latest date can be given.")
            .arg(day(*way.earliest));
    return QStringLiteral("The visits so far do not lead to the target within three years, so no date is given.");
}

}  // namespace

void add_trend(Series& series, LengthUnit length) {
    const auto points = trend_points(series);
    if (static_cast<int>(points.size()) < change::visits_for_trend) {
        series.trend_text = QStringLiteral("No trend line: it takes %1 comparable visits, and there %2 %3.")
                                .arg(change::visits_for_trend)
                                .arg(points.size() == 1 ? QStringLiteral("is") : QStringLiteral("are"))
                                .arg(points.size());
        return;
    }
    std::vector<double> days, values;
    series.trend_origin = points.front()->date;
    for (const VisitPoint* point : points) {
        days.push_back(static_cast<double>(series.trend_origin.daysTo(point->date)));
        values.push_back(*point->mean);
    }
    series.trend = change::theil_sen(days, values);
    if (!series.trend) {
        series.trend_text = QStringLiteral("No trend line: the visits do not lie on different days.");
        return;
    }
    const change::Trend& trend = *series.trend;
    const ForPeople people(series, length);
    const bool sure = trend.p < 0.05;
    const double sign = trend.slope < 0 ? -1 : 1, slope = sign * trend.slope * days_in_month;
    const double one = trend.slope_low * days_in_month, other = trend.slope_high * days_in_month;
    if (!sure && trend.interval_known) {
        // Which way it went would be read as a finding: only the bounds are told.
        series.trend_text =
            QStringLiteral("Over %1 visits %2 shows no sure rise or fall: %3 to %4 %5 a month (95 %; p = %6).")
                .arg(points.size())
                .arg(title_of_reading(series.reading), people.figure(one, (other - one) / 2),
                     people.figure(other, (other - one) / 2), people.unit(), p_words(trend.p));
        return;
    }
    const double half = trend.interval_known ? (other - one) / 2 : 0;
    series.trend_text =
        QStringLiteral("%1 %2 by %3 %4 a month (%5p %6): %7")
            .arg(QStringLiteral("Over %1 visits %2").arg(points.size()).arg(title_of_reading(series.reading)),
                 trend.slope < 0 ? QStringLiteral("fell") : QStringLiteral("rose"), people.figure(slope, half),
                 people.unit(),
                 trend.interval_known ? QStringLiteral("95 %: %1 to %2; ")
                                            .arg(people.figure(std::min(sign * one, sign * other), half),
                                                 people.figure(std::max(sign * one, sign * other), half))
                                      : QString(),
                 trend.p < least_p ? p_words(trend.p) : QStringLiteral("= ") + p_words(trend.p),
                 sure ? QStringLiteral("more than chance") : QStringLiteral("it may be chance"));
    const PairVerdict* ends = series.first_to_last();
    const double whole = std::abs(trend.slope) * days.back(), seen = ends ? ends->judgement.smallest_detectable : 0;
    if (sure && whole < seen)
        series.trend_text += QStringLiteral(", but all of it is less than the %1 %2 that two visits can tell apart")
                                 .arg(people.figure(seen), people.unit());
    series.trend_text += QStringLiteral(".");
}

void add_target(Series& series, const Target& target) {
    TargetWay way;
    way.target = target;
    const auto points = trend_points(series);
    if (points.size() >= 2) way.share = change::share_of_way(*points.front()->mean, *points.back()->mean, target.value);
    if (!series.trend) {
        way.forecast_text = QStringLiteral("No forecast: ") + series.trend_text;
    } else {
        const VisitPoint& now = *points.back();
        if (series.trend->interval_known) {
            const auto forecast = change::forecast(
                *series.trend, static_cast<double>(series.trend_origin.daysTo(now.date)), *now.mean, target.value);
            way.earliest = date_at(series, forecast.earliest, now.date);
            way.middle = date_at(series, forecast.middle, now.date);
            way.latest = date_at(series, forecast.latest, now.date);
        }
        way.forecast_text = series.trend->interval_known
                                ? forecast_sentence(way, now)
                                : QStringLiteral("No forecast: the visits are too few for a range of dates.");
    }
    series.target = way;
}

QString sentence_start(QString words) {
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

QString spread_sentence(const change::Spread& client, const change::Spread& book, int client_groups,
                        const Series& series, LengthUnit length) {
    const ForPeople people(series, length);
    const change::Scale& scale = series.spread.scale;
    const QString share = number(100 * series.spread.setup_sd);
    double latest = 0;  // value at the latest visit that has one
    for (const VisitPoint& point : series.visits) latest = point.mean.value_or(latest);
    using Kind = change::Scale::Kind;
    QString setup = QStringLiteral("%1 % of the value").arg(share);
    if (scale.kind == Kind::lack)
        setup = QStringLiteral("%1 % of what the value lacks to %2").arg(share, number(scale.less));
    else if (scale.less > 0)
        setup = QStringLiteral("%1 % of what the value has above %2").arg(share, number(scale.less));
    else if (scale.kind != Kind::logarithm)
        setup =
            (people.figure(scale.difference(series.spread.setup_sd, latest, latest)) + QLatin1Char(' ') + people.unit())
                .trimmed();
    // Beyond what any hair is expected to differ by: the photos' own intervals say so (change::stated_sd).
    const bool mixed = series.spread.setup_sd > change::default_setup_sd(series.reading.toStdString());
    QString more;
    if (mixed)
        more = QStringLiteral(
            " What repeat shots cannot show is added to it: light and position that differ from visit to visit, and "
            "what these photos leave open, strands of mixed colour or a highlight: %1 (standard deviation).");
    else if (series.spread.setup_sd > 0)
        more = QStringLiteral(
            " What repeat shots cannot show, light and position that differ from visit to visit, is added to it: %1 "
            "(standard deviation).");
    if (!more.isEmpty()) more = more.arg(setup);
    if (client.df >= 30)
        return QStringLiteral("How far shots scatter is known from this client's own repeat shots at %1 visits.")
                   .arg(client_groups) +
               more;
    QString words = client.df > 0 ? QStringLiteral("How far shots scatter is known from %1 %2 of this client")
                                        .arg(number(client.df), client.df == 1 ? QStringLiteral("repeat shot")
                                                                               : QStringLiteral("repeat shots"))
                                  : QStringLiteral(
                                        "This client has no repeat shots of this view; how far shots "
                                        "scatter is known");
    if (book.df > 0)
        words += client.df > 0 ? QStringLiteral(", filled up from the other repeat shots in the book")
                               : QStringLiteral(" from the other repeat shots in the book");
    if (book.df < expected_df)
        words += client.df + book.df > 0 ? QStringLiteral(" and the documented default")
                                         : QStringLiteral(" from the documented default");
    return words + QStringLiteral(".") + more;
}

}  // namespace kempt::work
