// What she and her hair are like for longer than one visit, in short questions; each may stay not known.
#pragma once

#include <QFrame>

#include "domain/records.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace kempt::desk {

class ChoiceRow;
class DayField;
class LengthField;
class NumberField;

class ProfilePanel : public QFrame {
    Q_OBJECT
  public:
    explicit ProfilePanel(QWidget* parent = nullptr);
    void show_profile(const ClientProfile& profile);  // tells nobody
    [[nodiscard]] ClientProfile profile() const { return profile_; }
    [[nodiscard]] ChoiceRow* texture() const { return texture_; }
    [[nodiscard]] ChoiceRow* group() const { return group_; }
    [[nodiscard]] LengthField* length() const { return length_; }
    [[nodiscard]] DayField* length_day() const { return length_day_; }
    [[nodiscard]] DayField* born() const { return born_; }
    [[nodiscard]] NumberField* age() const { return age_; }
    [[nodiscard]] ChoiceRow* history() const { return history_; }
    [[nodiscard]] DayField* history_from() const { return history_from_; }
    [[nodiscard]] QPushButton* still_so() const { return still_so_; }

  signals:
    void entered();

  private:
    void add_texture(QBoxLayout* column);
    void add_length(QBoxLayout* column);
    void add_age(QBoxLayout* column);
    void add_history(QBoxLayout* column);
    void show_age();
    void told_today();
    void show_told();

    ClientProfile profile_;
    ChoiceRow *texture_, *group_, *history_;
    LengthField* length_;
    NumberField* age_;
    DayField *length_day_, *born_, *history_from_;
    QLabel* told_;
    QPushButton* still_so_;
};

}  // namespace kempt::desk
