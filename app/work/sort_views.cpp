#include "work/sort_views.h"

#include <algorithm>
#include <map>

#include "book/client_store.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/visit_store.h"
#include "work/carry_between.h"
#include "work/errors.h"
#include "work/open_book.h"
#include "work/open_kept.h"
#include "work/shot_rank.h"

namespace kempt::work {

namespace {

struct Shot {
    PhotoRecord photo;
    Marks marks;
    QDate day;
    int rank = 0;
};

const QVector<View>& edge_views() {
    static const QVector<View> views{View::front_hairline, View::left_temple, View::right_temple, View::nape};
    return views;
}

// The best shot with an edge line of each view, from the latest visit up to that day that has one.
Result<std::map<View, Shot>> last_shots(Book& book, Id client, const QDate& day) {
    const auto visits = store::visits_of_client(book, client);
    if (!visits) return visits.error();
    std::map<View, Shot> best;
    for (auto visit = visits->crbegin(); visit != visits->crend(); ++visit) {
        if (visit->date > day) continue;
        const auto photos = store::photos_of_visit(book, visit->id);
        if (!photos) return photos.error();
        std::map<View, Shot> here;
        for (const PhotoRecord& photo : photos.value()) {
            if (best.count(photo.view) > 0) continue;
            const auto marks = store::latest_marks(book, photo.id);
            if (!marks) return marks.error();
            if (!marks.value() || marks.value()->edge_line.size() < 2) continue;
            const auto readings = store::latest_readings(book, photo.id);
            if (!readings) return readings.error();
            const int rank = rank_of(photo, true, readings.value());
            const auto known = here.find(photo.view);
            if (known == here.end() || rank > known->second.rank)
                here[photo.view] = {photo, *marks.value(), visit->date, rank};
        }
        best.merge(here);
    }
    return best;
}

}  // namespace

Result<RecognisedView> recognise_view(Book& book, const RecogniseOptions& options, const Progress& progress) {
    const auto client = store::get_client(book, options.client);
    if (!client) return client.error();
    auto shots = last_shots(book, options.client, options.day);
    if (!shots) return shots.error();
    RecognisedView out;
    if (shots->empty()) return out;
    QVector<View> order = options.likely;
    for (const auto& [view, shot] : shots.value())
        if (!order.contains(view)) order.append(view);
    const auto scale = printer_scale_of(book);
    if (!scale) return scale.error();
    MeasureOptions how = options.measure;
    how.with_sha256 = false;
    how.printer_scale = scale.value();
    const auto bytes = intake::read_file(options.path, how.limits);
    if (!bytes) return bytes.error();
    const auto to = open_photo(bytes.value(), how, part_of(progress, 0, 0.1));
    if (!to) return to.error();
    if (!to.value()->card.card_found) return out;  // nothing to lay it over by
    const double step = 0.9 / static_cast<double>(order.size());
    for (const View view : order) {
        const auto shot = shots->find(view);
        if (shot == shots->end()) continue;
        const double begin = 0.1 + step * out.tried;
        const auto from = open_kept(book, shot->second.photo.id, how, part_of(progress, begin, begin + 0.2 * step));
        if (!from) return from.error();
        ++out.tried;
        Marks line;  // anchors and the rest do not tell which view it is
        line.view = view;
        line.edge_line = shot->second.marks.edge_line;
        line.hair_side = shot->second.marks.hair_side;
        const auto carried = carry_between(**from, line, **to, std::nullopt, Between::visits,
                                           part_of(progress, begin + 0.2 * step, begin + step));
        if (carried) {
            out.view = view;
            out.residual_mm = carried->residual_mm;
            out.from_date = shot->second.day;
            return out;
        }
        if (carried.error().kind == ErrorKind::cancelled) return carried.error();
    }
    return out;
}

Result<QVector<View>> views_expected(Book& book, Id client, Id visit, const QDate& day) {
    const auto visits = store::visits_of_client(book, client);
    if (!visits) return visits.error();
    for (auto one = visits->crbegin(); one != visits->crend(); ++one) {
        if (one->id == visit || one->date > day) continue;
        const auto photos = store::photos_of_visit(book, one->id);
        if (!photos) return photos.error();
        QVector<View> views;
        for (const PhotoRecord& photo : photos.value())
            if (!views.contains(photo.view)) views.append(photo.view);
        if (!views.isEmpty()) return views;
    }
    return edge_views();
}

Result<QVector<View>> views_missing(Book& book, Id client, Id visit, const QDate& day) {
    auto views = views_expected(book, client, visit, day);
    if (!views) return views.error();
    if (visit > 0) {
        const auto photos = store::photos_of_visit(book, visit);
        if (!photos) return photos.error();
        for (const PhotoRecord& photo : photos.value()) views->removeAll(photo.view);
    }
    return views;
}

QVector<std::optional<View>> fill_last_view(const QVector<std::optional<View>>& known, const QVector<View>& missing) {
    QVector<View> unclaimed;
    for (const View view : missing)
        if (std::find(known.begin(), known.end(), std::optional(view)) == known.end()) unclaimed.append(view);
    QVector<std::optional<View>> out = known;
    constexpr int most_shots = 3;
    if (unclaimed.size() != 1 || std::count(known.begin(), known.end(), std::nullopt) > most_shots) return out;
    for (std::optional<View>& view : out)
        if (!view) view = unclaimed.first();
    return out;
}

}  // namespace kempt::work
