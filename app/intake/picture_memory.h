// Where the pixels of pictures lie.
#pragma once

namespace kempt::intake {

// Pictures of 1 MB and more lie in large pages from here on, where the system gives them: a 12-megapixel photo is
// copied some ten times while it is read and measured, and each fresh copy costs a page fault every 4 kB (a third of
// the time of reading the ends). Call once, before the first picture is made. Does nothing where there are no large
// pages.
void use_large_pages();

}  // namespace kempt::intake
