// Settings that belong to the book: units, printer correction, paper. Errors as in client_store.h.
#pragma once

#include <QMap>
#include <optional>

#include "book/book.h"

namespace kempt::store {

// Keys are kebab-case words ("printer-correction"); values are text, numbers in C notation.
[[nodiscard]] Status put_setting(Book& book, const QString& key, const QString& value);    // adds or replaces
[[nodiscard]] Result<std::optional<QString>> get_setting(Book& book, const QString& key);  // nothing when not set
[[nodiscard]] Result<QMap<QString, QString>> list_settings(Book& book);
[[nodiscard]] Status erase_setting(Book& book, const QString& key);  // also when it was not set

}  // namespace kempt::store
