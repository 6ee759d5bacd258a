#include "book/marks_store.h"

#include "book/store_help.h"

namespace kempt::store {

namespace {

const QString columns = QStringLiteral(
    "id, photo, view, edge_line, hair_side_x, hair_side_y, hair_taps, scalp_taps, shine_region, strand_line, region, "
    "anchors, sheet, scale_points, scale_mm, not_hair, joined, whole");

QString text_of(const QVector<QPointF>& points) {
    QJsonArray list;
    for (const QPointF& p : points) list.append(QJsonArray{p.x(), p.y()});
    return QString::fromLatin1(QJsonDocument(list).toJson(QJsonDocument::Compact));
}

QVector<QPointF> points_of(sql::Row& row) {
    const QJsonDocument document = QJsonDocument::fromJson(row.text().toUtf8());
    if (!document.isArray()) row.mark_broken();
    QVector<QPointF> points;
    for (const QJsonValue& value : document.array()) {
        const QJsonArray pair = value.toArray();
        if (pair.size() != 2 || !pair[0].isDouble() || !pair[1].isDouble()) row.mark_broken();
        points.append({pair[0].toDouble(), pair[1].toDouble()});
    }
    return points;
}

Marks marks_of(sql::Row& row) {
    Marks marks;
    marks.id = row.number();
    marks.photo = row.number();
    marks.view = row.view();
    marks.edge_line = points_of(row);
    const std::optional<double> x = row.real_or_null();
    const std::optional<double> y = row.real_or_null();
    if (x && y) marks.hair_side = QPointF(*x, *y);
    marks.hair_taps = points_of(row);
    marks.scalp_taps = points_of(row);
    marks.shine_region = points_of(row);
    marks.strand_line = points_of(row);
    marks.region = points_of(row);
    marks.anchors = points_of(row);
    marks.sheet = row.text();
    marks.scale_points = points_of(row);
    marks.scale_mm = row.real();
    marks.not_hair = points_of(row);
    marks.joined = points_of(row);
    if (marks.joined.size() % 2 != 0) row.mark_broken();
    marks.whole = points_of(row);
    return marks;
}

Status sensible(const Marks& m) {
    QVector<QPointF> points = m.edge_line + m.hair_taps + m.scalp_taps + m.shine_region + m.strand_line + m.region +
                              m.anchors + m.scale_points + m.not_hair + m.joined + m.whole;
    if (m.hair_side) points << *m.hair_side;
    for (const QPointF& p : points)
        if (!std::isfinite(p.x()) || !std::isfinite(p.y()))
            return invalid("mark-point", "A point of the marks is not a number.", "Draw the marks again.");
    static const QStringList sheets{"", "hem", "combings", "strand"};
    if (!sheets.contains(m.sheet))
        return invalid("mark-sheet", in_quotes(m.sheet) + " is no kind of gauge sheet.",
                       "Use hem, combings or strand.");
    if (m.joined.size() % 2 != 0)
        return invalid("mark-joined", "Joined strands need two points each.", "Join them again.");
    const bool none = m.scale_points.isEmpty() && m.scale_mm == 0;
    const bool two = m.scale_points.size() == 2 && std::isfinite(m.scale_mm) && m.scale_mm > 0;
    if (!none && !two)
        return invalid("mark-scale", "A scale needs two points and the millimetres between them.",
                       "Give both, or neither.");
    return Done{};
}

// In the order of the columns after photo.
QVariantList values_of(const Marks& m) {
    QVariantList list = sql::values(m.view, text_of(m.edge_line));
    if (m.hair_side)
        list << m.hair_side->x() << m.hair_side->y();
    else
        list << QVariant() << QVariant();
    return list + sql::values(text_of(m.hair_taps), text_of(m.scalp_taps), text_of(m.shine_region),
                              text_of(m.strand_line), text_of(m.region), text_of(m.anchors), m.sheet,
                              text_of(m.scale_points), m.scale_mm, text_of(m.not_hair), text_of(m.joined),
                              text_of(m.whole));
}

}  // namespace

Result<Id> add_marks(Book& book, const Marks& m) {
    if (Status good = sensible(m); !good) return good.error();
    auto id = sql::insert(
        book.connection(),
        "INSERT INTO marks (photo, view, edge_line, hair_side_x, hair_side_y, hair_taps, scalp_taps, "
        "shine_region, strand_line, region, anchors, sheet, scale_points, scale_mm, not_hair, joined, whole) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        sql::values(m.photo) + values_of(m));
    if (!id) return told(id.error(), "missing-link", missing("photo", m.photo));
    return id;
}

Status update_marks(Book& book, const Marks& m) {
    if (Status good = sensible(m); !good) return good;
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    auto runs = sql::first<int>(
        book.connection(), "SELECT COUNT(*) FROM run WHERE marks = ?", sql::values(m.id),
        +[](sql::Row& row) { return row.small(); });
    if (!runs) return runs.error();
    if (runs->value_or(0) > 0)
        return invalid("marks-measured", "Readings were taken from these marks, which therefore stay as they are.",
                       "Add the corrected marks as new ones and measure again.");
    Status done =
        change_one(book, "marks", m.id,
                   "UPDATE marks SET view = ?, edge_line = ?, hair_side_x = ?, hair_side_y = ?, "
                   "hair_taps = ?, scalp_taps = ?, shine_region = ?, strand_line = ?, region = ?, "
                   "anchors = ?, sheet = ?, scale_points = ?, scale_mm = ?, not_hair = ?, joined = ?, whole = ? "
                   "WHERE id = ?",
                   values_of(m) + sql::values(m.id));
    if (!done) return done;
    return transaction->commit();
}

Result<Marks> get_marks(Book& book, Id id) {
    return get_one<Marks>(book, "marks", id, "SELECT " + columns + " FROM marks WHERE id = ?", marks_of);
}

Result<std::optional<Marks>> latest_marks(Book& book, Id photo) {
    return sql::first<Marks>(book.connection(),
                             "SELECT " + columns + " FROM marks WHERE id = (SELECT MAX(id) FROM marks WHERE photo = ?)",
                             sql::values(photo), marks_of);
}

Result<QVector<Marks>> marks_of_photo(Book& book, Id photo) {
    return sql::all<Marks>(book.connection(), "SELECT " + columns + " FROM marks WHERE photo = ? ORDER BY id",
                           sql::values(photo), marks_of);
}

Status erase_marks(Book& book, Id id) {
    return erase_one(book, "marks", "marks", id);
}

}  // namespace kempt::store
