// How a client's readings move over the visits: the way to each target, one chart, and what the change is worth in
// words.
#pragma once

#include <QFrame>
#include <memory>

#include "desk/session/session.h"

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QBoxLayout;

namespace kempt::work {
struct ClientProgress;
struct Series;
}  // namespace kempt::work

namespace kempt::desk {

class ChartView;
class RowsAnew;

class ProgressPanel : public QFrame {
    Q_OBJECT
  public:
    explicit ProgressPanel(Session& session, QWidget* parent = nullptr);
    void show_client(Id client);
    [[nodiscard]] bool settled() const { return settled_; }
    [[nodiscard]] ChartView* chart() const { return chart_; }
    [[nodiscard]] View chosen_view() const;

  signals:
    void shown_anew();  // its height may be another
    void compare_asked(kempt::View view);

  private:
    void load();
    void take(std::shared_ptr<const work::ClientProgress> progress);
    void fill_choices();
    void fill_readings(const QString& wanted);
    void fill_targets();
    void show_series();
    void add_verdict(QBoxLayout* words, const QString& since, const QString& verdict, const QString& reason);
    void keep_target();
    void drop_target();
    void set_target(const work::Series& series, const std::optional<double>& value);
    [[nodiscard]] const work::Series* series() const;

    Session& session_;
    Id client_ = 0;
    bool settled_ = true;
    std::shared_ptr<const work::ClientProgress> progress_;
    QComboBox *view_, *reading_;
    RowsAnew *targets_, *words_;
    ChartView* chart_;
    QLabel *target_label_, *meaning_;
    QDoubleSpinBox* target_;
    QPushButton *set_, *clear_, *compare_;
    QWidget* body_;
    QLabel* empty_;
};

}  // namespace kempt::desk
