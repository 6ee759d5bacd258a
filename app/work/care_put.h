// What care_state puts into a state, once it has been read: the same for one client and for all of them at once.
#pragma once

#include <QDate>
#include <QVector>
#include <map>
#include <optional>
#include <vector>

#include "book/grade_store.h"
#include "work/care_parts.h"
#include "work/care_state.h"

namespace kempt::work {

// The answers that are yes or no, by the name of their question.
[[nodiscard]] const std::map<QString, std::optional<bool> care::Answers::*>& answer_members();
// Age, texture and group of hair.
void put_profile(const ClientProfile& profile, QDate today, care::ClientState& state);
// The newest that was told until today, as far as it still counts.
void put_daily(const std::optional<DailyLife>& told, QDate today, care::ClientState& state);
// The record up to today, and since when it is complete. A reaction to a dye or a straightener in it goes before the
// answer to the same question.
void put_history(const ClientProfile& profile, const QVector<Service>& services, QDate today, care::ClientState& state);
// One shot whose tone was measured and counts, with the lines of demarcation that it shows; from the run's details.
struct ToneShot {
    QDate date;
    View view = View::lengths;
    std::vector<SeenLine> lines;
};
[[nodiscard]] ToneShot tone_shot(QDate date, View view, const QString& details);
// Lines of demarcation from a client's shots, by view, date, visit and shot, and her own rate. Needs the history.
void put_lines(const std::vector<ToneShot>& shots, QDate today, care::ClientState& state);
// The length that was measured or left by a cut, with what has grown since. Needs history and rate.
void put_length(const ClientProfile& profile, QDate today, care::ClientState& state);
// The newest grades that still count; by date, then round. Needs the history.
void put_grades(const QVector<store::DatedGrade>& grades, QDate today, care::ClientState& state);

}  // namespace kempt::work
