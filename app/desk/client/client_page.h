// One client: visits with their best photos, progress, targets, services.
#pragma once

#include <QVector>

#include "desk/window/page.h"
#include "work/face_keep.h"

class QLabel;
class QBoxLayout;
class QGridLayout;
class QPushButton;

namespace kempt::desk {

struct ClientData;
struct VisitOnPage;
class ProgressPanel;
class ServicesPanel;
class Columns;

class ClientPage : public Page {
    Q_OBJECT
  public:
    explicit ClientPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    [[nodiscard]] bool settled() const override;
    [[nodiscard]] ProgressPanel* progress() const { return progress_; }
    [[nodiscard]] QPushButton* more_visits() const { return more_visits_; }
    // A visit today, opened at once.
    void add_visit();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void load();
    void take(const ClientData& data);
    void show_more();
    void lay_cards();
    void balance();  // the services go into the shorter column
    QWidget* visit_card(const VisitOnPage& visit);
    void edit();
    void ask_to_erase();

    Id client_id_ = 0;
    Client client_;
    bool settled_ = true;
    QLabel *name_, *below_, *note_;
    work::FaceWish face_ = work::FaceWish::not_asked;
    qsizetype most_visits_ = 0;
    Columns* columns_;
    QGridLayout* visits_;
    QVector<QWidget*> cards_;  // of the visits, newest first; or what stands there instead
    QPushButton* more_visits_;
    ProgressPanel* progress_;
    ServicesPanel* services_;
};

}  // namespace kempt::desk
