// The planned hair from scalp to ends: what the product is put on, and what it is kept off.
#pragma once

#include <QWidget>
#include <optional>

#include "care/coverage.h"

namespace kempt::desk {

class StretchBar : public QWidget {
    Q_OBJECT
  public:
    explicit StretchBar(QWidget* parent = nullptr);
    // length_mm: of the hair; not known: drawn as far as the plan reaches, and a little on.
    void set_coverage(const care::Coverage& coverage, const std::optional<double>& length_mm);
    [[nodiscard]] QString words() const { return words_; }
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    care::Coverage coverage_;
    std::optional<double> length_mm_;
    QString words_;
};

// "Put it on 0–20 mm (roots). Keep it off 20–210 mm (mid-shaft)."
[[nodiscard]] QString coverage_words(const care::Coverage& coverage);

}  // namespace kempt::desk
