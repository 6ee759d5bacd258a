// Where live pictures come from. The pages know only this; behind it stands a camera of this computer, or what a test
// shows instead.
#pragma once

#include <QImage>
#include <QObject>
#include <QStringList>
#include <functional>
#include <memory>

namespace kempt::desk {

class CameraSource : public QObject {
    Q_OBJECT
  public:
    // Names of the cameras there are now; empty: none.
    [[nodiscard]] virtual QStringList names() const = 0;
    virtual void start(int which) = 0;  // `frame` follows, or `trouble`
    virtual void stop() = 0;
    virtual void take() = 0;  // `took` follows, or `trouble`

  signals:
    void frame(const QImage& image);
    void took(const QByteArray& photo);   // a JPEG at the camera's full size
    void trouble(const QString& reason);  // in the system's words
    void cameras_changed();
};

using CameraMaker = std::function<std::unique_ptr<CameraSource>()>;
// How sources are made from now on; an empty function: the cameras of this computer.
void set_camera_maker(CameraMaker maker);
[[nodiscard]] std::unique_ptr<CameraSource> make_camera();

}  // namespace kempt::desk
