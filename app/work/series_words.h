// Trend, target and spread of a series, with the sentences that go with them.
#pragma once

#include "work/progress_of.h"

namespace kempt::work {

// Fills trend, trend_origin and trend_text from the points that are in the trend.
void add_trend(Series& series);
// Fills series.target: share of the way and forecast. today limits how late a date may be told.
void add_target(Series& series, const Target& target);
// Where the spread comes from, a sentence or two. setup_sd in `unit`, words for people.
[[nodiscard]] QString spread_sentence(const change::Spread& client, const change::Spread& book, int client_groups,
                                      double setup_sd, const QString& unit);

}  // namespace kempt::work
