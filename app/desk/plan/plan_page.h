// What can this hair take today: the services planned, what speaks against them, what to check first, the order of
// work, the hair's record, the next dates and the care at home.
#pragma once

#include <QTimer>

#include "desk/plan/answering.h"
#include "desk/plan/plan_data.h"
#include "desk/window/page.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace kempt::desk {

class CautionsStrip;
class DatesPanel;
class FindingsPanel;
class HairPanel;
class HomeCarePanel;
class QuestionsPanel;
class ServiceForm;
class WasItDone;
class WorkPanel;

class PlanPage : public Page {
    Q_OBJECT
  public:
    explicit PlanPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    void put_away(std::function<void()> then) override;
    [[nodiscard]] bool wants_whole_width() const override { return true; }
    [[nodiscard]] bool settled() const override;
    void add_service(care::Kind kind);

    // For tests.
    [[nodiscard]] ServiceForm* form(int index) const { return services_.value(index).form; }
    [[nodiscard]] WorkPanel* work(int index) const { return services_.value(index).work; }
    [[nodiscard]] int planned() const { return static_cast<int>(services_.size()); }
    [[nodiscard]] FindingsPanel* findings() const { return findings_; }
    [[nodiscard]] QuestionsPanel* questions() const { return questions_; }
    [[nodiscard]] HairPanel* hair() const { return hair_; }
    [[nodiscard]] DatesPanel* dates() const { return dates_; }
    [[nodiscard]] WasItDone* was_it_done() const { return was_it_done_; }
    [[nodiscard]] CautionsStrip* cautions() const { return cautions_; }
    [[nodiscard]] const std::optional<WorkedOut>& shown() const { return shown_; }

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    struct Planned {
        ServiceForm* form = nullptr;
        WorkPanel* work = nullptr;  // null: it has no order of work
    };
    void build(QBoxLayout* column);
    QWidget* build_planned();
    void load();
    void take(PlanData read);
    void take_draft();
    void show_services(const std::vector<work::DraftItem>& items);
    void add_widgets(const work::DraftItem& item);
    void remove_service(ServiceForm* form);
    void one_step_milder(ServiceForm* form);
    void show_empty();
    [[nodiscard]] std::vector<work::DraftItem> items() const;
    void entered();
    void keep_draft();
    void work_out();
    void take_plan(WorkedOut worked);
    void keep_of_client(const QString& words, std::function<Status(Book&)> write);
    void answer(const Answering& answering, const std::optional<double>& value);
    void focus_field(PlanField field);
    void mark_done(const Service& service);
    void confirm_history();
    void put_back();

    Place place_;
    PlanData data_;
    bool settled_ = true, filled_ = false, unkept_ = false, planning_ = false;
    std::optional<WorkedOut> shown_;
    std::optional<QPair<int, work::DraftItem>> taken_off_;
    QVector<Planned> services_;
    QTimer pause_;
    QLabel *title_, *below_, *nothing_;
    QPushButton *add_, *again_, *put_back_;
    QBoxLayout *forms_, *works_;
    WasItDone* was_it_done_;
    FindingsPanel* findings_;
    QuestionsPanel* questions_;
    HairPanel* hair_;
    DatesPanel* dates_;
    HomeCarePanel* home_;
    CautionsStrip* cautions_;
};

}  // namespace kempt::desk
