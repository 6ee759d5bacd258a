// How steady a stylist's eye is: the grades that she gave twice.
#pragma once

#include <optional>

#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

struct GradeAgreement {
    int pairs = 0;                // grades of the same visit, zone and quality in round 1 and round 2
    int alike = 0;                // of those
    std::optional<double> kappa;  // weighted, change::grade_agreement; none below two pairs or when all are alike
};
// Over all visits of a client. Errors: not_found (the client), io.
[[nodiscard]] Result<GradeAgreement> grade_agreement_of(Book& book, Id client);

}  // namespace kempt::work
