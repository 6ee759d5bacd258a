// The book: one file that holds everything, photo bytes included. This room is the only one that speaks SQL.
//
// A Book owns one connection and belongs to the thread that opened it; another thread opens the same path again.
// Stores (client_store.h ... setting_store.h, namespace kempt::store) and Transaction take a Book&. Their work is
// durable when the outermost transaction, or the single call when there is none, has come back with success.
// A QCoreApplication must exist (Qt loads its database drivers through it).
#pragma once

#include <QString>
#include <memory>

#include "core/result.h"

namespace kempt {

namespace sql {
class Connection;
}

class Book {
  public:
    // Makes a new, empty book. Errors: invalid (a file of that name exists; it is left alone), io.
    static Result<Book> create(const QString& path);

    // Opens a book and brings an older one up to date; a copy of the older book is kept beside it first
    // (upgraded_from()). Errors, each leaving the file as it was: not_found, unsupported (not a book), version (written
    // by a newer Kempt: the sentence says which), damaged, busy (somebody else is writing), io (unreadable,
    // write-protected).
    static Result<Book> open(const QString& path);

    Book(Book&&) noexcept;
    Book& operator=(Book&&) noexcept;
    ~Book();

    [[nodiscard]] QString path() const;                  // absolute
    [[nodiscard]] int version() const;                   // of the schema; 0 when it cannot be read
    [[nodiscard]] static int newest_version();           // the one this Kempt writes
    [[nodiscard]] const QString& upgraded_from() const;  // the copy kept before an upgrade; empty when there was none
    [[nodiscard]] sql::Connection& connection() const;   // for the files of this room

  private:
    explicit Book(std::unique_ptr<sql::Connection> connection);
    std::unique_ptr<sql::Connection> connection_;
    QString upgraded_from_;
};

}  // namespace kempt
