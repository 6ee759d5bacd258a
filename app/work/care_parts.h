// The parts of care_state, each from the records that it needs, in the order in which they build on each other.
#pragma once

#include <QDate>
#include <QVector>
#include <vector>

#include "work/care_state.h"

namespace kempt::work {

// Age, texture, group of hair; daily life and answers as far as they still count.
[[nodiscard]] Status add_person(Book& book, Id client, QDate today, care::ClientState& state);
// The record up to today, and since when it is complete. A reaction to a dye or a straightener in it goes before the
// answer to the same question.
[[nodiscard]] Status add_history(Book& book, Id client, QDate today, care::ClientState& state);
// Each colour's line of demarcation on the newest photos that show it (that of a tape stays where it is newer), and the
// client's own rate of growth from all lines.
[[nodiscard]] Status add_lines(Book& book, Id client, QDate today, care::ClientState& state);
// The length that was measured or left by a cut, with what has grown since.
[[nodiscard]] Status add_length(Book& book, Id client, QDate today, care::ClientState& state);
// Of every zone and quality the newest grade that still counts, of its latest round.
[[nodiscard]] Status add_grades(Book& book, Id client, QDate today, care::ClientState& state);
// Of every view and reading the mean of the newest visit that has one, its noise band, and the verdict since the visit
// before; and the strongest line of demarcation of each view's newest visit.
[[nodiscard]] Status add_readings(Book& book, Id client, QDate today, care::ClientState& state);

// A line of demarcation as one visit's photos of one view show it: the mean over the shots that show it.
struct SeenLine {
    QDate date;
    View view = View::lengths;
    care::GrowthRange at_mm;  // from the scalp
    care::GrowthRange step;   // CIEDE2000
};
// Of all measured photos that still count, by date. Lines of two shots are one when their ranges come within 2 mm; one
// that most of the shots of its visit and view do not show is left out.
[[nodiscard]] Result<std::vector<SeenLine>> lines_of_client(Book& book, Id client, QDate today);

// Which line is that of which service: lines[i] belongs to services[result[i]]. Hair grows 150 to about 550 um a day
// (care::plausible_rates), which tells where a service's line can be on a day. A line that two services could have
// left, or one of two lines that one service could have left, belongs to none.
[[nodiscard]] std::vector<std::optional<std::size_t>> services_of_lines(const std::vector<SeenLine>& lines,
                                                                        const std::vector<care::PastService>& services,
                                                                        care::HairGroup group);

}  // namespace kempt::work
