// The words of the trade as they appear in files, commands and windows.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "domain/readings.h"
#include "domain/records.h"

namespace kempt {

[[nodiscard]] QString word_of(View view);                               // "left temple"
[[nodiscard]] std::optional<View> view_from_word(const QString& word);  // accepts "left temple" and "left-temple"
[[nodiscard]] const QVector<View>& all_views();
[[nodiscard]] const QStringList& service_kinds();       // "hydroxide straightener", "gloss", ...
[[nodiscard]] const QStringList& head_sections();       // the views of the scalp: "left temple", "nape", ...
[[nodiscard]] const QStringList& strengths();           // "mild", "regular", "super"
[[nodiscard]] const QStringList& test_results();        // of strand and patch tests: "passed", "failed"
[[nodiscard]] const QStringList& hair_textures();       // "fine", "medium", "coarse"
[[nodiscard]] const QStringList& heat_tools();          // to choose from; any other name may be kept
[[nodiscard]] bool is_dryer(const QString& heat_tool);  // blows air: made for wet hair
// As the studies of growth name their groups, by descent: "african", "asian", "caucasian".
[[nodiscard]] const QStringList& hair_groups();
[[nodiscard]] const QStringList& grade_qualities();
// Where a grade is given: head_sections(), "roots", "mid-shaft", "ends", "whole head".
[[nodiscard]] const QStringList& grade_zones();
// Also as it may be typed ("left-temple", "Mid shaft", "lengths", "head"); nullopt: no such zone.
[[nodiscard]] std::optional<QString> grade_zone_from_word(const QString& word);
// The written anchor of a step of a grade, one sentence ("0: scalp bare, no hairs"). step 0..4.
[[nodiscard]] QString grade_anchor(const QString& quality, int step);
}  // namespace kempt
