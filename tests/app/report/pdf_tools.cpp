#include "app/report/pdf_tools.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <boost/test/unit_test.hpp>

namespace kempt::report::tools {

namespace {

QByteArray bytes_from(const QByteArray& pdf, const QString& tool, const QStringList& before, const QStringList& after) {
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("report.pdf")));
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    BOOST_REQUIRE(file.write(pdf) == pdf.size());
    file.close();
    QProcess process;
    process.start(tool, before + QStringList{file.fileName()} + after);
    BOOST_REQUIRE_MESSAGE(process.waitForFinished(60000), tool.toStdString() + " (package poppler-utils) did not run");
    BOOST_REQUIRE_EQUAL(process.exitCode(), 0);
    BOOST_CHECK_EQUAL(process.readAllStandardError().toStdString(), "");
    return process.readAllStandardOutput();
}

}  // namespace

QString run_on(const QByteArray& pdf, const QString& tool, const QStringList& before, const QStringList& after) {
    return QString::fromUtf8(bytes_from(pdf, tool, before, after));
}

QImage picture_of(const QByteArray& pdf, int page) {
    const QString number = QString::number(page);
    const QStringList options = {QStringLiteral("-r"),
                                 QStringLiteral("50"),
                                 QStringLiteral("-png"),
                                 QStringLiteral("-f"),
                                 number,
                                 QStringLiteral("-l"),
                                 number};
    return QImage::fromData(bytes_from(pdf, QStringLiteral("pdftoppm"), options, {}), "PNG");
}

QString text_of(const QByteArray& pdf) {
    return run_on(pdf, QStringLiteral("pdftotext"), {QStringLiteral("-layout")}, {QStringLiteral("-")});
}

int pages_of(const QByteArray& pdf) {
    for (const QString& line : run_on(pdf, QStringLiteral("pdfinfo"), {}, {}).split(u'\n'))
        if (line.startsWith(QStringLiteral("Pages:"))) return line.section(u':', 1).trimmed().toInt();
    return 0;
}

QVector<PageWords> words_of(const QByteArray& pdf) {
    QVector<PageWords> pages;
    QXmlStreamReader xml(run_on(pdf, QStringLiteral("pdftotext"), {QStringLiteral("-bbox")}, {QStringLiteral("-")}));
    const auto number = [&](const char* name) { return xml.attributes().value(QLatin1String(name)).toDouble(); };
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == u"page") pages << PageWords{{number("width"), number("height")}, {}};
        if (xml.name() == u"word") {
            const QRectF box(QPointF(number("xMin"), number("yMin")), QPointF(number("xMax"), number("yMax")));
            pages.last().words << Word{static_cast<int>(pages.size()), box, xml.readElementText()};
        }
    }
    return pages;
}

void keep_for_looking(const QString& name, const QByteArray& bytes) {
    const QString folder = qEnvironmentVariable("KEMPT_LOOK");
    if (folder.isEmpty()) return;
    QDir().mkpath(folder);
    QFile file(QDir(folder).filePath(name));
    if (file.open(QIODevice::WriteOnly)) file.write(bytes);
}

}  // namespace kempt::report::tools
