#include "desk/window/walk_compare.h"

#include <QComboBox>

#include "desk/compare/compare_page.h"
#include "desk/compare/side_by_side.h"
#include "desk/report/page_view.h"
#include "desk/report/report_page.h"
#include "desk/window/book_view.h"
#include "desk/window/main_window.h"

namespace kempt::desk {
namespace {

template <class P>
void on(MainWindow& window, const std::function<void(P&)>& act) {
    if (auto* page = qobject_cast<P*>(window.book()->page())) act(*page);
}

}  // namespace

QVector<PlanStep> compare_steps(MainWindow& window, const Place& compare) {
    using Mode = ComparePage::Mode;
    const auto show = [&window, compare](Mode mode) {
        return [&window, compare, mode] {
            window.book()->go(compare);
            on<ComparePage>(window, [mode](ComparePage& page) { page.set_mode(mode); });
        };
    };
    return {{QStringLiteral("compare"), show(Mode::parting)},
            {QStringLiteral("compare-edge"), show(Mode::edge)},
            {QStringLiteral("compare-sides"),
             [&window, sides = show(Mode::beside)] {
                 sides();
                 on<ComparePage>(window, [](ComparePage& page) {
                     page.beside()->show_whole();
                     page.beside()->zoom_by(1.6, QPointF(page.beside()->rect().center()) / 2);
                 });
             }},
            {QStringLiteral("compare-all"), show(Mode::all_visits)},
            {QStringLiteral("compare-temples"), [&window, compare] {
                 if (window.book()->place() != compare) window.book()->go(compare);
                 on<ComparePage>(window, [](ComparePage& page) {
                     page.set_mode(Mode::parting);
                     page.beside()->show_whole();
                     page.show_temples();
                 });
             }}};
}

QVector<PlanStep> report_steps(MainWindow& window, const Place& report) {
    return {{QStringLiteral("report"), [&window, report] { window.book()->go(report); }},
            {QStringLiteral("report-lower"),
             [&window] { on<ReportPage>(window, [](ReportPage& page) { page.pages()->show_page(2); }); }}};
}

}  // namespace kempt::desk
