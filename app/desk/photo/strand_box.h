// The list of a comb-out's strands with what she can correct in it: a strand that is no hair, two that are one, one
// that looks torn off and is a hair of its own.
#pragma once

#include <QWidget>

#include "desk/photo/overlay.h"
#include "domain/records.h"

class QLabel;
class QPushButton;

namespace kempt::desk {

class StrandList;

class StrandBox : public QWidget {
    Q_OBJECT
  public:
    // corrects: a comb-out; a pattern is only looked at.
    explicit StrandBox(bool corrects, QWidget* parent = nullptr);
    void show_strands(const StrandsOverlay& found, const Marks& marks);
    void choose(int strand);  // as the photo says
    [[nodiscard]] StrandList* list() const { return list_; }

  signals:
    void pointed_at(int strand);  // -1: at none
    void chosen(int strand);
    void drop_asked(int strand);
    void join_asked(int one, int other);
    void whole_asked(int strand);
    void clear_asked();

  private:
    void drop(int strand);
    void begin_join(int strand);
    void say_whole(int strand);
    [[nodiscard]] bool looks_torn(int strand) const;
    void took(int strand);
    void refresh();

    StrandList* list_;
    QLabel *parts_, *words_, *told_;
    QPushButton *drop_, *join_, *whole_, *clear_;
    QVector<bool> torn_;  // of each strand
    int joining_ = -1;    // the strand that waits for its other part
    int next_ = -1;       // to be chosen once a dropped one is gone, so that the keys go on from there
    bool corrects_;
};

}  // namespace kempt::desk
