#include "work/demo_output.h"

#include <QBuffer>
#include <QDir>
#include <QImage>
#include <QJsonDocument>
#include <QPainter>

#include "charts/chart_painter.h"
#include "domain/words.h"
#include "report/report_pdf.h"
#include "work/chart_of.h"
#include "work/errors.h"
#include "work/make_report.h"
#include "work/plan_json.h"
#include "work/progress_json.h"
#include "work/progress_of.h"
#include "work/report_outputs.h"

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

    Status write_report(const report::Model& model, report::Copy copy, const QString& name) {
        report::Options look;
        look.copy = copy;
        const QString relative = folder + u'/' + name;
        if (const Status status = report::write_report(model, look, out.filePath(relative)); !status)
            return status.error();
        result.files.append(relative);
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

    // The pairs of the report once more as files of their own.
    Status write_pictures(const report::Model& model) {
        for (const report::Pair& pair : model.pairs) {
            const auto png = png_of(pair, LengthUnit::millimetres);
            if (!png) return png.error();
            const QString name = QStringLiteral("before-after-%1.png").arg(dashed(word_of(pair.view)));
            if (const Status status = write(name, png.value()); !status) return status.error();
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
    const auto plan = plan_care(book, PlanOptions{client.id, scenario.today, {}});
    if (!plan) return plan.error();
    if (const Status status = writer.write(QStringLiteral("plan.json"), QJsonDocument(json_of_plan(*plan)).toJson());
        !status)
        return status.error();
    if (const Status status = writer.write_charts(compared.value()); !status) return status.error();
    ReportOptions options;
    options.client = client.id;
    options.salon = scenario.salon;
    const auto model = report_model_of(book, options, scenario.today, part_of(progress, 0.2, 0.7));
    if (!model) return model.error();
    if (const Status status = writer.write_pictures(model.value()); !status) return status.error();
    if (tell(progress, 0.75, "writing the reports of " + name) == Go::stop) return stopped();
    for (const auto& [copy, file] :
         {std::pair(report::Copy::client, "report.pdf"), std::pair(report::Copy::record, "report-record.pdf")})
        if (const Status status = writer.write_report(model.value(), copy, QString::fromLatin1(file)); !status)
            return status.error();
    if (tell(progress, 1, "files of " + name + " are written") == Go::stop) return stopped();
    return writer.result;
}

}  // namespace kempt::work
