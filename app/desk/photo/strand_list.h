// The traced strands, longest first, each with the colour that it has on the photo. Pointing at one, or choosing it,
// shows it on the photo. Keys: Delete takes the chosen one out, J joins it with the next one that is chosen, O says
// that it is a hair of its own.
#pragma once

#include <QListWidget>

#include "desk/photo/overlay.h"

namespace kempt::desk {

class StrandList : public QListWidget {
    Q_OBJECT
  public:
    explicit StrandList(QWidget* parent = nullptr);
    void show_strands(const StrandsOverlay& found);
    void choose(int strand);  // as the photo says; not told back

  signals:
    void pointed_at(int strand);  // -1: at none
    void chosen(int strand);
    void drop_asked(int strand);
    void join_asked(int strand);
    void whole_asked(int strand);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fit_rows();

    int fitted_ = 0;  // width of the rows that they were fitted to
    QString shown_;   // what the rows were made from
};

// "182 mm, doubtful"
[[nodiscard]] QString words_of(const ShownStrand& strand);

}  // namespace kempt::desk
