// One view at two visits, both temples, or one view at all visits: at one scale, laid over each other where that holds,
// and whether the change is real.
#pragma once

#include "desk/compare/pair_on_show.h"
#include "desk/window/page.h"

class QComboBox;
class QLabel;
class QFrame;
class QCheckBox;
class QSlider;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace kempt::work {
struct ComparedPictures;
struct CompareOptions;
}  // namespace kempt::work

namespace kempt::desk {

class BeforeAfter;
class OneOverOther;
class SideBySide;
class StripPanel;
class EyesDialog;
struct CompareChoices;

class ComparePage : public Page {
    Q_OBJECT
  public:
    enum class Mode { parting, turns, edge, beside, all_visits };
    explicit ComparePage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    [[nodiscard]] bool wants_whole_width() const override { return true; }
    [[nodiscard]] bool settled() const override;
    [[nodiscard]] BeforeAfter* picture() const { return picture_; }
    [[nodiscard]] SideBySide* beside() const { return beside_; }
    [[nodiscard]] OneOverOther* over() const { return over_; }
    [[nodiscard]] StripPanel* strip() const { return strip_; }
    [[nodiscard]] QScrollArea* area() const { return area_; }
    [[nodiscard]] QPushButton* save_button() const { return save_; }
    [[nodiscard]] Mode mode() const;  // what is really shown: photos that could not be laid stand side by side
    void set_mode(Mode mode);
    // Both temples of one visit or of two; false when there are none.
    bool show_temples();  // before the visits were read: as soon as they are
    // Writes the pair as PNG. Refused without the client's consent, and while a face must be looked at first.
    void save_to(const QString& path);
    // The photos on show, one after the other; nullptr when there are none.
    EyesDialog* open_eyes();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    void take(const CompareChoices& choices);
    void take_pair(const work::ComparedPictures& pictures);
    void fill_visits();
    void compare();
    void show_mode();
    void fit();
    void show_empty(const QString& words);
    void say(const QString& strong, const QString& soft, const char* tone);
    void choose_file();
    [[nodiscard]] bool temples() const;
    [[nodiscard]] View chosen_view() const;
    [[nodiscard]] work::CompareOptions options() const;

    Place place_;
    std::shared_ptr<const CompareChoices> choices_;
    bool settled_ = true, pair_there_ = false, temples_wanted_ = false, unseen_ = true;
    int asked_ = 0;
    jobs::JobHandle job_;
    Mode wanted_ = Mode::parting;
    PairOnShow pair_;
    QVector<Id> photos_;
    QString verdict_words_, notes_words_, why_apart_;
    const char* tone_ = "plain";
    QWidget *choices_row_, *modes_row_, *from_box_, *to_box_;
    QComboBox *view_, *from_, *to_;
    QLabel *from_label_, *to_label_;
    QVector<QPushButton*> modes_;
    QScrollArea* area_;
    QStackedWidget* shown_;
    BeforeAfter* picture_;
    OneOverOther* over_;
    SideBySide* beside_;
    StripPanel* strip_;
    QSlider* slider_;
    QCheckBox *lines_, *turned_;
    QLabel *verdict_, *notes_, *empty_;
    QFrame* verdict_box_;
    QPushButton *save_, *eyes_;
};

}  // namespace kempt::desk
