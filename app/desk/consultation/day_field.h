// A day typed in words or figures, or nothing; what was read stands beneath it.
#pragma once

#include <QDate>
#include <QWidget>
#include <optional>

class QLabel;
class QLineEdit;

namespace kempt::desk {

// "4 May 2026", "4 May" is none; "2026-05-04", "4.5.2026", "today", "yesterday"; with coarse also "May 2026" and
// "2026", which are their first days. A day written with strokes is not read: some put the month first.
[[nodiscard]] std::optional<QDate> day_from(const QString& words, const QDate& today, bool coarse = false);

class DayField : public QWidget {
    Q_OBJECT
  public:
    explicit DayField(const QString& name, bool coarse = false, QWidget* parent = nullptr);
    [[nodiscard]] std::optional<QDate> day() const { return day_; }
    void set_day(const std::optional<QDate>& day);  // tells nobody
    [[nodiscard]] QLineEdit* line() const { return line_; }
    [[nodiscard]] QString told() const;

  signals:
    void entered();  // a day that can be read, or none

  private:
    void read();
    bool coarse_;
    std::optional<QDate> day_;
    QLineEdit* line_;
    QLabel* told_;
};

}  // namespace kempt::desk
