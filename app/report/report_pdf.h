// The condition report as PDF/A-1b: fonts embedded, sRGB output intent, XMP metadata, no transparency, no author.
// Needs a QGuiApplication (QT_QPA_PLATFORM=offscreen is enough).
#pragma once

#include <QByteArray>
#include <QString>

#include "core/result.h"
#include "report/report_model.h"

namespace kempt::report {

// Errors: invalid (a client without a name), io (the PDF could not be produced).
[[nodiscard]] Result<QByteArray> report_pdf(const Model& model, const Options& options = {});

// Writes the file whole or not at all. Errors: those above; io when the file cannot be written.
[[nodiscard]] Status write_report(const Model& model, const Options& options, const QString& path);

}  // namespace kempt::report
