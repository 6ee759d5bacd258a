// Two visits of one view, one over the other at one scale, and whether the change is real.
#pragma once

#include "desk/window/page.h"

class QComboBox;
class QLabel;
class QFrame;
class QCheckBox;
class QSlider;
class QPushButton;

namespace kempt::desk {

class BeforeAfter;
struct CompareChoices;

class ComparePage : public Page {
    Q_OBJECT
  public:
    explicit ComparePage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    [[nodiscard]] bool wants_whole_width() const override { return true; }
    [[nodiscard]] bool settled() const override { return settled_; }
    [[nodiscard]] BeforeAfter* picture() const { return picture_; }
    // Writes the pair as PNG. Refused without the client's consent.
    void save_to(const QString& path);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void take(const CompareChoices& choices);
    void fill_visits();
    void compare();
    void show_slider();
    void choose_file();
    [[nodiscard]] View chosen_view() const;

    Place place_;
    std::shared_ptr<const CompareChoices> choices_;
    bool settled_ = true;
    int asked_ = 0;
    QWidget* choices_row_;
    QComboBox *view_, *from_, *to_;
    BeforeAfter* picture_;
    QSlider* slider_;
    QCheckBox* lines_;
    QLabel *verdict_, *notes_, *empty_;
    QFrame* verdict_box_;
    QPushButton* save_;
};

}  // namespace kempt::desk
