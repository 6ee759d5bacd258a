#include "app/report/example_model.h"

#include <QPainter>
#include <cmath>
#include <random>

#include "domain/words.h"

namespace kempt::report::example {
namespace {

const QDate first_day(2026, 1, 14);

charts::ChartData chart_of(const QVector<QDate>& dates, double from, double to, double half_width) {
    charts::ChartData data;
    data.value_name = QStringLiteral("edge coverage");
    data.unit = QStringLiteral("%");
    const double last = static_cast<double>(std::max<qsizetype>(1, dates.size() - 1));
    for (int i = 0; i < dates.size(); ++i) {
        const double value = from + (to - from) * i / last + (i % 2 == 0 ? 0.6 : -0.6);
        data.points << charts::Point{dates[i], value, value - 2.1, value + 2.1, {value - 0.9, value + 0.9}, i != 2};
    }
    data.noise = charts::NoiseBand{from, half_width, true};
    return data;
}

}  // namespace

QImage edge_picture(int width, int height, double cover) {
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(QColor(0xb5, 0x82, 0x63));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    std::mt19937 dice(7);
    std::uniform_real_distribution<double> even(0, 1);
    const int strands = static_cast<int>(cover * width * 0.9);
    painter.setPen(QPen(QColor(0x2a, 0x1d, 0x18), 1.6));
    for (int i = 0; i < strands; ++i) {
        const double x = even(dice) * width, y = height * (0.35 + 0.12 * even(dice));
        painter.drawLine(QPointF(x, y), QPointF(x + (even(dice) - 0.5) * width * 0.2, height));
    }
    return image;
}

namespace {

void add_care(Model& model) {
    const QString mid = QStringLiteral("mid-shaft"), roots = QStringLiteral("roots"), ends = QStringLiteral("ends");
    const QString straightener = QStringLiteral("hydroxide straightener without lye");
    model.services[0].details = {QStringLiteral("from 20 mm to the ends"), QStringLiteral("20 min"),
                                 QStringLiteral("strand test passed"), QStringLiteral("no reaction")};
    model.hair = {{{roots, 0, 20.0}, {{QDate(2026, 5, 11), QStringLiteral("gloss"), false, {roots, 18, 20.0}}}, true},
                  {{mid, 20, 250.0},
                   {{QDate(2026, 5, 11), QStringLiteral("gloss"), true, {mid, 21, 250.0}},
                    {QDate(2025, 11, 3), straightener, true, {mid, 87, 250.0}}},
                   true},
                  {{ends, 250, std::nullopt}, {{QDate(2025, 11, 3), straightener, true, {ends, 250, {}}}}, false}};
    model.growth = {
        {straightener, QDate(2025, 11, 3), 70, 52, 87, QStringLiteral("Loussouarn, El Rawadi & Genain 2005, African")}};
    model.planned.services = {{straightener,
                               false,
                               {{roots, 0, 20.0}, {mid, 20, 52.0}},
                               {{mid, 52, 250.0}, {ends, 250, std::nullopt}},
                               true,
                               {{0, 2, QStringLiteral("mid-shaft"), QStringLiteral("nape"), 1, 16, 14, 16, true},
                                {2, 4.5, QStringLiteral("roots"), QStringLiteral("nape"), 2, 8, 5, 7.5, false}},
                               2,
                               16,
                               {},
                               {}},
                              {QStringLiteral("permanent colour"),
                               true,
                               {},
                               {},
                               false,
                               {},
                               1,
                               0,
                               QStringLiteral("A stop speaks against this service, so no order of work is given."),
                               {}}};
    model.planned.findings = {{QStringLiteral("stop"),
                               QStringLiteral("A straightener and permanent colour on one day add up their damage. "
                                              "Straighten first; colour two weeks later or more."),
                               {QStringLiteral("permanent colour")},
                               QStringLiteral("dermatology clinic leaflet on relaxers")},
                              {QStringLiteral("caution"),
                               QStringLiteral("Porous hair takes straightener faster than the rest. Apply there "
                                              "last."),
                               {straightener + QStringLiteral(", ends")},
                               QStringLiteral("common practice, no source")}};
    model.planned.questions = {QStringLiteral("Ask how old the client is."),
                               QStringLiteral("Stretch a wet strand and grade the elasticity.")};
    model.planned.stop_questions = 1;
    model.planned.always = {QStringLiteral("Follow the maker's directions."),
                            QStringLiteral("Rinse off at once when anything burns, stings or itches.")};
}

}  // namespace

Model six_visits() {
    Model model;
    model.client_name = QStringLiteral("Amara Lindqvist");
    model.salon_name = QStringLiteral("Quiet Comb, Chair 2");
    model.first_visit = first_day;
    model.last_visit = QDate(2026, 7, 8);
    model.visits = 6;
    model.today = QDate(2026, 7, 9);
    QVector<QDate> dates;
    for (int i = 0; i < 6; ++i) dates << first_day.addDays(35 * i);

    Pair pair;
    pair.view = View::left_temple;
    pair.before_date = dates.first();
    pair.after_date = dates.last();
    pair.before = edge_picture(900, 600, 0.3);
    pair.after = edge_picture(900, 600, 0.8);
    pair.px_per_mm = 18.4;
    pair.verdict = QStringLiteral(
        "Edge coverage improved from 41 % to 55 %, more than the smallest detectable change of 5.2 points.");
    model.pairs << pair;
    Pair nape = pair;
    nape.view = View::nape;
    nape.after = edge_picture(900, 600, 0.32);
    nape.px_per_mm = 0;
    nape.verdict = QStringLiteral("Not comparable: no card in the first photo.");
    nape.note = QStringLiteral("aligned by the anchors that the stylist set");
    model.pairs << nape;

    const Value start{dates.first(), 41.2, 38.9, 43.5, 3}, now{dates.last(), 55.3, 53.1, 57.5, 3};
    model.rows = {
        {View::left_temple, QStringLiteral("edge_coverage"), QStringLiteral("%"), start, now, 14.1, 5.2,
         Outcome::improved,
         QStringLiteral("The change of 14.1 points is larger than the smallest detectable change of 5.2 points."),
         QStringLiteral("Over six visits it rises by 2.4 points a month (1.6 to 3.1).")},
        {View::left_temple,
         QStringLiteral("edge_strands"),
         QStringLiteral("1/cm"),
         Value{dates.first(), 18.2, 16.4, 20.0, 3},
         std::nullopt,
         std::nullopt,
         std::nullopt,
         Outcome::not_comparable,
         QStringLiteral("Strands lie in a closed mat at the last visit, so that they cannot be counted."),
         {}},
        {View::left_temple,
         QStringLiteral("fill_depth"),
         QStringLiteral("mm"),
         Value{dates.first(), 7.42, 6.9, 7.9, 3},
         Value{dates.last(), 6.11, 5.6, 6.6, 3},
         -1.31,
         0.9,
         Outcome::improved,
         QStringLiteral("The hair reaches half of its fullness 1.3 mm nearer to the edge; 0.9 mm can be detected."),
         {}},
        {View::nape,
         QStringLiteral("edge_coverage"),
         QStringLiteral("%"),
         Value{dates.first(), 47.9, 45.0, 50.8, 2},
         Value{dates.last(), 48.8, 46.1, 51.5, 2},
         0.9,
         5.9,
         Outcome::no_detectable_change,
         QStringLiteral("The change of 0.9 points is smaller than the smallest detectable change of 5.9 points."),
         {}},
        {View::nape,
         QStringLiteral("bare_length"),
         QStringLiteral("mm"),
         Value{dates.first(), 4.1, 2.9, 5.3, 2},
         Value{dates.last(), 9.6, 8.2, 11.0, 2},
         5.5,
         3.1,
         Outcome::worse,
         QStringLiteral("The bare part of the edge grew by 5.5 mm; 3.1 mm can be detected."),
         {}},
    };

    Chart chart;
    chart.view = View::left_temple;
    chart.data = chart_of(dates, 41.2, 55.3, 5.2);
    chart.data.target = 65;
    chart.data.services = {{QDate(2026, 3, 2), QStringLiteral("moisture treatment")},
                           {QDate(2026, 5, 11), QStringLiteral("gloss")}};
    chart.data.trend = charts::TrendLine{dates[2], 46.5, 0.08, 0.05, 0.1};
    model.charts << chart;
    chart.view = View::nape;
    chart.data = chart_of(dates, 47.9, 48.8, 5.9);
    model.charts << chart;

    model.targets = {
        {View::left_temple, QStringLiteral("edge_coverage"), QStringLiteral("%"), 41.2, 55.3, 65, dates.first(),
         dates.last(), 0.592, QStringLiteral("At this pace it is reached between Sep 2026 and Jan 2027."), 2.6, 2.4},
        {View::nape,
         QStringLiteral("bare_length"),
         QStringLiteral("mm"),
         4.1,
         9.6,
         0,
         dates.first(),
         dates.last(),
         -1.34,
         {}},
    };
    model.services = {
        {QDate(2026, 3, 2), QStringLiteral("moisture treatment"),
         QStringLiteral("mid-shaft and ends, 20 minutes, no heat")},
        {QDate(2026, 5, 11), QStringLiteral("gloss"), {}},
    };
    for (const QDate& date : {dates.first(), dates[3], dates.last()})
        model.grades << GradeLine{date,
                                  QStringLiteral("left temple"),
                                  QStringLiteral("edges"),
                                  date == dates.first() ? 1 : 2,
                                  grade_anchor(QStringLiteral("edges"), date == dates.first() ? 1 : 2),
                                  std::nullopt};
    model.grades.last().second = 3;
    model.grade_agreement = QStringLiteral("Graded twice: weighted kappa 0.71 over 14 pairs.");
    model.left_out = {
        {dates[2], View::left_temple, QStringLiteral("visit"), QStringLiteral("The hair was wet, at the others dry."),
         QStringLiteral("Photograph dry, product-free hair.")},
        {dates[4], View::nape, QStringLiteral("photo 2"),
         QStringLiteral("The card is blurred: its edges rise over 0.4 mm."),
         QStringLiteral("Hold the phone with both hands and tap the card to focus.")},
    };
    for (const QDate& date : dates)
        for (int shot = 1; shot <= 2; ++shot) {
            HistoryLine line;
            line.date = date;
            line.view = View::left_temple;
            line.shot = shot;
            line.reading = QStringLiteral("edge_coverage");
            line.unit = QStringLiteral("%");
            line.value = 41.2 + shot;
            line.low = line.value - 2.2;
            line.high = line.value + 2.2;
            line.refused = date == dates[4] && shot == 2;
            if (line.refused) line.refusal = QStringLiteral("the card is blurred.");
            line.photo_sha256 = QString::number(date.toJulianDay() * 10 + shot, 16).rightJustified(64, u'a');
            line.analysis_version = 1;
            model.history << line;
        }
    model.home_care = {
        {QStringLiteral("Loose styles at the temples; a satin wrap at night."),
         QStringLiteral("common practice, no source")},
        {QStringLiteral("No heat on the edges between visits."), QStringLiteral("dermatologists' tips")}};
    model.next_dates = {{QStringLiteral("photographs"), QDate(2026, 8, 5), QDate(2026, 8, 19),
                         QStringLiteral("The first centimetre of the edges has then grown anew."),
                         QStringLiteral("Loussouarn, El Rawadi & Genain 2005")}};
    add_care(model);
    model.cautions = {{QStringLiteral("The nape is tender: no chemical service there until it is calm."),
                       QStringLiteral("common practice, no source")}};
    model.method = {
        QStringLiteral("Kempt 0.1.0"),
        1,
        QStringLiteral("gauge card printed at 99.8 % of its size, corrected"),
        QStringLiteral("The spread of repeat shots comes from 22 repeats of this client and 61 of the book."),
        {}};
    return model;
}

Model many_visits(int visits) {
    Model model = six_visits();
    model.visits = visits;
    QVector<QDate> dates;
    for (int i = 0; i < visits; ++i) dates << first_day.addMonths(i);
    model.last_visit = dates.last();
    model.today = dates.last().addDays(1);
    model.charts[0].data = chart_of(dates, 41.2, 70, 5.2);
    model.charts[1].data = chart_of(dates, 47.9, 48.8, 5.9);
    model.services.clear();
    model.grades.clear();
    model.history.clear();
    model.left_out.clear();
    for (int i = 0; i < visits; ++i) {
        const QString kind = service_kinds()[i % service_kinds().size()];
        model.services << ServiceLine{dates[i], kind,
                                      i % 3 == 0 ? QStringLiteral("roots only, rinsed on time") : QString()};
        model.charts[0].data.services << charts::ServiceMark{dates[i], kind};
        const int step = std::min(4, i / 12);
        for (const QString& quality : grade_qualities())
            model.grades << GradeLine{dates[i], QStringLiteral("nape"), quality, step, grade_anchor(quality, step), {}};
        if (i % 7 == 3)
            model.left_out << LeftOut{dates[i], View::crown, QStringLiteral("photo 1"),
                                      QStringLiteral("The light falls off by a fifth over the card."),
                                      QStringLiteral("Turn the client toward the window.")};
        for (const QString& reading : edge_reading_names()) {
            HistoryLine line;
            line.date = dates[i];
            line.view = View::right_temple;
            line.reading = reading;
            line.unit = QStringLiteral("%");
            line.value = 40 + i * 0.5;
            line.low = line.value - 2;
            line.high = line.value + 2;
            line.photo_sha256 = QString::number(i).rightJustified(64, u'0');
            line.analysis_version = 1;
            model.history << line;
        }
    }
    return model;
}

Model nothing_yet() {
    Model model;
    model.client_name = QStringLiteral("Bo");
    model.today = first_day;
    model.method.program_version = QStringLiteral("Kempt 0.1.0");
    return model;
}

}  // namespace kempt::report::example
