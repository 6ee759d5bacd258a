// The key below a chart and the service tags above it; private to this room.
#pragma once

#include <QFontMetricsF>
#include <functional>

#include "charts/chart_painter.h"

namespace kempt::charts {

// Entries without places, in the order of the key. Service kinds get letters in the order of their first date.
[[nodiscard]] QVector<KeyEntry> key_of(const ChartData& data, const ChartStyle& style, bool services_need_letters);
// Flows the entries into rows of a width, from (0, 0) down; long texts are broken into lines. Gives the height.
double flow_key(QVector<KeyEntry>& key, double width, const QFontMetricsF& metrics);

// The letters of each service kind: A, B... Z, then numbers.
struct KindLetter {
    QString label, letter;
};
[[nodiscard]] QVector<KindLetter> letters_of(const QVector<ServiceMark>& services);

// Tags in a lane: whole labels when all of them fit side by side, else letters, neighbours joined until none overlap.
// x_of: place of a date; the tags stay inside left..right. services: only those that lie in the plot.
struct Tags {
    QVector<ServiceTag> tags;
    bool letters = false;
};
[[nodiscard]] Tags service_tags(const QVector<ServiceMark>& services, const std::function<double(const QDate&)>& x_of,
                                double left, double right, double top, const QFontMetricsF& metrics,
                                const speech::Speech& say = {});

}  // namespace kempt::charts
