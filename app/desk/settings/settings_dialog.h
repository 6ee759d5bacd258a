// The settings, by subject: look, language, targets, photos, paper and card, safe keeping. Everything takes effect at
// once; there is nothing to save.
#pragma once

#include <QDialog>
#include <QVector>

#include "card/card_layout.h"

class QBoxLayout;
class QDoubleSpinBox;
class QLabel;

namespace kempt::desk {

class Section;
class Session;
struct LookChoice;

class SettingsDialog : public QDialog {
    Q_OBJECT
  public:
    // session: of the open book, for the printer's correction; null while no book is open.
    explicit SettingsDialog(Session* session, QWidget* parent = nullptr);
    [[nodiscard]] const QVector<Section*>& sections() const { return sections_; }

  signals:
    void safe_keeping_asked();
    void watched_folder_changed();

  private:
    Section* add_section(const QString& name);
    void build_look();      // settings_look.cpp
    void build_language();  //
    void build_targets();   // settings_work.cpp
    void build_photos();    //
    void build_safe();      //
    void build_paper();     // settings_paper.cpp
    void build_check_line(QBoxLayout* column);
    void choose_gauge_file(card::Kind kind, card::Ground ground = card::Ground::white);
    Session* session_;
    QBoxLayout* column_ = nullptr;
    QVector<Section*> sections_;
    QDoubleSpinBox* line_ = nullptr;
    QLabel* line_words_ = nullptr;
};

// Applied after the click has been dealt with: a new text size or language rebuilds the window that was clicked in.
void apply_later(const LookChoice& choice);

}  // namespace kempt::desk
