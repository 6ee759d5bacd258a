// One heat tool of her days: name, temperature, how often, on wet hair or not.
#pragma once

#include <QFrame>

#include "domain/records.h"

class QComboBox;

namespace kempt::desk {

class ChoiceRow;
class NumberField;

class HeatRow : public QFrame {
    Q_OBJECT
  public:
    explicit HeatRow(const HeatTool& tool, QWidget* parent = nullptr);
    [[nodiscard]] HeatTool tool() const { return tool_; }
    [[nodiscard]] QComboBox* name() const { return name_; }
    [[nodiscard]] NumberField* temperature() const { return temperature_; }
    [[nodiscard]] NumberField* times() const { return times_; }
    [[nodiscard]] ChoiceRow* wet() const { return wet_; }

  signals:
    void entered();
    void remove_asked();

  private:
    HeatTool tool_;
    QComboBox* name_;
    NumberField *temperature_, *times_;
    ChoiceRow* wet_;
};

}  // namespace kempt::desk
