// Draws the icon's PNG sizes from its one SVG: draw_icon FILE.svg SIZE FILE.png. Run while building, not installed.
#include <QGuiApplication>
#include <QImage>
#include <QImageReader>
#include <cstdio>

int main(int argc, char** argv) {
    QGuiApplication app(argc, argv);
    const QStringList words = QGuiApplication::arguments();
    if (words.size() != 4) return 2;
    QImageReader reader(words[1], "svg");
    const int side = words[2].toInt();
    reader.setScaledSize({side, side});
    const QImage image = reader.read();
    if (image.width() == side && image.save(words[3], "PNG")) return 0;
    std::fprintf(stderr, "%s: %s\n", qUtf8Printable(words[1]), qUtf8Printable(reader.errorString()));
    return 1;
}
