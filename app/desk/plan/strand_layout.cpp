#include "desk/plan/strand_layout.h"

#include <QLocale>
#include <QObject>
#include <algorithm>
#include <cmath>

#include "desk/plan/plan_words.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "work/care_state.h"

namespace kempt::desk {
namespace {

constexpr double mm_per_inch = 25.4;  // by definition
constexpr double shortest_mm = 60;    // hair that is drawn shorter cannot be pointed at

bool of(const char* family, care::Kind kind) {
    const care::Family* found = care::find_family(family);
    return found != nullptr && care::belongs(*found, kind);
}

void add_clipped(QVector<care::Span>& into, care::Span span, double length) {
    span.to_mm = std::min(span.to_mm, length);
    if (!span.empty()) into.append(span);
}

// Neighbouring parts of one service are one stroke.
QVector<care::Span> joined(const std::vector<care::Stretch>& stretches, double length) {
    QVector<care::Span> spans;
    for (const care::Stretch& one : stretches) {
        if (!spans.isEmpty() && one.span.from_mm - spans.last().to_mm < 0.5)
            spans.last().to_mm = std::min(one.span.to_mm, length);
        else
            add_clipped(spans, one.span, length);
    }
    return spans;
}

// The farthest place of which anything is known.
double reach_of(const std::vector<care::Carried>& carried, const work::CarePlan& plan) {
    double reach = shortest_mm;
    const auto take = [&](const care::Span& span) {
        for (const double mm : {span.from_mm, span.to_mm})
            if (std::isfinite(mm)) reach = std::max(reach, mm);
    };
    for (const care::Carried& one : carried) {
        take(one.surely);
        take(one.perhaps);
    }
    for (const work::ServicePlan& service : plan.services) {
        for (const care::Stretch& one : service.coverage.put_on) take(one.span);
        for (const care::Stretch& one : service.coverage.keep_off) take(one.span);
    }
    return reach;
}

QVector<StrandLane> planned_lanes(const work::CarePlan& plan, double length) {
    QVector<StrandLane> lanes;
    for (const work::ServicePlan& service : plan.services) {
        if (service.service.kind == care::Kind::cut) continue;
        StrandLane lane;
        lane.sort = LaneSort::planned;
        lane.name = said(word_of(service.service.kind));
        lane.when = QObject::tr("planned today");
        lane.surely = joined(service.coverage.put_on, length);
        lane.keep_off = joined(service.coverage.keep_off, length);
        lane.perhaps = lane.surely;
        if (!lane.surely.isEmpty() || !lane.keep_off.isEmpty()) lanes.append(lane);
    }
    return lanes;
}

QVector<StrandLane> past_lanes(const care::ClientState& state, const std::vector<care::Carried>& carried, double length,
                               bool gentle_too) {
    QVector<StrandLane> lanes;
    QVector<care::Day> days;
    for (const care::Carried& one : carried) {
        const care::PastService& service = state.history.services[one.service];
        StrandLane lane;
        lane.sort = sort_of(service.kind);
        if (lane.sort == LaneSort::gentle && !gentle_too) continue;
        lane.service = one.service;
        lane.name = said(word_of(service.kind));
        lane.when = short_date_words(work::date_of(service.day));
        add_clipped(lane.surely, one.surely, length);
        add_clipped(lane.perhaps, one.perhaps, length);
        if (lane.perhaps.isEmpty() && lane.surely.isEmpty()) continue;  // grown out and cut off
        const auto at = std::upper_bound(days.begin(), days.end(), service.day, std::greater<>());
        lanes.insert(at - days.begin(), lane);
        days.insert(at - days.begin(), service.day);
    }
    return lanes;
}

void add_ticks(StrandPicture& picture, const StrandSizes& sizes) {
    const double unit = sizes.inches ? mm_per_inch : 1;
    const double least = sizes.label_height * 4 / (picture.right - picture.left) * picture.length_mm / unit;
    double step = sizes.inches ? 1 : 10;
    const QVector<double> steps =
        sizes.inches ? QVector<double>{1, 2, 5, 10, 20, 50} : QVector<double>{10, 20, 50, 100, 200, 500};
    for (const double one : steps) {
        step = one;
        if (one >= least) break;
    }
    for (double at = 0; at * unit <= picture.length_mm + 1e-6; at += step)
        picture.ticks.append(
            {picture.x_of(at * unit),
             at > 0 ? QString::number(at) : (sizes.inches ? QObject::tr("0 in") : QObject::tr("0 mm"))});
}

}  // namespace

LaneSort sort_of(care::Kind kind) {
    if (kind == care::Kind::lightening) return LaneSort::lightening;
    if (of("texture", kind) || kind == care::Kind::smoothing) return LaneSort::texture;
    if (of("colour", kind)) return LaneSort::colour;
    return LaneSort::gentle;
}

double StrandPicture::x_of(double mm) const {
    return left + (right - left) * std::clamp(mm / std::max(1.0, length_mm), 0.0, 1.0);
}

double StrandPicture::mm_of(double x) const {
    return std::clamp((x - left) / std::max(1.0, right - left), 0.0, 1.0) * length_mm;
}

StrandPicture layout_strand(const care::ClientState& state, const std::vector<care::Carried>& carried,
                            const work::CarePlan& plan, const StrandSizes& sizes) {
    StrandPicture picture;
    picture.open_end = !state.length_mm;
    picture.length_mm = state.length_mm ? std::max(shortest_mm, *state.length_mm) : reach_of(carried, plan) * 1.25;
    picture.left = sizes.line_height * 1.6;
    picture.right = std::max(picture.left + 40, sizes.width - sizes.line_height * 1.2);
    const double hair = state.length_mm.value_or(picture.length_mm);
    picture.lanes = planned_lanes(plan, hair) + past_lanes(state, carried, hair, sizes.gentle_too);
    picture.top = sizes.label_height * 2.4;
    picture.lane_gap = sizes.label_height + sizes.line_height + 6;
    double y = picture.top;
    for (StrandLane& lane : picture.lanes) {
        lane.label = {picture.left, y, sizes.width - picture.left, sizes.label_height};
        lane.y = y + sizes.label_height + sizes.line_height * 0.5;
        y += picture.lane_gap;
    }
    picture.height = std::max(y, picture.top + picture.lane_gap) + 6;
    add_ticks(picture, sizes);
    for (const work::PartRecord& part : plan.hair) {
        const double to = std::min(part.span.to_mm, hair);
        if (!(to > part.span.from_mm)) continue;
        picture.parts.append({(picture.x_of(part.span.from_mm) + picture.x_of(to)) / 2, said(word_of(part.part))});
        if (to < hair - 0.5) picture.part_ends.append(picture.x_of(to));
    }
    return picture;
}

QVector<PassedWords> passed_at(double mm, const care::ClientState& state, const std::vector<care::Carried>& carried) {
    QVector<std::pair<care::Day, PassedWords>> found;
    for (const care::Carried& one : carried) {
        const auto holds = [mm](const care::Span& span) {
            return !span.empty() && mm >= span.from_mm && mm <= span.to_mm;
        };
        const bool surely = holds(one.surely);
        if (!surely && !holds(one.perhaps)) continue;
        const care::PastService& service = state.history.services[one.service];
        QStringList words{said(word_of(service.kind)), short_date_words(work::date_of(service.day))};
        if (service.strength) words.append(said(word_of(*service.strength)));
        if (service.minutes) words.append(QObject::tr("%1 min").arg(QLocale().toString(*service.minutes, 'g', 4)));
        if (service.temperature_c) words.append(QObject::tr("%1 °C").arg(std::lround(*service.temperature_c)));
        QStringList sections;
        for (const std::string& section : service.sections) sections.append(said(section));
        if (!sections.isEmpty()) words.append(QObject::tr("only %1").arg(sections.join(QObject::tr(" and "))));
        if (service.reaction.value_or(false)) words.append(QObject::tr("with a reaction"));
        if (service.strand_test == care::TestResult::failed) words.append(QObject::tr("strand test failed"));
        found.append({service.day, {words.join(QStringLiteral(", ")), surely}});
    }
    std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    QVector<PassedWords> out;
    for (const auto& one : found) out.append(one.second);
    return out;
}

bool record_reaches(double mm, const work::CarePlan& plan) {
    for (const work::PartRecord& part : plan.hair)
        if (mm >= part.span.from_mm && mm <= part.span.to_mm) return part.complete;
    return false;
}

}  // namespace kempt::desk
