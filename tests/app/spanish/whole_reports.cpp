#include "whole_reports.h"

#include <QGuiApplication>
#include <QProcess>
#include <QRegularExpression>
#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "speech/language.h"
#include "work/keep_records.h"
#include "work/make_demo.h"
#include "work/open_book.h"

namespace kempt::tests {

namespace {

// Visits of the full book's busiest client: enough for a trend, and not an hour of measuring.
constexpr const char* visits = "5";

template <class T>
T must(Result<T> result) {
    BOOST_REQUIRE_MESSAGE(result.ok(), (result.ok() ? "" : result.error().sentence()));
    return std::move(result).value();
}

QGuiApplication& application() {
    static int argc = 1;
    static char name[] = "test";
    static char* argv[] = {name, nullptr};
    static QGuiApplication application(argc, argv);
    return application;
}

const QDate today(2026, 11, 29);

// One kind of service planned, once with an order of work that fits and once with one that cannot.
work::PlanRequest planned(care::Kind kind, bool fits) {
    work::PlannedItem item;
    item.service.kind = kind;
    item.service.sections = {"nape", "crown"};
    item.service.strength = care::Strength::regular;
    item.service.most_minutes = 25;
    care::Setting setting;
    setting.strand_minutes = fits ? 15 : 20;
    setting.most_minutes = 25;
    setting.hands = fits ? 2 : 1;
    setting.sections = {{"nape", fits ? 2.0 : 14.0, 2, 2}, {"crown", fits ? 2.0 : 14.0, 2, 2}};
    item.setting = setting;
    work::PlanRequest request;
    request.services.push_back(item);
    request.dye_day = today.addDays(7);
    return request;
}

void add_all(Book& book, bool with_plans, QVector<WholeReport>& all) {
    for (const work::ClientRow& row : must(work::list_clients(book, {}))) {
        work::ReportOptions options;
        options.client = row.client.id;
        options.salon = QStringLiteral("Zzsalon");
        all.append({row.client.name, must(work::report_model_of(book, options, today))});
        options.with_pictures = false;
        options.look.length = LengthUnit::inches;
        all.append(
            {row.client.name + QStringLiteral(", in inches"), must(work::report_model_of(book, options, today))});
        if (!with_plans) continue;
        for (int kind = 0; kind < care::kind_count; ++kind)
            for (const bool fits : {true, false}) {
                options.plan = planned(static_cast<care::Kind>(kind), fits);
                const auto model = work::report_model_of(book, options, today);
                if (model.ok()) all.append({row.client.name + QStringLiteral(", planned"), *model});
            }
    }
}

}  // namespace

const QVector<WholeReport>& whole_reports() {
    static const QVector<WholeReport> all = [] {
        application();
        static QTemporaryDir folder;
        QVector<WholeReport> made;
        work::DemoOptions demo;
        demo.samples = QStringLiteral(KEMPT_SAMPLES_FOLDER);
        demo.out = folder.filePath(QStringLiteral("demo"));
        const auto filled = must(work::make_demo(demo));
        add_all(*must(work::open_book(filled.book)), true, made);
        const QString full = folder.filePath(QStringLiteral("full.kempt"));
        BOOST_REQUIRE(QProcess::execute(QStringLiteral(KEMPT_FULL_BOOK), {full, QString::fromLatin1(visits)}) == 0);
        add_all(*must(work::open_book(full)), false, made);
        return made;
    }();
    return all;
}

QStringList words_of_others(const report::Model& model) {
    QStringList all{model.client_name,
                    model.salon_name,
                    model.method.program_version,
                    QStringLiteral("SHA-256"),
                    QStringLiteral("Mann-Kendall"),
                    QStringLiteral("CIEDE2000")};
    for (const auto& service : model.services) all << service.note << service.result;
    for (const auto& line : model.history) all << line.photo_sha256;
    // Of a name that is written from the right, what is written from the left is painted by itself.
    static const QRegularExpression between(QStringLiteral("[^\\p{L}]+"));
    if (speech::set_apart(model.client_name) != model.client_name)
        all << model.client_name.split(between, Qt::SkipEmptyParts);
    all.removeDuplicates();
    // Longer ones first: one may stand in another.
    std::sort(all.begin(), all.end(), [](const QString& a, const QString& b) { return a.size() > b.size(); });
    return all;
}

}  // namespace kempt::tests
