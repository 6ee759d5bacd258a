// Safe keeping: when the last backup was, make one, check one, bring one back as a new book. The open book is never
// replaced.
#pragma once

#include <QDialog>

#include "core/result.h"
#include "desk/safe/keeping.h"
#include "jobs/job_runner.h"

class QBoxLayout;
class QLabel;
class QProgressBar;
class QPushButton;

namespace kempt::desk {

class Session;

class SafeDialog : public QDialog {
    Q_OBJECT
  public:
    // session: of the open book; null while none is open, then there is only checking and bringing back.
    explicit SafeDialog(Session* session, QWidget* parent = nullptr);
    void back_up_to(const QString& folder);
    void check(const QString& file);
    void bring_back(const QString& file, const QString& to);
    [[nodiscard]] bool busy() const { return job_ != nullptr; }
    [[nodiscard]] QString outcome() const;  // what is told of the last work, in one line
    void stop();
    void done(int result) override;  // asks the work to stop; the window goes when it has

  signals:
    void open_asked(const QString& book);

  private:
    void build();
    void choose_backup(const QString& title, std::function<void(const QString&)> then);
    void choose_new_book(const QString& backup);
    void begin(const QString& words);
    void end();
    void tell_last();
    void say(const char* tone, const QString& head, const QStringList& lines);
    void tell_error(const QString& head, const Error& error);
    [[nodiscard]] jobs::JobRunner& runner();

    Session* session_;
    jobs::JobRunner own_{QString()};
    jobs::JobHandle job_;
    bool leaving_ = false;
    QLabel *last_ = nullptr, *busy_words_;
    QWidget *acts_, *busy_;
    QProgressBar* bar_;
    QWidget* result_ = nullptr;
    QBoxLayout* result_place_;
    QPushButton *stop_, *open_ = nullptr;
    QString restored_;
};

}  // namespace kempt::desk
