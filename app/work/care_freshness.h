// How long what the book holds speaks for today's hair. Own choices, no source, unless said otherwise; what is older
// counts as not known, so that the rules ask for it again.
#pragma once

namespace kempt::work {

// A scalp heals and flares within days: its grade is of the day.
inline constexpr int scalp_grade_days = 0;
// Twelve weeks: the longest usual time between two trims (common practice). A grade of porosity, elasticity or breakage
// also ends with the next chemical service: what was graded before it says nothing of the hair after it.
inline constexpr int grade_days = 84;
// A reading and its verdict: as a grade. A line of demarcation never ages: it is carried on with growth.
inline constexpr int reading_days = 84;
// Habits: asked anew twice a year.
inline constexpr int daily_life_days = 182;
// That every service is in the record, or every one since a day: of the day on which she said so, and for a week. The
// consultation is followed by the service that it was for within the week for which its patch test counts (care::
// DateOptions); after longer than that she may have been elsewhere, or at home with a box, and a stop may hang on it.
inline constexpr int history_days = 7;
// Half a year's growth (about 60 mm) with the trims and the breakage of that time make a measured length a guess.
inline constexpr int length_days = 182;

}  // namespace kempt::work
