#include "desk/compare/compare_choices.h"

#include "domain/words.h"

namespace kempt::desk {

QVector<Visit> CompareChoices::with_view(View view) const {
    QVector<Visit> drawn, photographed;
    for (const Visit& visit : visits) {
        if (marked.value(visit.id).contains(view)) drawn.append(visit);
        if (taken.value(visit.id).contains(view)) photographed.append(visit);
    }
    return drawn.size() >= 2 ? drawn : photographed;
}

bool CompareChoices::has_both_temples() const {
    return !with_view(View::left_temple).isEmpty() && !with_view(View::right_temple).isEmpty();
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
        QVector<View> drawn, photographed;
        for (const work::PhotoRow& row : photos.value()) {
            if (row.has_marks && !drawn.contains(row.photo.view)) drawn.append(row.photo.view);
            if (!photographed.contains(row.photo.view)) photographed.append(row.photo.view);
        }
        out.marked.insert(visit.id, drawn);
        out.taken.insert(visit.id, photographed);
    }
    return out;
}

}  // namespace kempt::desk
