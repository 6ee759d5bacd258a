#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <new>

#include "intake/errors.h"
#include "intake/intake.h"

namespace kempt::intake {

Result<QByteArray> read_file(const QString& path, const Limits& limits) {
    const QFileInfo info(path);
    if (!info.exists())
        return Error{ErrorKind::not_found, "file-not-found",
                     QStringLiteral("There is no file \"%1\".").arg(path).toStdString(), "",
                     "Check its name and folder."};
    const auto unreadable = [&path](const QString& why) {
        return Error{ErrorKind::io, "file-unreadable",
                     QStringLiteral("The file \"%1\" cannot be read: %2.").arg(path, why).toStdString(), "",
                     "Check that it is a photo file that you may open, and that the card or disk is still there."};
    };
    if (!info.isFile()) return unreadable(QStringLiteral("it is a folder or a device"));
    if (info.size() > limits.bytes) return too_many_bytes(info.size(), limits.bytes);
    try {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly)) return unreadable(file.errorString());
        // One byte more than the limit shows a file that grew meanwhile.
        QByteArray bytes = file.read(std::min(info.size(), limits.bytes) + 1);
        if (file.error() != QFileDevice::NoError) return unreadable(file.errorString());
        if (bytes.size() > limits.bytes) return too_many_bytes(bytes.size(), limits.bytes);
        if (bytes.size() < info.size()) return unreadable(QStringLiteral("it became shorter while it was read"));
        return bytes;
    } catch (const std::bad_alloc&) {
        return out_of_memory();
    }
}

}  // namespace kempt::intake
