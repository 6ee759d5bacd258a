// The words of care: kinds of service and their families, parts of the strand, strengths, textures. No Qt; the kinds
// are the words of app/domain/words.cpp, and three more that only a history or a label can show.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace kempt::care {

enum class Kind {
    hydroxide,  // nobody knows whether there was lye in it
    hydroxide_lye,
    hydroxide_no_lye,
    thioglycolate_straightener,
    thioglycolate_perm,
    bond_building,
    protein,
    moisture,
    semi_permanent,
    demi_permanent,
    permanent,
    lightening,
    gloss,
    cut,
    heat_styling,
    protective_style,
    henna,         // plant dye, pure or mixed
    metallic_dye,  // progressive dyes with metal salts
    smoothing      // heat-set smoothing; may release formaldehyde
};
inline constexpr int kind_count = 19;

// Lengthwise parts of a strand.
enum class Part { roots, mid_shaft, ends };
enum class Strength { mild, regular, super };
enum class Texture { fine, medium, coarse };

[[nodiscard]] std::string_view word_of(Kind kind);  // "hydroxide straightener with lye"
[[nodiscard]] std::optional<Kind> kind_from_word(std::string_view word);
[[nodiscard]] std::string_view word_of(Part part);  // "roots", "mid-shaft", "ends"
[[nodiscard]] std::string_view word_of(Strength strength);
[[nodiscard]] std::string_view word_of(Texture texture);

// A family is a named set of kinds, as rules speak of them: "hydroxide", "colour", "chemical".
struct Family {
    std::string_view name;
    std::string_view phrase;  // as a sentence says it: "a hydroxide straightener"
    std::vector<Kind> kinds;
};
[[nodiscard]] const std::vector<Family>& families();
[[nodiscard]] const Family* find_family(std::string_view name);  // null when there is none
[[nodiscard]] bool belongs(const Family& family, Kind kind);

}  // namespace kempt::care
