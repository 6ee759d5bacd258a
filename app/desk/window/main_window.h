// The window of kempt-desk: the start page, or the open book.
#pragma once

#include <QMainWindow>
#include <memory>

#include "desk/photo/live_reading.h"
#include "desk/translations/language.h"
#include "desk/window/place.h"

class QStackedWidget;

namespace kempt::desk {

class BookView;
class Session;
class StartPage;

class MainWindow : public QMainWindow {
    Q_OBJECT
  public:
    explicit MainWindow(OpenFunction open = open_with_analysis(), QWidget* parent = nullptr);
    ~MainWindow() override;
    // Opens on a worker; errors are told on the start page.
    void open_book(const QString& path);
    [[nodiscard]] BookView* book() const { return view_; }
    [[nodiscard]] Session* session() const { return session_.get(); }
    [[nodiscard]] StartPage* start() const { return start_; }
    void show_settings();
    void show_safe_keeping();

  protected:
    void closeEvent(QCloseEvent* event) override;

  private:
    void show_book(const QString& path);
    void leave_book();
    void retire(std::shared_ptr<Session> session);
    void make_start();
    void rebuild();
    void add_shortcuts();
    void close_when_kept();

    OpenFunction open_;
    std::unique_ptr<Session> session_;
    QStackedWidget* stack_;
    StartPage* start_ = nullptr;
    BookView* view_ = nullptr;
    double text_scale_;
    bool inches_;
    Language language_;
    bool kept_ = false;
    int waited_ms_ = 0;
};

}  // namespace kempt::desk
