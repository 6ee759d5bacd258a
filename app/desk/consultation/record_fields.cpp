#include "desk/consultation/record_fields.h"

#include <QObject>

#include "care/words.h"

namespace kempt::desk {
namespace {

using enum care::Kind;

bool of(const char* family, care::Kind kind) {
    const care::Family* found = care::find_family(family);
    return found != nullptr && care::belongs(*found, kind);
}

QStringList words_of(std::initializer_list<care::Kind> kinds) {
    QStringList words;
    for (const care::Kind kind : kinds) {
        const std::string_view word = care::word_of(kind);
        words.append(QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())));
    }
    return words;
}

}  // namespace

bool wants(const QString& kind_word, RecordField field) {
    const auto kind = care::kind_from_word(kind_word.toStdString());
    if (!kind) return true;  // of a kind that nobody knows everything may have been written down
    const bool treatment = *kind == bond_building || *kind == protein || *kind == moisture;
    const bool chemical = of("chemical", *kind), colour = of("colour", *kind), texture = of("texture", *kind);
    switch (field) {
        case RecordField::stretch:
            return *kind != cut && *kind != protective_style;
        case RecordField::cut_length:
            return *kind == cut;
        case RecordField::sections:
            return *kind != cut;
        case RecordField::strength:
            return texture || of("oxidative", *kind);
        case RecordField::minutes:
            return chemical || colour || treatment;
        case RecordField::temperature:
        case RecordField::passes:
            return of("heat", *kind);
        case RecordField::strand_test:
            return chemical || colour;
        case RecordField::patch_test:
            return of("dye", *kind) || of("oxidative", *kind);
        case RecordField::reaction:
            return chemical || colour || treatment || *kind == protective_style;
        case RecordField::line:
            return texture || colour;
    }
    return false;
}

bool holds(const Service& s, RecordField field) {
    switch (field) {
        case RecordField::stretch:
            return s.kind != u"cut" && (s.from_mm > 0 || s.to_mm);
        case RecordField::cut_length:
            return false;  // of a cut only
        case RecordField::sections:
            return !s.sections.isEmpty();
        case RecordField::strength:
            return !s.strength.isEmpty();
        case RecordField::minutes:
            return s.minutes || s.most_minutes;
        case RecordField::temperature:
            return s.temperature_c.has_value();
        case RecordField::passes:
            return s.passes.has_value();
        case RecordField::strand_test:
            return !s.strand_test.isEmpty();
        case RecordField::patch_test:
            return !s.patch_test.isEmpty() || s.patch_test_on || !s.patch_test_where.isEmpty();
        case RecordField::reaction:
            return s.reaction.has_value();
        case RecordField::line:
            return s.line_mm.has_value();
    }
    return false;
}

QVector<RecordGroup> record_groups() {
    return {{QObject::tr("Straighten, perm"), words_of({hydroxide_lye, hydroxide_no_lye, hydroxide,
                                                        thioglycolate_straightener, thioglycolate_perm, smoothing})},
            {QObject::tr("Colour, lighten"),
             words_of({gloss, semi_permanent, demi_permanent, permanent, lightening, henna, metallic_dye})},
            {QObject::tr("Treat"), words_of({bond_building, protein, moisture})},
            {QObject::tr("Cut, style"), words_of({cut, heat_styling, protective_style})}};
}

}  // namespace kempt::desk
