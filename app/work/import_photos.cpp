#include "work/import_photos.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "book/photo_store.h"
#include "book/transaction.h"
#include "book/visit_store.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

// Shot 2 before shot 10, in any locale.
bool by_number(const QString& a, const QString& b) {
    qsizetype i = 0, j = 0;
    while (i < a.size() && j < b.size()) {
        qsizetype i_end = i, j_end = j;
        while (i_end < a.size() && a[i_end].isDigit()) ++i_end;
        while (j_end < b.size() && b[j_end].isDigit()) ++j_end;
        if (i_end > i && j_end > j) {
            while (i < i_end - 1 && a[i] == u'0') ++i;
            while (j < j_end - 1 && b[j] == u'0') ++j;
            if (i_end - i != j_end - j) return i_end - i < j_end - j;
        } else {
            i_end = i + 1;
            j_end = j + 1;
        }
        const int order =
            QStringView(a).mid(i, i_end - i).compare(QStringView(b).mid(j, j_end - j), Qt::CaseInsensitive);
        if (order != 0) return order < 0;
        i = i_end;
        j = j_end;
    }
    if ((a.size() - i == 0) != (b.size() - j == 0)) return a.size() - i == 0;
    return a < b;
}

struct Candidate {
    std::size_t place = 0;  // in the report
    QString path;
    std::optional<QDateTime> taken;
};

// Headers are read first, so that shots are numbered in the order in which they were taken.
Result<intake::Header> header_of(const QString& path, const intake::Limits& limits) {
    const auto bytes = intake::read_file(path, limits);
    if (!bytes) return bytes.error();
    return intake::read_header(bytes.value(), limits);
}

Result<ImportedFile> take(Book& book, const ImportOptions& options, const QString& path) {
    ImportedFile file;
    file.path = path;
    const auto bytes = intake::read_file(path, options.limits);
    if (!bytes) return bytes.error();
    PhotoRecord record;
    record.sha256 = QString::fromLatin1(QCryptographicHash::hash(bytes.value(), QCryptographicHash::Sha256).toHex());
    const AsSeen seen = options.as_seen.value(path);
    if (!seen.sha256.isEmpty() && seen.sha256 != record.sha256)
        return Error{ErrorKind::invalid, "photo-changed-since",
                     "The file " + QFileInfo(path).fileName().toStdString() + " has changed since it was shown.",
                     "It was not taken in.", "Look at it again."};
    const auto known = store::find_photo_by_sha256(book, record.sha256);
    if (!known) return known.error();
    if (known.value()) {
        file.what = ImportedFile::What::duplicate;
        file.photo = known.value()->id;
        file.visit = known.value()->visit;
        file.shot = known.value()->shot;
        return file;
    }
    intake::Header header;
    if (options.check_pixels) {
        auto decoded = intake::decode(bytes.value(), options.limits, intake::CheckSum::skipped);
        if (!decoded) return decoded.error();
        header = decoded->header;
        record.thumbnail = intake::thumbnail_of(decoded->photo);
    } else {
        const auto read = intake::read_header(bytes.value(), options.limits);
        if (!read) return read.error();
        header = read.value();
    }
    record.visit = options.visit;
    record.view = options.view;
    record.file_name = QFileInfo(path).fileName();
    record.format = header.format;
    record.size = header.size;
    record.taken = header.taken ? header.taken : seen.taken;
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    const auto shot = store::next_shot(book, options.visit, options.view);
    if (!shot) return shot.error();
    record.shot = shot.value();
    const auto id = store::add_photo(book, record, bytes.value());
    if (!id) return id.error();
    if (const Status status = transaction->commit(); !status) return status.error();
    file.what = ImportedFile::What::imported;
    file.photo = id.value();
    file.visit = options.visit;
    file.shot = record.shot;
    return file;
}

void note_failure(ImportReport& report, ImportedFile& file, const Error& error) {
    file.what = ImportedFile::What::failed;
    file.error = error;
    ++report.failed;
}

}  // namespace

// Only for choosing among the files of a folder; what a file really is, its content says.
const QStringList& picture_endings() {
    static const QStringList endings{QStringLiteral("*.jpg"),  QStringLiteral("*.jpeg"), QStringLiteral("*.png"),
                                     QStringLiteral("*.webp"), QStringLiteral("*.tif"),  QStringLiteral("*.tiff"),
                                     QStringLiteral("*.heic"), QStringLiteral("*.heif")};
    return endings;
}

QStringList picture_files_of(const QStringList& paths) {
    QStringList files;
    for (const QString& path : paths) {
        if (!QFileInfo(path).isDir()) {
            files.append(path);
            continue;
        }
        const QDir folder(path);
        QStringList names = folder.entryList(picture_endings(), QDir::Files | QDir::Readable);
        std::sort(names.begin(), names.end(), by_number);
        for (const QString& name : names) files.append(folder.filePath(name));
    }
    return files;
}

Result<ImportReport> import_photos(Book& book, const ImportOptions& options, const Progress& progress) {
    const auto visit = store::get_visit(book, options.visit);
    if (!visit) return visit.error();
    const QStringList paths = picture_files_of(options.paths);
    if (paths.isEmpty())
        return missing("no-pictures", "There is no picture among the files and folders given.",
                       "Kempt takes JPEG, PNG, WebP, TIFF and HEIC.");
    ImportReport report;
    std::vector<Candidate> candidates;
    const double steps = 2.0 * static_cast<double>(paths.size());
    for (const QString& path : paths) {
        if (tell(progress, static_cast<double>(report.files.size()) / steps, "looking at the files") == Go::stop)
            return stopped();
        ImportedFile file;
        file.path = path;
        const auto header = header_of(path, options.limits);
        if (header)
            candidates.push_back({report.files.size(), path, header->taken});
        else
            note_failure(report, file, header.error());
        report.files.push_back(file);
    }
    // Photos without a capture time come after those with one, in the order of their names.
    std::stable_sort(candidates.begin(), candidates.end(), [](const Candidate& a, const Candidate& b) {
        return a.taken && (!b.taken || *a.taken < *b.taken);
    });
    double step = static_cast<double>(paths.size());
    for (const Candidate& candidate : candidates) {
        const std::string words = "taking in " + QFileInfo(candidate.path).fileName().toStdString();
        if (tell(progress, step++ / steps, words) == Go::stop)
            return stopped(std::to_string(report.imported) + " photos were kept before that.");
        auto taken = guarded([&] { return take(book, options, candidate.path); });
        ImportedFile& file = report.files[candidate.place];
        if (!taken) {
            note_failure(report, file, taken.error());
            continue;
        }
        file = std::move(taken).value();
        ++(file.what == ImportedFile::What::duplicate ? report.duplicates : report.imported);
    }
    tell(progress, 1, "photos are in the book");  // all is kept by now: too late to stop
    return report;
}

}  // namespace kempt::work
