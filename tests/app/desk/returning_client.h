// The way from dropped photos of a returning client to a visit with readings for three views, by the windows and with
// the real analysis, every press counted. The test asks for what is in the book, the benchmark for the time.
#pragma once

#include <QApplication>
#include <QDropEvent>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QMimeData>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <functional>
#include <memory>

#include "desk/client/client_list.h"
#include "desk/inbox/inbox_page.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/photo_page.h"
#include "desk/session/session.h"
#include "desk/visit/steps_panel.h"
#include "desk/visit/visit_page.h"
#include "desk/window/book_view.h"
#include "desk/window/main_window.h"
#include "domain/marks_json.h"
#include "work/import_photos.h"
#include "work/keep_records.h"
#include "work/measure_in_book.h"
#include "work/open_book.h"
#include "work/set_marks.h"

namespace kempt::test {

class ReturningClient {
  public:
    // samples: the folder with the demo's photos; the first visit of one client is put into a book with its marks and
    // readings, three photos of her second one into a folder. trouble() says when that failed.
    explicit ReturningClient(const QString& samples) : samples_(samples) { trouble_ = prepare(); }

    // Every press, drop and click counts as one action; looking does not. Stops at the first step that does not come
    // about and says which.
    void run() {
        if (!trouble_.isEmpty()) return;
        desk::MainWindow window;
        window_ = &window;
        window.resize(1280, 800);
        window.show();
        window.activateWindow();
        window.open_book(book_path);
        if (!wait([&] { return window.book() != nullptr; }, "the book opens")) return;
        window.book()->go({desk::Where::client, client});
        if (!settle("her page")) return;
        QElapsedTimer clock, since_tick;
        QTimer tick;  // a watchdog: how long the window did not come round
        QObject::connect(&tick, &QTimer::timeout, &tick, [&] {
            longest_stall_ms = std::max(longest_stall_ms, static_cast<int>(since_tick.restart()) - tick.interval());
        });
        tick.start(10);
        since_tick.start();
        clock.start();
        steps();
        tick.stop();
        seconds = static_cast<double>(clock.elapsed()) / 1000;
        window.book()->put_away([] {});
        (void)settle("the end");
        window_ = nullptr;
    }

    QTemporaryDir folder;
    QString book_path;
    Id client = 0, first_visit = 0;
    QStringList dropped;
    QDate day{2026, 4, 14};
    int actions = 0, views_proposed = 0, longest_stall_ms = 0;
    double seconds = 0;
    [[nodiscard]] QString trouble() const { return trouble_; }

  private:
    QString samples_, trouble_;
    desk::MainWindow* window_ = nullptr;
    const QVector<QPair<QString, View>> views_{
        {"left-temple", View::left_temple}, {"right-temple", View::right_temple}, {"nape", View::nape}};

    QString prepare() {
        book_path = folder.filePath("returning.kempt");
        const auto book = work::create_book(book_path);
        if (!book.ok()) return "no book";
        Client she;
        she.name = "Imani Castell";
        she.since = QDate(2026, 3, 3);
        const auto kept = work::add_client(**book, she);
        if (!kept.ok()) return "no client";
        client = kept->id;
        Visit visit;
        visit.client = client;
        visit.date = QDate(2026, 3, 3);
        const auto opened = work::add_visit(**book, visit);
        if (!opened.ok()) return "no visit";
        first_visit = opened->id;
        for (const auto& [name, view] : views_) {
            const QString stem = samples_ + "/imani/01-" + name + "-1";
            const auto report = work::import_photos(**book, {first_visit, view, {stem + ".jpg"}, true, {}});
            QFile marks(stem + ".marks.json");
            if (!report.ok() || report->imported != 1 || !marks.open(QIODevice::ReadOnly)) return "no photo " + stem;
            const auto drawn = marks_from_json(marks.readAll());
            const Id photo = report->files.front().photo;
            if (!drawn.ok() || !work::set_marks(**book, photo, *drawn).ok() ||
                !work::measure_in_book(**book, photo).ok())
                return "no reading of " + stem;
            const QString copy = folder.filePath("IMG_" + QString::number(dropped.size() + 1) + ".jpg");
            if (!QFile::copy(samples_ + "/imani/02-" + name + "-1.jpg", copy)) return "no copy " + copy;
            QFile file(copy);
            const QDateTime taken(day, QTime(10, 2 * static_cast<int>(dropped.size())));
            if (!file.open(QIODevice::ReadWrite) || !file.setFileTime(taken, QFileDevice::FileModificationTime))
                return "no time for " + copy;
            dropped.append(copy);
        }
        return {};
    }

    bool wait(const std::function<bool()>& so, const char* what, int limit_ms = 120000) {
        if (trouble_.isEmpty() && !QTest::qWaitFor(so, limit_ms))
            trouble_ = QString("it does not come to: %1").arg(what);
        return trouble_.isEmpty();
    }
    bool settle(const char* what) {
        const auto quiet = [this] {
            desk::Session& s = *window_->session();
            const desk::Page* page = window_->book()->page();
            return window_->book()->clients()->settled() && (page == nullptr || page->settled()) &&
                   s.records().unfinished() == 0 && s.bench().unfinished() == 0 && s.live().unfinished() == 0;
        };
        if (!wait(quiet, what)) return false;
        QTest::qWait(20);
        return wait(quiet, what);
    }
    template <class P>
    P* page() const {
        return qobject_cast<P*>(window_->book()->page());
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        ++actions;
        QWidget* at = window_->focusWidget();
        QTest::keyClick(at != nullptr ? at : window_, key, with);
    }
    void click(QWidget* on) {
        ++actions;
        QTest::mouseClick(on, Qt::LeftButton);
    }
    void drop_all() {
        ++actions;
        QMimeData mime;
        QList<QUrl> urls;
        for (const QString& path : dropped) urls.append(QUrl::fromLocalFile(path));
        mime.setUrls(urls);
        QWidget* on = window_->book();
        QDragEnterEvent enter(on->rect().center(), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(on, &enter);
        QDropEvent fall(on->rect().center(), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(on, &fall);
    }
    // The offer beside the photo.
    QPushButton* offer() const {
        for (QPushButton* b : page<desk::PhotoPage>()->findChildren<QPushButton*>())
            if (b->isVisible() && b->text().startsWith("Bring the marks")) return b;
        return nullptr;
    }

    void steps() {
        drop_all();
        if (!settle("the tray") || !wait([this] { return page<desk::InboxPage>() != nullptr; }, "the tray")) return;
        desk::Inbox& inbox = desk::Inbox::of(*window_->session());
        if (!wait([&] { return inbox.settled() && inbox.waiting() == dropped.size(); }, "three photos are looked at"))
            return;
        for (const desk::InboxSitting& sitting : inbox.sittings())
            for (const int one : sitting.keys) {
                const desk::InboxPhoto* photo = inbox.photo(one);
                const qsizetype place = dropped.indexOf(photo->photo.path);
                if (photo->view == std::optional(views_[place].second)) ++views_proposed;
            }
        QTest::qWait(20);
        key(Qt::Key_A);
        if (!wait([this] { return page<desk::VisitPage>() != nullptr; }, "the visit") || !settle("the visit")) return;
        QPushButton* readings = page<desk::VisitPage>()->steps()->press_of(desk::VisitStep::What::readings);
        if (!wait([&] { return readings != nullptr; }, "the step of readings")) return;
        click(readings);
        for (int i = 0; i < dropped.size(); ++i) {
            if (!wait([this] { return page<desk::PhotoPage>() != nullptr; }, "a photo") || !settle("a photo")) return;
            if (!wait([this] { return offer() != nullptr; }, "the last visit's marks are offered")) return;
            click(offer());
            const auto drawn = [this] { return !page<desk::PhotoPage>()->canvas()->marks().edge_line.isEmpty(); };
            if (!wait(drawn, "the marks are carried over") || !settle("readings")) return;
            if (i + 1 == dropped.size()) break;
            key(Qt::Key_PageDown, Qt::ControlModifier);
        }
        key(Qt::Key_Left, Qt::AltModifier);
        (void)settle("back");
    }
};

}  // namespace kempt::test
