// A care plan in sentences, for the command line and wherever else it is read as text.
#pragma once

#include <QStringList>

#include "work/plan_care.h"

namespace kempt::work {

// "0-20 mm", "beyond 20 mm"
[[nodiscard]] QString text_of(const care::Span& span);
// "mid-shaft, 20-250 mm"
[[nodiscard]] QString text_of(const care::Stretch& stretch);
// "Stop", "Caution", "Note"
[[nodiscard]] QString word_of_level(care::RuleLevel level);
// Where a finding holds: "permanent colour, ends; permanent colour, mid-shaft"; empty: the client as a whole.
[[nodiscard]] QString places_of(const care::Finding& finding);
// How many of plan.questions, from the first one on, a stop hangs on.
[[nodiscard]] qsizetype questions_of_stops(const CarePlan& plan);
// "Stop: reason remedy", or "Check first: ..." with its questions; without places and source.
[[nodiscard]] QString line_of(const care::Finding& finding);
// "0:00  mid-shaft of nape (one person): ..." in the order of work, the rinse last.
[[nodiscard]] QStringList lines_of(const care::Application& application, const care::Timeline& timeline);
// "retouch: 1 Mar 2026 to 20 Apr 2026, likeliest 20 Mar 2026"
[[nodiscard]] QString line_of(const care::DateRange& range);
// "1 Mar 2026"
[[nodiscard]] QString text_of(QDate day);
// "new growth since permanent colour of 1 Mar 2026: 21 mm (14-28), from the rate"
[[nodiscard]] QString line_of(const GrowthNow& growth);
// "was it done? cut planned for 3 Nov 2026 (kempt service change BOOK --service 7 --done)"
[[nodiscard]] QString was_it_done(const Service& service);
// "It was told on 3 Nov 2026 how far the record goes back; ..."; empty while that counts, or nothing was told.
[[nodiscard]] QString history_sentence(const CarePlan& plan);

// All of it: stops, what to check first, cautions and notes, where it goes and in which order, the hair's record,
// dates, care at home, and the standing cautions, which end every plan.
[[nodiscard]] QStringList lines_of(const CarePlan& plan);

}  // namespace kempt::work
