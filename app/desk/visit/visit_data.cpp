#include "desk/visit/visit_data.h"

#include "work/keep_care.h"

namespace kempt::desk {

Result<VisitData> visit_data(Book& book, Id id, const Progress& progress) {
    VisitData data;
    auto visit = work::visit_of(book, id);
    if (!visit.ok()) return visit.error();
    data.visit = visit.value();
    auto client = work::client_of(book, data.visit.client);
    if (!client.ok()) return client.error();
    data.client = client.value();
    auto photos = work::list_photos(book, id);
    if (!photos.ok()) return photos.error();
    data.photos = photos.value();
    auto services = work::list_services(book, data.client.id);
    if (!services.ok()) return services.error();
    data.services = services.value();
    auto grades = work::list_grades(book, id);
    if (!grades.ok()) return grades.error();
    data.grades = grades.value();
    const auto profile = work::profile_of(book, data.client.id);
    if (!profile.ok()) return profile.error();
    ClientProfile nothing;
    nothing.client = profile->client;
    data.profile_told = !(profile.value() == nothing);
    const auto life = work::daily_life_of(book, data.client.id, data.visit.date);
    if (!life.ok()) return life.error();
    data.life_told = work::fresh_life(life.value(), data.visit.date).has_value();
    auto visits = work::list_visits(book, data.client.id);
    if (!visits.ok()) return visits.error();
    // The visit before is enough: what she was followed by then is what has to be taken again.
    const Visit* before = nullptr;
    for (const Visit& other : visits.value())
        if (other.id != id && other.date <= data.visit.date) before = &other;
    if (before != nullptr) {
        if (tell(progress, 0.5, "reading the visit before") == Go::stop)
            return Error{ErrorKind::cancelled, "cancelled", "Reading the visit was stopped.", "", ""};
        auto rows = work::list_photos(book, before->id);
        if (!rows.ok()) return rows.error();
        for (const work::PhotoRow& row : rows.value())
            if (!data.followed.contains(row.photo.view)) data.followed.append(row.photo.view);
    }
    return data;
}

}  // namespace kempt::desk
