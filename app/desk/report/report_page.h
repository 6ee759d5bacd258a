// The condition report: which visits, which parts, which copy, which paper; its pages as they will be printed; and the
// ways in which it leaves. Her consent and her wish about her face are asked for before a photo does.
#pragma once

#include <QTimer>
#include <memory>
#include <optional>

#include "desk/window/page.h"
#include "report/report_model.h"
#include "speech/speech.h"

class QComboBox;
class QCheckBox;
class QLineEdit;
class QFrame;
class QLabel;
class QPushButton;
class QPrinter;

namespace kempt::report {
class ReportPages;
}
namespace kempt::work {
struct ReportOptions;
}

namespace kempt::desk {

struct CompareChoices;
class EyesDialog;
class PageView;

class ReportPage : public Page {
    Q_OBJECT
  public:
    explicit ReportPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    [[nodiscard]] bool settled() const override;
    [[nodiscard]] bool wants_whole_width() const override { return true; }
    [[nodiscard]] PageView* pages() const { return view_; }
    [[nodiscard]] QVector<QCheckBox*> parts() const;
    [[nodiscard]] QCheckBox* with_pictures() const { return pictures_; }
    [[nodiscard]] QComboBox* copy() const { return copy_; }
    [[nodiscard]] QComboBox* language() const { return language_; }

    void write_to(const QString& path);           // PDF
    void print_on(std::shared_ptr<QPrinter> to);  // painted on the bench
    void write_pictures_to(const QString& folder);
    void write_readings_to(const QString& path);  // CSV
    EyesDialog* open_eyes();                      // nullptr: no picture would leave

  protected:
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* choices_column();
    void show_language(const CompareChoices& found, const std::optional<speech::Language>& hers);
    void take(const CompareChoices& found);
    void keep_language();
    void choose_again();  // something was chosen: shown anew in a moment
    void make_model();
    void lay_out();
    void paint_page(int page, int width_px);
    void show_consent();
    void keep_consent();
    void choose_file();
    void choose_printer();
    void choose_folder();
    void choose_table();
    void busy(bool writing);
    [[nodiscard]] work::ReportOptions options() const;

    Place place_;
    Client client_;
    QTimer pause_;
    int asked_ = 0, laid_out_ = 0;
    bool settled_ = true, drawn_ = true, model_old_ = true;
    jobs::JobHandle job_;
    QString model_key_;
    std::shared_ptr<const report::Model> model_;
    std::shared_ptr<const report::ReportPages> report_;
    QLabel *title_, *consent_words_, *state_, *eyes_words_;
    QFrame *consent_box_, *eyes_box_;
    QComboBox *from_, *to_, *copy_, *paper_, *language_;
    struct Part {
        QCheckBox* box;
        bool report::Parts::*part;
    };
    QVector<Part> parts_;
    QCheckBox* pictures_;
    QPushButton *agree_, *eyes_, *write_, *print_, *save_pictures_, *save_table_;
    QLineEdit* salon_;
    PageView* view_;
};

}  // namespace kempt::desk
