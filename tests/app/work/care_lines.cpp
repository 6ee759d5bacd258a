// Lines of demarcation: whose they are, and what they say of a client's own rate of growth.
#include <QCryptographicHash>

#include "app/work/temporary_book.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "core/version.h"
#include "work/care_parts.h"
#include "work/keep_care.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

constexpr double z95 = 1.959964;

care::PastService past(care::Kind kind, QDate day, double from_mm = 0) {
    care::PastService service;
    service.kind = kind;
    service.day = work::care_day(day);
    service.from_mm = from_mm;
    return service;
}

work::SeenLine line_at(QDate day, double mm, View view = View::lengths) {
    return {day, view, {mm, mm - 1.5, mm + 1.5}, {8, 7, 9}};
}

// A measured strand line whose run found these lines.
void keep(TemporaryBook& in, const Visit& visit, const std::vector<double>& lines_mm) {
    static int number = 0;
    const QByteArray bytes = "line photo " + QByteArray::number(++number);
    PhotoRecord photo;
    photo.visit = visit.id;
    photo.view = View::lengths;
    photo.shot = TemporaryBook::required(store::next_shot(*in.book, visit.id, View::lengths));
    photo.file_name = QStringLiteral("x.jpg");
    photo.format = QStringLiteral("jpeg");
    photo.size = QSize(100, 100);
    ReadingRecord reading;
    reading.photo = TemporaryBook::required(store::add_photo(*in.book, photo, bytes));
    Marks marks;
    marks.photo = reading.photo;
    marks.view = View::lengths;
    marks.strand_line = {QPointF(1, 1), QPointF(90, 1)};
    reading.marks = TemporaryBook::required(store::add_marks(*in.book, marks));
    reading.name = QStringLiteral("tone_spread");
    reading.unit = QStringLiteral("dE00");
    reading.value = 9;
    reading.low = 8;
    reading.high = 10;
    reading.analysis_version = analysis_version;
    reading.options = QStringLiteral("{}");
    reading.card = QStringLiteral(R"({"source": "card"})");
    QStringList lines;
    for (const double mm : lines_mm)
        lines.append(QStringLiteral(R"({"step": 8, "step_low": 7, "step_high": 9, "at_mm": %1, "at_low": %2,
                                        "at_high": %3, "width_mm": 2})")
                         .arg(mm)
                         .arg(mm - 1.5)
                         .arg(mm + 1.5));
    reading.details = QStringLiteral(R"({"tone": {"root": null, "lines": [%1]}})").arg(lines.join(u','));
    reading.photo_sha256 = QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
    reading.measured_at = QDateTime(visit.date, QTime(12, 0), Qt::UTC);
    TemporaryBook::required(store::add_readings(*in.book, {reading}));
}

Service coloured(const TemporaryBook& in, QDate date) {
    Service service;
    service.client = in.client.id;
    service.date = date;
    service.kind = QStringLiteral("permanent colour");
    return service;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(care_lines)

BOOST_AUTO_TEST_CASE(a_line_belongs_to_the_one_colour_that_can_have_grown_so_far) {
    const QDate photo(2026, 8, 19);
    const std::vector<care::PastService> services = {
        past(care::Kind::lightening, QDate(2025, 5, 10)), past(care::Kind::permanent, QDate(2026, 3, 2)),
        past(care::Kind::gloss, QDate(2026, 4, 1)), past(care::Kind::thioglycolate_straightener, QDate(2026, 3, 2))};
    // 170 days at 150 to about 550 um; the lightening of 466 days ago lies beyond 70 mm.
    auto owners = work::services_of_lines({line_at(photo, 57)}, services, care::HairGroup::unknown);
    BOOST_TEST((owners == std::vector<std::optional<std::size_t>>{1}));
    owners = work::services_of_lines({line_at(photo, 57), line_at(photo, 150)}, services, care::HairGroup::unknown);
    BOOST_TEST((owners == std::vector<std::optional<std::size_t>>{1, 0}));
    // Where both can be, neither is told.
    owners = work::services_of_lines({line_at(photo, 80)}, services, care::HairGroup::unknown);
    BOOST_TEST((owners == std::vector<std::optional<std::size_t>>{std::nullopt}));
    // Two lines for one service.
    owners = work::services_of_lines({line_at(photo, 40), line_at(photo, 57)}, services, care::HairGroup::unknown);
    BOOST_TEST((owners == std::vector<std::optional<std::size_t>>{std::nullopt, std::nullopt}));
    // Too far for hair, and before the service.
    owners = work::services_of_lines({line_at(photo, 400), line_at(QDate(2025, 5, 9), 20)}, services,
                                     care::HairGroup::unknown);
    BOOST_TEST((owners == std::vector<std::optional<std::size_t>>{std::nullopt, std::nullopt}));
}

BOOST_AUTO_TEST_CASE(a_service_that_began_away_from_the_scalp_left_its_line_there) {
    const QDate photo(2026, 8, 19);
    const std::vector<care::PastService> services = {past(care::Kind::lightening, photo.addDays(-100), 60)};
    BOOST_TEST(!work::services_of_lines({line_at(photo, 40)}, services, care::HairGroup::unknown)[0].has_value());
    BOOST_TEST(work::services_of_lines({line_at(photo, 95)}, services, care::HairGroup::unknown)[0].has_value());
}

BOOST_AUTO_TEST_CASE(a_measured_line_goes_to_its_service_and_gives_her_own_rate_by_the_weights_of_precision) {
    TemporaryBook in;
    const QDate day(2026, 3, 2);
    TemporaryBook::required(work::add_service(*in.book, coloured(in, day)));
    const Visit visit = in.add_visit(day.addDays(170));
    keep(in, visit, {57});
    keep(in, visit, {58});
    const QDate today = day.addDays(200);
    const auto state = TemporaryBook::required(work::care_state(*in.book, in.client.id, today));
    const care::PastService& service = state.history.services.front();
    BOOST_REQUIRE(service.line_mm.has_value());
    BOOST_TEST(std::abs(service.line_mm->value - 57.5) < 1e-9);
    BOOST_TEST(std::abs(service.line_mm->low - 56) < 1e-9);
    BOOST_TEST(service.line_day == work::care_day(visit.date));
    // The published mean and the own measurement, each weighted by 1 / SD^2; an own SD below 5 % counts as 5 %.
    const care::GrowthRate expected = care::expected_rate(care::HairGroup::unknown);
    const double own = 57.5e3 / 170, own_sd = std::max(1.5e3 / z95 / 170, 0.05 * own);
    const double a = 1 / std::pow(expected.sd_um_per_day, 2), b = 1 / std::pow(own_sd, 2);
    const double mean = (a * expected.um_per_day + b * own) / (a + b);
    BOOST_REQUIRE(state.own_rate.has_value());
    BOOST_TEST(std::abs(state.own_rate->um_per_day - mean) < 0.01);
    BOOST_TEST(std::abs(state.own_rate->sd_um_per_day - std::max(std::sqrt(1 / (a + b)), 0.05 * mean)) < 0.01);
    BOOST_TEST(care::checked(state, {}).ok());
}

BOOST_AUTO_TEST_CASE(a_line_by_tape_counts_like_a_photos_until_a_photo_of_that_day_or_later_shows_it) {
    TemporaryBook in;
    const QDate day(2026, 3, 2);
    Service service = coloured(in, day);
    service.line_mm = 30;
    service.line_on = day.addDays(100);
    TemporaryBook::required(work::add_service(*in.book, service));
    const auto at = [&](int days) {
        return TemporaryBook::required(work::care_state(*in.book, in.client.id, day.addDays(days)));
    };
    BOOST_TEST(!at(99).history.services.front().line_mm.has_value());
    const auto measured = at(110);
    BOOST_REQUIRE(measured.history.services.front().line_mm.has_value());
    BOOST_TEST(measured.history.services.front().line_mm->value == 30);
    BOOST_TEST(measured.history.services.front().line_day == work::care_day(day.addDays(100)));
    BOOST_TEST(measured.own_rate.has_value());  // 300 um a day over 14 weeks
    keep(in, in.add_visit(day.addDays(60)), {20});
    BOOST_TEST(at(110).history.services.front().line_mm->value == 30);
    keep(in, in.add_visit(day.addDays(100)), {33});
    BOOST_TEST(at(110).history.services.front().line_mm->value == 33);
}

BOOST_AUTO_TEST_CASE(a_straighteners_line_by_tape_gives_her_own_rate_too) {
    TemporaryBook in;
    const QDate day(2026, 3, 2);
    Service service = coloured(in, day);
    service.kind = QStringLiteral("hydroxide straightener");
    service.line_mm = 28;
    service.line_on = day.addDays(100);
    TemporaryBook::required(work::add_service(*in.book, service));
    const auto state = TemporaryBook::required(work::care_state(*in.book, in.client.id, day.addDays(100)));
    BOOST_REQUIRE(state.own_rate.has_value());
    // By tape 95 % within 2 mm.
    const care::GrowthRate expected = care::expected_rate(care::HairGroup::unknown);
    const double own_sd = std::max(2e3 / z95 / 100, 0.05 * 280);
    const double a = 1 / std::pow(expected.sd_um_per_day, 2), b = 1 / std::pow(own_sd, 2);
    BOOST_TEST(std::abs(state.own_rate->um_per_day - (a * expected.um_per_day + b * 280) / (a + b)) < 0.01);
    BOOST_TEST((care::grown_from(care::Kind::hydroxide, state) == &state.history.services.front()));
}

BOOST_AUTO_TEST_CASE(a_line_of_the_first_weeks_stays_but_teaches_no_rate) {
    TemporaryBook in;
    const QDate day(2026, 3, 2);
    TemporaryBook::required(work::add_service(*in.book, coloured(in, day)));
    keep(in, in.add_visit(day.addDays(20)), {7});
    const auto state = TemporaryBook::required(work::care_state(*in.book, in.client.id, day.addDays(30)));
    BOOST_TEST(state.history.services.front().line_mm.has_value());
    BOOST_TEST(!state.own_rate.has_value());
}

BOOST_AUTO_TEST_CASE(the_newest_line_counts_and_lines_of_later_days_do_not) {
    TemporaryBook in;
    const QDate day(2026, 3, 2);
    TemporaryBook::required(work::add_service(*in.book, coloured(in, day)));
    keep(in, in.add_visit(day.addDays(60)), {20});
    keep(in, in.add_visit(day.addDays(120)), {42});
    const auto at = [&](int days) {
        const auto state = TemporaryBook::required(work::care_state(*in.book, in.client.id, day.addDays(days)));
        const auto& line = state.history.services.front().line_mm;
        return line ? line->value : 0;
    };
    BOOST_TEST(at(50) == 0);
    BOOST_TEST(at(60) == 20);
    BOOST_TEST(at(300) == 42);
    const auto state = TemporaryBook::required(work::care_state(*in.book, in.client.id, day.addDays(125)));
    const auto step = std::find_if(state.readings.begin(), state.readings.end(),
                                   [](const care::Measured& one) { return one.name == "tone_step"; });
    BOOST_REQUIRE((step != state.readings.end()));
    BOOST_TEST((step->value == 8 && step->zone == "lengths"));
}

BOOST_AUTO_TEST_CASE(the_state_for_dates_leaves_out_only_the_readings) {
    TemporaryBook in;
    const QDate day(2026, 3, 2);
    TemporaryBook::required(work::add_service(*in.book, coloured(in, day)));
    keep(in, in.add_visit(day.addDays(120)), {42});
    auto whole = TemporaryBook::required(work::care_state(*in.book, in.client.id, day.addDays(125)));
    const auto dates = TemporaryBook::required(work::care_state_for_dates(*in.book, in.client.id, day.addDays(125)));
    BOOST_TEST((!whole.readings.empty() && dates.readings.empty()));
    BOOST_TEST(dates.own_rate->um_per_day == whole.own_rate->um_per_day);
    BOOST_TEST(dates.history.services.size() == 1u);
}

BOOST_AUTO_TEST_CASE(a_line_that_most_shots_do_not_show_neither_counts_nor_stands_in_the_way) {
    TemporaryBook in;
    const QDate day(2026, 3, 2);
    TemporaryBook::required(work::add_service(*in.book, coloured(in, day)));
    const Visit visit = in.add_visit(day.addDays(170));
    keep(in, visit, {36, 58});
    keep(in, visit, {58.4});
    const auto lines = TemporaryBook::required(work::lines_of_client(*in.book, in.client.id, visit.date));
    BOOST_REQUIRE(lines.size() == 1u);
    BOOST_TEST(std::abs(lines[0].at_mm.value - 58.2) < 1e-9);
    const auto state = TemporaryBook::required(work::care_state(*in.book, in.client.id, visit.date));
    BOOST_TEST(state.history.services.front().line_mm.has_value());
    // Shown by both, it is as good a candidate as the other: neither is told.
    keep(in, visit, {36.2, 58});
    const auto doubtful = TemporaryBook::required(work::care_state(*in.book, in.client.id, visit.date));
    BOOST_TEST(!doubtful.history.services.front().line_mm.has_value());
}

BOOST_AUTO_TEST_SUITE_END()
