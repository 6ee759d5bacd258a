// Where the pixels of pictures lie.
#pragma once

namespace kempt::intake {

// Pictures of 1 MB and more lie in large pages from here on, where the system gives them: a 12-megapixel photo is
// copied some ten times while it is read and measured, and each fresh copy costs a page fault every 4 kB (a third of
// the time of reading the ends). What is given back waits for the next
// picture of its size (up to 40 MB, the oldest goes first); smaller ones stay in glibc's heap. Call once, before the
// first picture is made and before a second thread runs. Does nothing where there are no large pages.
void use_large_pages();

}  // namespace kempt::intake
