// Photos: the record in one table, the original bytes, untouched, in another. Errors as in client_store.h.
#pragma once

#include <QByteArray>
#include <QVector>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

// A book keeps the same bytes once: a file dropped twice would pass for a repeat shot and make the repeats look
// steadier than they are. Errors: not_found (no such visit), invalid with code "photo-already-kept" (these bytes),
// "shot-taken" (that view of the visit has a shot of that number), "photo-hash" (sha256 given and not that of the
// bytes). An empty sha256 is filled in.
[[nodiscard]] Result<Id> add_photo(Book& book, const PhotoRecord& photo, const QByteArray& bytes);

// Everything but bytes, format, sha256 and size, which never change.
[[nodiscard]] Status update_photo(Book& book, const PhotoRecord& photo);
// The quality gate's answer: "good", "usable", "refused", or empty; findings is a JSON array or empty.
[[nodiscard]] Status set_photo_quality(Book& book, Id photo, const QString& level, const QString& findings);

[[nodiscard]] Result<PhotoRecord> get_photo(Book& book, Id id);
[[nodiscard]] Result<QByteArray> photo_bytes(Book& book, Id id);  // as they came
// Nothing when these bytes are not in the book.
[[nodiscard]] Result<std::optional<PhotoRecord>> find_photo_by_sha256(Book& book, const QString& sha256);
// In the order of all_views(), then shot; of one view when given.
[[nodiscard]] Result<QVector<PhotoRecord>> photos_of_visit(Book& book, Id visit, std::optional<View> view = {});
[[nodiscard]] Result<int> next_shot(Book& book, Id visit, View view);  // 1 when there is none
// With its marks and readings. Overwrites like erase_client.
[[nodiscard]] Status erase_photo(Book& book, Id id);

}  // namespace kempt::store
