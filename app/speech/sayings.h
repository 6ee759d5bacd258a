// The sentences and words that are translated, in lists that end with a null pointer; lupdate reads them where they
// are written.
#pragma once

namespace kempt::speech {

extern const char* const said_words[];      // words of the trade, titles of readings, anchors of grades
extern const char* const said_sentences[];  // findings, verdicts, questions, reasons; %1 ... stand for what is put in
extern const char* const said_report[];     // of report, charts and work, written from their say(...) by a test
extern const char* const said_errors[];     // errors of all rooms, written from their sources by a test
extern const char* const said_rules[];      // the care rules' sentences, written from them by a test

}  // namespace kempt::speech
