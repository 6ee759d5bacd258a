// One visit: the state of the hair, photos by view with what is still missing, services. Everything is kept as entered.
#pragma once

#include <QSet>
#include <QTimer>

#include "desk/visit/view_tray.h"
#include "desk/window/page.h"

class QCheckBox;
class QDateEdit;
class QPlainTextEdit;
class QLabel;

namespace kempt::desk {

class ServicesPanel;
class StepsPanel;
struct Missing;
struct VisitData;
struct VisitStep;

class VisitPage : public Page {
    Q_OBJECT
  public:
    explicit VisitPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    void put_away(std::function<void()> then) override;
    void undo(const Place& here) override;
    [[nodiscard]] bool settled() const override {
        return settled_ && looking_ == 0 && keeping_ == 0 && !pause_.isActive();
    }
    // Takes files and folders into a view; what came of it is told in the window.
    void take_files(View view, const QStringList& paths);
    [[nodiscard]] ViewTray* tray(View view) const;
    [[nodiscard]] QCheckBox* wet() const { return wet_; }
    [[nodiscard]] StepsPanel* steps() const { return steps_; }

    static constexpr int pause_ms = 700;  // after the last key: between two words, not between two letters

  private:
    void load();
    void take(const VisitData& read);
    [[nodiscard]] Visit entered() const;
    void take_entries(const Visit& read);
    void fill_entries(const Visit& visit);
    void fill_steps(const VisitData& read);
    void go_to_step(const VisitStep& step);
    void go_to_missing(const Missing& missing);
    void choose_to_sort();
    void look_at_new(const QVector<work::PhotoRow>& photos);
    void order_trays();
    void keep_visit();
    void choose(View view, bool folder);
    void ask_to_erase_photo(Id photo);
    void ask_to_erase_visit();

    Id client_ = 0, visit_id_ = 0;
    Visit visit_;
    QString client_name_;
    bool settled_ = true, filling_ = false;
    bool unkept_ = false;  // the book refused what stands in the fields
    int looking_ = 0, keeping_ = 0;
    GateLooks looks_;
    QSet<Id> asked_looks_;
    QVector<work::PhotoRow> photos_;
    QTimer pause_;
    QLabel* title_;
    QDateEdit* date_;
    QCheckBox *wet_, *styled_, *product_;
    QPlainTextEdit* note_;
    StepsPanel* steps_;
    QVector<ViewTray*> trays_;
    QLayout *filled_, *unfilled_;
    ServicesPanel* services_;
};

}  // namespace kempt::desk
