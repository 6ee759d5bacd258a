#include "desk/photo/photo_data.h"

#include "work/open_book.h"
#include "work/set_marks.h"

namespace kempt::desk {

namespace {

Result<std::optional<Visit>> marked_before(Book& book, const Visit& today, View view) {
    const auto visits = work::list_visits(book, today.client);
    if (!visits.ok()) return visits.error();
    std::optional<Visit> latest;
    for (const Visit& visit : visits.value()) {
        if (std::pair(visit.date, visit.id) >= std::pair(today.date, today.id)) continue;
        const auto photos = work::list_photos(book, visit.id);
        if (!photos.ok()) return photos.error();
        for (const work::PhotoRow& row : photos.value())
            if (row.has_marks && row.photo.view == view) latest = visit;
    }
    return latest;
}

}  // namespace

Result<PhotoData> photo_data(Book& book, Id id, const Progress& progress) {
    PhotoData data;
    auto row = work::photo_of(book, id);
    if (!row.ok()) return row.error();
    data.row = row.value();
    auto visit = work::visit_of(book, data.row.photo.visit);
    if (!visit.ok()) return visit.error();
    data.visit = visit.value();
    auto client = work::client_of(book, data.visit.client);
    if (!client.ok()) return client.error();
    data.client = client.value();
    auto siblings = work::list_photos(book, data.visit.id);
    if (!siblings.ok()) return siblings.error();
    data.siblings = siblings.value();
    auto marks = work::marks_of(book, id);
    if (!marks.ok()) return marks.error();
    data.marks = marks.value();
    if (!data.marks || data.marks->edge_line.isEmpty()) {
        const auto before = marked_before(book, data.visit, data.row.photo.view);
        if (!before.ok()) return before.error();
        data.marked_before = before.value();
    }
    if (tell(progress, 0.3, "reading the photo") == Go::stop)
        return Error{ErrorKind::cancelled, "cancelled", "Reading the photo was stopped.", "", ""};
    auto bytes = work::photo_bytes(book, id);
    if (!bytes.ok()) return bytes.error();
    data.bytes = bytes.value();
    auto scale = work::printer_scale_of(book);
    if (!scale.ok()) return scale.error();
    data.printer_scale = scale.value();
    return data;
}

}  // namespace kempt::desk
