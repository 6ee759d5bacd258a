#include "work/compare_pictures.h"

#include <QDateTime>

#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/visit_store.h"
#include "domain/words.h"
#include "report/pair_picture.h"
#include "work/errors.h"
#include "work/measure_json.h"
#include "work/open_book.h"
#include "work/open_kept.h"
#include "work/progress_json.h"
#include "work/progress_of.h"
#include "work/shot_rank.h"

namespace kempt::work {

namespace {

struct Chosen {
    PhotoRecord photo;
    Marks marks;
    QDate date;
    int rank = -1;
};

Result<Chosen> choose(Book& book, const CompareOptions& options, Id visit_id) {
    const auto visit = store::get_visit(book, visit_id);
    if (!visit) return visit.error();
    if (visit->client != options.client)
        return invalid("other-client", "Visit " + std::to_string(visit_id) + " belongs to another client.");
    const auto photos = store::photos_of_visit(book, visit_id, options.view);
    if (!photos) return photos.error();
    Chosen best;
    for (const PhotoRecord& photo : photos.value()) {
        const auto marks = store::latest_marks(book, photo.id);
        if (!marks) return marks.error();
        const auto readings = store::latest_readings(book, photo.id);
        if (!readings) return readings.error();
        const int rank = rank_of(photo, marks->has_value(), readings.value());
        if (rank > best.rank) best = {photo, marks->value_or(Marks{}), visit->date, rank};
    }
    if (best.rank < 0)
        return missing("no-photo-of-view",
                       "There is no photo of the " + word_of(options.view).toStdString() + " at the visit of " +
                           visit->date.toString(Qt::ISODate).toStdString() + ".",
                       "Choose another visit or view.");
    return best;
}

Result<PairSide> side_of(const std::shared_ptr<const OpenPhoto>& open, const Chosen& chosen) {
    PairSide side{open.get(), open->card, chosen.marks, chosen.date};
    if (!open->card.card_found && !open->card.sheet_found && chosen.marks.scale_points.size() == 2) {
        const QPointF a = chosen.marks.scale_points[0], b = chosen.marks.scale_points[1];
        auto scaled = card::calibrate_two_points({a.x(), a.y()}, {b.x(), b.y()}, chosen.marks.scale_mm);
        if (!scaled) return scaled.error();
        side.calibration = std::move(scaled).value();
    }
    return side;
}

QString verdict_line(Book& book, const CompareOptions& options) {
    const auto progress =
        progress_of(book, {options.client, options.view, QStringLiteral("edge_coverage"), options.length});
    if (!progress || progress->series.empty()) return {};
    const PairVerdict* pair = progress->series.front().verdict(options.from_visit, options.to_visit);
    if (!pair) return {};
    return word_of(pair->judgement.verdict) + QStringLiteral(": ") + QString::fromStdString(pair->judgement.reason);
}

}  // namespace

Result<ComparedPictures> compare_pictures(Book& book, const CompareOptions& asked, const Progress& progress) {
    if (asked.from_visit == asked.to_visit)
        return invalid("same-visit", "A visit cannot be compared with itself.", "Choose two visits.");
    CompareOptions options = asked;
    auto from = choose(book, options, options.from_visit);
    if (!from) return from.error();
    auto to = choose(book, options, options.to_visit);
    if (!to) return to.error();
    if (std::pair(from->date, options.from_visit) > std::pair(to->date, options.to_visit)) {
        std::swap(from.value(), to.value());
        std::swap(options.from_visit, options.to_visit);
    }
    MeasureOptions how = options.measure;
    how.with_sha256 = false;
    const auto scale = printer_scale_of(book);
    if (!scale) return scale.error();
    how.printer_scale = scale.value();
    const auto before_open = open_kept(book, from->photo.id, how, part_of(progress, 0, 0.3));
    if (!before_open) return before_open.error();
    const auto after_open = open_kept(book, to->photo.id, how, part_of(progress, 0.3, 0.6));
    if (!after_open) return after_open.error();
    const auto before = side_of(before_open.value(), from.value());
    if (!before) return before.error();
    const auto after = side_of(after_open.value(), to.value());
    if (!after) return after.error();
    auto pair = align_pair(before.value(), after.value(), options.align, part_of(progress, 0.6, 1));
    if (!pair) return pair.error();
    ComparedPictures pictures;
    pictures.pair = std::move(pair).value();
    pictures.view = options.view;
    pictures.before_photo = from->photo.id;
    pictures.after_photo = to->photo.id;
    pictures.before_date = from->date;
    pictures.after_date = to->date;
    pictures.length = options.length;
    pictures.verdict = verdict_line(book, options);
    return pictures;
}

namespace {
report::PairPicture picture_of(const ComparedPictures& pictures) {
    report::PairPicture picture;
    picture.before = pictures.pair.before;
    picture.after = pictures.pair.after;
    picture.before_date = pictures.before_date;
    picture.after_date = pictures.after_date;
    picture.px_per_mm = pictures.pair.px_per_mm;
    picture.length = pictures.length;
    picture.title = word_of(pictures.view);
    picture.verdict = (QStringList{pictures.verdict} + pictures.pair.notes).join(QStringLiteral(" ")).trimmed();
    return picture;
}
}  // namespace

Result<QImage> compose_pair(const ComparedPictures& pictures) {
    return report::paint_pair(picture_of(pictures));
}

Status write_pair(const ComparedPictures& pictures, const QString& path) {
    const auto png = report::pair_png(picture_of(pictures));
    if (!png) return png.error();
    return write_file(path, png.value());
}

}  // namespace kempt::work
