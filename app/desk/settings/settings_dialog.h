// Text size, light and dark, units, and what the printer did to the gauge card. Everything takes effect at once.
#pragma once

#include <QDialog>

#include "card/card_layout.h"

class QDoubleSpinBox;
class QLabel;

namespace kempt::desk {

class Session;

class SettingsDialog : public QDialog {
    Q_OBJECT
  public:
    // session: of the open book, for the printer's correction; null while no book is open.
    explicit SettingsDialog(Session* session, QWidget* parent = nullptr);

  private:
    void choose_gauge_file(card::Kind kind);
    void build_printer(class QBoxLayout* column);
    Session* session_;
    QDoubleSpinBox* line_ = nullptr;
    QLabel* line_words_ = nullptr;
};

}  // namespace kempt::desk
