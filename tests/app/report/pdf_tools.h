// What poppler's own tools say of a PDF: an independent reader of the bytes that the report writes.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <QVector>

namespace kempt::report::tools {

// Output of `tool options... FILE -`-like calls, with FILE holding the bytes; fails the test when the tool fails.
[[nodiscard]] QString run_on(const QByteArray& pdf, const QString& tool, const QStringList& before,
                             const QStringList& after);
[[nodiscard]] QString text_of(const QByteArray& pdf);  // pdftotext -layout
[[nodiscard]] int pages_of(const QByteArray& pdf);     // pdfinfo

[[nodiscard]] QImage picture_of(const QByteArray& pdf, int page);  // pdftoppm, 50 dots an inch

struct Word {
    int page = 1;
    QRectF box;  // points, from the top left
    QString text;
};
struct PageWords {
    QSizeF size;  // points
    QVector<Word> words;
};
[[nodiscard]] QVector<PageWords> words_of(const QByteArray& pdf);  // pdftotext -bbox

// KEMPT_LOOK=FOLDER keeps what the tests paint, for a person to look at.
void keep_for_looking(const QString& name, const QByteArray& bytes);

}  // namespace kempt::report::tools
