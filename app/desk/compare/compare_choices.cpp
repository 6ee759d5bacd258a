#include "desk/compare/compare_choices.h"

#include "domain/words.h"

namespace kempt::desk {

QVector<Visit> CompareChoices::with_view(View view) const {
    QVector<Visit> out;
    for (const Visit& visit : visits)
        if (marked.value(visit.id).contains(view)) out.append(visit);
    return out;
}

QVector<View> CompareChoices::views() const {
    QVector<View> ready, others;
    for (const View view : all_views()) {
        const qsizetype count = with_view(view).size();
        if (count >= 2)
            ready.append(view);
        else if (count == 1)
            others.append(view);
    }
    return ready + others;
}

Result<CompareChoices> compare_choices(Book& book, Id client, const Progress& progress) {
    CompareChoices out;
    auto who = work::client_of(book, client);
    if (!who.ok()) return who.error();
    out.client = who.value();
    auto visits = work::list_visits(book, client);
    if (!visits.ok()) return visits.error();
    out.visits = visits.value();
    for (const Visit& visit : out.visits) {
        if (tell(progress, 0.5, "reading the visits") == Go::stop)
            return Error{ErrorKind::cancelled, "cancelled", "Reading the visits was stopped.", "", ""};
        auto photos = work::list_photos(book, visit.id);
        if (!photos.ok()) return photos.error();
        QVector<View> views;
        for (const work::PhotoRow& row : photos.value())
            if (row.has_marks && !views.contains(row.photo.view)) views.append(row.photo.view);
        out.marked.insert(visit.id, views);
    }
    return out;
}

}  // namespace kempt::desk
