#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QPrinter>
#include <QProcess>
#include <QPushButton>
#include <QScrollArea>
#include <boost/test/unit_test.hpp>

#include "desk/client/client_page.h"
#include "desk/report/page_view.h"
#include "desk/report/report_page.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "room.h"
#include "work/keep_records.h"
#include "work/report_language.h"
#include "work/report_outputs.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

struct Reported : test::Desk {
    Reported() { go({Where::report, book.client}); }
    ReportPage* report() const { return page<ReportPage>(); }
    void settle() {
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
        QTest::qWait(30);
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(report_page, Reported)

BOOST_AUTO_TEST_CASE(its_pages_are_shown_and_follow_what_is_chosen) {
    PageView* pages = report()->pages();
    BOOST_REQUIRE(pages->count() >= 1);
    BOOST_TEST(pages->has(0));
    const int client_copy = pages->count();
    report()->copy()->setCurrentIndex(1);  // every reading of every photo too
    settle();
    BOOST_TEST(pages->count() >= client_copy);
    BOOST_TEST(pages->has(pages->current()));
    for (QCheckBox* box : report()->parts()) box->setChecked(false);
    settle();
    BOOST_TEST(pages->count() >= 1);
    QTest::keyClick(pages, Qt::Key_Plus);
    settle();
    BOOST_TEST(pages->has(pages->current()));
}

BOOST_AUTO_TEST_CASE(the_report_speaks_her_language_whatever_the_windows_speak_and_the_book_keeps_it) {
    QComboBox* language = report()->language();
    BOOST_TEST(language->currentText().toStdString() == "English");
    language->setCurrentIndex(1);
    emit language->activated(1);  // as by a hand
    settle();
    const auto kept = read<std::optional<speech::Language>>(
        book.path, [this](Book& in) { return work::report_language_of(in, book.client); });
    BOOST_TEST((kept == speech::Language::spanish));
    const QString path = book.folder.filePath("suyo.pdf");
    report()->write_to(path);
    BOOST_REQUIRE(wait_until([&] { return QFile::exists(path) && settled(); }));
    QProcess words;
    words.start("pdftotext", {path, "-"});
    BOOST_REQUIRE(words.waitForFinished(60000));
    const QString text = QString::fromUtf8(words.readAllStandardOutput());
    BOOST_TEST(text.contains("Informe de estado"));
    BOOST_TEST(text.contains("Precauciones"));
    BOOST_TEST(!text.contains("Condition report"));
    go({Where::client, book.client});
    go({Where::report, book.client});
    settle();
    BOOST_TEST(report()->language()->currentText().toStdString() == "Español");
}

BOOST_AUTO_TEST_CASE(no_choice_is_cut_off_on_the_right_however_long_its_words) {
    window->resize(1280, 800);
    report()->parts().first()->setText(QString("una palabra tras otra ").repeated(3));  // as long as Spanish has them
    settle();
    window->resize(1281, 800);
    settle();
    auto* choices = report()->findChild<QScrollArea*>("report_choices");
    BOOST_REQUIRE(choices != nullptr);
    BOOST_TEST(choices->widget()->width() <= choices->viewport()->width());
}

BOOST_AUTO_TEST_CASE(it_is_printed_as_it_is_shown) {
    auto printer = std::make_shared<QPrinter>(QPrinter::ScreenResolution);
    printer->setOutputFormat(QPrinter::PdfFormat);
    const QString path = book.folder.filePath("printed.pdf");
    printer->setOutputFileName(path);
    printer->setFullPage(true);
    report()->print_on(printer);
    BOOST_REQUIRE(wait_until([&] { return QFile::exists(path) && settled(); }));
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    BOOST_TEST(bytes.startsWith("%PDF-"));
    BOOST_TEST(bytes.count("/Type /Page\n") == report()->pages()->count());
}

BOOST_AUTO_TEST_CASE(pictures_of_another_client_of_the_same_days_do_not_replace_those_in_the_folder) {
    const QString folder = book.folder.filePath("pictures");
    QStringList names;
    for (const QColor skin : {QColor(150, 110, 90), QColor(90, 60, 50)}) {
        report::Model model;
        report::Pair pair;
        pair.before_date = QDate(2026, 3, 2);
        pair.after_date = QDate(2026, 5, 4);
        pair.before = QImage(120, 90, QImage::Format_RGB888);
        pair.before.fill(skin);
        pair.after = pair.before;
        model.pairs.append(pair);
        const auto written = work::write_report_pictures(model, report::Options(), folder);
        BOOST_REQUIRE(written.ok());
        names += *written;
    }
    BOOST_REQUIRE_EQUAL(names.size(), 2);
    BOOST_TEST(names[0].toStdString() != names[1].toStdString());
    BOOST_TEST(QDir(folder).entryList(QDir::Files).size() == 2);
    const QImage one(QDir(folder).filePath(names[0])), other(QDir(folder).filePath(names[1]));
    BOOST_REQUIRE((!one.isNull() && one.size() == other.size()));
    BOOST_TEST((one != other));  // hers is still there
}

BOOST_AUTO_TEST_CASE(the_readings_are_saved_as_a_table_and_pictures_stay_without_consent) {
    const QString table = book.folder.filePath("readings.csv");
    report()->write_readings_to(table);
    BOOST_REQUIRE(wait_until([&] { return QFile::exists(table) && settled(); }));
    QFile file(table);
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    BOOST_TEST(file.readLine().startsWith("client,visit,view"));
    const QString folder = book.folder.filePath("pictures");
    report()->write_pictures_to(folder);
    BOOST_TEST(wait_until([this] { return window->book()->notice()->isVisible() && settled(); }));
    BOOST_TEST(!QFile::exists(folder));
    BOOST_TEST(window->book()->notice()->sentence().contains("not agreed"));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_FIXTURE_TEST_SUITE(client_page, test::Desk)

BOOST_AUTO_TEST_CASE(many_visits_show_the_newest_first_and_the_earlier_ones_when_asked) {
    (void)read<Done>(book.path, [this](Book& b) -> Result<Done> {
        for (int i = 0; i < 18; ++i) {
            Visit visit;
            visit.client = book.client;
            visit.date = QDate(2024, 1, 5).addMonths(i);
            if (const auto kept = work::add_visit(b, visit); !kept.ok()) return kept.error();
        }
        return Done{};
    });
    go({Where::client, book.client});
    const auto shown = [this] {
        int open = 0;
        for (const QPushButton* b : page<ClientPage>()->findChildren<QPushButton*>())
            open += b->isVisible() && b->accessibleName().startsWith("Open the visit of") ? 1 : 0;
        return open;
    };
    BOOST_TEST(shown() == 4);
    QPushButton* more = page<ClientPage>()->more_visits();
    BOOST_TEST(more->isVisible());
    BOOST_TEST(more->text().contains("16"));
    more->click();
    BOOST_TEST(wait_until([&] { return settled() && shown() == 16; }));
    more->click();
    BOOST_TEST(wait_until([&] { return settled() && shown() == 20; }));
    BOOST_TEST(!more->isVisible());
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(long_words)

BOOST_AUTO_TEST_CASE(only_words_too_long_for_a_column_may_break_and_nothing_else_changes) {
    const QString plain = QStringLiteral("Maria-Theresia von Oberlauental");
    BOOST_TEST((breakable(plain) == plain));
    const QString word = QStringLiteral("Donaudampfschifffahrtsgesellschaftskapitaenswitwe");
    QString broken = breakable(QStringLiteral("geborene ") + word + QStringLiteral(" aus Wien"));
    BOOST_TEST(broken.count(QChar(0x200B)) == word.size() / 12);
    BOOST_TEST((broken.remove(QChar(0x200B)) == QStringLiteral("geborene ") + word + QStringLiteral(" aus Wien")));
    // A letter with its marks, and one outside the first plane, stay whole.
    const QString marked = QString(11, 'a') + QStringLiteral("e\u0301") + QString(20, 'b');
    BOOST_TEST(!breakable(marked).contains(QStringLiteral("\u200B\u0301")));
    QString pairs;
    for (int i = 0; i < 30; ++i) pairs += QStringLiteral("\U0001F600");
    for (qsizetype i = 1; i < breakable(pairs).size(); ++i)
        BOOST_TEST(!(breakable(pairs)[i].isLowSurrogate() && !breakable(pairs)[i - 1].isHighSurrogate()));
}

BOOST_AUTO_TEST_SUITE_END()
