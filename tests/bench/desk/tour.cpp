#include "bench/desk/tour.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QHash>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QMap>
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <cstdlib>

#include "bench/support/timing.h"
#include "desk/client/client_list.h"
#include "desk/client/client_page.h"
#include "desk/client/progress_panel.h"
#include "desk/session/session.h"
#include "desk/start/due_page.h"
#include "desk/visit/visit_page.h"
#include "desk/window/book_view.h"
#include "domain/clock.h"
#include "work/import_photos.h"
#include "work/keep_records.h"
#include "work/make_demo.h"
#include "work/measure_in_book.h"
#include "work/scenario.h"
#include "work/set_marks.h"

namespace bench {
namespace {

using namespace kempt;
using namespace kempt::desk;

constexpr int limit_ms = 120000, photos_taken = 20;

// Runs the event loop, one turn after another, until it is so.
void until(const std::function<bool()>& so, const char* what) {
    QElapsedTimer clock;
    clock.start();
    while (!so()) {
        QApplication::processEvents(QEventLoop::WaitForMoreEvents);  // sleeps; the watchdog's beat ends each turn
        if (clock.elapsed() < limit_ms) continue;
        std::fprintf(stderr, "desk_book: waited in vain for %s\n", what);
        std::exit(1);
    }
}

double ms_now() {
    return now_s() * 1e3;
}

// QTest knows no letters beyond ASCII.
void type(QWidget* field, QChar letter) {
    for (const auto sort : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(sort, 0, Qt::NoModifier, QString(letter));
        QApplication::sendEvent(field, &event);
    }
}

}  // namespace

Times times_of(std::vector<double> ms) {
    if (ms.empty()) return {};
    return {median(ms), *std::max_element(ms.begin(), ms.end()), static_cast<int>(ms.size())};
}

Tour::Tour(const QString& path, const LargeBook& book, Watchdog& watchdog)
    : book_(book), path_(path), watchdog_(watchdog) {}

Tour::~Tour() = default;

double Tour::open() {
    made_ms_ = ms_now();
    window_ = std::make_unique<MainWindow>();
    window_->resize(1280, 800);
    window_->show();
    window_->open_book(path_);
    until([this] { return window_->book() != nullptr && window_->book()->clients()->settled(); }, "the clients");
    window_->repaint();
    QLineEdit* search = window_->book()->clients()->search();
    QTest::keyClick(search, Qt::Key_Q);
    search->clear();
    const double usable = ms_now() - made_ms_;
    std::fprintf(stderr, "usable after %.0f ms\n", usable);
    return usable;
}

double Tour::wait_for_due() {
    until([this] { return window_->book()->due()->settled(); }, "who is due");
    window_->repaint();
    return ms_now() - made_ms_;
}

Times Tour::search() {
    ClientList* list = window_->book()->clients();
    std::vector<double> ms;
    double worst_work = 0;
    for (const char* name : {"holloway", "jose", "m", "niño", "zz", "wanjiru k", "123"}) {
        const QString letters = QString::fromUtf8(name);
        for (qsizetype i = 0; i < 2 * letters.size(); ++i) {
            const double begun = ms_now(), work_begun = thread_work_ms();
            if (i < letters.size())
                type(list->search(), letters[i]);
            else
                QTest::keyClick(list->search(), Qt::Key_Backspace);
            QApplication::processEvents();  // layout and paint events
            list->repaint();
            ms.push_back(ms_now() - begun);
            worst_work = std::max(worst_work, thread_work_ms() - work_begun);
        }
        std::fprintf(stderr, "searched for %s: slowest %.1f ms, work of its own %.1f ms\n", name,
                     *std::max_element(ms.begin(), ms.end()), worst_work);
    }
    Times times = times_of(ms);
    times.worst_work = worst_work;
    return times;
}

bool Tour::quiet() const {
    Session& s = *window_->session();
    return s.records().unfinished() == 0 && s.bench().unfinished() == 0 && s.live().unfinished() == 0;
}

Tour::Page Tour::clients(const std::vector<Id>& ids) {
    std::vector<double> shown, whole;
    for (const Id id : ids) {
        const double begun = ms_now(), work_begun = thread_work_ms(), all_begun = process_work_ms();
        window_->book()->go({Where::client, id});
        auto* page = qobject_cast<ClientPage*>(window_->book()->page());
        if (page == nullptr) std::exit(1);
        bool painted = false;
        until(
            [&] {
                if (!painted && window_->session()->records().unfinished() <= 1) {  // the progress comes last
                    window_->repaint();
                    painted = true;
                    shown.push_back(ms_now() - begun);
                }
                return page->settled();
            },
            "a client's page");
        QApplication::processEvents();
        window_->repaint();
        whole.push_back(ms_now() - begun);
        std::fprintf(stderr, "client %lld: %.0f and %.0f ms; processor: windows %.0f ms, all threads %.0f ms\n", id,
                     shown.back(), whole.back(), thread_work_ms() - work_begun, process_work_ms() - all_begun);
    }
    return {times_of(shown), times_of(whole)};
}

Tour::Page Tour::one_client(Id id, Id other) {
    std::vector<double> shown, whole;
    for (int i = 0; i < 3; ++i) {
        (void)clients({other});
        const Page page = clients({id});
        shown.push_back(page.shown.worst);
        whole.push_back(page.whole.worst);
    }
    return {times_of(shown), times_of(whole)};
}

Times Tour::visits(const std::vector<Place>& places) {
    std::vector<double> ms;
    for (const Place& place : places) {
        const double begun = ms_now();
        window_->book()->go(place);
        auto* page = qobject_cast<VisitPage*>(window_->book()->page());
        if (page == nullptr) std::exit(1);
        until([&] { return window_->session()->records().unfinished() == 0; }, "a visit");
        QApplication::processEvents();
        window_->repaint();
        ms.push_back(ms_now() - begun);
        until([this, page] { return page->settled() && quiet(); }, "the gate");
    }
    return times_of(ms);
}

double Tour::due_again() {
    window_->book()->go({});
    until([this] { return quiet() && window_->book()->due()->settled(); }, "who is due");
    const double begun = ms_now(), work_begun = thread_work_ms(), all_begun = process_work_ms();
    window_->book()->due()->refresh();
    until([this] { return window_->book()->due()->settled(); }, "who is due");
    window_->repaint();
    const double ms = ms_now() - begun;
    std::fprintf(stderr, "who is due: %.0f ms; processor: windows %.0f ms, all threads %.0f ms\n", ms,
                 thread_work_ms() - work_begun, process_work_ms() - all_begun);
    return ms;
}

int Tour::import_and_measure(const std::vector<Id>& meanwhile) {
    const QString folder = work::find_samples();
    const auto scenario = work::read_scenario(folder);
    if (!scenario) std::exit(1);
    QHash<QString, Marks> marks;
    QMap<View, QStringList> files;
    for (const auto& client : scenario->clients)
        for (const auto& visit : client.visits)
            for (const auto& photo : visit.photos)
                if (photo.marks && marks.size() < photos_taken) {
                    marks.insert(QFileInfo(photo.file).fileName(), *photo.marks);
                    files[photo.view].append(folder + QLatin1Char('/') + photo.file);
                }
    Session& session = *window_->session();
    Visit visit;
    visit.client = book_.many_photos;
    visit.date = Clock().today();
    session.ask(
        session.records(), "visit", window_.get(),
        [visit](Book& b, const Progress&) { return work::add_visit(b, visit); },
        [&visit](const Visit& kept) { visit = kept; });
    until([this] { return quiet(); }, "a new visit");
    added_ = visit.id;
    const Place place{Where::visit, visit.client, visit.id};
    window_->book()->go(place);
    auto* page = qobject_cast<VisitPage*>(window_->book()->page());
    until([&] { return page->settled() && quiet(); }, "the visit's page");
    watchdog_.begin("taking photos in");
    for (auto view = files.begin(); view != files.end(); ++view) page->take_files(view.key(), view.value());
    wander(meanwhile);
    window_->book()->go(place);
    until([&] { return page->settled() && quiet(); }, "photos taken in");
    watchdog_.go_on("measuring");
    int measured = -1;
    session.ask(
        session.bench(), "Measuring", window_.get(),
        [marks, id = visit.id, client = visit.client](Book& b, const Progress& progress) -> Result<work::BatchReport> {
            const auto photos = work::list_photos(b, id);
            if (!photos) return photos.error();
            for (const work::PhotoRow& row : *photos)
                if (const auto drawn = work::set_marks(b, row.photo.id, marks[row.photo.file_name]); !drawn)
                    return drawn.error();
            work::BatchReport report;
            for (const work::PhotoRow& row : *photos) {
                const auto one = work::measure_in_book(b, row.photo.id, {}, progress);
                if (!one) return one.error();
                report.measured += one->readings.isEmpty() ? 0 : 1;
            }
            return report;
        },
        [&](const work::BatchReport& report) {
            measured = report.measured;
            session.changed(visit.client, visit.id);
        },
        [&] { measured = 0; });
    while (measured < 0) wander(meanwhile);
    until([this] { return quiet(); }, "the readings");
    return measured;
}

void Tour::tidy() {
    Session& session = *window_->session();
    window_->book()->go({});
    session.ask(
        session.records(), "visit", window_.get(),
        [id = added_](Book& b, const Progress&) { return work::erase_visit(b, id); }, [](Done) {});
    until([this] { return quiet(); }, "tidying");
}

// What a hand does meanwhile: pages of other clients, letters in the search.
void Tour::wander(const std::vector<Id>& ids) {
    for (const Id id : ids) {
        (void)clients({id});
        QLineEdit* search = window_->book()->clients()->search();
        QTest::keyClicks(search, "ho");
        QApplication::processEvents();
        search->clear();
    }
}

}  // namespace bench
