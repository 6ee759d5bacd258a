// A desk to test at: settings of its own, a seeded book, a fake way of opening and measuring photos. The application
// is made once for the whole run (see room.cpp).
#pragma once

#include <QTemporaryDir>
#include <QTest>
#include <atomic>
#include <boost/test/unit_test.hpp>
#include <functional>
#include <memory>

#include "desk/photo/live_reading.h"
#include "desk/window/main_window.h"
#include "domain/records.h"
#include "work/open_book.h"

namespace kempt::test {

// Waits with a running event loop until it is so; false after the limit. The limit only bounds a failing test.
[[nodiscard]] bool wait_until(const std::function<bool()>& so, int limit_ms = 30000);

// Stands for the analysis: coverage is ten times the number of points, so that an answer tells which marks it is for.
struct FakeAnalysis {
    std::atomic<int> measured{0}, stopped{0}, slow_ms{0};
    [[nodiscard]] Result<desk::Measured> measure(const Marks& marks, const Progress& progress);
};
[[nodiscard]] desk::OpenFunction fake_open(const std::shared_ptr<FakeAnalysis>& analysis);

// A line of points on a photo, hair below it.
[[nodiscard]] Marks some_marks(int points = 4);

// What the book on disk says, through a connection of its own.
template <class T>
T read(const QString& path, const std::function<Result<T>(Book&)>& ask) {
    const auto book = work::open_book(path);
    BOOST_REQUIRE(book.ok());
    Result<T> result = ask(**book);
    BOOST_REQUIRE_MESSAGE(result.ok(), (result.ok() ? std::string() : result.error().sentence()));
    return result.value();
}

// A book with two clients; the first has two visits, the first visit one photo of the left temple.
struct SeededBook {
    SeededBook();
    QTemporaryDir folder;
    QString path;
    Id client = 0, other = 0, first_visit = 0, second_visit = 0, photo = 0;
    // A photo file that differs for every number.
    [[nodiscard]] QString picture_file(int number) const;
    // Another photo, of the second visit, with these marks when they ask for anything.
    Id add_photo(View view, const Marks& marks = {}) const;
    [[nodiscard]] std::optional<Marks> marks_in_book(Id of) const;

  private:
    mutable int next_picture_ = 40;
};

// The window on the seeded book, shown, with the fake analysis.
struct Desk {
    Desk();
    SeededBook book;
    std::shared_ptr<FakeAnalysis> analysis = std::make_shared<FakeAnalysis>();
    std::unique_ptr<desk::MainWindow> window;
    void go(const desk::Place& place);
    [[nodiscard]] bool settled() const;
    template <class Page>
    Page* page() const {
        return qobject_cast<Page*>(current());
    }

  private:
    [[nodiscard]] QWidget* current() const;
};

}  // namespace kempt::test
