// A4 or US Letter, for reports, card and sheet; kept in the person's own settings, first as the system measures.
#pragma once

namespace kempt::desk {

[[nodiscard]] bool letter_paper();
void set_letter_paper(bool letter);

}  // namespace kempt::desk
