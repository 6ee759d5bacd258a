// One planned service: the fields that its kind needs.
#pragma once

#include <QFrame>
#include <QHash>

#include "desk/plan/plan_fields.h"
#include "work/plan_draft.h"

class QCheckBox;
class QComboBox;
class QLayout;

namespace kempt::desk {

class ChoiceRow;
class LengthField;
class NumberField;

class ServiceForm : public QFrame {
    Q_OBJECT
  public:
    explicit ServiceForm(const care::PlannedService& service, QWidget* parent = nullptr);
    [[nodiscard]] care::Kind kind() const { return service_.kind; }
    [[nodiscard]] care::PlannedService service() const { return service_; }
    // Puts the keyboard into that field; false when this kind has none.
    bool focus_field(PlanField field);
    // Has it such a field, and is that still open?
    [[nodiscard]] bool has_open(PlanField field) const;
    [[nodiscard]] bool shows(PlanField field) const;
    // A yes or no that is asked of it though its kind shows no field for it: home use, formaldehyde. Tells.
    void answer(PlanField field, const std::optional<bool>& yes);
    void set_strength(const std::optional<care::Strength>& strength);  // tells
    void clear_strand_test();                                          // tells
    // For tests and for whoever works by name.
    [[nodiscard]] NumberField* minutes() const { return minutes_; }
    [[nodiscard]] NumberField* most_minutes() const { return most_; }
    [[nodiscard]] QCheckBox* new_growth() const { return new_growth_; }
    [[nodiscard]] ChoiceRow* choice(PlanField field) const { return choices_.value(static_cast<int>(field)); }

  signals:
    void entered();
    void remove_asked();

  private:
    using Truth = std::optional<bool> care::PlannedService::*;
    // Where a yes or no is kept; null: the field is none.
    [[nodiscard]] static Truth truth_of(PlanField field);
    void build();
    void add_stretch(QLayout* row);
    void add_numbers(QLayout* row);
    void add_sections(QLayout* column);
    void add_choices(QLayout* row);
    void add_yes_no(QLayout* row, PlanField field, const QString& words);
    void add_test(QLayout* row, PlanField field, const QString& words, std::optional<bool> care::PlannedService::*made,
                  std::optional<care::TestResult> care::PlannedService::*result);
    [[nodiscard]] NumberField* number(QLayout* row, PlanField field, const QString& words, double most,
                                      const QString& unit, std::optional<double> care::PlannedService::*member);
    [[nodiscard]] QString name_of(const QString& words) const;

    care::PlannedService service_;
    QHash<int, QWidget*> fields_;
    QHash<int, ChoiceRow*> choices_;
    LengthField *from_ = nullptr, *to_ = nullptr;
    QCheckBox* new_growth_ = nullptr;
    QComboBox* strength_ = nullptr;
    NumberField *minutes_ = nullptr, *most_ = nullptr, *hours_ = nullptr;
};

}  // namespace kempt::desk
