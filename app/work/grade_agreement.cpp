#include "work/grade_agreement.h"

#include <map>
#include <tuple>
#include <vector>

#include "book/client_store.h"
#include "book/grade_store.h"
#include "change/agreement.h"

namespace kempt::work {

Result<GradeAgreement> grade_agreement_of(Book& book, Id client) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    const auto grades = store::grades_of_client(book, client);
    if (!grades) return grades.error();
    std::map<std::tuple<Id, QString, QString>, int> first;
    for (const store::DatedGrade& dated : *grades)
        if (dated.grade.round == 1)
            first[{dated.grade.visit, dated.grade.quality, dated.grade.zone}] = dated.grade.value;
    std::vector<std::pair<int, int>> pairs;
    GradeAgreement result;
    for (const store::DatedGrade& dated : *grades) {
        const auto of = first.find({dated.grade.visit, dated.grade.quality, dated.grade.zone});
        if (dated.grade.round != 2 || of == first.end()) continue;
        pairs.emplace_back(of->second, dated.grade.value);
        if (of->second == dated.grade.value) ++result.alike;
    }
    result.pairs = static_cast<int>(pairs.size());
    if (const auto kappa = change::grade_agreement(pairs)) result.kappa = kappa->kappa;
    return result;
}

}  // namespace kempt::work
