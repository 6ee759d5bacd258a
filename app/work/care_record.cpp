// Records of the book in the plain facts of the care room.
#include "work/care_state.h"

namespace kempt::work {

namespace {

std::optional<care::Strength> strength_of(const QString& word) {
    for (const auto strength : {care::Strength::mild, care::Strength::regular, care::Strength::super})
        if (word.toStdString() == care::word_of(strength)) return strength;
    return std::nullopt;
}

std::optional<care::TestResult> test_of(const QString& word) {
    if (word == u"passed") return care::TestResult::passed;
    if (word == u"failed") return care::TestResult::failed;
    return std::nullopt;
}

}  // namespace

std::optional<care::PastService> past_service(const Service& service) {
    const auto kind = care::kind_from_word(service.kind.toStdString());
    if (!kind) return std::nullopt;
    care::PastService past;
    past.kind = *kind;
    past.day = care_day(service.date);
    past.from_mm = service.from_mm;
    past.to_mm = service.to_mm;
    for (const QString& section : service.sections) past.sections.push_back(section.toStdString());
    past.strength = strength_of(service.strength);
    past.minutes = service.minutes;
    past.temperature_c = service.temperature_c;
    past.passes = service.passes;
    past.strand_test = test_of(service.strand_test);
    past.patch_test = test_of(service.patch_test);
    if (service.patch_test_on) past.patch_test_day = care_day(*service.patch_test_on);
    past.result = service.result.toStdString();
    past.reaction = service.reaction;
    past.at_home = service.at_home;
    return past;
}

}  // namespace kempt::work
