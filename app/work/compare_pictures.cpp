#include "work/compare_pictures.h"

#include <QDateTime>
#include <algorithm>

#include "book/visit_store.h"
#include "domain/words.h"
#include "report/pair_picture.h"
#include "report/wording.h"
#include "work/choose_shot.h"
#include "work/errors.h"
#include "work/measure_json.h"
#include "work/open_book.h"
#include "work/open_kept.h"
#include "work/photo_consent.h"
#include "work/progress_json.h"
#include "work/progress_of.h"

namespace kempt::work {

namespace {

struct Candidates {
    Visit visit;
    QVector<ChosenShot> shots;
};

Result<Candidates> candidates(Book& book, Id client, Id visit_id, View view) {
    const auto visit = store::get_visit(book, visit_id);
    if (!visit) return visit.error();
    if (visit->client != client)
        return invalid("other-client", "Visit " + std::to_string(visit_id) + " belongs to another client.");
    auto shots = shots_of_view(book, *visit, view);
    if (!shots) return shots.error();
    if (shots->isEmpty())
        return missing("no-photo-of-view",
                       "There is no photo of the " + word_of(view).toStdString() + " at the visit of " +
                           visit->date.toString(Qt::ISODate).toStdString() + ".",
                       "Choose another visit or view.");
    return Candidates{*visit, std::move(shots).value()};
}

// The side as it is drawn: with her eyes hidden, the other temple mirrored.
Result<PairSide> drawn_side(Book& book, const CompareOptions& options, const OpenPhoto& open, const ChosenShot& shot,
                            bool mirrored, QVector<FaceCover>& faces, const Progress& progress) {
    auto side = side_of(open, shot.marks, shot.date);
    if (!side) return side.error();
    if (mirrored) {
        side->mirrored = true;
        side->calibration.mm_from_px = cv::Matx33d::diag({-1, 1, 1}) * side->calibration.mm_from_px;
    }
    if (!options.hide_eyes) return side;
    auto cover = face_cover(book, options.client, shot.photo.id, open, progress, options.find_eyes);
    if (!cover) return cover.error();
    side->hidden = cover->bands;
    faces.append(std::move(cover).value());
    return side;
}

// Left and right: both figures; there is no verdict between two sides of a head.
QString temples_line(Book& book, const CompareOptions& options) {
    QStringList words;
    for (const auto& [view, visit] :
         {std::pair(options.view, options.from_visit), {*options.to_view, options.to_visit}}) {
        const auto progress =
            progress_of(book, {options.client, view, QStringLiteral("edge_coverage"), options.length});
        if (!progress || progress->series.empty()) continue;
        for (const VisitPoint& point : progress->series.front().visits)
            if (point.visit == visit && point.mean)
                words.append(QStringLiteral("%1: edge coverage %2 % (%3 to %4)")
                                 .arg(word_of(view))
                                 .arg(*point.mean, 0, 'f', 0)
                                 .arg(point.low, 0, 'f', 0)
                                 .arg(point.high, 0, 'f', 0));
    }
    return words.join(QStringLiteral("; "));
}

QString verdict_line(Book& book, const CompareOptions& options) {
    if (options.to_view) return temples_line(book, options);
    for (const std::optional<QString>& reading : {std::optional(QStringLiteral("edge_coverage")), {}}) {
        const auto progress = progress_of(book, {options.client, options.view, reading, options.length});
        if (!progress) return {};
        for (const Series& series : progress->series)
            if (const PairVerdict* pair = series.verdict(options.from_visit, options.to_visit))
                return word_of(pair->judgement.verdict) + QStringLiteral(". ") +
                       QString::fromStdString(pair->judgement.reason);
    }
    return {};
}

}  // namespace

bool ComparedPictures::must_look() const {
    return std::any_of(faces.begin(), faces.end(), [](const FaceCover& face) { return face.must_look; });
}

Result<ComparedPictures> compare_pictures(Book& book, const CompareOptions& asked, const Progress& progress) {
    CompareOptions options = asked;
    if (options.to_view == options.view) options.to_view.reset();
    if (options.to_view && !((options.view == View::left_temple && options.to_view == View::right_temple) ||
                             (options.view == View::right_temple && options.to_view == View::left_temple)))
        return invalid("no-other-side", "Only the two temples are shown beside each other.", "Choose one view.");
    if (options.from_visit == options.to_visit && !options.to_view)
        return invalid("same-visit", "A visit cannot be compared with itself.", "Choose two visits.");
    auto from = candidates(book, options.client, options.from_visit, options.view);
    if (!from) return from.error();
    auto to = candidates(book, options.client, options.to_visit, options.to_view.value_or(options.view));
    if (!to) return to.error();
    if (!options.to_view &&
        std::pair(from->visit.date, options.from_visit) > std::pair(to->visit.date, options.to_visit)) {
        std::swap(from.value(), to.value());
        std::swap(options.from_visit, options.to_visit);
    }
    const auto [one, other] = alike(from->shots, to->shots);
    MeasureOptions how = options.measure;
    how.with_sha256 = false;
    const auto scale = printer_scale_of(book);
    if (!scale) return scale.error();
    how.printer_scale = scale.value();
    const auto before_open = open_kept(book, one.photo.id, how, part_of(progress, 0, 0.25));
    if (!before_open) return before_open.error();
    const auto after_open = open_kept(book, other.photo.id, how, part_of(progress, 0.25, 0.5));
    if (!after_open) return after_open.error();
    ComparedPictures pictures;
    const auto before =
        drawn_side(book, options, **before_open, one, false, pictures.faces, part_of(progress, 0.5, 0.55));
    if (!before) return before.error();
    const auto after = drawn_side(book, options, **after_open, other, options.to_view.has_value(), pictures.faces,
                                  part_of(progress, 0.55, 0.6));
    if (!after) return after.error();
    auto pair = align_pair(before.value(), after.value(), options.align, part_of(progress, 0.6, 1));
    if (!pair) return pair.error();
    pictures.pair = std::move(pair).value();
    for (const FaceCover& face : pictures.faces)
        if (const QString note = note_of(face); !note.isEmpty() && !pictures.pair.notes.contains(note))
            pictures.pair.notes.append(note);
    pictures.view = options.view;
    pictures.after_view = options.to_view;
    pictures.before_photo = one.photo.id;
    pictures.after_photo = other.photo.id;
    pictures.before_date = one.date;
    pictures.after_date = other.date;
    pictures.length = options.length;
    pictures.verdict = verdict_line(book, options);
    return pictures;
}

namespace {
report::PairPicture picture_of(const ComparedPictures& pictures, const speech::Speech& say) {
    report::PairPicture picture;
    picture.before = pictures.pair.before;
    picture.after = pictures.pair.after;
    picture.before_date = pictures.before_date;
    picture.after_date = pictures.after_date;
    if (pictures.after_view) {
        picture.before_word = report::capitalised(word_of(pictures.view));
        picture.after_word = QStringLiteral("%1 (mirrored)").arg(report::capitalised(word_of(*pictures.after_view)));
    }
    picture.px_per_mm = pictures.pair.px_per_mm;
    picture.length = pictures.length;
    picture.speech = say;
    picture.title = pictures.after_view
                        ? QStringLiteral("%1 and %2").arg(word_of(pictures.view), word_of(*pictures.after_view))
                        : word_of(pictures.view);
    picture.verdict = (QStringList{pictures.verdict} + pictures.pair.notes).join(QStringLiteral(" ")).trimmed();
    return picture;
}
}  // namespace

Result<ComparedPictures> write_pair(Book& book, const CompareOptions& asked, const QString& path,
                                    const Progress& progress) {
    if (const Status agreed = pictures_may_leave(book, asked.client); !agreed) return agreed.error();
    CompareOptions options = asked;
    options.hide_eyes = true;
    auto pictures = compare_pictures(book, options, progress);
    if (!pictures) return pictures.error();
    if (pictures->must_look()) return look_first();
    const auto png = report::pair_png(picture_of(pictures.value(), options.speech));
    if (!png) return png.error();
    if (const Status written = write_file(path, png.value()); !written) return written.error();
    return pictures;
}

}  // namespace kempt::work
