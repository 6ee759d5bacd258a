// The cameras of this computer, through Qt Multimedia.
#include <QCamera>
#include <QCameraDevice>
#include <QFile>
#include <QImageCapture>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QTemporaryDir>
#include <QThreadPool>
#include <QVideoFrame>
#include <QVideoSink>
#include <algorithm>

#include "desk/camera/camera_source.h"
#include "desk/camera/frame_image.h"

namespace kempt::desk {
namespace {

// Longer side of the live picture: fills the page of a window 2560 wide at half its pixels, and a frame of it is 1 MP
// at most, whatever the camera gives (own choice).
constexpr int preview_px = 1280;

qint64 area(const QSize& size) {
    return qint64{size.width()} * size.height();
}

class QtCamera : public CameraSource {
  public:
    QtCamera() {
        session_.setVideoSink(&sink_);
        session_.setImageCapture(&capture_);
        capture_.setFileFormat(QImageCapture::JPEG);
        capture_.setQuality(QImageCapture::VeryHighQuality);
        connect(&devices_, &QMediaDevices::videoInputsChanged, this, &CameraSource::cameras_changed);
        converting_.setMaxThreadCount(1);
        connect(&sink_, &QVideoSink::videoFrameChanged, this, &QtCamera::convert);
        connect(&capture_, &QImageCapture::imageSaved, this, [this](int, const QString& path) {
            QFile file(path);
            if (!file.open(QIODevice::ReadOnly)) return emit trouble(file.errorString());
            const QByteArray photo = file.readAll();
            file.close();
            QFile::remove(path);  // our own copy, in our own folder
            emit took(photo);
        });
        connect(&capture_, &QImageCapture::errorOccurred, this,
                [this](int, QImageCapture::Error, const QString& words) { emit trouble(words); });
    }

    [[nodiscard]] QStringList names() const override {
        QStringList out;
        for (const QCameraDevice& device : QMediaDevices::videoInputs()) out.append(device.description());
        return out;
    }

    void start(int which) override {
        stop();
        const QList<QCameraDevice> devices = QMediaDevices::videoInputs();
        if (which < 0 || which >= devices.size()) return emit trouble(QObject::tr("There is no such camera."));
        camera_ = std::make_unique<QCamera>(devices[which]);
        // Readings live by pixels: the largest format there is.
        const QList<QCameraFormat> formats = devices[which].videoFormats();
        if (!formats.isEmpty())
            camera_->setCameraFormat(
                *std::max_element(formats.begin(), formats.end(), [](const QCameraFormat& a, const QCameraFormat& b) {
                    return area(a.resolution()) < area(b.resolution());
                }));
        const QList<QSize> sizes = devices[which].photoResolutions();
        if (!sizes.isEmpty())
            capture_.setResolution(*std::max_element(sizes.begin(), sizes.end(),
                                                     [](const QSize& a, const QSize& b) { return area(a) < area(b); }));
        connect(camera_.get(), &QCamera::errorOccurred, this,
                [this](QCamera::Error, const QString& words) { emit trouble(words); });
        session_.setCamera(camera_.get());
        camera_->start();
    }

    void stop() override {
        if (!camera_) return;
        camera_->stop();
        session_.setCamera(nullptr);
        camera_.reset();
    }

    void take() override {
        if (!camera_ || !capture_.isReadyForCapture()) return emit trouble(QObject::tr("The camera is not ready yet."));
        if (!folder_.isValid()) return emit trouble(folder_.errorString());
        capture_.captureToFile(folder_.filePath(QStringLiteral("take-%1.jpg").arg(++takes_)));
    }

  private:
    // Off the windows' thread, and one at a time: a frame that comes meanwhile is left out.
    void convert(const QVideoFrame& frame) {
        if (under_way_) return;
        under_way_ = true;
        converting_.start([this, frame] {
            const QImage image = small_image(frame, preview_px);
            QMetaObject::invokeMethod(
                this, [this, frame, image] { show(frame, image); }, Qt::QueuedConnection);
        });
    }
    void show(const QVideoFrame& frame, const QImage& image) {
        if (!camera_) {  // stopped meanwhile
            under_way_ = false;
            return;
        }
        // On the graphics card, or of a rare format: Qt converts it here.
        const QImage shown = image.isNull() ? frame.toImage() : image;
        under_way_ = false;
        if (!shown.isNull()) emit this->frame(shown);
    }

    QTemporaryDir folder_;
    int takes_ = 0;
    QMediaDevices devices_;
    QVideoSink sink_;
    QImageCapture capture_;
    QMediaCaptureSession session_;
    std::unique_ptr<QCamera> camera_;
    bool under_way_ = false;
    QThreadPool converting_;  // last: ends, with what it does, before the rest goes
};

CameraMaker& maker() {
    static CameraMaker the_maker;
    return the_maker;
}

}  // namespace

void set_camera_maker(CameraMaker new_maker) {
    maker() = std::move(new_maker);
}

std::unique_ptr<CameraSource> make_camera() {
    if (maker()) return maker()();
    return std::make_unique<QtCamera>();
}

}  // namespace kempt::desk
