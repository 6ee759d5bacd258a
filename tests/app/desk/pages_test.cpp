#include <QCheckBox>
#include <QComboBox>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMimeData>
#include <QPushButton>
#include <QToolButton>
#include <boost/test/unit_test.hpp>

#include "book/reading_store.h"
#include "desk/client/client_form.h"
#include "desk/client/client_list.h"
#include "desk/client/client_page.h"
#include "desk/client/progress_panel.h"
#include "desk/client/services_panel.h"
#include "desk/compare/before_after.h"
#include "desk/compare/compare_page.h"
#include "desk/look/look.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/photo/readings_panel.h"
#include "desk/report/report_page.h"
#include "desk/session/session.h"
#include "desk/start/start_page.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/notice.h"
#include "desk/window/book_view.h"
#include "domain/words.h"
#include "room.h"
#include "work/keep_records.h"
#include "work/open_book.h"
#include "work/set_marks.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

void drop(QWidget* on, const QStringList& paths) {
    QMimeData mime;
    QList<QUrl> urls;
    for (const QString& path : paths) urls.append(QUrl::fromLocalFile(path));
    mime.setUrls(urls);
    const QPoint at = on->rect().center();
    QDragEnterEvent enter(at, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(on, &enter);
    BOOST_TEST(enter.isAccepted());
    QDropEvent fall(at, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(on, &fall);
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(pages, test::Desk)

BOOST_AUTO_TEST_CASE(dropped_files_and_folders_go_into_the_view_and_duplicates_are_told) {
    go({Where::visit, book.client, book.second_visit});
    auto* visit = page<VisitPage>();
    drop(visit->tray(View::nape), {book.picture_file(1), book.picture_file(2)});
    BOOST_TEST(wait_until([&] { return visit->tray(View::nape)->shots() == 2; }));
    BOOST_TEST(window->book()->notice()->sentence().contains("2 photos"));
    QDir(book.folder.path()).mkdir("phone");
    QFile::copy(book.picture_file(3), book.folder.filePath("phone/a.png"));
    QFile::copy(book.picture_file(1), book.folder.filePath("phone/b.png"));
    drop(visit->tray(View::crown), {book.folder.filePath("phone")});
    BOOST_TEST(wait_until([&] { return visit->tray(View::crown)->shots() == 1 && settled(); }));
    BOOST_TEST(window->book()->notice()->sentence().contains("already"));
}

BOOST_AUTO_TEST_CASE(a_broken_file_is_told_and_the_others_are_taken) {
    go({Where::visit, book.client, book.second_visit});
    QFile broken(book.folder.filePath("broken.jpg"));
    BOOST_REQUIRE(broken.open(QIODevice::WriteOnly));
    broken.write("not a picture");
    broken.close();
    auto* visit = page<VisitPage>();
    visit->take_files(View::nape, {broken.fileName(), book.picture_file(4)});
    BOOST_TEST(
        wait_until([&] { return visit->tray(View::nape)->shots() == 1 && window->book()->notice()->isVisible(); }));
    BOOST_TEST((window->book()->notice()->property("panel").toString() == "worse"));
}

BOOST_AUTO_TEST_CASE(a_shot_that_is_not_good_is_told_with_its_remedy_before_any_line_is_drawn) {
    go({Where::visit, book.client, book.first_visit});
    BOOST_TEST(wait_until([this] {
        for (const QLabel* label : page<VisitPage>()->tray(View::left_temple)->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains("straight above it")) return true;
        return false;
    }));
}

BOOST_AUTO_TEST_CASE(what_is_missing_is_said_by_view) {
    go({Where::visit, book.client, book.second_visit});
    // The visit before had the left temple only: that is what has to be taken again.
    QStringList words;
    for (const QLabel* label : page<VisitPage>()->findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    BOOST_TEST(words.contains("Left temple: no photo yet."));
    BOOST_TEST(!words.contains("Nape: no photo yet."));
}

BOOST_AUTO_TEST_CASE(two_marked_visits_are_laid_over_each_other_at_one_scale) {
    Marks marks = test::some_marks(5);
    marks.scale_points = {{20, 280}, {380, 280}};
    marks.scale_mm = 18;  // 20 px a mm
    go({Where::visit, book.client, book.second_visit});
    page<VisitPage>()->take_files(View::left_temple, {book.picture_file(7)});
    BOOST_TEST(wait_until([this] { return page<VisitPage>()->tray(View::left_temple)->shots() == 1 && settled(); }));
    const auto photos =
        read<QVector<work::PhotoRow>>(book.path, [this](Book& b) { return work::list_photos(b, book.second_visit); });
    for (const Id photo : {book.photo, photos.first().photo.id})
        (void)read<Marks>(book.path, [&](Book& b) { return work::set_marks(b, photo, marks); });
    go({Where::compare, book.client, 0, 0, View::left_temple});
    BOOST_TEST(page<ComparePage>()->picture()->isVisible());
    BOOST_TEST(page<ComparePage>()->picture()->accessibleDescription().contains("4 May 2026"));
}

BOOST_AUTO_TEST_CASE(the_sentences_of_the_progress_are_in_inches_when_the_setting_says_so) {
    go({Where::visit, book.client, book.second_visit});
    page<VisitPage>()->take_files(View::left_temple, {book.picture_file(7)});
    BOOST_TEST(wait_until([this] { return page<VisitPage>()->tray(View::left_temple)->shots() == 1 && settled(); }));
    double depth_mm = 9;
    for (const Id visit : {book.first_visit, book.second_visit}) {
        const auto photos =
            read<QVector<work::PhotoRow>>(book.path, [&](Book& b) { return work::list_photos(b, visit); });
        const PhotoRecord& photo = photos.first().photo;
        const auto marks =
            read<Marks>(book.path, [&](Book& b) { return work::set_marks(b, photo.id, test::some_marks(5)); });
        ReadingRecord reading;
        reading.photo = photo.id;
        reading.marks = marks.id;
        reading.name = "fill_depth";
        reading.unit = "mm";
        reading.value = depth_mm;
        reading.low = depth_mm - 0.2;
        reading.high = depth_mm + 0.2;
        reading.analysis_version = 1;
        reading.options = reading.card = "{}";
        reading.photo_sha256 = photo.sha256;
        reading.measured_at = QDateTime(QDate(2026, 5, 4), QTime(12, 0), Qt::UTC);
        (void)read<Id>(book.path, [&](Book& b) { return store::add_readings(b, {reading}); });
        depth_mm -= 5;
    }
    const auto sentences = [this] {
        QString all;
        for (const QLabel* label : page<ClientPage>()->findChild<ProgressPanel*>()->findChildren<QLabel*>())
            all += label->text() + '\n';
        return all;
    };
    go({Where::client, book.client});
    BOOST_TEST(sentences().contains("Fill depth fell by 5.0 mm"), sentences().toStdString());
    LookChoice choice;
    choice.length = LengthUnit::inches;
    look().apply(choice);
    BOOST_TEST(wait_until([&] { return settled() && page<ClientPage>() && sentences().contains("Fill depth"); }));
    BOOST_TEST(sentences().contains("Fill depth fell by 0.19 in, from 0.35 to 0.16 in"), sentences().toStdString());
    // The definition of the reading stays in millimetres.
    const QString told = sentences().remove(meaning_of_reading("fill_depth"));
    BOOST_TEST(!told.contains(" mm"), told.toStdString());
    look().apply({});
    BOOST_TEST(wait_until([this] { return settled(); }));
}

BOOST_AUTO_TEST_CASE(a_service_is_added_and_erased_in_the_visit) {
    go({Where::visit, book.client, book.second_visit});
    page<VisitPage>()->findChild<ServicesPanel*>()->add("gloss");
    BOOST_TEST(wait_until([this] { return window->book()->place().where == Where::service && settled(); }));
    const auto kept = [this] {
        return read<QVector<Service>>(book.path, [this](Book& b) { return work::list_services(b, book.client); });
    };
    BOOST_TEST(wait_until([this] { return settled(); }));
    BOOST_TEST_REQUIRE(kept().size() == 1);
    BOOST_TEST(kept().first().kind.toStdString() == "gloss");
    BOOST_TEST((kept().first().date == QDate(2026, 5, 4)));
    BOOST_TEST((kept().first().visit == std::optional(book.second_visit)));
    window->book()->back();
    BOOST_TEST(wait_until([this] { return window->book()->place().where == Where::visit && settled(); }));
    for (QToolButton* b : page<VisitPage>()->findChildren<QToolButton*>())
        if (b->accessibleName().startsWith("Erase gloss")) QTest::mouseClick(b, Qt::LeftButton);
    BOOST_TEST(wait_until([&] { return settled() && kept().isEmpty(); }));
    auto* put_back = page<VisitPage>()->findChild<ServicesPanel*>()->put_back_button();
    BOOST_TEST_REQUIRE(put_back->isVisible());
    QTest::mouseClick(put_back, Qt::LeftButton);
    BOOST_TEST(wait_until([&] { return settled() && kept().size() == 1; }));
    BOOST_TEST(wait_until([&] { return !put_back->isVisible(); }));
}

BOOST_AUTO_TEST_CASE(a_long_name_never_widens_the_window) {
    const Client long_name{
        0, QString("Wilhelmina Featherstonehaugh-Cholmondeley ").repeated(4), {}, QDate(2026, 1, 1), false, {}};
    const auto kept = read<Client>(book.path, [&](Book& b) { return work::add_client(b, long_name); });
    LookChoice choice;
    choice.text_scale = 2.0;
    look().apply(choice);
    BOOST_TEST(wait_until([this] { return settled(); }));
    go({Where::client, kept.id});
    BOOST_TEST(window->width() == 1280);
    BOOST_TEST(window->minimumSizeHint().width() <= 1280);
    look().apply({});
}

BOOST_AUTO_TEST_CASE(the_state_of_the_hair_is_kept_as_it_is_ticked) {
    go({Where::visit, book.client, book.second_visit});
    QTest::keyClick(page<VisitPage>()->wet(), Qt::Key_Space);
    BOOST_TEST(wait_until([this] { return settled(); }));
    const auto visit = read<Visit>(book.path, [this](Book& b) { return work::visit_of(b, book.second_visit); });
    BOOST_TEST(visit.hair.wet);
    BOOST_TEST(!visit.hair.styled);
}

BOOST_AUTO_TEST_CASE(search_finds_by_a_few_letters_whatever_the_accents) {
    ClientList* list = window->book()->clients();
    BOOST_TEST(list->view()->model()->rowCount() == 2);
    QTest::keyClicks(list->search(), "elo");
    BOOST_TEST(list->view()->model()->rowCount() == 1);
    QTest::keyClick(list->search(), Qt::Key_Return);
    BOOST_TEST(wait_until([this] { return window->book()->place().client == book.other && settled(); }));
}

BOOST_AUTO_TEST_CASE(a_new_client_takes_a_name_and_return) {
    window->book()->add_client();
    ClientForm* form = window->findChild<ClientForm*>();
    BOOST_TEST_REQUIRE(form != nullptr);
    QTest::keyClicks(form->name(), "Imani Vale");
    QTest::keyClick(form->name(), Qt::Key_Return);
    BOOST_TEST(wait_until([this] { return window->book()->place().where == Where::client && settled(); }));
    const Id made = window->book()->place().client;
    const auto client = read<Client>(book.path, [made](Book& b) { return work::client_of(b, made); });
    BOOST_TEST(client.name.toStdString() == "Imani Vale");
    BOOST_TEST(!client.photo_consent);
}

BOOST_AUTO_TEST_CASE(a_new_visit_opens_for_photos_and_back_leads_to_the_client) {
    go({Where::client, book.client});
    page<ClientPage>()->add_visit();
    BOOST_TEST(wait_until([this] { return window->book()->place().where == Where::visit && settled(); }));
    BOOST_TEST(page<VisitPage>()->tray(View::nape)->shots() == 0);
    QTest::keyClick(window.get(), Qt::Key_Left, Qt::AltModifier);
    BOOST_TEST(wait_until([this] { return window->book()->place().where == Where::client; }));
}

BOOST_AUTO_TEST_CASE(a_picture_does_not_leave_the_book_without_consent) {
    go({Where::compare, book.client, 0, 0, View::left_temple});
    const QString path = book.folder.filePath("pair.png");
    page<ComparePage>()->save_to(path);
    BOOST_TEST(wait_until([this] { return window->book()->notice()->isVisible() && settled(); }));
    BOOST_TEST(!QFile::exists(path));
    BOOST_TEST(window->book()->notice()->sentence().contains("not agreed"));
}

BOOST_AUTO_TEST_CASE(the_report_is_written_as_pdf) {
    go({Where::report, book.client});
    const QString path = book.folder.filePath("report.pdf");
    page<ReportPage>()->write_to(path);
    BOOST_TEST(wait_until([&] { return QFile::exists(path) && settled(); }, 60000));
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    BOOST_TEST(file.read(5).toStdString() == "%PDF-");
}

BOOST_AUTO_TEST_CASE(a_larger_text_rebuilds_the_window_at_the_same_place) {
    go({Where::visit, book.client, book.first_visit});
    const Place before = window->book()->place();
    LookChoice choice;
    choice.text_scale = 2.0;
    look().apply(choice);
    BOOST_TEST(wait_until([&] { return window->book() != nullptr && window->book()->place() == before && settled(); }));
    BOOST_TEST(page<VisitPage>()->fontInfo().pixelSize() >= 26);
    look().apply({});
    BOOST_TEST(wait_until([&] { return window->book()->place() == before && settled(); }));
}

BOOST_AUTO_TEST_CASE(a_missing_book_is_told_on_the_start_page) {
    MainWindow fresh(test::fake_open(analysis));
    fresh.show();
    fresh.open_book(book.folder.filePath("nowhere.kempt"));
    BOOST_TEST(wait_until([&] { return fresh.start()->notice()->isVisible(); }));
    BOOST_TEST((fresh.book() == nullptr));
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(before_after)

BOOST_AUTO_TEST_CASE(keys_and_pointer_move_the_parting) {
    BeforeAfter picture;
    picture.resize(800, 600);
    PairOnShow pair;
    pair.before = QImage(400, 300, QImage::Format_RGB888);
    pair.after = pair.before;
    pair.before_date = QDate(2026, 3, 2);
    pair.after_date = QDate(2026, 5, 4);
    picture.set_pair(pair);
    picture.show();
    QTest::keyClick(&picture, Qt::Key_Right);
    BOOST_TEST(picture.parting() == 0.52, boost::test_tools::tolerance(1e-9));
    QTest::keyClick(&picture, Qt::Key_Home);
    BOOST_TEST(picture.parting() == 0.0);
    QTest::mousePress(&picture, Qt::LeftButton, {}, QPoint(600, 300));
    BOOST_TEST(picture.parting() == 0.75, boost::test_tools::tolerance(1e-9));
    QTest::keyClick(&picture, Qt::Key_End);
    BOOST_TEST(picture.parting() == 1.0);
    BOOST_TEST(picture.accessibleDescription().contains("2 March 2026"));
}

BOOST_AUTO_TEST_SUITE_END()
