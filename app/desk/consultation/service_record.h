// One service of the record: the fields that its kind needs. Kind and day stand above it, on the page.
#pragma once

#include <QHash>
#include <QWidget>
#include <optional>

#include "desk/consultation/record_fields.h"

class QBoxLayout;
class QCheckBox;
class QLayout;
class QLineEdit;
class QPlainTextEdit;

namespace kempt::desk {

class ChoiceRow;
class DayField;
class LengthField;
class NumberField;
class SectionPicker;

class ServiceRecord : public QWidget {
    Q_OBJECT
  public:
    // length_mm: of the hair on that day, where it is known: mid-shaft and ends are named by it.
    ServiceRecord(const Service& service, const std::optional<double>& length_mm, QWidget* parent = nullptr);
    [[nodiscard]] Service service() const { return service_; }
    void set_day(const QDate& day);
    // Done or still planned; on a day that is still to come it is planned.
    [[nodiscard]] ChoiceRow* state() const { return state_; }
    // For tests and for whoever works by name.
    [[nodiscard]] ChoiceRow* where() const { return where_; }
    [[nodiscard]] LengthField* from() const { return from_; }
    [[nodiscard]] LengthField* to() const { return to_; }
    [[nodiscard]] ChoiceRow* choice(RecordField field) const { return choices_.value(static_cast<int>(field)); }
    [[nodiscard]] NumberField* number(RecordField field) const { return numbers_.value(static_cast<int>(field)); }
    [[nodiscard]] NumberField* patch_days() const { return patch_days_; }
    [[nodiscard]] QLineEdit* patch_where() const { return patch_where_; }
    [[nodiscard]] ChoiceRow* at_home() const { return at_home_; }
    [[nodiscard]] QPlainTextEdit* result() const { return result_; }
    [[nodiscard]] QPlainTextEdit* note() const { return note_; }
    [[nodiscard]] QCheckBox* section(const QString& name) const;
    [[nodiscard]] DayField* line_day() const { return line_day_; }
    void focus_first();

  signals:
    void entered();

  private:
    [[nodiscard]] bool has(RecordField field) const { return shows(service_, field); }
    [[nodiscard]] QString name_of(const QString& words) const;
    // A panel with its heading, to be filled.
    [[nodiscard]] static QBoxLayout* box_in(QBoxLayout* column, const QString& heading);
    void add_where(QBoxLayout* column);
    void add_stretch(QBoxLayout* column);
    void add_sections(QBoxLayout* column);
    void add_how(QBoxLayout* column);
    void add_tests(QBoxLayout* column);
    void add_outcome(QBoxLayout* column);
    void add_line(QBoxLayout* column);
    NumberField* add_number(QLayout* row, RecordField field, const QString& words, double most, const QString& unit,
                            std::optional<double> Service::*member);
    ChoiceRow* add_test(QBoxLayout* column, RecordField field, const QString& words, QString Service::*member);
    ChoiceRow* add_yes_no(QBoxLayout* column, const QString& words, std::optional<bool> Service::*member);
    QPlainTextEdit* add_words(QBoxLayout* column, const QString& words, const QString& hint, QString Service::*member);
    void show_where();
    void show_state();

    Service service_;
    std::optional<double> length_mm_;
    QHash<int, ChoiceRow*> choices_;
    QHash<int, NumberField*> numbers_;
    SectionPicker* sections_ = nullptr;
    ChoiceRow *where_ = nullptr, *at_home_ = nullptr, *state_ = nullptr;
    LengthField *from_ = nullptr, *to_ = nullptr;
    NumberField* patch_days_ = nullptr;
    QLineEdit* patch_where_ = nullptr;
    QPlainTextEdit *result_ = nullptr, *note_ = nullptr;
    DayField* line_day_ = nullptr;
};

}  // namespace kempt::desk
