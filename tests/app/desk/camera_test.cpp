// The camera page, with a camera that the test pushes frames through, and without any.
#include <QBuffer>
#include <QDir>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QThread>
#include <QVideoFrame>
#include <array>
#include <atomic>
#include <boost/test/unit_test.hpp>
#include <utility>
#include <vector>

#include "desk/camera/camera_page.h"
#include "desk/camera/frame_image.h"
#include "desk/camera/guide_view.h"
#include "desk/inbox/camera_files.h"
#include "desk/inbox/inbox.h"
#include "desk/session/session.h"
#include "desk/window/book_view.h"
#include "domain/words.h"
#include "room.h"
#include "work/keep_records.h"

using namespace kempt;
using namespace kempt::desk;
using test::read;
using test::wait_until;

namespace {

struct FakeCamera : CameraSource {
    explicit FakeCamera(QStringList names) : names_(std::move(names)) { live = this; }
    ~FakeCamera() override { live = nullptr; }
    [[nodiscard]] QStringList names() const override { return names_; }
    void start(int which) override {
        ++started;
        QImage image(320, 240, QImage::Format_RGB32);
        image.fill(QColor(200, 160, 130 + which));
        emit frame(image);
    }
    void stop() override { ++stopped; }
    // Every photo differs from the one before.
    void take() override {
        if (broken) return emit trouble("the lens is covered");
        QImage image(640, 480, QImage::Format_RGB32);
        image.fill(QColor(180, 140, 110));
        QPainter(&image).fillRect(0, 200, 640, 280, QColor(30, 20 + 30 * ++takes, 20));
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, "JPEG");
        if (!late) return emit took(bytes);
        held = bytes;
    }
    void give() { emit took(std::exchange(held, {})); }
    QByteArray held;
    static inline bool late = false;  // the photo comes when `give` is called
    static inline FakeCamera* live = nullptr;
    static inline int started = 0, stopped = 0, takes = 0;
    static inline bool broken = false;

  private:
    QStringList names_;
};

struct Studio : test::Desk {
    Studio() {
        FakeCamera::started = FakeCamera::stopped = 0;
        FakeCamera::broken = FakeCamera::late = false;
    }
    ~Studio() {
        window.reset();  // before the maker goes
        set_camera_maker({});
    }
    void with(const QStringList& cameras) {
        set_camera_maker([cameras] { return std::make_unique<FakeCamera>(cameras); });
        go({Where::camera, book.client, book.second_visit});
    }
    void key(Qt::Key key) {
        QWidget* at = window->focusWidget();
        QTest::keyClick(at != nullptr ? at : window.get(), key);
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
        QTest::qWait(20);
        BOOST_REQUIRE(wait_until([this] { return settled(); }));
    }
    void press(int key) { QTest::keyClick(page<CameraPage>(), static_cast<Qt::Key>(key)); }
    [[nodiscard]] QDir left_overs() const { return QDir(Inbox::of(*window->session()).camera_folder()); }
    [[nodiscard]] QVector<work::PhotoRow> photos() const {
        return read<QVector<work::PhotoRow>>(book.path,
                                             [this](Book& b) { return work::list_photos(b, book.second_visit); });
    }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(camera, Studio)

BOOST_AUTO_TEST_CASE(one_key_takes_a_photo_of_the_view_that_is_missing_with_the_last_one_as_guide) {
    with({"a camera"});
    auto* camera = page<CameraPage>();
    BOOST_TEST((camera->view() == View::left_temple));  // the view of the visit before
    BOOST_TEST(!camera->picture()->frame().isNull());
    BOOST_TEST(!camera->picture()->guide().isNull());
    key(Qt::Key_Space);
    auto kept = photos();
    BOOST_TEST_REQUIRE(kept.size() == 1);
    BOOST_TEST((kept[0].photo.view == View::left_temple));
    BOOST_TEST(kept[0].photo.format.toStdString() == "jpeg");
    BOOST_TEST(kept[0].photo.size.width() == 640);
    BOOST_TEST_REQUIRE(kept[0].photo.taken.has_value());
    BOOST_TEST(std::abs(kept[0].photo.taken->secsTo(QDateTime::currentDateTime())) < 60);
    BOOST_TEST(camera->told().contains("Left temple, shot 1 is kept"), camera->told().toStdString());
    // The gate has looked at it.
    BOOST_TEST(camera->told().contains("Hold the camera straight above it."), camera->told().toStdString());
    key(Qt::Key_Space);
    BOOST_TEST(photos().size() == 2);
    BOOST_TEST(camera->told().contains("Every view has its two shots."), camera->told().toStdString());
    key(Qt::Key_5);
    BOOST_TEST((camera->view() == View::nape));
    BOOST_TEST(camera->picture()->guide().isNull());
    key(Qt::Key_Space);
    kept = photos();
    BOOST_TEST_REQUIRE(kept.size() == 3);
    BOOST_TEST((kept[2].photo.view == View::nape));
}

BOOST_AUTO_TEST_CASE(the_camera_is_let_go_with_the_page) {
    with({"a camera"});
    BOOST_TEST((FakeCamera::live != nullptr));
    go({Where::visit, book.client, book.second_visit});
    BOOST_TEST(FakeCamera::stopped >= 1);
    BOOST_TEST((FakeCamera::live == nullptr));
}

BOOST_AUTO_TEST_CASE(without_a_camera_the_page_says_so_and_what_to_do) {
    with({});
    auto* camera = page<CameraPage>();
    BOOST_TEST(!camera->take_button()->isEnabled());
    BOOST_TEST(!camera->picture()->isVisible());
    QStringList words;
    for (const QLabel* label : camera->findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    BOOST_TEST(words.contains("No camera was found on this computer."));
    BOOST_TEST(words.join(' ').contains("Plug a camera in"));
    BOOST_TEST(photos().isEmpty());
    // Plugged in now.
    set_camera_maker([] { return std::make_unique<FakeCamera>(QStringList{"a camera"}); });
    for (QPushButton* b : camera->findChildren<QPushButton*>())
        if (b->text() == "Look again") QTest::mouseClick(b, Qt::LeftButton);
    BOOST_TEST(camera->take_button()->isEnabled());
    BOOST_TEST(FakeCamera::started == 1);
}

BOOST_AUTO_TEST_CASE(the_cameras_of_this_computer_can_be_asked_for_where_there_are_none) {
    set_camera_maker({});
    const auto source = make_camera();
    BOOST_REQUIRE(source != nullptr);
    QString told;
    QObject::connect(source.get(), &CameraSource::trouble, [&](const QString& why) { told = why; });
    source->start(static_cast<int>(source->names().size()));  // one more than there are
    BOOST_TEST(!told.isEmpty());
    source->take();
    source->stop();
}

BOOST_AUTO_TEST_CASE(what_the_camera_complains_of_is_told_and_nothing_is_kept) {
    with({"a camera"});
    FakeCamera::broken = true;
    key(Qt::Key_Space);
    BOOST_TEST(page<CameraPage>()->told().contains("the lens is covered"));
    BOOST_TEST(photos().isEmpty());
}

BOOST_AUTO_TEST_CASE(a_photo_goes_to_the_view_that_was_chosen_when_it_was_asked_for) {
    with({"a camera"});
    FakeCamera::late = true;
    press(Qt::Key_Space);
    press(Qt::Key_5);
    BOOST_TEST((page<CameraPage>()->view() == View::nape));
    BOOST_TEST(!page<CameraPage>()->settled());
    FakeCamera::live->give();
    BOOST_REQUIRE(wait_until([this] { return settled(); }));
    BOOST_TEST_REQUIRE(photos().size() == 1);
    BOOST_TEST((photos()[0].photo.view == View::left_temple));
    BOOST_TEST((page<CameraPage>()->view() == View::nape));  // what she chose since is not taken from her
    BOOST_TEST(!left_overs().exists());
}

BOOST_AUTO_TEST_CASE(a_page_that_is_left_between_the_press_and_the_photo_waits_for_it) {
    with({"a camera"});
    FakeCamera::late = true;
    press(Qt::Key_Space);
    window->book()->go({Where::client, book.client});
    BOOST_TEST_REQUIRE((FakeCamera::live != nullptr));
    FakeCamera::live->give();
    BOOST_TEST(wait_until([this] { return window->book()->place().where == Where::client && settled(); }));
    BOOST_TEST((FakeCamera::live == nullptr));
    BOOST_TEST(wait_until([this] { return window->session()->bench().unfinished() == 0; }));
    BOOST_TEST(photos().size() == 1);
}

BOOST_AUTO_TEST_CASE(a_photo_that_the_book_does_not_take_waits_in_the_tray_and_after_the_window_too) {
    with({"a camera"});
    {
        const auto elsewhere = work::open_book(book.path);
        BOOST_REQUIRE(elsewhere.ok());
        BOOST_REQUIRE(work::erase_visit(**elsewhere, book.second_visit).ok());
    }
    press(Qt::Key_Space);
    Inbox& inbox = Inbox::of(*window->session());
    BOOST_TEST(wait_until([&] { return inbox.waiting() == 1 && inbox.settled(); }));
    BOOST_TEST(page<CameraPage>()->told().contains("waits among the new photos"));
    BOOST_TEST_REQUIRE(left_overs().entryList(QDir::Files).size() == 1);
    MainWindow later(test::fake_open(analysis));
    later.show();
    later.open_book(book.path);
    BOOST_REQUIRE(wait_until([&] { return later.book() != nullptr; }));
    Inbox& again = Inbox::of(*later.session());
    BOOST_TEST(wait_until([&] { return again.waiting() == 1 && again.settled(); }));
    // Taken there, it is in the book with its time, and the file goes.
    const int key = again.sittings().first().keys.first();
    BOOST_TEST((again.photo(key)->view == std::optional(View::left_temple)));  // as it was chosen at the press
    BOOST_TEST(again.photo(key)->view_by_hand);
    again.choose_client({key}, book.other);
    BOOST_TEST(wait_until([&] { return again.ready(key); }));
    again.take({key});
    BOOST_TEST(wait_until([&] { return again.waiting() == 0 && again.settled(); }));
    BOOST_TEST(!left_overs().exists());
    const auto visits = read<QVector<Visit>>(book.path, [this](Book& b) { return work::list_visits(b, book.other); });
    BOOST_TEST_REQUIRE(visits.size() == 1);
    const auto kept =
        read<QVector<work::PhotoRow>>(book.path, [&](Book& b) { return work::list_photos(b, visits.first().id); });
    BOOST_TEST_REQUIRE(kept.size() == 1);
    BOOST_TEST(kept[0].photo.taken.has_value());
    BOOST_TEST((kept[0].photo.view == View::left_temple));
}

BOOST_AUTO_TEST_CASE(the_name_of_a_camera_file_says_its_view_and_no_other_name_does) {
    const QDateTime taken(QDate(2026, 3, 12), QTime(10, 15, 0, 123));
    for (const View view : all_views())
        BOOST_TEST((view_of_camera_file("/book camera/" + camera_file_name(taken, view)) == std::optional(view)));
    BOOST_TEST(camera_file_name(taken, View::left_temple).toStdString() ==
               "camera-20260312-101500-123-left-temple.jpg");
    for (const char* other : {"IMG_0001-left-temple.jpg", "camera-20260312-101500-123.jpg",
                              "camera-20260312-101500-123-elbow.jpg", "left-temple.jpg"})
        BOOST_TEST(!view_of_camera_file(other).has_value());
}

BOOST_AUTO_TEST_CASE(one_clients_photo_never_lies_over_the_next_ones_picture) {
    Visit visit;
    visit.client = book.other;
    visit.date = QDate(2026, 5, 4);
    visit = read<Visit>(book.path, [&](Book& b) { return work::add_visit(b, visit); });
    set_camera_maker([] { return std::make_unique<FakeCamera>(QStringList{"a camera"}); });
    std::atomic<bool> open{false};  // the worker that opens guides stands still until then
    window->session()->bench().start(
        "standing still", window.get(),
        [&open](Book&, const Progress&) -> Result<int> {
            while (!open) QThread::msleep(2);
            return 0;
        },
        [](const Result<int>&) {});
    window->book()->go({Where::camera, book.client, book.second_visit});
    const auto titled = [this](const QString& words) {
        for (const QLabel* label : page<CameraPage>()->findChildren<QLabel*>())
            if (label->text().contains(words)) return true;
        return false;
    };
    BOOST_REQUIRE(wait_until([&] { return page<CameraPage>() != nullptr && titled("lies over the picture"); }));
    BOOST_TEST((page<CameraPage>()->view() == View::left_temple));
    window->book()->go({Where::camera, book.other, visit.id});
    BOOST_REQUIRE(wait_until([&] { return titled("There is no earlier photo"); }));
    press(Qt::Key_1 + static_cast<int>(all_views().indexOf(View::left_temple)));
    open = true;
    BOOST_REQUIRE(wait_until([this] { return settled(); }));
    BOOST_TEST((page<CameraPage>()->view() == View::left_temple));
    BOOST_TEST(page<CameraPage>()->picture()->guide().isNull());
}

// Colour bars in studio range as ITU-R BT.601 has them (from memory): white, red, blue.
BOOST_AUTO_TEST_CASE(frames_of_the_usual_formats_become_small_images_of_the_right_colour) {
    struct Bar {
        int y, u, v;
        QColor colour;
    };
    const QVector<Bar> bars{
        {235, 128, 128, QColor(255, 255, 255)}, {81, 90, 240, QColor(255, 0, 0)}, {41, 240, 110, QColor(0, 0, 255)}};
    using Format = QVideoFrameFormat::PixelFormat;
    for (const Format format : {Format::Format_YUYV, Format::Format_UYVY, Format::Format_NV12, Format::Format_NV21,
                                Format::Format_YUV420P, Format::Format_YV12})
        for (const Bar& bar : bars) {
            QVideoFrame frame(QVideoFrameFormat(QSize(640, 480), format));
            BOOST_REQUIRE(frame.map(QVideoFrame::WriteOnly));
            const std::array<int, 3> yuv{bar.y, bar.u, bar.v};
            const auto fill = [&](int plane, const std::vector<int>& order) {
                for (int i = 0; i < frame.mappedBytes(plane); ++i)
                    frame.bits(plane)[i] = static_cast<uchar>(yuv[static_cast<std::size_t>(order[i % order.size()])]);
            };
            if (format == Format::Format_YUYV) fill(0, {0, 1, 0, 2});
            if (format == Format::Format_UYVY) fill(0, {1, 0, 2, 0});
            if (frame.planeCount() > 1) fill(0, {0});
            if (format == Format::Format_NV12) fill(1, {1, 2});
            if (format == Format::Format_NV21) fill(1, {2, 1});
            if (format == Format::Format_YUV420P) fill(1, {1}), fill(2, {2});
            if (format == Format::Format_YV12) fill(1, {2}), fill(2, {1});
            frame.unmap();
            const QImage image = small_image(frame, 200);
            BOOST_TEST_REQUIRE(!image.isNull());
            BOOST_TEST(std::max(image.width(), image.height()) <= 200);
            BOOST_TEST(image.width() == 160);
            const QColor seen = image.pixelColor(80, 60);
            const int off =
                std::max({std::abs(seen.red() - bar.colour.red()), std::abs(seen.green() - bar.colour.green()),
                          std::abs(seen.blue() - bar.colour.blue())});
            BOOST_TEST(off <= 3, "format " << static_cast<int>(format) << ": " << seen.name().toStdString());
        }
    QVideoFrame plain(QVideoFrameFormat(QSize(400, 300), Format::Format_BGRX8888));
    BOOST_REQUIRE(plain.map(QVideoFrame::WriteOnly));
    for (int i = 0; i < plain.mappedBytes(0); ++i) plain.bits(0)[i] = static_cast<uchar>(i % 4 == 2 ? 200 : 10);
    plain.unmap();
    BOOST_TEST((small_image(plain, 100).size() == QSize(100, 75)));
    BOOST_TEST(small_image(plain, 100).pixelColor(50, 40).red() == 200);
    BOOST_TEST((small_image(plain, 4000).size() == QSize(400, 300)));  // never larger than it is
    BOOST_TEST(small_image(QVideoFrame(), 100).isNull());
}

BOOST_AUTO_TEST_CASE(the_next_view_is_the_first_with_fewer_than_two_shots_and_the_one_at_hand_is_finished_first) {
    CameraData data;
    data.wanted = {View::left_temple, View::nape};
    BOOST_TEST((next_view(data, std::nullopt) == std::optional(View::left_temple)));
    data.shots[View::nape] = 1;
    BOOST_TEST((next_view(data, View::nape) == std::optional(View::nape)));
    data.shots[View::nape] = 2;
    BOOST_TEST((next_view(data, View::nape) == std::optional(View::left_temple)));
    data.shots[View::left_temple] = 2;
    BOOST_TEST(!next_view(data, View::left_temple).has_value());
}

BOOST_AUTO_TEST_SUITE_END()
