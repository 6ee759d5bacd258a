// Several writes as one: all of them or none. Rolls back unless committed.
//
//     auto transaction = Transaction::begin(book);
//     if (!transaction) return transaction.error();
//     ... store calls; return early on an error ...
//     return transaction->commit();
//
// A transaction begun inside another joins it: undone alone when it is rolled back, kept only when the outer one
// commits. Must not outlive its Book; end the inner one first.
#pragma once

#include "book/book.h"

namespace kempt {

class Transaction {
  public:
    // Errors: busy (another program or thread has been writing for longer than the wait), io, damaged.
    static Result<Transaction> begin(Book& book);

    Transaction(Transaction&& other) noexcept;
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();

    // After an error everything since begin() has been undone. Errors: io (disk full), busy, damaged.
    Status commit();
    void roll_back();

  private:
    Transaction(sql::Connection* connection, int depth) : connection_(connection), depth_(depth) {}
    sql::Connection* connection_;  // null once ended
    int depth_;                    // 0 for the outermost
};

}  // namespace kempt
