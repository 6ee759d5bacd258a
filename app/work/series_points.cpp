#include "work/series_points.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <cmath>
#include <map>

#include "domain/readings.h"
#include "work/details_json.h"

namespace kempt::work {

namespace {

QString source_of(const ReadingRecord& reading) {
    return QJsonDocument::fromJson(reading.card.toUtf8()).object()["source"].toString();
}

// A card or sheet knows tilt and light, two points only the scale.
bool measured_scale(const QString& source) {
    return source == u"card" || source == u"sheet";
}

QString shot_words(const store::DatedReading& dated, const QString& why) {
    return QStringLiteral("Shot %1: %2").arg(dated.shot).arg(why);
}

void add_shot(VisitPoint& point, const store::DatedReading& dated, bool visit_has_card) {
    const ReadingRecord& reading = dated.reading;
    if (dated.drawn_anew)
        point.left_out.append(shot_words(dated, QStringLiteral("The line was drawn anew and is not measured yet.")));
    else if (dated.quality_level == u"refused" && !reading.refused)
        point.left_out.append(shot_words(dated, QStringLiteral("the photo was refused at the gate.")));
    else if (reading.refused)
        point.left_out.append(shot_words(dated, reading.refusal_text));
    else if (visit_has_card && !measured_scale(source_of(reading)))
        point.left_out.append(shot_words(
            dated, QStringLiteral("its scale comes from two points, while the other shots show the gauge card.")));
    else {
        point.shots.push_back({reading.photo, dated.shot, reading.value, reading.low, reading.high});
        point.scale_source = source_of(reading);
        point.analysis_version = std::max(point.analysis_version, reading.analysis_version);
        // Only what lives from the light has to ask how it stood.
        if (!point.light && reading_names_of(ReadingGroup::shine).contains(reading.name))
            point.light = light_from_details(reading.details.toUtf8());
    }
}

// Why a visit has no value: the reason that its shots share, else that of the first.
QString why_none(const QStringList& left_out) {
    if (left_out.isEmpty()) return QStringLiteral("There is no photo of this view.");
    QStringList reasons;
    for (const QString& words : left_out) reasons.append(words.section(QStringLiteral(": "), 1));
    reasons.removeDuplicates();
    if (reasons.size() == 1) return QStringLiteral("No shot gives this reading. ") + reasons.front();
    return QStringLiteral("No shot gives this reading. %1 The other shots have reasons of their own.")
        .arg(left_out.front());
}

}  // namespace

QString words_of(const HairState& hair) {
    return QStringLiteral("%1, %2, %3")
        .arg(hair.wet ? QStringLiteral("wet") : QStringLiteral("dry"),
             hair.styled ? QStringLiteral("styled") : QStringLiteral("unstyled"),
             hair.product ? QStringLiteral("with product") : QStringLiteral("without product"));
}

std::vector<VisitPoint> points_from(const QVector<store::DatedReading>& readings) {
    std::vector<VisitPoint> points;
    std::map<Id, bool> has_card;
    for (const store::DatedReading& dated : readings)
        if (!dated.reading.refused && !dated.drawn_anew && measured_scale(source_of(dated.reading)))
            has_card[dated.visit] = true;
    for (const store::DatedReading& dated : readings) {
        if (points.empty() || points.back().visit != dated.visit) {
            VisitPoint point;
            point.visit = dated.visit;
            point.date = dated.date;
            point.hair = dated.hair;
            points.push_back(point);
        }
        add_shot(points.back(), dated, has_card[dated.visit]);
    }
    for (VisitPoint& point : points)
        if (point.shots.empty()) point.not_comparable.append(why_none(point.left_out));
    return points;
}

std::vector<std::vector<double>> repeat_groups(const QVector<store::DatedReading>& readings) {
    std::map<Id, std::vector<double>> groups;
    for (const store::DatedReading& dated : readings)
        if (!dated.reading.refused && !dated.drawn_anew && dated.quality_level != u"refused")
            groups[dated.visit].push_back(dated.reading.value);
    std::vector<std::vector<double>> list;
    for (auto& [visit, values] : groups) list.push_back(std::move(values));
    return list;
}

std::vector<std::vector<double>> repeat_groups_of_book(const QVector<store::SoundValue>& values, Id without_client,
                                                       View without_view) {
    std::vector<std::vector<double>> list;
    const store::SoundValue* last = nullptr;
    for (const store::SoundValue& one : values) {
        if (one.client == without_client && one.view == without_view) continue;
        const bool same =
            last != nullptr && last->client == one.client && last->view == one.view && last->visit == one.visit;
        if (!same) list.emplace_back();
        list.back().push_back(one.value);
        last = &one;
    }
    return list;
}

QStringList pair_reasons(const VisitPoint& from, const VisitPoint& to) {
    QStringList reasons;
    if (!(from.hair == to.hair))
        reasons.append(QStringLiteral("The hair was %1 at one visit and %2 at the other.")
                           .arg(words_of(from.hair), words_of(to.hair)));
    if (from.shots.empty() || to.shots.empty()) return reasons;
    if (measured_scale(from.scale_source) != measured_scale(to.scale_source))
        reasons.append(QStringLiteral(
            "One visit was photographed with the gauge card, the other has its scale from two points only."));
    if (from.light && to.light)
        if (const auto why = shine::light_differs(*from.light, *to.light)) reasons.append(QString::fromStdString(*why));
    if (from.analysis_version != to.analysis_version)
        reasons.append(QStringLiteral(
            "The visits were measured by different versions of the method; measure the older photos again."));
    return reasons;
}

std::vector<change::Stated> stated_by(const VisitPoint& point) {
    std::vector<change::Stated> stated;
    for (const ShotValue& shot : point.shots) stated.push_back({shot.value, shot.low, shot.high});
    return stated;
}

void add_noise(std::vector<VisitPoint>& points, const change::Spread& alike, const QString& reading_name,
               const QString& unit) {
    const std::string reading = reading_name.toStdString();
    for (VisitPoint& point : points) {
        if (point.shots.empty()) continue;
        double sum = 0, low = 0, high = 0;
        for (const ShotValue& shot : point.shots) sum += shot.value, low += shot.low, high += shot.high;
        const double count = static_cast<double>(point.shots.size());
        point.mean = sum / count;
        if (!(alike.df > 0)) {  // no repeats and no default: what the readings say of themselves
            point.low = low / count;
            point.high = high / count;
            continue;
        }
        const change::Spread spread =
            change::allowing_for(change::stated_sd(reading, stated_by(point)), reading, alike);
        // What repeat shots cannot show lies between visits, so more shots do not lessen it.
        const double half =
            change::student_t_quantile(0.975, spread.df) * std::hypot(spread.sd / std::sqrt(count), spread.setup_sd);
        point.low = spread.scale.along(*point.mean, -half);
        point.high = spread.scale.along(*point.mean, half);
        if (unit == u"%") point.high = std::min(100.0, point.high);  // no share is above all
    }
}

void choose_for_trend(std::vector<VisitPoint>& points) {
    // The largest set of visits that agree; of two equally large ones the one that holds the later visit.
    std::size_t best = 0;
    std::vector<bool> chosen(points.size(), false);
    for (const VisitPoint& like : points) {
        if (like.shots.empty()) continue;
        std::vector<bool> agree(points.size(), false);
        for (std::size_t i = 0; i < points.size(); ++i)
            agree[i] = !points[i].shots.empty() && pair_reasons(like, points[i]).isEmpty();
        const auto size = static_cast<std::size_t>(std::count(agree.begin(), agree.end(), true));
        if (size < best) continue;
        best = size;
        chosen = agree;
    }
    for (std::size_t i = 0; i < points.size(); ++i) points[i].in_trend = chosen[i];
}

}  // namespace kempt::work
