// The condition report as PDF: which visits, which copy, which paper; her consent is asked for before a photo leaves.
#pragma once

#include "desk/window/page.h"

class QComboBox;
class QCheckBox;
class QLineEdit;
class QFrame;
class QLabel;
class QPushButton;

namespace kempt::desk {

struct CompareChoices;

class ReportPage : public Page {
    Q_OBJECT
  public:
    explicit ReportPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    [[nodiscard]] bool settled() const override { return settled_; }
    void write_to(const QString& path);

  private:
    void take(const CompareChoices& found);
    void show_consent();
    void keep_consent();
    void choose_file();

    Place place_;
    Client client_;
    bool settled_ = true;
    QLabel *title_, *consent_words_;
    QFrame* consent_box_;
    QComboBox *from_, *to_, *copy_, *paper_;
    QCheckBox* pictures_;
    QPushButton *agree_, *write_;
    QLineEdit* salon_;
};

}  // namespace kempt::desk
