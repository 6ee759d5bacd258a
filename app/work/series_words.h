// Trend, target and spread of a series, with the sentences that go with them.
#pragma once

#include "work/progress_of.h"

namespace kempt::work {

// Fills trend, trend_origin and trend_text from the points that are in the trend.
void add_trend(Series& series, LengthUnit length = LengthUnit::millimetres);
// Fills series.target: share of the way and forecast. today limits how late a date may be told.
void add_target(Series& series, const Target& target);
// Where the spread of the series comes from, a sentence or two.
[[nodiscard]] QString spread_sentence(const change::Spread& client, const change::Spread& book, int client_groups,
                                      const Series& series, LengthUnit length = LengthUnit::millimetres);
// "Edge coverage" from "edge coverage".
[[nodiscard]] QString sentence_start(QString words);

}  // namespace kempt::work
