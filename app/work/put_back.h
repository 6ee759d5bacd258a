// Undo: brings one entry back to what it was before, in one transaction, as long as the book still holds it as it was
// left. The same functions do it again with both sides exchanged.
#pragma once

#include <QVector>
#include <optional>

#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/face_keep.h"

namespace kempt::work {

// Errors of all: refused (changed-since: the book holds something else than `now`; nothing is changed), not_found, io.
[[nodiscard]] Status put_back(Book& book, const Visit& now, const Visit& before);
[[nodiscard]] Status put_back(Book& book, const Service& now, const Service& before);

// The name, note and consent of a client, with her wish about her face.
struct ClientEntry {
    Client client;
    FaceWish wish = FaceWish::not_asked;
};
[[nodiscard]] Result<ClientEntry> client_entry_of(Book& book, Id client);
[[nodiscard]] Status change_client_entry(Book& book, const ClientEntry& entry);  // in one transaction
[[nodiscard]] Status put_back(Book& book, const ClientEntry& now, const ClientEntry& before);

// A grade by visit, zone, quality and round; nothing: none is given. Ids do not matter.
struct GradeEntry {
    Grade at;  // its place; the value is not read
    std::optional<int> value;
};
[[nodiscard]] Status put_back(Book& book, const GradeEntry& now, const GradeEntry& before);

// A target by client, view and reading.
struct TargetEntry {
    Target at;  // its place; the value is not read
    std::optional<double> value;
};
[[nodiscard]] Status put_back(Book& book, const TargetEntry& now, const TargetEntry& before);

// All that a client told: of her hair, her days, and in answer to questions.
struct ToldEntry {
    ClientProfile profile;
    QVector<DailyLife> days;
    QVector<ClientAnswer> answers;
};
[[nodiscard]] Result<ToldEntry> told_entry_of(Book& book, Id client);
[[nodiscard]] Status put_back(Book& book, const ToldEntry& now, const ToldEntry& before);

}  // namespace kempt::work
