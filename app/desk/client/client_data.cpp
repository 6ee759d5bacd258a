#include "desk/client/client_data.h"

#include <algorithm>
#include <map>

namespace kempt::desk {
namespace {

int rank_of(const work::PhotoRow& row) {
    const QString& level = row.photo.quality_level;
    const int quality = level == "good" ? 0 : level == "usable" ? 1 : level.isEmpty() ? 2 : 3;
    const bool measured =
        std::any_of(row.readings.begin(), row.readings.end(), [](const ReadingRecord& r) { return !r.refused; });
    return quality * 2 + (measured ? 0 : 1);
}

}  // namespace

const work::PhotoRow* better_of(const work::PhotoRow* a, const work::PhotoRow* b) {
    if (a == nullptr || b == nullptr) return a == nullptr ? b : a;
    const int ra = rank_of(*a), rb = rank_of(*b);
    if (ra != rb) return ra < rb ? a : b;
    return a->photo.shot <= b->photo.shot ? a : b;
}

Result<ClientData> client_data(Book& book, Id id, qsizetype most_visits, const Progress& progress) {
    ClientData data;
    auto client = work::client_of(book, id);
    if (!client.ok()) return client.error();
    data.client = client.value();
    auto face = work::face_wish_of(book, id);
    if (!face.ok()) return face.error();
    data.face = face.value();
    auto visits = work::list_visits(book, id);
    if (!visits.ok()) return visits.error();
    data.all_visits = visits->size();
    std::reverse(visits->begin(), visits->end());
    visits->resize(std::min(most_visits, visits->size()));
    auto services = work::list_services(book, id);
    if (!services.ok()) return services.error();
    data.services = services.value();
    std::reverse(data.services.begin(), data.services.end());
    const double count = std::max<double>(1, static_cast<double>(visits.value().size()));
    for (const Visit& visit : visits.value()) {
        if (tell(progress, static_cast<double>(data.visits.size()) / count, "reading the visits") == Go::stop)
            return Error{ErrorKind::cancelled, "cancelled", "Reading the visits was stopped.", "", ""};
        auto photos = work::list_photos(book, visit.id);
        if (!photos.ok()) return photos.error();
        VisitOnPage on_page{visit, {}, static_cast<int>(photos.value().size())};
        std::map<View, const work::PhotoRow*> best;
        for (const work::PhotoRow& row : photos.value()) best[row.photo.view] = better_of(best[row.photo.view], &row);
        for (const auto& [view, row] : best) on_page.best.append(*row);
        data.visits.append(on_page);
    }
    return data;
}

}  // namespace kempt::desk
