// What the hair goes through from day to day, in short questions; each may stay not known.
#pragma once

#include <QFrame>
#include <QHash>
#include <functional>

#include "domain/records.h"

class QBoxLayout;
class QLabel;
class QPushButton;

namespace kempt::desk {

class ChoiceRow;
class HeatRow;
class NumberField;

class DaysPanel : public QFrame {
    Q_OBJECT
  public:
    explicit DaysPanel(QWidget* parent = nullptr);
    void show_life(const DailyLife& life, const QDate& today);  // tells nobody
    // Water, cover and styles: a panel of its own, placed by the page.
    [[nodiscard]] QFrame* habits() const { return habits_; }
    [[nodiscard]] DailyLife life() const { return life_; }
    // By the question's words.
    [[nodiscard]] ChoiceRow* choice(const QString& question) const { return choices_.value(question); }
    [[nodiscard]] NumberField* number(const QString& question) const { return numbers_.value(question); }
    [[nodiscard]] ChoiceRow* heat() const { return heat_; }
    [[nodiscard]] QVector<HeatRow*> tools() const { return tools_; }
    [[nodiscard]] QPushButton* add_tool() const { return add_tool_; }

  signals:
    void entered();

  private:
    void add_yes_no(QLayout* row, const QString& question, std::optional<bool> DailyLife::*member);
    void add_number(QLayout* row, const QString& question, const QString& name, double most, const QString& unit,
                    std::optional<double> DailyLife::*member);
    void add_heat(QBoxLayout* column);
    void show_tools();
    void take_tools();

    DailyLife life_;
    QLabel* told_;
    QFrame* habits_;
    QHash<QString, ChoiceRow*> choices_;
    QHash<QString, NumberField*> numbers_;
    QVector<std::function<void()>> fill_;
    ChoiceRow* heat_;
    QVector<HeatRow*> tools_;
    QBoxLayout* tool_rows_;
    QPushButton* add_tool_;
};

}  // namespace kempt::desk
