#include "charts/chart_key.h"

#include <QHash>
#include <algorithm>
#include <cmath>

#include "charts/figures.h"

namespace kempt::charts {
namespace {

constexpr double swatch_width = 1.7;  // in em, as are the rest
constexpr double swatch_gap = 0.4;
constexpr double entry_gap = 1.4;
constexpr double row_height = 1.3;
constexpr double tag_height = 1.2;
constexpr double tag_padding = 0.35;
constexpr double tag_gap = 0.25;

KeyEntry entry(KeyMark mark, const QString& text, const QString& letter = {}) {
    KeyEntry result;
    result.mark = mark;
    result.label.text = text;
    result.letter = letter;
    return result;
}

QVector<ServiceMark> by_date(QVector<ServiceMark> services) {
    std::stable_sort(services.begin(), services.end(),
                     [](const ServiceMark& a, const ServiceMark& b) { return a.date < b.date; });
    return services;
}

QRectF tag_rect(double centre, double width, double left, double right, double top, double em) {
    const double start = std::max(left, std::min(centre - width / 2, right - width));
    return {start, top, width, tag_height * em};
}

// "AC", or "A…F" when more than three kinds meet.
QString joined(const QString& one, const QString& two) {
    QStringList letters = one.split(QChar(' ')) + two.split(QChar(' '));
    letters.removeDuplicates();
    letters.sort();
    return letters.join(QChar(' '));
}

QString shown(const QString& letters) {
    const QStringList all = letters.split(QChar(' '));
    return all.size() <= 3 ? all.join(QString()) : all.first() + QChar(0x2026) + all.last();
}

}  // namespace

QVector<KindLetter> letters_of(const QVector<ServiceMark>& services) {
    QVector<KindLetter> letters;
    for (const ServiceMark& service : by_date(services)) {
        const bool seen = std::any_of(letters.begin(), letters.end(),
                                      [&](const KindLetter& kind) { return kind.label == service.label; });
        if (seen) continue;
        const int index = static_cast<int>(letters.size());
        letters.append({service.label, index < 26 ? QString(QChar('A' + index)) : QString::number(index + 1)});
    }
    return letters;
}

QVector<KeyEntry> key_of(const ChartData& data, const ChartStyle& style, bool services_need_letters) {
    const speech::Speech& say = style.speech;
    QVector<KeyEntry> key;
    const bool shots =
        std::any_of(data.points.begin(), data.points.end(), [](const Point& p) { return p.shots.size() > 1; });
    key.append(entry(KeyMark::reading, shots ? say("visit with its 95 % interval; small dots: single shots")
                                             : say("visit with its 95 % interval")));
    if (std::any_of(data.points.begin(), data.points.end(), [](const Point& p) { return !p.comparable; }))
        key.append(entry(KeyMark::excluded, say("not comparable")));
    if (data.noise) {
        const double half = data.noise->half_width;
        key.append(
            entry(KeyMark::band, (data.noise->of_baseline ? say("no detectable change from the first visit (±%1)")
                                                          : say("no detectable change from the last visit (±%1)"))
                                     .arg(difference(half, bearable_decimals(half), data.unit, say))));
    }
    if (data.trend)
        key.append(entry(KeyMark::trend, say("trend: %1").arg(trend_in_words(*data.trend, data.unit, say))));
    if (data.target)
        key.append(entry(
            KeyMark::target,
            say("target %1").arg(with_unit(*data.target, bearable_decimals(half_width_of(data)), data.unit, say))));
    if (data.target && data.forecast)
        key.append(entry(KeyMark::forecast, say("target foreseen: %1").arg(forecast_in_words(*data.forecast, say))));
    if (services_need_letters)
        for (const KindLetter& kind : letters_of(data.services))
            key.append(entry(KeyMark::service, say(kind.label), kind.letter));
    return key;
}

double flow_key(QVector<KeyEntry>& key, double width, const QFontMetricsF& metrics) {
    const double em = metrics.height();
    const double aside = (swatch_width + swatch_gap) * em;
    const double room = std::max(em, width - aside);
    double x = 0, y = 0, row = 0;
    for (KeyEntry& item : key) {
        // One further unit, so that the painter's own rounding never breaks the last word.
        double text_width = std::ceil(metrics.horizontalAdvance(item.label.text)) + 1;
        double height = row_height * em;
        if (text_width > room) {
            text_width = room;
            item.label.wrap = true;
            item.label.align = Qt::AlignLeft | Qt::AlignTop;
            const QRectF wrapped = metrics.boundingRect(QRectF(0, 0, room, 1e6), Qt::TextWordWrap, item.label.text);
            height = std::ceil(wrapped.height()) + 1 + (row_height - 1) * em;
        }
        if (x > 0 && x + aside + text_width > width) {
            x = 0;
            y += row;
            row = 0;
        }
        item.swatch = QRectF(x, y, swatch_width * em, row_height * em);
        item.label.rect = QRectF(x + aside, y, text_width, height);
        if (item.label.wrap) item.label.rect.adjust(0, (row_height - 1) * em / 2, 0, -(row_height - 1) * em / 2);
        row = std::max(row, height);
        x += aside + text_width + entry_gap * em;
    }
    return y + row;
}

Tags service_tags(const QVector<ServiceMark>& services, const std::function<double(const QDate&)>& x_of, double left,
                  double right, double top, const QFontMetricsF& metrics, const speech::Speech& say) {
    const double em = metrics.height();
    QHash<QString, double> widths;  // many services, few words: each is measured once
    const auto width_of = [&](const QString& text) {
        const auto known = widths.constFind(text);
        if (known != widths.cend()) return *known;
        return *widths.insert(
            text, std::max(tag_height * em, std::ceil(metrics.horizontalAdvance(text)) + 1 + 2 * tag_padding * em));
    };
    const QVector<ServiceMark> sorted = by_date(services);
    Tags result;
    bool fits = true;
    for (const ServiceMark& service : sorted) {
        const double x = x_of(service.date);
        const QString label = say(service.label);
        const QRectF rect = tag_rect(x, width_of(label), left, right, top, em);
        fits = fits && rect.left() >= left - 0.5 && rect.right() <= right + 0.5 && rect.left() <= x &&
               rect.right() >= x &&
               (result.tags.isEmpty() || rect.left() >= result.tags.last().rect.right() + tag_gap * em);
        if (!fits) break;
        result.tags.append({rect, label, {x}});
    }
    if (fits) return result;

    result.tags.clear();
    result.letters = true;
    const QVector<KindLetter> letters = letters_of(services);
    for (const ServiceMark& service : sorted) {
        const auto kind =
            std::find_if(letters.begin(), letters.end(), [&](const KindLetter& k) { return k.label == service.label; });
        const double x = x_of(service.date);
        ServiceTag tag{tag_rect(x, width_of(kind->letter), left, right, top, em), kind->letter, {x}};
        // Joining widens a tag, so it is checked again against the one before.
        while (!result.tags.isEmpty() && tag.rect.left() < result.tags.last().rect.right() + tag_gap * em) {
            const ServiceTag before = result.tags.takeLast();
            tag.text = joined(before.text, tag.text);
            tag.xs = before.xs + tag.xs;
            const double centre = (tag.xs.first() + tag.xs.last()) / 2;
            tag.rect = tag_rect(centre, width_of(shown(tag.text)), left, right, top, em);
        }
        result.tags.append(tag);
    }
    for (ServiceTag& tag : result.tags) tag.text = shown(tag.text);
    return result;
}

}  // namespace kempt::charts
