// One client: visits with their best photos, progress, targets, services.
#pragma once

#include "desk/window/page.h"

class QLabel;
class QBoxLayout;
class QPushButton;

namespace kempt::desk {

struct ClientData;
struct VisitOnPage;
class ProgressPanel;
class ServicesPanel;

class ClientPage : public Page {
    Q_OBJECT
  public:
    explicit ClientPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    [[nodiscard]] bool settled() const override;
    [[nodiscard]] ProgressPanel* progress() const { return progress_; }
    // A visit today, opened at once.
    void add_visit();

  private:
    void load();
    void take(const ClientData& data);
    QWidget* visit_card(const VisitOnPage& visit);
    void edit();
    void ask_to_erase();

    Id client_id_ = 0;
    Client client_;
    bool settled_ = true;
    QLabel *name_, *below_, *note_;
    QBoxLayout* visits_;
    ProgressPanel* progress_;
    ServicesPanel* services_;
};

}  // namespace kempt::desk
