// A file on its way into the book: when it was taken and how that is known, whether the book has it already, whether
// she left it alone before. Nothing is written but that last thing.
#pragma once

#include <QDate>
#include <QDateTime>
#include <optional>

#include "core/result.h"
#include "domain/records.h"
#include "intake/intake.h"
#include "work/book_fwd.h"

namespace kempt::work {

// Where the capture time comes from.
enum class TakenFrom {
    camera_with_zone,  // EXIF DateTimeOriginal with OffsetTimeOriginal: a moment
    camera,            // EXIF without a zone: the camera's own clock, read as this computer's zone
    file               // the photo does not say: when the file was last changed
};

// A photo that the book has already.
struct InRecord {
    Id photo = 0, visit = 0, client = 0;
    QString client_name;
    QDate day;
    View view = View::front_hairline;
    int shot = 0;
};

struct IncomingPhoto {
    QString path, sha256, format;
    QSize size;            // upright pixels
    QByteArray thumbnail;  // JPEG, longest side 320
    QDateTime taken;
    TakenFrom from = TakenFrom::file;
    std::optional<InRecord> in_record;
    bool left_before = false;

    // The day that stands for its visit: as the camera's clock showed it, but never a day to come (a camera whose
    // clock runs ahead).
    [[nodiscard]] QDate day(const QDate& today) const;
};

// Reads and decodes the whole file. Errors: those of intake (a file that is not whole yet is `damaged`), io.
[[nodiscard]] Result<IncomingPhoto> look_at_incoming(Book& book, const QString& path,
                                                     const intake::Limits& limits = {});

// She does not want it in the book: remembered by its hash, and it does not come again. The photo itself stays where it
// is. Errors: invalid (no SHA-256), io.
[[nodiscard]] Status leave_alone(Book& book, const QString& sha256, const QDate& today);
[[nodiscard]] Status bring_back(Book& book, const QString& sha256);

}  // namespace kempt::work
