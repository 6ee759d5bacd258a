// The readings beside the photo, following the hand: value, interval or the reason why there is none; what lies behind
// them; below them what the gate found.
#pragma once

#include <QFrame>
#include <QHash>

#include "desk/photo/live_reading.h"

class QLabel;
class QBoxLayout;

namespace kempt::desk {

class Legend;
class ShinePlot;
class StrandBox;
class ToneDetails;

class ReadingsPanel : public QFrame {
    Q_OBJECT
  public:
    explicit ReadingsPanel(QWidget* parent = nullptr);
    void set_view(View view);  // what its photos could be asked for
    // current: for exactly what is drawn; else a moment behind the hand, shown softer.
    void show_measured(const Measured& measured, bool current);
    // No readings yet, or why there are none.
    void show_nothing(const QString& sentence);
    void set_measuring(bool measuring);
    void set_legend_shown(bool shown);
    void choose_strand(int strand);  // as the photo says
    // For tests and screen readers: the value shown for a reading; empty when none.
    [[nodiscard]] QString shown(const QString& name) const;
    [[nodiscard]] QString curl() const;
    [[nodiscard]] QWidget* section(ReadingGroup group) const { return sections_[group].box; }
    [[nodiscard]] StrandBox* strands(ReadingGroup group) const { return sections_[group].strands; }
    [[nodiscard]] ToneDetails* tone() const { return tone_; }
    [[nodiscard]] ShinePlot* shine() const { return shine_; }

  signals:
    void strand_pointed(int strand);
    void strand_chosen(int strand);
    void strand_dropped(int strand);
    void strands_joined(int one, int other);
    void strand_whole(int strand);
    void corrections_cleared();

  private:
    struct Row {
        QLabel *title, *figure, *below;
    };
    struct Section {
        QWidget* box = nullptr;
        QLabel* heading = nullptr;
        Legend* legend = nullptr;
        StrandBox* strands = nullptr;
    };
    Section make_section(ReadingGroup group);
    void add_details(ReadingGroup group, Section& section, QBoxLayout* column);
    void show_rows(const Measured& measured, bool current);
    void show_details(const Measured& measured);
    void show_quality(const Measured& measured);
    void say_what_else(const QVector<ReadingGroup>& asked);

    QHash<ReadingGroup, Section> sections_;
    QHash<QString, Row> rows_;
    QLabel *state_, *hint_, *scale_, *else_, *curl_;
    ToneDetails* tone_;
    ShinePlot* shine_;
    QWidget* light_ = nullptr;
    QBoxLayout* findings_;
    QString findings_shown_;
    View view_ = View::left_temple;
    bool measuring_ = false, legend_shown_ = false;
};

}  // namespace kempt::desk
