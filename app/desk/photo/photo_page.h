// One photo: draw what is to be measured, see the readings follow. What is drawn is kept by itself a moment after the
// last change, with the readings that belong to it.
#pragma once

#include <QTimer>

#include "desk/photo/live_meter.h"
#include "desk/window/page.h"

class QDoubleSpinBox;
class QLabel;
class QToolButton;
class QPushButton;
class QLayout;
class QScrollArea;

namespace kempt::work {
struct CarriedMarks;
}

namespace kempt::desk {

class FlowLayout;
class HintBox;
class PhotoCanvas;
class ReadingsPanel;
class ToolRow;
enum class Tool;
struct PhotoData;

class PhotoPage : public Page {
    Q_OBJECT
  public:
    explicit PhotoPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    void put_away(std::function<void()> then) override;
    // Of the marks, whose signs stand above the picture.
    void undo(const Place&) override;
    void redo(const Place&) override;
    [[nodiscard]] QString undo_words(const Place&) const override { return {}; }
    [[nodiscard]] bool wants_whole_width() const override { return true; }
    [[nodiscard]] bool settled() const override { return settled_ && !meter_.awaited() && !dirty_ && keeping_ == 0; }
    void set_overlay_shown(bool shown);
    [[nodiscard]] PhotoCanvas* canvas() const { return canvas_; }
    [[nodiscard]] ToolRow* tools() const { return tools_; }
    [[nodiscard]] HintBox* hint() const { return hint_; }
    [[nodiscard]] ReadingsPanel* readings() const { return panel_; }
    [[nodiscard]] LiveMeter* meter() { return &meter_; }

  private:
    void build_tools(FlowLayout* row);
    QWidget* build_side();
    void connect_parts();
    void build_ruler(QLayout* side);
    void read(Id photo);
    void open(const PhotoData& found);
    void opened(const OpenedPhoto& photo);
    void drawn(bool dragging);
    void measured(const Measured& measured, bool current);
    void refresh_tools();
    void say_nothing_asked();
    void keep(std::function<void()> then);
    void carry();
    void bring_proposal();
    void take_proposal(const work::CarriedMarks& carried);
    void offer_to_carry(const QString& words);
    [[nodiscard]] bool can_carry() const;
    void step(int by);

    LiveMeter meter_;
    QTimer keep_pause_;
    Place place_;
    PhotoRecord photo_;
    Marks kept_marks_;
    QVector<Place> shots_;             // of the visit, for stepping
    Id carry_from_ = 0;                // an earlier shot of this visit
    std::optional<QDate> bring_from_;  // the day of the last visit with marks of this view
    bool settled_ = true, dirty_ = false, scale_missing_ = false;
    std::optional<bool> overlay_wish_;  // as she set it; else by view
    int keeping_ = 0;
    QScrollArea* side_ = nullptr;
    PhotoCanvas* canvas_;
    ReadingsPanel* panel_;
    QLabel* title_;
    ToolRow* tools_;
    HintBox* hint_;
    QToolButton *undo_, *redo_, *overlay_, *before_, *after_;
    QPushButton* carry_;
    QWidget* ruler_;
    QDoubleSpinBox* ruler_mm_;
};

}  // namespace kempt::desk
