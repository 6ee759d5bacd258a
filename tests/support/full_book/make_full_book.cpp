// A book of hard cases, for looking at every window with: a client with 60 visits, a visit with 40 photos, a client
// with none, very long names, names written from the right. Photos are those of sample-images, made smaller and each a
// little lighter or darker, so that none is taken for another; people are invented.
//   make_full_book FILE.kempt [VISITS]      (60)
#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <QTextStream>

#include "domain/marks_json.h"
#include "domain/words.h"
#include "work/import_photos.h"
#include "work/keep_records.h"
#include "work/measure_in_book.h"
#include "work/open_book.h"
#include "work/set_marks.h"

using namespace kempt;

namespace {

constexpr double smaller = 0.6;  // of the samples' size: still 12 px/mm and more

template <class T>
T must(Result<T> result) {
    if (!result.ok()) {
        QTextStream(stderr) << QString::fromStdString(result.error().sentence()) << '\n';
        std::exit(1);
    }
    return std::move(result).value();
}

struct Maker {
    std::shared_ptr<Book> book;
    QTemporaryDir folder;
    int number = 0;

    Client client(const QString& name, const QString& note = {}) {
        Client c;
        c.name = name;
        c.note = note;
        c.since = QDate(2021, 1, 4);
        c.photo_consent = true;
        return must(work::add_client(*book, c));
    }

    Visit visit(const Client& client, const QDate& day, const QString& note = {}) {
        Visit v;
        v.client = client.id;
        v.date = day;
        v.note = note;
        return must(work::add_visit(*book, v));
    }

    // A sample photo with its marks, measured.
    void photo(const Visit& visit, const QString& sample, View view, bool measured = true) {
        const QDir samples(QStringLiteral(KEMPT_SAMPLES_FOLDER));
        QImage image(samples.filePath(sample + QStringLiteral(".jpg")));
        const double scale = smaller;
        image = image.scaled(image.size() * scale, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                    .convertToFormat(QImage::Format_RGB888);
        ++number;
        for (int y = 0; y < image.height(); ++y)  // as if the lamp were a little nearer or farther
            for (int x = 0, n = 3 * image.width(); x < n; ++x) {
                uchar& code = image.scanLine(y)[x];
                code = static_cast<uchar>(std::min(255, code * (200 + number % 40) / 220));
            }
        const QString path = folder.filePath(QStringLiteral("photo-%1.jpg").arg(number, 4, 10, QLatin1Char('0')));
        if (!image.save(path, "JPG", 84 + number % 7)) std::exit(1);
        work::ImportOptions options;
        options.visit = visit.id;
        options.view = view;
        options.paths = {path};
        const auto report = must(work::import_photos(*book, options));
        if (report.imported != 1) return;
        QFile file(samples.filePath(sample + QStringLiteral(".marks.json")));
        if (!file.open(QIODevice::ReadOnly)) return;
        Marks marks = must(marks_from_json(file.readAll()));
        for (QVector<QPointF>* points :
             {&marks.edge_line, &marks.hair_taps, &marks.scalp_taps, &marks.shine_region, &marks.strand_line,
              &marks.region, &marks.anchors, &marks.scale_points, &marks.not_hair, &marks.joined, &marks.whole})
            for (QPointF& p : *points) p *= scale;
        if (marks.hair_side) *marks.hair_side *= scale;
        marks.view = view;
        const Id id = report.files.front().photo;
        must(work::set_marks(*book, id, marks));
        if (measured) must(work::measure_in_book(*book, id));
    }
};

}  // namespace

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    if (argc < 2) {
        QTextStream(stderr) << "make_full_book FILE.kempt [VISITS]\n";
        return 2;
    }
    const int visits = argc > 2 ? QString::fromLocal8Bit(argv[2]).toInt() : 60;
    Maker make{must(work::create_book(QString::fromLocal8Bit(argv[1]))), {}, 0};

    const Client often = make.client(QStringLiteral("Comes Every Month"), QStringLiteral("Five years of visits."));
    for (int i = 0; i < visits; ++i) {
        const Visit visit = make.visit(often, QDate(2021, 1, 4).addMonths(i));
        const QString stage = QStringLiteral("imani/0%1-").arg(1 + i * 6 / visits);
        make.photo(visit, stage + QStringLiteral("left-temple-%1").arg(1 + i % 2), View::left_temple);
        if (i % 4 == 0) make.photo(visit, stage + QStringLiteral("right-temple-1"), View::right_temple);
    }
    must(work::set_target(*make.book, {0, often.id, View::left_temple, QStringLiteral("edge_coverage"), 60}));

    const Client thorough = make.client(QStringLiteral("Photographed Thoroughly"));
    const Visit many = make.visit(thorough, QDate(2026, 10, 5), QStringLiteral("Forty photos at one visit."));
    for (int i = 0; i < 40; ++i) {
        const View view = all_views()[i % all_views().size()];
        make.photo(many, QStringLiteral("imani/0%1-left-temple-1").arg(1 + i % 6), view, i % 8 == 0);
    }

    make.client(QStringLiteral("Nothing Yet"));
    const Client long_name = make.client(
        QStringLiteral(
            "Maria-Theresia Wilhelmina Konstantina Alexandrowna von und zu Brantwalden-Sigisheim-Oberlauental "
            "geborene Freifrau von Donaudampfschifffahrtsgesellschaftskapitaenswitwe"),
        QStringLiteral("Wants to be called by all of them.Averylongwordwithoutanyspaceinitthatmustbreaksomewhere"
                       "orbecutoffattheedgeofthepanelitstandsinsideof."));
    const Visit her = make.visit(long_name, QDate(2026, 9, 1),
                                 QStringLiteral("A note with Averyveryverylongwordthatcannotbebrokenatanyspace"
                                                "andgoesonforalongwhileyet."));
    make.photo(her, QStringLiteral("imani/01-left-temple-1"), View::left_temple);
    const Client arabic = make.client(QStringLiteral("نورا بنت عبد الرحمن الأندلسي"),
                                      QStringLiteral("تحب شعرها مفرودا، ولا تريد الصبغة."));
    const Client hebrew =
        make.client(QStringLiteral("שרה בת־אברהם לוי (Sarah Levi)"), QStringLiteral("שיער מתולתל, רוצה 230 mm."));
    for (const Client& who : {arabic, hebrew})
        for (int i = 0; i < 2; ++i)
            make.photo(make.visit(who, QDate(2026, 6 + 3 * i, 8)),
                       QStringLiteral("imani/0%1-left-temple-1").arg(1 + 5 * i), View::left_temple);
    return 0;
}
