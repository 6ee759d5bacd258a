#include "work/put_back.h"

#include <algorithm>

#include "book/transaction.h"
#include "work/errors.h"
#include "work/keep_care.h"
#include "work/keep_records.h"

namespace kempt::work {

namespace {

Error changed_since() {
    return {ErrorKind::refused, "changed-since", "This entry has been changed since.", "The book holds the newer one.",
            "Change it where it stands."};
}

// A check and what follows from it, as one.
template <class Put>
Status as_one(Book& book, Put put) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    if (const Status done = put(); !done) return done.error();
    return transaction->commit();
}

template <class T>
Status dropped(const Result<T>& kept) {
    return kept ? Status(Done{}) : Status(kept.error());
}

bool same(const Visit& a, const Visit& b) {
    return a.id == b.id && a.client == b.client && a.date == b.date && a.hair == b.hair && a.note == b.note;
}

bool same(const Client& a, const Client& b) {
    return a.id == b.id && a.name == b.name && a.note == b.note && a.since == b.since &&
           a.photo_consent == b.photo_consent && a.consent_on == b.consent_on;
}

// Without their numbers: what is erased and put back has another one.
ToldEntry unnumbered(ToldEntry told) {
    for (DailyLife& one : told.days) one.id = 0;
    for (ClientAnswer& one : told.answers) one.id = 0;
    return told;
}

bool same(const ToldEntry& a, const ToldEntry& b) {
    const ToldEntry left = unnumbered(a), right = unnumbered(b);
    return left.profile == right.profile && left.days == right.days && left.answers == right.answers;
}

template <class List, class Same>
bool holds(const List& list, Same same_as) {
    return std::any_of(list.begin(), list.end(), same_as);
}

}  // namespace

Status put_back(Book& book, const Visit& now, const Visit& before) {
    return as_one(book, [&]() -> Status {
        const auto there = visit_of(book, now.id);
        if (!there) return there.error();
        if (!same(there.value(), now)) return changed_since();
        return change_visit(book, before);
    });
}

Status put_back(Book& book, const Service& now, const Service& before) {
    return as_one(book, [&]() -> Status {
        const auto there = service_of(book, now.id);
        if (!there) return there.error();
        if (!(there.value() == now)) return changed_since();
        return change_service(book, before);
    });
}

Result<ClientEntry> client_entry_of(Book& book, Id id) {
    auto client = client_of(book, id);
    if (!client) return client.error();
    const auto wish = face_wish_of(book, id);
    if (!wish) return wish.error();
    return ClientEntry{std::move(client).value(), wish.value()};
}

Status change_client_entry(Book& book, const ClientEntry& entry) {
    return as_one(book, [&]() -> Status {
        if (const Status kept = change_client(book, entry.client); !kept) return kept;
        return keep_face_wish(book, entry.client.id, entry.wish);
    });
}

Status put_back(Book& book, const ClientEntry& now, const ClientEntry& before) {
    return as_one(book, [&]() -> Status {
        const auto there = client_entry_of(book, now.client.id);
        if (!there) return there.error();
        if (!same(there->client, now.client) || there->wish != now.wish) return changed_since();
        return change_client_entry(book, before);
    });
}

Status put_back(Book& book, const GradeEntry& now, const GradeEntry& before) {
    return as_one(book, [&]() -> Status {
        const auto all = list_grades(book, now.at.visit);
        if (!all) return all.error();
        const auto there = std::find_if(all->begin(), all->end(), [&](const Grade& one) {
            return one.zone == now.at.zone && one.quality == now.at.quality && one.round == now.at.round;
        });
        const auto value = there == all->end() ? std::nullopt : std::optional(there->value);
        if (value != now.value) return changed_since();
        if (before.value) {
            Grade grade = now.at;
            grade.id = 0;
            grade.value = *before.value;
            return dropped(set_grade(book, grade));
        }
        return there == all->end() ? Status(Done{}) : erase_grade(book, there->id);
    });
}

Status put_back(Book& book, const TargetEntry& now, const TargetEntry& before) {
    return as_one(book, [&]() -> Status {
        const auto all = list_targets(book, now.at.client);
        if (!all) return all.error();
        const auto there = std::find_if(all->begin(), all->end(), [&](const Target& one) {
            return one.view == now.at.view && one.reading == now.at.reading;
        });
        const auto value = there == all->end() ? std::nullopt : std::optional(there->value);
        if (value != now.value) return changed_since();
        if (before.value) {
            Target target = now.at;
            target.id = 0;
            target.value = *before.value;
            return dropped(set_target(book, target));
        }
        return there == all->end() ? Status(Done{}) : erase_target(book, there->id);
    });
}

Result<ToldEntry> told_entry_of(Book& book, Id client) {
    ToldEntry told;
    auto profile = profile_of(book, client);
    if (!profile) return profile.error();
    told.profile = std::move(profile).value();
    told.profile.client = client;
    auto days = list_daily_life(book, client);
    if (!days) return days.error();
    told.days = std::move(days).value();
    auto answers = list_answers(book, client);
    if (!answers) return answers.error();
    told.answers = std::move(answers).value();
    return told;
}

Status put_back(Book& book, const ToldEntry& now, const ToldEntry& before) {
    return as_one(book, [&]() -> Status {
        const auto there = told_entry_of(book, now.profile.client);
        if (!there) return there.error();
        if (!same(there.value(), now)) return changed_since();
        if (const Status kept = set_profile(book, before.profile); !kept) return kept;
        for (const DailyLife& one : there->days)
            if (!holds(before.days, [&](const DailyLife& other) { return other.date == one.date; }))
                if (const Status gone = erase_daily_life(book, one.id); !gone) return gone;
        for (const DailyLife& one : unnumbered(before).days)
            if (!unnumbered(there.value()).days.contains(one))
                if (const auto kept = set_daily_life(book, one); !kept) return kept.error();
        const auto asked_as = [](const ClientAnswer& a, const ClientAnswer& b) {
            return a.question == b.question && a.date == b.date;
        };
        for (const ClientAnswer& one : there->answers)
            if (!holds(before.answers, [&](const ClientAnswer& other) { return asked_as(one, other); }))
                if (const Status gone = erase_answer(book, one.id); !gone) return gone;
        for (const ClientAnswer& one : unnumbered(before).answers)
            if (!unnumbered(there.value()).answers.contains(one))
                if (const auto kept = correct_answer(book, one); !kept) return kept.error();
        return Done{};
    });
}

}  // namespace kempt::work
