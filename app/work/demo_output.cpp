#include "work/demo_output.h"

#include <QBuffer>
#include <QDir>
#include <QImage>
#include <QJsonDocument>
#include <QPainter>

#include "charts/chart_painter.h"
#include "domain/words.h"
#include "work/chart_of.h"
#include "work/compare_pictures.h"
#include "work/errors.h"
#include "work/make_report.h"
#include "work/progress_json.h"
#include "work/progress_of.h"

namespace kempt::work {

namespace {

QString dashed(const QString& words) {
    return QString(words).replace(u' ', u'-').replace(u'_', u'-');
}

QByteArray chart_png(const charts::ChartData& data) {
    charts::ChartStyle style;
    style.font.setPixelSize(15);
    constexpr int width = 1100;
    QImage image(width, 10, QImage::Format_RGB32);
    const int height = std::max(520, static_cast<int>(charts::good_height(data, width, style, &image)));
    image = QImage(width, height, QImage::Format_RGB32);
    image.fill(style.palette.ground);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    charts::paint(painter, data, QRectF(0, 0, width, height), style);
    painter.end();
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return png;
}

struct Writer {
    Book& book;
    const Client& client;
    const Scenario& scenario;
    QDir out;
    QString folder;
    DemoFiles result;

    Status write(const QString& name, const QByteArray& bytes) {
        const QString relative = folder + u'/' + name;
        if (const Status status = write_file(out.filePath(relative), bytes); !status) return status.error();
        result.files.append(relative);
        return Done{};
    }

    Status write_report(report::Copy copy, const QString& name) {
        ReportOptions options;
        options.client = client.id;
        options.path = out.filePath(folder + u'/' + name);
        options.salon = scenario.salon;
        options.look.copy = copy;
        if (const Status status = make_report(book, options, scenario.today); !status) return status.error();
        result.files.append(folder + u'/' + name);
        return Done{};
    }

    Status write_charts(const ClientProgress& progress) {
        for (const Series& series : progress.series) {
            if (series.reading != u"edge_coverage" && !series.target) continue;
            const QString name =
                QStringLiteral("charts/%1-%2.png").arg(dashed(word_of(series.view)), dashed(series.reading));
            if (const Status status = write(name, chart_png(chart_of(series, progress.services))); !status)
                return status.error();
        }
        return Done{};
    }

    Status write_pictures(const ClientProgress& progress) {
        for (const Series& series : progress.series) {
            if (series.reading != u"edge_coverage" || series.visits.size() < 2) continue;
            CompareOptions options;
            options.client = client.id;
            options.view = series.view;
            const PairVerdict* ends = series.first_to_last();
            options.from_visit = ends ? ends->from : series.visits.front().visit;
            options.to_visit = ends ? ends->to : series.visits.back().visit;
            const auto pictures = compare_pictures(book, options);
            if (!pictures) {
                result.problems.append(client.name + QStringLiteral(", ") + word_of(series.view) +
                                       QStringLiteral(": ") + QString::fromStdString(pictures.error().sentence()));
                continue;
            }
            const QString name = QStringLiteral("before-after-%1.png").arg(dashed(word_of(series.view)));
            if (const Status status = write_pair(pictures.value(), out.filePath(folder + u'/' + name)); !status)
                return status.error();
            result.files.append(folder + u'/' + name);
        }
        return Done{};
    }
};

}  // namespace

QString folder_name_of(const Client& client) {
    QString name;
    for (const QChar letter : client.name.normalized(QString::NormalizationForm_KD).toLower()) {
        if (letter.unicode() < 128 && letter.isLetterOrNumber())
            name += letter;
        else if (letter.isSpace() && !name.isEmpty() && !name.endsWith(u'-'))
            name += u'-';
    }
    return name.isEmpty() ? QStringLiteral("client-%1").arg(client.id) : name;
}

Result<DemoFiles> write_client_files(Book& book, const Client& client, const Scenario& scenario, const QString& out,
                                     const Progress& progress) {
    Writer writer{book, client, scenario, QDir(out), folder_name_of(client), {}};
    const std::string name = client.name.toStdString();
    if (tell(progress, 0, "comparing the visits of " + name) == Go::stop) return stopped();
    const auto compared = progress_of(book, {client.id, std::nullopt, std::nullopt});
    if (!compared) return compared.error();
    if (const Status status =
            writer.write(QStringLiteral("progress.json"), QJsonDocument(json_of_progress(compared.value())).toJson());
        !status)
        return status.error();
    if (const Status status = writer.write_charts(compared.value()); !status) return status.error();
    if (tell(progress, 0.2, "drawing the pictures of " + name) == Go::stop) return stopped();
    if (const Status status = writer.write_pictures(compared.value()); !status) return status.error();
    if (tell(progress, 0.5, "writing the report of " + name) == Go::stop) return stopped();
    if (const Status status = writer.write_report(report::Copy::client, QStringLiteral("report.pdf")); !status)
        return status.error();
    if (tell(progress, 0.75, "writing the salon's copy for " + name) == Go::stop) return stopped();
    if (const Status status = writer.write_report(report::Copy::record, QStringLiteral("report-record.pdf")); !status)
        return status.error();
    if (tell(progress, 1, "files of " + name + " are written") == Go::stop) return stopped();
    return writer.result;
}

}  // namespace kempt::work
