#include "work/time_strip.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>

#include "book/client_store.h"
#include "book/marks_store.h"
#include "book/reading_store.h"
#include "book/visit_store.h"
#include "work/choose_shot.h"
#include "work/draw_laid.h"
#include "work/errors.h"
#include "work/open_book.h"
#include "work/open_kept.h"

namespace kempt::work {

namespace {

Result<StripPlace> place_of(Book& book, const Visit& visit, const ChosenShot& shot) {
    StripPlace place{visit.id, visit.date, shot.photo.id, shot.marks.id, shot.photo.thumbnail, std::nullopt};
    const auto readings = store::latest_readings(book, shot.photo.id);
    if (!readings) return readings.error();
    for (const ReadingRecord& reading : readings.value())
        if (!reading.refused && (!place.reading || reading.name == u"edge_coverage")) place.reading = reading;
    return place;
}

Result<std::shared_ptr<const OpenPhoto>> opened(Book& book, Id photo, const StripOptions& options,
                                                const Progress& progress) {
    MeasureOptions how = options.measure;
    how.with_sha256 = false;
    const auto scale = printer_scale_of(book);
    if (!scale) return scale.error();
    how.printer_scale = scale.value();
    return open_kept(book, photo, how, progress);
}

Result<PairSide> side_at(Book& book, const StripPlace& place, const OpenPhoto& open) {
    Marks marks;
    if (place.marks > 0) {
        auto kept = store::get_marks(book, place.marks);
        if (!kept) return kept.error();
        marks = std::move(kept).value();
    }
    return side_of(open, marks, place.date);
}

// The whole photo in the frame's size, for the eye only.
StripPicture whole(const PairSide& side, cv::Size size, const QString& why) {
    const cv::Size from = side.photo->decoded.photo.pixels.size();
    const double s =
        finer * std::min(static_cast<double>(size.width) / from.width, static_cast<double>(size.height) / from.height);
    const double left = (size.width * finer - from.width * s) / 2, top = (size.height * finer - from.height * s) / 2;
    StripPicture out;
    out.picture = draw_laid(side, {s, 0, left, 0, s, top, 0, 0, 1}, size, false);
    out.told = why;
    return out;
}

}  // namespace

Result<StripPlan> strip_plan(Book& book, Id client, View view, Id reference_visit) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    const auto visits = store::visits_of_client(book, client);
    if (!visits) return visits.error();
    StripPlan plan;
    QVector<QVector<ChosenShot>> shots;
    int newest_marked = -1, newest = -1, asked = -1;
    for (const Visit& visit : visits.value()) {
        auto of_visit = shots_of_view(book, visit, view);
        if (!of_visit) return of_visit.error();
        const int here = static_cast<int>(shots.size());
        if (!of_visit->isEmpty()) {
            newest = here;
            if (std::any_of(of_visit->begin(), of_visit->end(), [](const ChosenShot& s) { return s.marks.id > 0; }))
                newest_marked = here;
            if (visit.id == reference_visit) asked = here;
        }
        shots.append(std::move(of_visit).value());
    }
    plan.reference = asked >= 0 ? asked : newest_marked >= 0 ? newest_marked : newest;
    if (plan.reference < 0) return plan;
    for (int i = 0; i < shots.size(); ++i) {
        const Visit& visit = visits->at(i);
        if (shots[i].isEmpty()) {
            plan.places.append({visit.id, visit.date, 0, 0, {}, std::nullopt});
            continue;
        }
        auto place = place_of(book, visit, alike(shots[plan.reference], shots[i]).second);
        if (!place) return place.error();
        plan.places.append(std::move(place).value());
    }
    return plan;
}

Result<std::shared_ptr<const StripReference>> strip_reference(Book& book, const StripPlace& place,
                                                              const StripOptions& options, const Progress& progress) {
    return guarded([&]() -> Result<std::shared_ptr<const StripReference>> {
        auto reference = std::make_shared<StripReference>();
        auto open = opened(book, place.photo, options, progress);
        if (!open) return open.error();
        reference->open = open.value();
        auto side = side_at(book, place, *reference->open);
        if (!side) return side.error();
        reference->side = std::move(side).value();
        reference->photo = place.photo;
        reference->to_scale = has_scale(reference->side);
        if (reference->to_scale) {
            reference->frame = frame_of(reference->side, options.align);
        } else {
            const cv::Size size = reference->open->decoded.photo.pixels.size();
            reference->frame.area_mm = {0, 0, static_cast<double>(size.width), static_cast<double>(size.height)};
            reference->frame.px_per_mm =
                static_cast<double>(options.align.longest_side_px) / std::max(size.width, size.height);
        }
        return std::shared_ptr<const StripReference>(reference);
    });
}

Result<StripPicture> strip_picture(Book& book, const StripPlace& place, const StripReference& reference,
                                   const StripOptions& options, const Progress& progress) {
    return guarded([&]() -> Result<StripPicture> {
        const bool itself = place.photo == reference.photo;
        auto open = opened(book, place.photo, options, part_of(progress, 0, 0.4));
        if (!open) return open.error();
        const auto side = side_at(book, place, **open);
        if (!side) return side.error();
        const cv::Size size = reference.frame.size();
        if (!reference.to_scale || !has_scale(*side))
            return whole(*side, size,
                         QStringLiteral("Not to scale: no gauge card in %1.")
                             .arg(reference.to_scale ? QStringLiteral("this photo")
                                                     : QStringLiteral("the photo that all are laid over")));
        Laying laid;
        if (itself) {
            laid.by = QStringLiteral("itself");
        } else {
            auto found = lay_pair(reference.side, *side, part_of(progress, 0.4, 0.8));
            if (!found) return found.error();
            laid = std::move(found).value();
        }
        if (tell(progress, 0.8, "drawing the photo") == Go::stop) return stopped();
        const cv::Matx33d fine = reference.frame.px_from_earlier(finer);
        StripPicture out;
        out.picture = draw_laid(*side, fine * laid.earlier_from_later.matrix() * side->calibration.mm_from_px, size,
                                side->calibration.light.has_value());
        out.laid = itself || (laid.by != u"marks" && laid.by != u"edge line");
        out.residual_mm = laid.residual_mm;
        out.told = itself ? QStringLiteral("All others are laid over this photo.") : laid.told();
        if (!itself && laid.by == u"edge line" && !laid.refused.isEmpty())
            out.told = QStringLiteral("%1 It stands here by its edge line.").arg(laid.refused);
        if (tell(progress, 1, "the picture is drawn") == Go::stop) return stopped();
        return out;
    });
}

}  // namespace kempt::work
