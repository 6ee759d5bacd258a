#include "work/sort_sittings.h"

#include <algorithm>
#include <numeric>

#include "book/client_store.h"
#include "book/photo_store.h"
#include "book/visit_store.h"

namespace kempt::work {

namespace {

Result<VisitProposal> proposal_for(Book& book, const Visit& visit, ProposedBy by) {
    const auto client = store::get_client(book, visit.client);
    if (!client) return client.error();
    return VisitProposal{visit.client, client->name, visit.id, visit.date, by};
}

// How many seconds lie between a moment and the sitting; 0 within it.
qint64 seconds_off(const QDateTime& moment, const SittingTimes& sitting) {
    if (moment < sitting.from) return moment.secsTo(sitting.from);
    return moment > sitting.to ? sitting.to.secsTo(moment) : 0;
}

Result<bool> of_same_sitting(Book& book, Id visit, const SittingTimes& sitting) {
    const auto photos = store::photos_of_visit(book, visit);
    if (!photos) return photos.error();
    return std::any_of(photos->begin(), photos->end(), [&](const PhotoRecord& photo) {
        return photo.taken && seconds_off(*photo.taken, sitting) <= sitting_gap_s;
    });
}

Result<bool> has_timed_photo(Book& book, Id visit) {
    const auto photos = store::photos_of_visit(book, visit);
    if (!photos) return photos.error();
    return std::any_of(photos->begin(), photos->end(),
                       [](const PhotoRecord& photo) { return photo.taken.has_value(); });
}

}  // namespace

QVector<QVector<int>> sittings_of(const QVector<QDateTime>& taken) {
    QVector<int> order(taken.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return taken[a] < taken[b]; });
    QVector<QVector<int>> out;
    for (const int i : order) {
        if (!out.isEmpty()) {
            const QDateTime& before = taken[out.last().last()];
            if (before.secsTo(taken[i]) <= sitting_gap_s &&
                before.toLocalTime().date() == taken[i].toLocalTime().date()) {
                out.last().append(i);
                continue;
            }
        }
        out.append(QVector<int>{i});
    }
    return out;
}

Result<VisitProposal> visit_of_day(Book& book, Id client, const QDate& day) {
    const auto who = store::get_client(book, client);
    if (!who) return who.error();
    const auto visits = store::visits_of_client(book, client);
    if (!visits) return visits.error();
    VisitProposal out{client, who->name, 0, day, ProposedBy::chosen};
    for (const Visit& visit : visits.value())
        if (visit.date == day) out.visit = visit.id;  // the last one of that day
    return out;
}

Result<VisitProposal> propose_visit(Book& book, const SittingTimes& sitting, const SortContext& context) {
    std::optional<Visit> open;
    if (context.visit > 0) {
        const auto visit = store::get_visit(book, context.visit);
        if (!visit) return visit.error();
        open = visit.value();
    }
    if (context.dropped && open) return proposal_for(book, *open, ProposedBy::dropped);
    if (context.dropped && context.client > 0) {
        auto out = visit_of_day(book, context.client, sitting.day);
        if (out) out->by = ProposedBy::dropped;
        return out;
    }
    const auto visits = store::visits_between(book, sitting.day, sitting.day);
    if (!visits) return visits.error();
    for (const Visit& visit : visits.value()) {
        if (sitting.of_files) break;
        const auto same = of_same_sitting(book, visit.id, sitting);
        if (!same) return same.error();
        if (same.value()) return proposal_for(book, visit, ProposedBy::same_sitting);
    }
    if (open && open->date == sitting.day) return proposal_for(book, *open, ProposedBy::open_visit);
    if (context.client > 0 && !open && sitting.day == context.today) {
        auto out = visit_of_day(book, context.client, sitting.day);
        if (out) out->by = ProposedBy::open_client;
        return out;
    }
    if (visits->size() == 1 && !sitting.of_files) {
        // With photos of another time in it, these are of somebody else as well as not.
        const auto timed = has_timed_photo(book, visits->front().id);
        if (!timed) return timed.error();
        if (!timed.value()) return proposal_for(book, visits->front(), ProposedBy::only_visit);
    }
    return VisitProposal{0, {}, 0, sitting.day, ProposedBy::nothing};
}

}  // namespace kempt::work
