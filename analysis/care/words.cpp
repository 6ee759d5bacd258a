#include "care/words.h"

#include <algorithm>
#include <array>

namespace kempt::care {
namespace {

constexpr std::array<std::string_view, kind_count> kind_words = {"hydroxide straightener",
                                                                 "hydroxide straightener with lye",
                                                                 "hydroxide straightener without lye",
                                                                 "thioglycolate straightener",
                                                                 "thioglycolate perm",
                                                                 "bond-building treatment",
                                                                 "protein treatment",
                                                                 "moisture treatment",
                                                                 "semi-permanent colour",
                                                                 "demi-permanent colour",
                                                                 "permanent colour",
                                                                 "lightening",
                                                                 "gloss",
                                                                 "cut",
                                                                 "heat styling",
                                                                 "protective style",
                                                                 "henna",
                                                                 "metallic dye",
                                                                 "smoothing treatment"};

}  // namespace

std::string_view word_of(Kind kind) {
    return kind_words[static_cast<std::size_t>(kind)];
}

std::optional<Kind> kind_from_word(std::string_view word) {
    for (std::size_t i = 0; i < kind_words.size(); ++i)
        if (kind_words[i] == word) return static_cast<Kind>(i);
    return std::nullopt;
}

std::string_view word_of(Part part) {
    constexpr std::array<std::string_view, 3> words = {"roots", "mid-shaft", "ends"};
    return words[static_cast<std::size_t>(part)];
}

std::string_view word_of(Strength strength) {
    constexpr std::array<std::string_view, 3> words = {"mild", "regular", "super"};
    return words[static_cast<std::size_t>(strength)];
}

std::string_view word_of(Texture texture) {
    constexpr std::array<std::string_view, 3> words = {"fine", "medium", "coarse"};
    return words[static_cast<std::size_t>(texture)];
}

const std::vector<Family>& families() {
    using enum Kind;
    static const std::vector<Family> all = {
        {"hydroxide", "a hydroxide straightener", {hydroxide, hydroxide_lye, hydroxide_no_lye}},
        {"lye", "a hydroxide straightener that has or may have lye", {hydroxide, hydroxide_lye}},
        {"thioglycolate", "a thioglycolate straightener or perm", {thioglycolate_straightener, thioglycolate_perm}},
        {"straightener",
         "a chemical straightener",
         {hydroxide, hydroxide_lye, hydroxide_no_lye, thioglycolate_straightener}},
        {"texture",
         "a straightener or perm",
         {hydroxide, hydroxide_lye, hydroxide_no_lye, thioglycolate_straightener, thioglycolate_perm}},
        {"perm", "a perm", {thioglycolate_perm}},
        {"lightening", "lightening", {lightening}},
        {"permanent", "permanent colour", {permanent}},
        {"demi-permanent", "demi-permanent colour", {demi_permanent}},
        {"oxidative", "colour mixed with peroxide", {demi_permanent, permanent, lightening}},
        {"dye", "a dye", {semi_permanent, demi_permanent, permanent, gloss, henna, metallic_dye}},
        {"colour",
         "colour or lightening",
         {semi_permanent, demi_permanent, permanent, gloss, henna, metallic_dye, lightening}},
        {"lasting-colour", "permanent colour or lightening", {permanent, lightening}},
        {"henna", "henna", {henna}},
        {"metallic-dye", "a metallic dye", {metallic_dye}},
        {"smoothing", "a heat-set smoothing treatment", {smoothing}},
        {"chemical",
         "a chemical service",
         {hydroxide, hydroxide_lye, hydroxide_no_lye, thioglycolate_straightener, thioglycolate_perm, demi_permanent,
          permanent, lightening, smoothing}},
        {"protein", "a protein treatment", {protein}},
        {"bond-building", "a bond-building treatment", {bond_building}},
        {"treatment", "a treatment", {bond_building, protein, moisture}},
        {"heat", "heat styling", {heat_styling, smoothing}},
        {"style", "a protective style", {protective_style}},
        {"cut", "a cut", {cut}},
    };
    return all;
}

const Family* find_family(std::string_view name) {
    for (const Family& family : families())
        if (family.name == name) return &family;
    return nullptr;
}

bool belongs(const Family& family, Kind kind) {
    return std::find(family.kinds.begin(), family.kinds.end(), kind) != family.kinds.end();
}

}  // namespace kempt::care
