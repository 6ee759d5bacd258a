// A batch of photos of the book: both cores against one, and its memory.
//   bench_batch KEMPT PHOTO MARKS FOLDER [COUNT]   fills FOLDER/batch.kempt with COUNT (200) copies of the photo for
//   one client and a tenth of that for another, each told apart by a comment in its bytes; prints name,value lines; the
//   book is removed
#include <QCoreApplication>
#include <QFile>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>

#include "bench/support/timing.h"
#include "book/book.h"
#include "domain/marks_json.h"
#include "work/import_photos.h"
#include "work/keep_records.h"
#include "work/open_book.h"
#include "work/set_marks.h"

namespace {

using namespace kempt;

template <class T>
T required(Result<T> result) {
    if (!result) {
        std::fprintf(stderr, "%s\n", result.error().sentence().c_str());
        std::exit(1);
    }
    return std::move(result).value();
}

QByteArray read(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) std::exit(1);
    return file.readAll();
}

// A JPEG comment (FF FE, length) right after the start of the image.
QByteArray with_comment(const QByteArray& jpeg, int number) {
    const QByteArray text = QByteArray::number(number).rightJustified(8, '0');
    return jpeg.left(2) + QByteArray("\xff\xfe\x00\x0a", 4) + text + jpeg.mid(2);
}

// A client with `count` photos whose comments begin with number `first`.
void fill(Book& book, const QByteArray& photo, const Marks& marks, const QString& folder, int first, int count) {
    Client client;
    client.name = QStringLiteral("Batch of %1").arg(count);
    client.since = QDate(2026, 3, 1);
    client.photo_consent = true;
    Visit visit;
    visit.client = required(work::add_client(book, client)).id;
    visit.date = QDate(2026, 3, 1);
    visit = required(work::add_visit(book, visit));
    for (int i = 0; i < count; ++i) {
        work::ImportOptions options;
        options.visit = visit.id;
        options.view = marks.view;
        options.check_pixels = false;
        options.paths = {folder + QStringLiteral("/batch.jpg")};
        QFile file(options.paths.front());
        if (!file.open(QIODevice::WriteOnly)) std::exit(1);
        file.write(with_comment(photo, first + i));
        file.close();
        const auto report = required(work::import_photos(book, options));
        required(work::set_marks(book, report.files.front().photo, marks));
    }
    QFile::remove(folder + QStringLiteral("/batch.jpg"));
}

void remove_book(const std::string& folder) {
    for (const auto& file : std::filesystem::directory_iterator(folder))
        if (file.path().filename().string().rfind("batch.kempt", 0) == 0) std::filesystem::remove(file);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 5) return 2;
    QCoreApplication application(argc, argv);
    const QString folder = QString::fromLocal8Bit(argv[4]), path = folder + QStringLiteral("/batch.kempt");
    const int count = argc > 5 ? std::atoi(argv[5]) : 200, few = std::max(4, count / 10);
    remove_book(argv[4]);
    {
        const auto book = required(work::create_book(path));
        const QByteArray photo = read(QString::fromLocal8Bit(argv[2]));
        const Marks marks = required(marks_from_json(read(QString::fromLocal8Bit(argv[3]))));
        fill(*book, photo, marks, folder, 0, count);
        fill(*book, photo, marks, folder, count, few);
    }
    const auto measure = [&](const char* client, int cores) {
        const bench::Child child =
            bench::run_child({argv[1], "photo", "measure", path.toStdString(), "--client", client, "--again"}, cores);
        if (!child.good) std::exit(1);
        return child;
    };
    const bench::Child one = measure("1", 1), both = measure("1", 2), short_one = measure("2", 2);
    const auto mb = [](const bench::Child& child) { return static_cast<double>(child.peak_kb) / 1024; };
    std::printf("batch_photos,%d\nbatch_one_core_s,%.1f\nbatch_two_cores_s,%.1f\nbatch_two_cores_cpu_s,%.1f\n", count,
                one.wall_s, both.wall_s, both.cpu_s);
    std::printf("batch_times_faster,%.2f\nbatch_peak_one_mb,%.0f\nbatch_peak_two_mb,%.0f\n", one.wall_s / both.wall_s,
                mb(one), mb(both));
    std::printf("batch_few,%d\nbatch_peak_few_mb,%.0f\n", few, mb(short_one));
    remove_book(argv[4]);
    return 0;
}
