// The windows worked on a large book, and how long each thing took.
#pragma once

#include <memory>
#include <vector>

#include "bench/desk/large_book.h"
#include "bench/desk/watchdog.h"
#include "desk/window/main_window.h"

namespace bench {

struct Times {
    double median = 0, worst = 0;
    int n = 0;
    double worst_work = 0;  // most of the windows' thread's own processor time in one of them; 0: not asked
};
[[nodiscard]] Times times_of(std::vector<double> ms);

class Tour {
  public:
    Tour(const QString& path, const LargeBook& book, Watchdog& watchdog);
    ~Tour();
    // Until the list of clients is filled and a painted window takes letters; ms since the window was made.
    [[nodiscard]] double open();
    // Until it is known who is due; ms since the window was made.
    [[nodiscard]] double wait_for_due();
    // Letter by letter, and taken back: until the list is painted anew.
    [[nodiscard]] Times search();
    struct Page {
        Times shown, whole;  // until name and visits are painted; until the chart of the progress is, too
    };
    [[nodiscard]] Page clients(const std::vector<kempt::Id>& ids);
    // One client's page, three times, each time after that of another.
    [[nodiscard]] Page one_client(kempt::Id id, kempt::Id other);
    [[nodiscard]] Times visits(const std::vector<kempt::desk::Place>& places);
    [[nodiscard]] double due_again();
    // Takes photos in, draws their marks and measures them, while the pages of these clients are opened one after the
    // other. Gives how many were measured.
    [[nodiscard]] int import_and_measure(const std::vector<kempt::Id>& meanwhile);
    // Takes away what that brought, so that the book can be used again.
    void tidy();

  private:
    [[nodiscard]] bool quiet() const;
    void wander(const std::vector<kempt::Id>& ids);
    LargeBook book_;
    QString path_;
    Watchdog& watchdog_;
    std::unique_ptr<kempt::desk::MainWindow> window_;
    double made_ms_ = 0;
    kempt::Id added_ = 0;
};

}  // namespace bench
