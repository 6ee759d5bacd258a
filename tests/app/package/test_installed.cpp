// What `cmake --install` puts into a root is what a desktop expects there. The judges are the desktop's own programs
// (desktop-file-utils, appstream, groff) and Qt's reading of the shared MIME database.
#include <QDir>
#include <QFile>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMimeDatabase>
#include <QProcess>
#include <QTemporaryDir>
#include <boost/test/unit_test.hpp>

namespace {

struct Ran {
    int status = -1;
    QByteArray out;  // both streams
};
Ran run(const QString& program, const QStringList& words) {
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, words);
    if (!process.waitForStarted()) return {-1, program.toUtf8() + " could not be started"};
    process.waitForFinished(600000);  // packing takes a minute on a machine that has other work
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -2, process.readAll()};
}

// Installed once for all cases.
const QString& root() {
    static QTemporaryDir folder;
    static const QString prefix = [] {
        const QString to = folder.path() + QStringLiteral("/usr");
        const Ran ran = run(QStringLiteral(KEMPT_CMAKE),
                            {QStringLiteral("--install"), QStringLiteral(KEMPT_BUILD), QStringLiteral("--prefix"), to});
        BOOST_REQUIRE_MESSAGE(ran.status == 0, ran.out.toStdString());
        return to;
    }();
    return prefix;
}
QString share(const char* path) {
    return root() + QStringLiteral("/share/") + QLatin1String(path);
}

QByteArray bytes(const QString& path) {
    QFile file(path);
    BOOST_REQUIRE_MESSAGE(file.open(QIODevice::ReadOnly), path.toStdString());
    return file.readAll();
}

void check_judged(const QString& program, const QStringList& words) {
    const Ran ran = run(program, words);
    BOOST_CHECK_MESSAGE(ran.status == 0, program.toStdString() << ": " << ran.out.toStdString());
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_desktop_entry_is_valid_and_its_icon_is_there) {
    check_judged(QStringLiteral("desktop-file-validate"), {share("applications/kempt-desk.desktop")});
    const QByteArray entry = bytes(share("applications/kempt-desk.desktop"));
    BOOST_TEST(entry.contains("\nIcon=kempt\n"));
    BOOST_TEST(entry.contains("\nExec=kempt-desk %f\n"));
    for (int side : {16, 22, 24, 32, 48, 64, 128, 256}) {
        const QImage icon(share("icons/hicolor/") + QStringLiteral("%1x%1/apps/kempt.png").arg(side));
        BOOST_TEST(icon.width() == side);
        BOOST_TEST(icon.hasAlphaChannel());
    }
    BOOST_TEST(bytes(share("icons/hicolor/scalable/apps/kempt.svg")).contains("<svg"));
}

BOOST_AUTO_TEST_CASE(the_metadata_is_valid_and_names_the_desktop_entry) {
    const QString file = share("metainfo/local.kempt.desk.metainfo.xml");
    check_judged(QStringLiteral("appstreamcli"), {QStringLiteral("validate"), QStringLiteral("--no-net"), file});
    BOOST_TEST(bytes(file).contains("<launchable type=\"desktop-id\">kempt-desk.desktop</launchable>"));
}

BOOST_AUTO_TEST_CASE(the_man_pages_are_clean_and_name_every_command) {
    for (const char* page : {"kempt", "kempt-desk"}) {
        const QString file = QStringLiteral(KEMPT_BUILD "/share/%1.1").arg(QLatin1String(page));
        const Ran ran = run(QStringLiteral("groff"), {QStringLiteral("-man"), QStringLiteral("-Tutf8"),
                                                      QStringLiteral("-ww"), QStringLiteral("-z"), file});
        BOOST_TEST(ran.status == 0);
        BOOST_TEST(ran.out.toStdString() == "");
        BOOST_TEST(QFile::exists(share("man/man1/") + QLatin1String(page) + QStringLiteral(".1.gz")));
    }
    const Ran help = run(root() + QStringLiteral("/bin/kempt"), {QStringLiteral("help"), QStringLiteral("--json")});
    const QJsonArray lines = QJsonDocument::fromJson(help.out).object()["help"].toArray();
    const QByteArray page = bytes(QStringLiteral(KEMPT_BUILD "/share/kempt.1"));
    int commands = 0;
    for (const QJsonValue& line : lines) {
        if (!line.toString().startsWith(u"  ")) continue;
        const QByteArray name = line.toString().simplified().section(u' ', 0, 0).toUtf8();
        BOOST_TEST_CONTEXT(name.toStdString()) BOOST_TEST(page.contains(name));
        ++commands;
    }
    BOOST_TEST(commands >= 18);  // so many when this was written: none is lost by a change of the help's form
}

BOOST_AUTO_TEST_CASE(a_book_is_known_by_its_content_and_another_database_is_not) {
    // Into one database with the system's types, as on a desktop where both are installed.
    const QString system = QStringLiteral("/usr/share/mime/packages/freedesktop.org.xml");
    BOOST_REQUIRE(QFile::copy(system, share("mime/packages/freedesktop.org.xml")));
    check_judged(QStringLiteral("update-mime-database"), {share("mime")});
    qputenv("XDG_DATA_HOME", (root() + QStringLiteral("/nothing")).toUtf8());
    qputenv("XDG_DATA_DIRS", (root() + QStringLiteral("/share")).toUtf8());
    const QMimeDatabase types;
    QByteArray book = bytes(QStringLiteral(KEMPT_OLD_BOOK));
    BOOST_TEST(types.mimeTypeForData(book).name().toStdString() == "application/x-kempt-book");
    BOOST_TEST(
        types.mimeTypeForFile(QStringLiteral("salon.kempt"), QMimeDatabase::MatchExtension).name().toStdString() ==
        "application/x-kempt-book");
    book[70] = 'x';  // another application's id
    BOOST_TEST(types.mimeTypeForData(book).name().toStdString() == "application/vnd.sqlite3");
}

BOOST_AUTO_TEST_CASE(the_demos_samples_and_the_documents_come_along) {
    BOOST_TEST(QFile::exists(share("kempt/sample-images/scenario.json")));
    BOOST_TEST(QFile::exists(share("doc/kempt/README.md")));
    BOOST_TEST(QFile::exists(share("doc/kempt/docs/user-guide.md")));
}

BOOST_AUTO_TEST_CASE(the_debian_package_names_what_the_programs_need) {
    const QTemporaryDir folder;
    check_judged(QStringLiteral(KEMPT_CPACK),
                 {QStringLiteral("-G"), QStringLiteral("DEB"), QStringLiteral("-B"), folder.path(),
                  QStringLiteral("--config"), QStringLiteral(KEMPT_BUILD "/CPackConfig.cmake")});
    const QStringList made = QDir(folder.path()).entryList({QStringLiteral("kempt_*.deb")});
    BOOST_REQUIRE(made.size() == 1);
    const QString package = QDir(folder.path()).filePath(made.front());
    const QByteArray needs =
        run(QStringLiteral("dpkg-deb"), {QStringLiteral("-f"), package, QStringLiteral("Depends")}).out;
    // Found by dpkg-shlibdeps in the programs, and those that are opened only while they run.
    for (const char* name : {"libqt6widgets6", "libopencv-objdetect406", "libheif1", "libqt6sql6-sqlite", "libqt6svg6"})
        BOOST_TEST_CONTEXT(name) BOOST_TEST(needs.contains(name));
    const QByteArray files = run(QStringLiteral("dpkg-deb"), {QStringLiteral("-c"), package}).out;
    for (const char* name :
         {"./usr/bin/kempt\n", "./usr/bin/kempt-desk\n", "./usr/share/kempt/sample-images/scenario.json\n"})
        BOOST_TEST_CONTEXT(name) BOOST_TEST(files.contains(name));
}
