// The report laid out as pages that any painter can draw: the PDF, the window's preview, a printer. Needs a
// QGuiApplication.
#pragma once

#include <QSizeF>
#include <memory>

#include "core/result.h"
#include "report/report_model.h"

QT_BEGIN_NAMESPACE
class QImage;
class QPainter;
QT_END_NAMESPACE

namespace kempt::report {

class ReportPages {
  public:
    // Errors: invalid (a client without a name), unsupported (no fonts), io (not enough memory).
    [[nodiscard]] static Result<std::shared_ptr<const ReportPages>> lay_out(std::shared_ptr<const Model> model,
                                                                            const Options& options);
    ~ReportPages();
    [[nodiscard]] int count() const;
    [[nodiscard]] QSizeF size_points() const;  // of the paper
    // Page 0.. with its top left corner at the painter's origin, `units_per_point` of the painter's units a point. One
    // thread at a time.
    void paint(QPainter& painter, int page, double units_per_point) const;
    // The same on white, width_px wide.
    [[nodiscard]] QImage picture(int page, int width_px) const;

  private:
    struct Kept;
    explicit ReportPages(std::unique_ptr<Kept> kept);
    std::unique_ptr<Kept> kept_;
};

}  // namespace kempt::report
