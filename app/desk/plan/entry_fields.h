// Fields of the plan page: numbers that may be left open, lengths in the unit in force, one choice of a few words.
#pragma once

#include <QDoubleSpinBox>
#include <QWidget>
#include <optional>

class QButtonGroup;
class QBoxLayout;

namespace kempt::desk {

struct NumberRange {
    double most = 0;
    int decimals = 0;
    double step = 1;
    QString unit;              // "min"
    QString nothing;           // shown when nothing is entered
    bool zero_counts = false;  // 0 is a number too; else it stands for nothing
};

// A number with its unit, or nothing. The wheel turns it only while it has the keyboard: the page is scrolled over it.
class NumberField : public QDoubleSpinBox {
    Q_OBJECT
  public:
    NumberField(const QString& name, const NumberRange& range, QWidget* parent = nullptr);
    [[nodiscard]] std::optional<double> number() const;
    void set_number(const std::optional<double>& number);  // tells nobody

  signals:
    void entered();

  protected:
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;  // a first digit replaces the words
};

// Millimetres inside, millimetres or inches to the eye.
class LengthField : public NumberField {
    Q_OBJECT
  public:
    LengthField(const QString& name, const QString& nothing, QWidget* parent = nullptr);
    [[nodiscard]] std::optional<double> mm() const;
    void set_mm(const std::optional<double>& mm);
};

// One of a few words, as radio buttons; the letters that the words begin with pick them.
class ChoiceRow : public QWidget {
    Q_OBJECT
  public:
    ChoiceRow(const QString& name, const QStringList& words, QWidget* parent = nullptr);
    [[nodiscard]] int chosen() const;
    void set_chosen(int index);  // tells nobody
    void focus_chosen();
    // All words in one line; where there is no room for that they are wrapped.
    [[nodiscard]] QSize sizeHint() const override;

  signals:
    void picked(int index);

  protected:
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    QButtonGroup* group_;
};

// yes, no, not known: 0, 1, 2
[[nodiscard]] ChoiceRow* yes_no_row(const QString& name);
[[nodiscard]] int index_of(const std::optional<bool>& answer);
[[nodiscard]] std::optional<bool> answer_of(int index);

// A field with its words above it.
[[nodiscard]] QWidget* labelled(const QString& words, QWidget* field);

}  // namespace kempt::desk
