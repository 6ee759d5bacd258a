// The time strip with what fills it, and a button that stops it.
#pragma once

#include <QWidget>

#include "desk/compare/time_strip.h"
#include "desk/session/session.h"

class QLabel;
class QPushButton;

namespace kempt::desk {

class StripFiller;

class StripPanel : public QWidget {
    Q_OBJECT
  public:
    explicit StripPanel(Session& session, QWidget* parent = nullptr);
    void show_view(Id client, View view, Id reference_visit);
    void stop();
    [[nodiscard]] bool settled() const;
    [[nodiscard]] TimeStrip* strip() const { return strip_; }
    [[nodiscard]] StripFiller* filler() const { return filler_; }
    // Of the visit that is picked: date and reading, and how its picture was laid.
    [[nodiscard]] QString picked_words() const;
    [[nodiscard]] QString picked_told() const;
    [[nodiscard]] bool picked_apart() const;

  signals:
    void picked_changed();
    void compare_asked(kempt::Id from, kempt::Id to);

  private:
    void show_progress();
    StripFiller* filler_;
    TimeStrip* strip_;
    QLabel* state_;
    QPushButton* stop_;
};

}  // namespace kempt::desk
