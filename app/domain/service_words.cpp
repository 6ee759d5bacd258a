#include "domain/service_words.h"

#include <QLocale>
#include <cmath>

namespace kempt {
namespace {

QString number(double value) {
    return QString::number(value, 'g', 6);
}

QString length_words(double mm, LengthUnit length) {
    // A tenth of a millimetre or of an inch is as fine as a tape is read.
    if (length == LengthUnit::inches) return plain_value(mm, 2.54, QStringLiteral("mm"), length);
    return number(std::round(10 * mm) / 10) + QStringLiteral(" mm");
}

QString list_words(const QStringList& words) {
    if (words.size() < 2) return words.join(QString());
    return words.mid(0, words.size() - 1).join(QStringLiteral(", ")) + QStringLiteral(" and ") + words.back();
}

QString day(QDate date) {
    return QLocale(QLocale::English, QLocale::UnitedKingdom).toString(date, u"d MMM yyyy");
}

// Names of peoples begin with a capital.
QString proper(const QString& word) {
    return word.left(1).toUpper() + word.mid(1);
}

void say(QStringList& words, const std::optional<bool>& fact, const char* yes, const char* no) {
    if (fact) words.append(QString::fromUtf8(*fact ? yes : no));
}

}  // namespace

QString place_of(const Service& service, LengthUnit length) {
    QStringList words;
    if (service.kind == u"cut") {
        if (service.to_mm) words.append(QStringLiteral("left %1").arg(length_words(*service.to_mm, length)));
    } else if (service.from_mm > 0 || service.to_mm) {
        const QString from = service.from_mm > 0 ? length_words(service.from_mm, length) : QStringLiteral("the scalp");
        const QString to = service.to_mm ? length_words(*service.to_mm, length) : QStringLiteral("the ends");
        words.append(QStringLiteral("from %1 to %2").arg(from, to));
    }
    if (!service.sections.isEmpty()) words.append(list_words(service.sections));
    return words.join(QStringLiteral(", "));
}

QStringList details_of(const Service& service, LengthUnit length) {
    QStringList words;
    if (!service.done) words.append(QStringLiteral("planned"));
    if (const QString place = place_of(service, length); !place.isEmpty()) words.append(place);
    if (!service.strength.isEmpty()) words.append(service.strength);
    if (service.minutes && service.most_minutes)
        words.append(
            QStringLiteral("%1 of at most %2 min").arg(number(*service.minutes), number(*service.most_minutes)));
    else if (service.minutes)
        words.append(QStringLiteral("%1 min").arg(number(*service.minutes)));
    else if (service.most_minutes)
        words.append(QStringLiteral("at most %1 min").arg(number(*service.most_minutes)));
    if (service.temperature_c) words.append(QStringLiteral("%1 \u00b0C").arg(number(*service.temperature_c)));
    if (service.passes)
        words.append(*service.passes == 1 ? QStringLiteral("1 pass")
                                          : QStringLiteral("%1 passes").arg(*service.passes));
    if (!service.strand_test.isEmpty()) words.append(QStringLiteral("strand test ") + service.strand_test);
    if (!service.patch_test.isEmpty() || service.patch_test_on) {
        QString test = QStringLiteral("patch test");
        if (!service.patch_test_where.isEmpty()) test += u' ' + service.patch_test_where;
        if (service.patch_test_on) test += QStringLiteral(" on ") + day(*service.patch_test_on);
        if (!service.patch_test.isEmpty()) test += u' ' + service.patch_test;
        words.append(test);
    }
    say(words, service.at_home, "at home", "by a stylist");
    say(words, service.reaction, "with a reaction", "no reaction");
    if (service.line_mm && service.line_on)
        words.append(
            QStringLiteral("line at %1 on %2").arg(length_words(*service.line_mm, length), day(*service.line_on)));
    if (!service.result.isEmpty()) words.append(service.result.simplified());
    return words;
}

QStringList details_of(const ClientProfile& p, LengthUnit length) {
    QStringList words;
    if (p.born)
        words.append(QStringLiteral("born %1").arg(day(*p.born)));
    else if (p.age_years && p.age_on)
        words.append(QStringLiteral("%1 years on %2").arg(number(*p.age_years), day(*p.age_on)));
    if (p.length_mm && p.length_on)
        words.append(QStringLiteral("hair %1 on %2").arg(length_words(*p.length_mm, length), day(*p.length_on)));
    if (!p.texture.isEmpty()) words.append(p.texture + QStringLiteral(" hairs"));
    if (!p.hair_group.isEmpty()) words.append(QStringLiteral("growth as of %1 hair").arg(proper(p.hair_group)));
    if (p.whole_history)
        words.append(QStringLiteral("every service of her life is in the record"));
    else if (p.history_from)
        words.append(QStringLiteral("every service since %1 is in the record").arg(day(*p.history_from)));
    if ((p.whole_history || p.history_from) && p.history_told_on)
        words.back() += QStringLiteral(", told on %1").arg(day(*p.history_told_on));
    return words;
}

QStringList details_of(const DailyLife& d) {
    QStringList words;
    if (d.minutes_a_day) words.append(QStringLiteral("%1 minutes a day").arg(number(*d.minutes_a_day)));
    if (d.heat && d.heat->isEmpty()) words.append(QStringLiteral("no heat"));
    for (const HeatTool& tool : d.heat.value_or(QVector<HeatTool>())) {
        QString heat = tool.name;
        if (tool.temperature_c) heat += QStringLiteral(" at %1 \u00b0C").arg(number(*tool.temperature_c));
        heat += QStringLiteral(" %1 times a week").arg(number(tool.times_a_week));
        if (tool.on_wet_hair)
            heat += *tool.on_wet_hair ? QStringLiteral(", on wet hair") : QStringLiteral(", on dry hair");
        words.append(heat);
    }
    if (d.washes_a_week) words.append(QStringLiteral("%1 washes a week").arg(number(*d.washes_a_week)));
    if (d.swims_a_week) words.append(QStringLiteral("swims %1 times a week").arg(number(*d.swims_a_week)));
    say(words, d.hard_water, "hard water", "soft water");
    say(words, d.covers_hair, "hair covered by day", "hair uncovered by day");
    say(words, d.tight_headwear, "headwear presses on the hairline", "nothing presses on the hairline");
    say(words, d.covers_at_night, "hair covered at night", "hair uncovered at night");
    say(words, d.tight_styles, "tight styles", "no tight styles");
    say(words, d.style_hurts, "a style hurts", "no style hurts");
    say(words, d.added_hair, "hair is added", "no hair is added");
    if (d.style_weeks) words.append(QStringLiteral("a style stays in %1 weeks").arg(number(*d.style_weeks)));
    return words;
}

}  // namespace kempt
