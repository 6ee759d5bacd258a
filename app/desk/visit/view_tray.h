// The shots of one view at a visit: photos are dropped on it, the gate's findings stand below them.
#pragma once

#include <QFrame>
#include <QHash>

#include "desk/photo/live_reading.h"
#include "work/keep_records.h"

class QBoxLayout;
class QLayout;
class QLabel;

namespace kempt::desk {

// What the gate said of a photo that has not been measured yet.
using GateLooks = QHash<Id, QPair<QString, QVector<ShownFinding>>>;

class ViewTray : public QFrame {
    Q_OBJECT
  public:
    explicit ViewTray(View view, QWidget* parent = nullptr);
    [[nodiscard]] View view() const { return view_; }
    // photos: of the visit; those of other views are passed over.
    void show_photos(const QVector<work::PhotoRow>& photos, const GateLooks& looks);
    [[nodiscard]] int shots() const { return shots_; }

  signals:
    void files_given(kempt::View view, const QStringList& paths);
    void choose_files(kempt::View view);
    void choose_folder(kempt::View view);
    void photo_chosen(kempt::Id photo);
    void erase_asked(kempt::Id photo);

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void set_open(bool open);  // something is held over it
    View view_;
    int shots_ = 0;
    QLayout* tiles_;
    QBoxLayout* findings_;
    QLabel* hint_;
};

// Findings of a stored photo record.
[[nodiscard]] QVector<ShownFinding> findings_of(const PhotoRecord& photo);
// "refused: too little light. Move nearer to the window." as a panel.
[[nodiscard]] QWidget* finding_panel(const ShownFinding& finding, const QString& of);

}  // namespace kempt::desk
