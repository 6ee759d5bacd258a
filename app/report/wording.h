// The report's sentences: dates, figures, verdicts, how it was measured, cautions; in the language of its reader.
#pragma once

#include <QDate>
#include <QString>
#include <QStringList>

#include "charts/chart_data.h"
#include "report/report_model.h"
#include "speech/speech.h"

namespace kempt::report {

using speech::Speech;

// "4 Nov 2026": cannot be misread on either side of the ocean. A dash for an invalid one.
[[nodiscard]] QString day(const QDate& date, const Speech& say);
[[nodiscard]] QString days(const QDate& from, const QDate& to, const Speech& say);
// "improved", "no detectable change"...
[[nodiscard]] QString words_of(Outcome outcome, const Speech& say);
// "62 % (59-65)", "18 per cm (16-20)".
[[nodiscard]] QString figure(const Value& value, const QString& unit, LengthUnit length, const Speech& say);
// "+8 points", "-1.2 mm"; half_width sets the decimals.
[[nodiscard]] QString signed_figure(double value, double half_width, const QString& unit, LengthUnit length,
                                    const Speech& say);
[[nodiscard]] QString plain_figure(double value, double half_width, const QString& unit, LengthUnit length,
                                   const Speech& say);
// "left temple: edge coverage".
[[nodiscard]] QString name_of(View view, const QString& reading, const Speech& say);
[[nodiscard]] QString capitalised(QString text);
[[nodiscard]] QString counted(int count, const QString& singular, const QString& plural);

[[nodiscard]] QStringList method_sentences(const Model& model, const Speech& say);
// The cautions that every report carries.
[[nodiscard]] QStringList standing_cautions(const Speech& say);

// The chart in inches when they are asked for.
[[nodiscard]] charts::ChartData in_unit(charts::ChartData data, LengthUnit length);

}  // namespace kempt::report
