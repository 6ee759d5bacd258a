// Photos taken with a camera of this computer: its picture, the last visit's photo of the view as a guide, one key to
// take, the next view that is missing. What is taken goes the same way into the book as a file.
#pragma once

#include <QTimer>
#include <memory>

#include "desk/camera/camera_data.h"
#include "desk/camera/camera_source.h"
#include "desk/window/page.h"
#include "work/sort_take.h"

class QComboBox;
class QLabel;
class QPushButton;
class QBoxLayout;
class QSlider;

namespace kempt::desk {

class ChoiceRow;
class GuideView;
struct Measured;

class CameraPage : public Page {
    Q_OBJECT
  public:
    explicit CameraPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    void put_away(std::function<void()> then) override;
    [[nodiscard]] bool wants_whole_width() const override { return true; }
    [[nodiscard]] bool settled() const override { return settled_ && !awaiting_ && taking_ == 0 && looking_ == 0; }
    [[nodiscard]] QPushButton* take_button() const { return take_; }
    [[nodiscard]] GuideView* picture() const { return picture_; }
    [[nodiscard]] View view() const { return view_; }
    [[nodiscard]] QString told() const;

  private:
    // What was on the page when she pressed: the picture comes later, and belongs there.
    struct Asked {
        Place place;
        View view = View::front_hairline;
        QDate day;
    };
    QWidget* build_side();
    QWidget* build_none();
    void load(bool choose_view);
    void take(const CameraData& found, bool fresh);
    void choose_view(View view);
    void show_guide();
    void look_for_cameras();
    void ask_for_photo();
    void answered();  // the camera gave the photo, or will not
    void took(const QByteArray& photo);
    void kept(const Asked& asked, const work::ImportedFile& photo);
    void pick_view(View view);  // by hand
    void look_at(Id photo, int shot);
    void say(const QString& words, const char* tone);

    Place place_;
    CameraData data_;
    View view_ = View::front_hairline;
    bool settled_ = true;
    int taking_ = 0, looking_ = 0, guide_turn_ = 0;
    bool awaiting_ = false;      // pressed, and no photo yet
    bool picked_since_ = false;  // another view was chosen by hand since
    Asked asked_;
    QTimer await_limit_;
    QVector<std::function<void()>> leaving_;  // wait for the photo that was asked for
    std::unique_ptr<CameraSource> source_;
    GuideView* picture_;
    QWidget* none_;
    QLabel *title_, *guide_words_, *none_words_, *strength_words_;
    ChoiceRow* views_;
    QSlider* strength_;
    QComboBox* cameras_;
    QPushButton* take_;
    QBoxLayout* told_;
};

}  // namespace kempt::desk
