// The camera page, with a camera that the test pushes frames through, and without any.
#include <QBuffer>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <boost/test/unit_test.hpp>

#include "desk/camera/camera_page.h"
#include "desk/camera/guide_view.h"
#include "desk/session/session.h"
#include "desk/window/book_view.h"
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
        emit took(bytes);
    }
    static inline FakeCamera* live = nullptr;
    static inline int started = 0, stopped = 0, takes = 0;
    static inline bool broken = false;

  private:
    QStringList names_;
};

struct Studio : test::Desk {
    Studio() {
        FakeCamera::started = FakeCamera::stopped = 0;
        FakeCamera::broken = false;
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
