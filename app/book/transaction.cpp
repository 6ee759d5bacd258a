#include "book/transaction.h"

#include "book/dialect.h"
#include "book/sql.h"

namespace kempt {

namespace {

QString name_of(int depth) {
    return QStringLiteral("kempt_%1").arg(depth);
}

void undo(sql::Connection& connection, int depth) {
    // The database may have rolled back by itself (disk full); then these say so and there is nothing to undo.
    if (depth == 0) {
        (void)sql::change(connection, "ROLLBACK");
    } else {
        (void)sql::change(connection, "ROLLBACK TO SAVEPOINT " + name_of(depth));
        (void)sql::change(connection, "RELEASE SAVEPOINT " + name_of(depth));
    }
}

}  // namespace

Result<Transaction> Transaction::begin(Book& book) {
    sql::Connection& connection = book.connection();
    const int depth = connection.depth;
    auto begun = sql::change(connection, depth == 0 ? sql::dialect::begin_writing() : "SAVEPOINT " + name_of(depth));
    if (!begun) return begun.error();
    ++connection.depth;
    return Transaction(&connection, depth);
}

Transaction::Transaction(Transaction&& other) noexcept
    : connection_(std::exchange(other.connection_, nullptr)), depth_(other.depth_) {}

Transaction::~Transaction() {
    roll_back();
}

Status Transaction::commit() {
    if (!connection_)
        return Error{ErrorKind::invalid, "transaction-ended", "This change was already finished.", "", ""};
    auto done = sql::change(*connection_, depth_ == 0 ? "COMMIT" : "RELEASE SAVEPOINT " + name_of(depth_));
    if (!done) {
        roll_back();
        return done.error();
    }
    connection_->depth = depth_;
    connection_ = nullptr;
    return Done{};
}

void Transaction::roll_back() {
    if (!connection_) return;
    undo(*connection_, depth_);
    connection_->depth = depth_;
    connection_ = nullptr;
}

}  // namespace kempt
