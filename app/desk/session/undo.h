// What was entered last, to be taken back with one press, and done again: the one undo of the book's entries. Each step
// is one transaction of the book and says so where it cannot be. What is still being drawn (marks, bands) or has files
// beside the book (photos taken in) has an undo of its own.
#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <vector>

#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::desk {

class Session;

struct UndoStep {
    QString words;  // "grade of edges, left temple"
    QString about;  // the record it changed: "grade/12/edges/left temple/1"
    Id client = 0;
    Id visit = 0;                                   // whose page is told besides hers; 0: none
    std::function<Status(Book&)> back, again = {};  // each one transaction; no again: it cannot be done again
};

class Undo : public QObject {
    Q_OBJECT
  public:
    explicit Undo(Session& session);
    // Of an entry that the book has kept.
    void add(UndoStep step);
    // What would be taken back of this client; of the records whose `about` begins so. Empty: nothing.
    [[nodiscard]] QString words(Id client, const QString& about = {}) const;
    [[nodiscard]] QString words_again(Id client, const QString& about = {}) const;
    // The last of them, once everything that was asked before is kept; what came of it is told in the window.
    void take_back(Id client, const QString& about = {});
    void do_again(Id client, const QString& about = {});
    // The record is gone.
    void forget(const QString& about);

  signals:
    void changed();
    void taken(const kempt::desk::UndoStep& step);  // back or again, and in the book

  private:
    using Steps = std::vector<UndoStep>;  // one of behind_ and ahead_
    [[nodiscard]] static int last_of(const Steps& steps, Id client, const QString& about);
    void ask(Steps& from, Id client, const QString& about, bool back);
    void run(Steps& from, Id client, const QString& about, bool back);

    Session& session_;
    Steps behind_, ahead_;
};

}  // namespace kempt::desk
