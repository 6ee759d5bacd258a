// Before a book is open: open one, make one, or look round in the demo.
#pragma once

#include <QWidget>

#include "jobs/job_runner.h"

class QBoxLayout;
class QProgressBar;
class QLabel;

namespace kempt::desk {

class Notice;

class StartPage : public QWidget {
    Q_OBJECT
  public:
    explicit StartPage(QWidget* parent = nullptr);
    // Opens (checks on a worker that it can be opened) and tells; errors are told on this page.
    void open_book(const QString& path);
    void create_book(const QString& path);
    void open_demo(const QString& folder);
    void refresh();
    [[nodiscard]] bool busy() const { return runner_.unfinished() > 0; }
    [[nodiscard]] Notice* notice() const { return notice_; }

  signals:
    void book_ready(const QString& path);
    void settings_asked();
    void safe_keeping_asked();

  private:
    void choose(bool fresh);
    void set_busy(bool busy, const QString& words);
    jobs::JobRunner runner_{QString()};
    jobs::JobHandle job_;
    Notice* notice_;
    QBoxLayout* recent_;
    QWidget *acts_, *busy_;
    QProgressBar* bar_;
    QLabel* busy_words_;
};

// Where the demo's book is kept: the person's own data folder.
[[nodiscard]] QString demo_folder();

}  // namespace kempt::desk
