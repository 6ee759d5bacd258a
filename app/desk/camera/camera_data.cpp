#include "desk/camera/camera_data.h"

#include "desk/client/client_data.h"
#include "work/sort_views.h"

namespace kempt::desk {

Result<CameraData> camera_data(Book& book, Id id, const Progress& progress) {
    CameraData data;
    const auto visit = work::visit_of(book, id);
    if (!visit.ok()) return visit.error();
    data.visit = visit.value();
    const auto client = work::client_of(book, data.visit.client);
    if (!client.ok()) return client.error();
    data.client = client.value();
    const auto wanted = work::views_expected(book, data.client.id, id, data.visit.date);
    if (!wanted.ok()) return wanted.error();
    data.wanted = wanted.value();
    const auto visits = work::list_visits(book, data.client.id);
    if (!visits.ok()) return visits.error();
    for (auto one = visits->crbegin(); one != visits->crend(); ++one) {
        if (one->date > data.visit.date) continue;
        if (tell(progress, 0.5, "reading the visits") == Go::stop)
            return Error{ErrorKind::cancelled, "cancelled", "Reading the visit was stopped.", "", ""};
        const auto photos = work::list_photos(book, one->id);
        if (!photos.ok()) return photos.error();
        QHash<View, const work::PhotoRow*> best;
        for (const work::PhotoRow& row : photos.value()) {
            if (one->id == id && row.photo.quality_level != QStringLiteral("refused")) ++data.shots[row.photo.view];
            if (one->id != id) best[row.photo.view] = better_of(best.value(row.photo.view), &row);
        }
        for (auto it = best.begin(); it != best.end(); ++it)
            if (!data.guides.contains(it.key())) data.guides.insert(it.key(), {it.value()->photo.id, one->date});
    }
    return data;
}

std::optional<View> next_view(const CameraData& data, std::optional<View> at_hand) {
    constexpr int enough = 2;
    if (at_hand && data.shots.value(*at_hand) > 0 && data.shots.value(*at_hand) < enough) return at_hand;
    for (const View view : data.wanted)
        if (data.shots.value(view) < enough) return view;
    return std::nullopt;
}

}  // namespace kempt::desk
