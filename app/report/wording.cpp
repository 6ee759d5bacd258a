#include "report/wording.h"

#include <QRegularExpression>
#include <algorithm>
#include <cmath>

#include "domain/readings.h"
#include "domain/words.h"

namespace kempt::report {
namespace {

constexpr double mm_per_inch = 25.4;  // exact by definition (international inch, 1959)

// "18 1/cm" reads badly on paper.
QString for_people(QString text, const Speech& say) {
    for (const char* unit : {"cm", "mm", "in"}) {
        const QString of(QString::fromUtf8(unit));
        text.replace(QStringLiteral(" 1/") + of, u' ' + say(QStringLiteral("per ") + of));
    }
    static const QRegularExpression inches(QStringLiteral("(?<=[0-9]) in(?![a-z/])"));
    if (!say.is_english()) text.replace(inches, u' ' + say("in"));
    return say.figures(text);
}

}  // namespace

QString day(const QDate& date, const Speech& say) {
    if (!date.isValid()) return QStringLiteral("–");
    return say.date(date, QStringLiteral("d MMM yyyy"));
}

QString days(const QDate& from, const QDate& to, const Speech& say) {
    if (from == to || !to.isValid()) return day(from, say);
    if (!from.isValid()) return day(to, say);
    return say("%1 to %2").arg(day(from, say), day(to, say));
}

QString words_of(Outcome outcome, const Speech& say) {
    switch (outcome) {
        case Outcome::improved:
            return say("improved");
        case Outcome::worse:
            return say("worse");
        case Outcome::changed:
            return say("changed");
        case Outcome::no_detectable_change:
            return say("no detectable change");
        case Outcome::not_comparable:
            break;
    }
    return say("not comparable");
}

QString figure(const Value& value, const QString& unit, LengthUnit length, const Speech& say) {
    QString text = with_interval(value.value, value.low, value.high, unit, length);
    // Where an end is negative: "-1 (-2 to 1)".
    if (!say.is_english())
        text.replace(QStringLiteral(" to "), say("%1 to %2").remove(QStringLiteral("%1")).remove(QStringLiteral("%2")));
    return for_people(text, say);
}

QString plain_figure(double value, double half_width, const QString& unit, LengthUnit length, const Speech& say) {
    return for_people(plain_value(value, half_width, unit, length), say);
}

QString signed_figure(double value, double half_width, const QString& unit, LengthUnit length, const Speech& say) {
    QString text = plain_figure(value, half_width, unit, length, say);
    // A change of a percentage is in points: +8 % of 50 % would be 4 points.
    if (unit == u"%") text = say("%1 points").arg(text.remove(QStringLiteral(" %")));
    if (text.startsWith(u'-')) text[0] = QChar(0x2212);  // the minus sign
    return value > 0 ? u'+' + text : text;
}

QString name_of(View view, const QString& reading, const Speech& say) {
    return QStringLiteral("%1: %2").arg(say(word_of(view)), say(title_of_reading(reading)));
}

QString capitalised(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

QString counted(int count, const QString& singular, const QString& plural) {
    return QStringLiteral("%1 %2").arg(count).arg(count == 1 ? singular : plural);
}

QStringList method_sentences(const Model& model, const Speech& say) {
    const Method& method = model.method;
    QStringList out = {
        say("Photographs are taken from standard positions with a printed gauge card of known size lying flat in the "
            "plane of the hair. The card gives the scale, the tilt of the camera and the light; a photo that is "
            "blurred, too coarse, tilted or badly lit is refused at once, with the reason."),
    };
    const bool edges = std::any_of(model.rows.begin(), model.rows.end(), [](const Row& row) {
        return reading_names_of(ReadingGroup::edges).contains(row.reading);
    });
    if (edges)
        out << say(
            "The stylist draws the edge line where the first hairs leave the scalp. The band of scalp behind "
            "that line is straightened and read. Where hair and scalp cannot be told apart, no figure is given.");
    QStringList named;
    for (const Row& row : model.rows) {
        const QString meaning = meaning_of_reading(row.reading);
        if (named.contains(row.reading) || meaning.isEmpty()) continue;
        named << row.reading;
        out << QStringLiteral("%1: %2").arg(capitalised(say(title_of_reading(row.reading))), say(meaning));
    }
    if (std::any_of(model.rows.begin(), model.rows.end(), [](const Row& row) { return !row.trend.isEmpty(); }))
        out << say(
            "The pace over the visits is the Theil-Sen slope, the middle of the slopes between any two of them; "
            "p is that of a Mann-Kendall test, and below 0.05 the pace is called more than chance.");
    out << say("The figures in brackets are the 95 % interval of each value: what sampling along the edge, the scale "
               "and the light leave uncertain.")
        << say("The smallest detectable change is the largest difference that repeat photographs of unchanged hair "
               "would show in 19 of 20 cases. A change beyond it is called improved or worse. Anything smaller is "
               "called no detectable change: it may be real, but these photographs cannot tell.")
        << say("Visits are compared only when the hair was in the same state (wet or dry, styled or not, product or "
               "none). There is no overall score: each target has a bar of its own.");
    if (!method.spread_source.isEmpty()) out << say(method.spread_source);
    for (const QString& more : method.extra) out << say(more);
    if (!method.card.isEmpty()) out << say("Card: %1.").arg(say(method.card));
    out << say("Measured with %1, measuring methods version %2.")
               .arg(method.program_version)
               .arg(method.analysis_version);
    return out;
}

// Common practice of the trade, no source; the program repeats them and rules nothing out or in.
QStringList standing_cautions(const Speech& say) {
    return {
        say("Chemical, colour and heat services are for professional use. Follow the maker's directions and the local "
            "licensing rules; where this report differs from them, they stand."),
        say("Make a strand test before a chemical service, and a patch test as long before it as the maker asks."),
        say("Stop at once at burning, stinging or irritation and rinse as the maker directs."),
        say("See a doctor about sudden or patchy hair loss, pain, scarring, sores or any disease of the scalp."),
        say("Measuring is no diagnosis. The report says what photographs show; it does not say why, and it never says "
            "that a service is safe."),
    };
}

charts::ChartData in_unit(charts::ChartData data, LengthUnit length) {
    double factor = 1;
    QString unit = data.unit;
    if (data.unit == u"mm") factor = 1 / mm_per_inch, unit = QStringLiteral("in");
    if (data.unit == u"1/mm") factor = mm_per_inch, unit = QStringLiteral("1/in");
    if (data.unit == u"1/cm") factor = mm_per_inch / 10, unit = QStringLiteral("1/in");
    if (data.unit == u"mm/mm2") factor = mm_per_inch, unit = QStringLiteral("in/in\u00b2");
    if (length == LengthUnit::millimetres || factor == 1) return data;
    const auto turn = [factor](double& value) { value *= factor; };
    for (charts::Point& point : data.points) {
        turn(point.value), turn(point.low), turn(point.high);
        for (double& shot : point.shots) turn(shot);
    }
    if (data.noise) turn(data.noise->around), turn(data.noise->half_width);
    if (data.target) turn(*data.target);
    if (data.trend) {
        turn(data.trend->pivot_value), turn(data.trend->per_day);
        if (data.trend->per_day_low) turn(*data.trend->per_day_low);
        if (data.trend->per_day_high) turn(*data.trend->per_day_high);
    }
    data.unit = unit;
    return data;
}

}  // namespace kempt::report
