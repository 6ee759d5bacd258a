// The demo's example of a photo without a gauge card: a public-domain portrait that a package carries and the project
// does not copy, with marks of our own.
#pragma once

#include "core/result.h"
#include "work/scenario.h"

namespace kempt::work {

// A folder below which the portrait is looked for: $KEMPT_FIXTURES. Empty when it is not set.
[[nodiscard]] QString fixtures_folder();
// Path of astronaut.png anywhere below `folder`; empty when it is not there.
[[nodiscard]] QString find_portrait(const QString& folder);

// Adds the client "Photo without a card (example)" with one visit, and makes the photo and its marks part of the
// digest. Nothing happens when the portrait or without-card/portrait.marks.json in the samples folder is missing.
// Errors: damaged (marks that cannot be used).
[[nodiscard]] Status add_photo_without_card(Scenario& scenario, const QString& samples, const QString& fixtures);

}  // namespace kempt::work
