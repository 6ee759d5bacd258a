#include "book/fold.h"

#include <QHash>

namespace kempt::sql {

QString folded(const QString& name) {
    // Letters that Unicode does not take apart, as they are commonly written without their mark.
    static const QHash<char16_t, QString> plain{
        {u'ø', "o"}, {u'ł', "l"},  {u'đ', "d"},  {u'ð', "d"},  {u'ħ', "h"},  {u'ı', "i"},
        {u'ŧ', "t"}, {u'þ', "th"}, {u'æ', "ae"}, {u'œ', "oe"}, {u'ß', "ss"},
    };
    QString out;
    const QString apart = name.toCaseFolded().normalized(QString::NormalizationForm_KD);
    for (const QChar c : apart) {
        if (c.isMark()) continue;
        const auto it = plain.constFind(c.unicode());
        if (it != plain.constEnd())
            out += *it;
        else
            out += c;
    }
    return out.toCaseFolded().simplified();
}

QStringList patterns_of(const QString& letters) {
    QStringList list;
    for (QString word : folded(letters).split(' ', Qt::SkipEmptyParts)) {
        word.replace("!", "!!").replace("%", "!%").replace("_", "!_");
        list << "%" + word + "%";
    }
    return list;
}

}  // namespace kempt::sql
