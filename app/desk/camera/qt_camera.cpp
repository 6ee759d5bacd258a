// The cameras of this computer, through Qt Multimedia.
#include <QCamera>
#include <QCameraDevice>
#include <QFile>
#include <QImageCapture>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QTemporaryDir>
#include <QVideoFrame>
#include <QVideoSink>
#include <algorithm>

#include "desk/camera/camera_source.h"

namespace kempt::desk {
namespace {

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
        connect(&sink_, &QVideoSink::videoFrameChanged, this, [this](const QVideoFrame& frame) {
            if (const QImage image = frame.toImage(); !image.isNull()) emit this->frame(image);
        });
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
    QTemporaryDir folder_;
    int takes_ = 0;
    QMediaDevices devices_;
    QVideoSink sink_;
    QImageCapture capture_;
    QMediaCaptureSession session_;
    std::unique_ptr<QCamera> camera_;
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
