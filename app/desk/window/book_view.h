// The open book: clients down the left, one page beside them, the way here above, work under way below.
#pragma once

#include <QHash>
#include <QTimer>
#include <QWidget>
#include <functional>

#include "desk/session/session.h"
#include "desk/window/place.h"

class QStackedWidget;
class QLabel;
class QProgressBar;

namespace kempt::desk {

class ClientList;
class DuePage;
class Inbox;
class Notice;
class Page;
class TrailBar;

class BookView : public QWidget {
    Q_OBJECT
  public:
    explicit BookView(Session& session, QWidget* parent = nullptr);
    void go(const Place& place);
    void back();
    [[nodiscard]] const Place& place() const { return place_; }
    [[nodiscard]] Page* page() const;
    [[nodiscard]] DuePage* due() const { return nobody_; }  // shown while no client is
    [[nodiscard]] ClientList* clients() const { return clients_; }
    [[nodiscard]] Notice* notice() const { return notice_; }
    void put_away(std::function<void()> then);
    void find_client();
    void undo();
    void redo();
    [[nodiscard]] TrailBar* trail() const { return trail_; }
    void add_client();

  signals:
    void settings_asked();
    void another_book_asked();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    // Photos may be dropped anywhere; a view's own tray takes them before.
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void show_place(const Place& place);
    void share_width();
    void show_undo();
    void watch(jobs::JobRunner& runner);
    [[nodiscard]] Page* page_for(Where where);

    Session& session_;
    Inbox& inbox_;
    Place place_;
    QVector<Place> behind_;
    TrailBar* trail_;
    ClientList* clients_;
    Notice* notice_;
    QStackedWidget* pages_;
    DuePage* nobody_;
    QHash<int, Page*> made_;
    QWidget *busy_, *drop_hint_;
    QLabel* busy_words_;
    QProgressBar* busy_bar_;
    QTimer busy_pause_, busy_step_;
    struct {
        QString title, step;
        double fraction = 0;
    } busy_now_;  // as the jobs told it last
};

}  // namespace kempt::desk
