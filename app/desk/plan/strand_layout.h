// The hair from scalp to ends with what it has been through: one line a service, moved out with growth. No painting.
#pragma once

#include <QRectF>
#include <QString>
#include <QVector>
#include <vector>

#include "care/coverage.h"
#include "care/history.h"
#include "work/plan_care.h"

namespace kempt::desk {

enum class LaneSort { planned, texture, colour, lightening, gentle };

struct StrandLane {
    LaneSort sort = LaneSort::gentle;
    QString name, when;                   // "permanent colour", "12 Mar 2026"; of what is planned "today"
    std::size_t service = 0;              // index into the record; not of what is planned
    QVector<care::Span> surely, perhaps;  // clipped to the hair; perhaps includes surely
    QVector<care::Span> keep_off;         // of what is planned
    double y = 0;                         // of its line
    QRectF label;
};

struct StrandPicture {
    QVector<StrandLane> lanes;
    double length_mm = 0;   // of the hair as drawn
    bool open_end = false;  // nobody knows the length: drawn as far as the record reaches, and a little on
    double left = 0, right = 0, top = 0, height = 0, lane_gap = 0;
    QVector<QPair<double, QString>> ticks;  // x, words
    QVector<QPair<double, QString>> parts;  // x of the middle, "roots"
    QVector<double> part_ends;
    [[nodiscard]] double x_of(double mm) const;
    [[nodiscard]] double mm_of(double x) const;
};

struct StrandSizes {
    double width = 600, line_height = 16, label_height = 16;
    bool inches = false;
    bool gentle_too = false;  // treatments and styling are listed as well
};

[[nodiscard]] StrandPicture layout_strand(const care::ClientState& state, const std::vector<care::Carried>& carried,
                                          const work::CarePlan& plan, const StrandSizes& sizes);

// What the hair at that place has been through, newest first: sentences for a list.
struct PassedWords {
    QString words;
    bool surely = false;
};
[[nodiscard]] QVector<PassedWords> passed_at(double mm, const care::ClientState& state,
                                             const std::vector<care::Carried>& carried);
// Does the record reach back to when the hair at that place grew out of the scalp?
[[nodiscard]] bool record_reaches(double mm, const work::CarePlan& plan);

[[nodiscard]] LaneSort sort_of(care::Kind kind);

}  // namespace kempt::desk
