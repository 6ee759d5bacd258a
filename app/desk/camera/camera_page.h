// Photos taken with a camera of this computer: its picture, the last visit's photo of the view as a guide, one key to
// take, the next view that is missing. What is taken goes the same way into the book as a file.
#pragma once

#include <QTemporaryDir>
#include <memory>

#include "desk/camera/camera_data.h"
#include "desk/camera/camera_source.h"
#include "desk/window/page.h"

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
    [[nodiscard]] bool settled() const override { return settled_ && taking_ == 0 && looking_ == 0; }
    [[nodiscard]] QPushButton* take_button() const { return take_; }
    [[nodiscard]] GuideView* picture() const { return picture_; }
    [[nodiscard]] View view() const { return view_; }
    [[nodiscard]] QString told() const;

  private:
    QWidget* build_side();
    QWidget* build_none();
    void load(bool choose_view);
    void take(const CameraData& found, bool fresh);
    void choose_view(View view);
    void show_guide();
    void look_for_cameras();
    void took(const QByteArray& photo);
    void look_at(Id photo, int shot);
    void say(const QString& words, const char* tone);

    Place place_;
    CameraData data_;
    View view_ = View::front_hairline;
    bool settled_ = true;
    int taking_ = 0, looking_ = 0, takes_ = 0;
    QTemporaryDir folder_;
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
