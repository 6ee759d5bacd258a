#include "command/commands.h"
#include "command/options.h"
#include "command/records_json.h"
#include "work/errors.h"
#include "work/import_photos.h"
#include "work/measure_in_book.h"
#include "work/measure_json.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

QString word_of(work::ImportedFile::What what) {
    switch (what) {
        case work::ImportedFile::What::imported:
            return q("imported");
        case work::ImportedFile::What::duplicate:
            return q("duplicate");
        case work::ImportedFile::What::failed:
            break;
    }
    return q("failed");
}

QJsonObject json_of_file(const work::ImportedFile& file) {
    QJsonObject object{{"file", file.path}, {"what", word_of(file.what)}};
    if (file.what == work::ImportedFile::What::failed) {
        object["code"] = QString::fromStdString(file.error.code);
        object["text"] = QString::fromStdString(file.error.sentence());
    } else {
        object["photo"] = file.photo;
        object["visit"] = file.visit;
        object["shot"] = file.shot;
    }
    return object;
}

QString line_of_file(const work::ImportedFile& file) {
    if (file.what == work::ImportedFile::What::failed)
        return q("failed     %1: %2").arg(file.path, QString::fromStdString(file.error.sentence()));
    return q("%1  %2: photo %3, shot %4")
        .arg(word_of(file.what).leftJustified(9), file.path)
        .arg(file.photo)
        .arg(file.shot);
}

Result<Answer> add(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::ImportOptions options;
    options.visit = arguments.id(q("visit"));
    options.view = arguments.view(q("view"));
    options.paths = arguments.rest().mid(1);
    const auto report = work::import_photos(**book, options, progress);
    if (!report) return report.error();
    Answer answer;
    QJsonArray files;
    for (const work::ImportedFile& file : report->files) {
        files.append(json_of_file(file));
        answer.lines.append(line_of_file(file));
    }
    answer.json = {{"imported", report->imported},
                   {"duplicates", report->duplicates},
                   {"failed", report->failed},
                   {"files", files}};
    if (report->failed > 0)
        answer.failure = q("%1 of %2 files could not be taken in; the others are kept.")
                             .arg(report->failed)
                             .arg(report->files.size());
    return answer;
}

Result<Answer> list(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto rows = work::list_photos(**book, arguments.id(q("visit")));
    if (!rows) return rows.error();
    Answer answer;
    QJsonArray photos;
    for (const work::PhotoRow& row : rows.value()) {
        QJsonObject object = json_of(row.photo);
        object["has_marks"] = row.has_marks;
        photos.append(object);
        answer.lines.append(line_of(row.photo));
    }
    answer.json = {{"photos", photos}};
    return answer;
}

Result<Answer> show(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto row = work::photo_of(**book, arguments.id(q("photo")));
    if (!row) return row.error();
    if (arguments.has(q("save"))) {
        const auto bytes = work::photo_bytes(**book, row->photo.id);
        if (!bytes) return bytes.error();
        if (const Status status = work::write_file(arguments.text(q("save")), bytes.value()); !status)
            return status.error();
    }
    Answer answer;
    answer.json = json_of(row->photo);
    answer.json["has_marks"] = row->has_marks;
    answer.json["readings"] = array_of(row->readings);
    answer.lines = QStringList{line_of(row->photo)} + lines_of(row->readings);
    return answer;
}

Result<Answer> measure_one(Book& book, Id photo, const work::MeasureInBookOptions& options, const Progress& progress) {
    const auto measured = work::measure_in_book(book, photo, options, progress);
    if (!measured) return measured.error();
    Answer answer;
    answer.json = {{"photo", json_of(measured->photo)},
                   {"marks", measured->marks.id},
                   {"as_it_was", measured->kept_as_they_were},
                   {"readings", array_of(measured->readings)}};
    answer.lines = QStringList{line_of(measured->photo)} + lines_of(measured->readings);
    return answer;
}

Result<Answer> measure(const Arguments& arguments, const Progress& progress) {
    if (arguments.has(q("photo")) == arguments.has(q("client")))
        return usage_error(q("Give either '--photo' or '--client'."));
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::MeasureInBookOptions options;
    options.again = arguments.has(q("again"));
    if (arguments.has(q("photo"))) return measure_one(**book, arguments.id(q("photo")), options, progress);
    const auto report = work::measure_all(**book, arguments.id(q("client")), options, progress);
    if (!report) return report.error();
    Answer answer;
    QJsonArray failed;
    for (const auto& [photo, error] : report->failed)
        failed.append(QJsonObject{{"photo", photo},
                                  {"code", QString::fromStdString(error.code)},
                                  {"text", QString::fromStdString(error.sentence())}});
    answer.json = {{"measured", report->measured},
                   {"kept", report->kept},
                   {"without_marks", report->without_marks},
                   {"failed", failed}};
    answer.lines = {q("%1 photos measured, %2 as they were, %3 without marks.")
                        .arg(report->measured)
                        .arg(report->kept)
                        .arg(report->without_marks)};
    if (!report->failed.empty())
        answer.failure = q("%1 photos could not be measured; the first: %2")
                             .arg(report->failed.size())
                             .arg(QString::fromStdString(report->failed.front().second.sentence()));
    return answer;
}

Result<Answer> erase(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("photo"));
    if (const Status status = work::erase_photo(**book, id); !status) return status.error();
    return Answer{{{"erased", id}}, {q("Erased photo %1 with its marks and readings.").arg(id)}, {}};
}

}  // namespace

Command photo_command() {
    const Option photo = needed("photo", Type::id, "N", "number of the photo");
    return {
        q("photo"),
        q("add, list, show, measure or erase photos"),
        false,
        {{q("add"),
          q("Files, and folders of pictures; the original bytes are kept."),
          {book_taken(), {q("FILE"), true, false}},
          {visit_option(), needed("view", Type::view, "VIEW", "camera position: \"left temple\"...")},
          add},
         {q("list"), q("By view and shot."), {book_taken()}, {visit_option()}, list},
         {q("show"),
          q("With its newest readings."),
          {book_taken()},
          {photo, may("save", Type::text, "FILE", "write the original bytes there")},
          show},
         {q("measure"),
          q("Measures with the newest marks and keeps the readings."),
          {book_taken()},
          {may("photo", Type::id, "N", "this photo"), may("client", Type::id, "N", "every marked photo of this client"),
           flag("again", "also where readings stand")},
          measure},
         {q("erase"), q("With its marks and readings."), {book_taken()}, {photo}, erase}}};
}

}  // namespace kempt::command
