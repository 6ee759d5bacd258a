#include "work/report_outputs.h"

#include <QDir>
#include <algorithm>

#include "book/client_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/visit_store.h"
#include "domain/files_check.h"
#include "domain/words.h"
#include "report/export_csv.h"
#include "report/pair_picture.h"
#include "work/errors.h"
#include "work/free_file.h"

namespace kempt::work {

Result<QByteArray> png_of(const report::Pair& pair, LengthUnit length, const speech::Speech& say) {
    report::PairPicture picture;
    picture.before = pair.before;
    picture.after = pair.after;
    picture.before_date = pair.before_date;
    picture.after_date = pair.after_date;
    picture.px_per_mm = pair.px_per_mm;
    picture.title = word_of(pair.view);
    picture.verdict = QStringList{pair.verdict, pair.note}.join(QLatin1Char(' ')).trimmed();
    picture.length = length;
    picture.speech = say;
    return report::pair_png(picture);
}

Result<QStringList> write_report_pictures(const report::Model& model, const report::Options& look,
                                          const QString& folder) {
    return guarded([&]() -> Result<QStringList> {
        if (!model.pictures_withheld.isEmpty() || model.pairs.isEmpty()) {
            std::string why = model.pictures_withheld.isEmpty() ? "There is no picture of two visits that can be shown."
                                                                : model.pictures_withheld.toStdString();
            for (const report::LeftOut& one : model.left_out)
                if (one.what == u"before/after picture") why = one.reason.toStdString();
            return Error{ErrorKind::refused, "pictures-withheld", why, "Nothing was written.",
                         "Ask for her consent, or look at the photos under “Eyes in the pictures”."};
        }
        QStringList names;
        for (const report::Pair& pair : model.pairs) {
            const auto png = png_of(pair, look.length, look.speech);
            if (!png) return png.error();
            const QString path =
                free_file(folder, QStringLiteral("%1 %2 %3.png")
                                      .arg(look.speech(word_of(pair.view)), pair.before_date.toString(Qt::ISODate),
                                           pair.after_date.toString(Qt::ISODate)));
            if (const Status written = write_file(path, *png); !written) return written.error();
            names.append(QFileInfo(path).fileName());
        }
        return names;
    });
}

Status write_readings_csv(Book& book, Id client, const QString& path, const Progress& progress) {
    const auto who = store::get_client(book, client);
    if (!who) return who.error();
    const auto visits = store::visits_of_client(book, client);
    if (!visits) return visits.error();
    QVector<report::ExportedReading> lines;
    for (const Visit& visit : visits.value()) {
        if (tell(progress, 0.5, "reading the visits") == Go::stop) return stopped();
        const auto photos = store::photos_of_visit(book, visit.id);
        if (!photos) return photos.error();
        for (const PhotoRecord& photo : photos.value()) {
            const auto readings = store::latest_readings(book, photo.id);
            if (!readings) return readings.error();
            for (const ReadingRecord& reading : readings.value())
                lines.append({who->name, visit.date, photo.view, photo.shot, photo.file_name, reading});
        }
    }
    if (Status free = not_a_book(path); !free) return free;
    return write_file(path, report::readings_csv(lines));
}

}  // namespace kempt::work
