// The readings beside the photo, following the hand: value, interval or the reason why there is none; below them what
// the gate found.
#pragma once

#include <QFrame>
#include <QHash>

#include "desk/photo/live_reading.h"

class QLabel;
class QBoxLayout;

namespace kempt::desk {

class ReadingsPanel : public QFrame {
    Q_OBJECT
  public:
    explicit ReadingsPanel(QWidget* parent = nullptr);
    // current: for exactly what is drawn; else a moment behind the hand, shown softer.
    void show_measured(const Measured& measured, bool current);
    // No readings yet: what to do to get some.
    void show_hint(const QString& sentence);
    void show_failed(const QString& sentence);
    void set_measuring(bool measuring);
    // For tests and screen readers: the value shown for a reading; empty when none.
    [[nodiscard]] QString shown(const QString& name) const;

  private:
    struct Row {
        QLabel *title, *figure, *below;
    };
    void show_quality(const Measured& measured);
    QHash<QString, Row> rows_;
    QLabel *state_, *hint_, *scale_;
    QWidget* table_;
    QBoxLayout* findings_;
    QString findings_shown_;
    bool measuring_ = false;
};

}  // namespace kempt::desk
