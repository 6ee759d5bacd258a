// From stored readings to the visits of one series: which shots count, and why the others do not.
#pragma once

#include <QVector>
#include <vector>

#include "book/reading_store.h"
#include "work/progress_of.h"

namespace kempt::work {

// One point a visit that has a photo of the view, by date. Shots that were refused, or whose scale is weaker than that
// of the visit's other shots, are left out with the reason.
[[nodiscard]] std::vector<VisitPoint> points_from(const QVector<store::DatedReading>& readings);

// Groups of comparable repeat shots, one a visit, of one client's view.
[[nodiscard]] std::vector<std::vector<double>> repeat_groups(const QVector<store::DatedReading>& readings);
// The same of the whole book, one a (client, view, visit), without those of one client's view. values: in that order.
[[nodiscard]] std::vector<std::vector<double>> repeat_groups_of_book(const QVector<store::SoundValue>& values,
                                                                     Id without_client, View without_view);

// Why two visits cannot be compared with each other; empty when they can.
[[nodiscard]] QStringList pair_reasons(const VisitPoint& from, const VisitPoint& to);

// Sets mean and noise band of every point, each with what its own shots state. alike: change::spread_for.
void add_noise(std::vector<VisitPoint>& points, const change::Spread& alike, const QString& reading,
               const QString& unit);
// Its shots with the intervals that their photos state.
[[nodiscard]] std::vector<change::Stated> stated_by(const VisitPoint& point);
// Sets in_trend of every point.
void choose_for_trend(std::vector<VisitPoint>& points);

// "the hair was wet, styled, without product"
[[nodiscard]] QString words_of(const HairState& hair);

}  // namespace kempt::work
