// The sentences that stand in C++ sources, read from the sources themselves.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

namespace kempt::sources {

struct Sentence {
    QString file;
    int line = 0;
    QString
        words;  // %1, %2 ... stand for what is put in between: "The " + what + " is missing." is "The %1 is missing."
};

// Every string expression of a file: literals side by side are one, a chain of + is one with placeholders for what is
// no literal. Comments and #include lines are left out.
[[nodiscard]] QVector<Sentence> strings_of(const QString& path);
// Those that a person may read as a sentence: from a capital letter or a placeholder to a full stop or question mark,
// of two words at least.
[[nodiscard]] QVector<Sentence> sentences_of(const QString& path);
// The literals given to say(...).
[[nodiscard]] QVector<Sentence> said_in(const QString& path);

// .cpp and .h below a folder, in order of their names.
[[nodiscard]] QStringList files_below(const QString& folder);

}  // namespace kempt::sources
