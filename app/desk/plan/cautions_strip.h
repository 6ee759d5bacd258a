// The usual cautions, always in sight while a service is planned. Nothing puts them away; where their sentences would
// take too much of a small window at large text, each stands in a few words, and a press spells them out.
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace kempt::desk {

class CautionsStrip : public QFrame {
    Q_OBJECT
  public:
    explicit CautionsStrip(QWidget* parent = nullptr);
    // How high the page is that it stands on.
    void fit(int width, int page_height);
    [[nodiscard]] QString words() const;  // as shown now
    [[nodiscard]] QString sentences() const { return full_; }

  private:
    void show_words();
    QString full_, brief_;
    QLabel* label_;
    QPushButton* press_;
    bool small_ = false, spelled_out_ = false;
};

// A caution of the rules in a few words; empty for one that is not known here, which then stands in full.
[[nodiscard]] QString brief_caution(const QString& id);

}  // namespace kempt::desk
