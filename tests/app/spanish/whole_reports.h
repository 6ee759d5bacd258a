// Books with everything in them, and the reports that are made of them.
#pragma once

#include <QStringList>
#include <QTemporaryDir>
#include <QVector>

#include "report/report_model.h"
#include "work/make_report.h"

namespace kempt::tests {

struct WholeReport {
    QString name;  // of the client
    report::Model model;
};

// Every client of the demo, each without a plan and with every kind of service planned, and every client of
// tests/support/full_book. Made once, in a folder that goes with the test.
[[nodiscard]] const QVector<WholeReport>& whole_reports();

// What is no word of Kempt's on the pages of this report: names, what a person wrote, hashes.
[[nodiscard]] QStringList words_of_others(const report::Model& model);

}  // namespace kempt::tests
