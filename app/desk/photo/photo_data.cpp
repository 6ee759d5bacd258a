#include "desk/photo/photo_data.h"

#include "work/open_book.h"
#include "work/set_marks.h"

namespace kempt::desk {

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
