// The order of work of one planned service: what the strand test says, minutes to apply by head section and part, the
// hands, the drawing; when nothing works why, and what would make it work.
#pragma once

#include <QFrame>
#include <QVector>

#include "work/plan_draft.h"

class QBoxLayout;
class QButtonGroup;
class QGridLayout;
class QLabel;
class QPushButton;

namespace kempt::desk {

class ChoiceRow;
class NumberField;
class StretchBar;
class TimelineView;

class WorkPanel : public QFrame {
    Q_OBJECT
  public:
    explicit WorkPanel(const work::DraftItem& item, QWidget* parent = nullptr);
    [[nodiscard]] care::Setting setting() const;
    [[nodiscard]] bool in_rounds() const { return in_rounds_; }
    // The head sections that the service is planned for; minutes stay with their section.
    void set_sections(const std::vector<std::string>& sections);
    // length_mm: of the hair, where it is known.
    void show_plan(const work::ServicePlan& plan, const std::optional<double>& length_mm);
    // For tests.
    [[nodiscard]] NumberField* strand() const { return strand_; }
    [[nodiscard]] NumberField* minutes(const QString& section, care::Part part) const;
    [[nodiscard]] QVector<TimelineView*> timelines() const { return views_; }
    [[nodiscard]] QVector<QPushButton*> remedies() const { return remedies_; }

  signals:
    void entered();
    void milder_asked();  // one step milder, to be tested again

  private:
    struct Line {
        std::string section;
        QLabel* label = nullptr;
        NumberField *roots = nullptr, *mid = nullptr, *ends = nullptr;
    };
    void build(const work::DraftItem& item);
    void add_entries(QBoxLayout* column, const care::Setting& setting);
    void fill_table(const std::vector<care::SectionMinutes>& lines);
    void show_parts(const care::Coverage& coverage);
    void show_order(const work::PlannedTimeline& planned);
    void add_timeline(const QString& title, const care::Application& application, const care::Timeline& timeline);
    void add_legend();
    void add_remedy(const work::ProvenRemedy& remedy);
    void take_over(const care::Remedy& remedy);
    [[nodiscard]] std::vector<care::SectionMinutes> lines() const;

    care::Kind kind_;
    bool in_rounds_ = false;
    QString hint_;  // of a milder strength: what its strand test must say
    std::vector<std::string> sections_;
    QVector<Line> lines_;
    NumberField *strand_, *roots_, *ends_;
    ChoiceRow* hands_;
    QWidget* table_box_;
    QGridLayout* table_;
    QPushButton* alike_;
    QVector<QLabel*> part_heads_;
    StretchBar* stretches_;
    QLabel *say_, *unsure_;
    QBoxLayout* order_;
    QVector<TimelineView*> views_;
    QVector<QPushButton*> remedies_;
};

}  // namespace kempt::desk
