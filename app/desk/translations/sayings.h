// What said() knows, in three lists that end with a null pointer; lupdate reads them where they are written.
#pragma once

namespace kempt::desk {

extern const char* const said_words[];  // words of the trade, titles of readings, anchors of grades
extern const char* const
    said_sentences[];                   // findings, verdicts, questions, reasons; %1 ... stand for figures and words
extern const char* const said_rules[];  // the care rules' sentences, written from them by a test

}  // namespace kempt::desk
