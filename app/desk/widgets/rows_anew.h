// A column of rows that is always made anew as a whole.
#pragma once

#include <QWidget>

class QBoxLayout;

namespace kempt::desk {

// A widget that is put into a page that is seen is shown by itself, and each such showing lays the whole page out. Rows
// are therefore made in a box that nobody sees yet, which then takes the place of the one before: one layout for all.
class RowsAnew : public QWidget {
    Q_OBJECT
  public:
    // spacing: px between the rows
    explicit RowsAnew(int spacing, QWidget* parent = nullptr);
    // An empty column for the new rows; the old ones stay until show_rows().
    [[nodiscard]] QBoxLayout* begin();
    // The new rows take the place of the old ones.
    void show_rows();

  private:
    int spacing_;
    QWidget *now_ = nullptr, *next_ = nullptr;
};

}  // namespace kempt::desk
