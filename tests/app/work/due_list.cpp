// Who is due: the whole book at once says what each client's own record says.
#include "work/due_list.h"

#include <QCryptographicHash>

#include "analysis/care/people.h"
#include "app/work/temporary_book.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/transaction.h"
#include "core/version.h"
#include "work/due_states.h"
#include "work/keep_care.h"
#include "work/plan_care.h"

using namespace kempt;
using tests::TemporaryBook;

namespace {

const QDate today(2026, 11, 25);

struct DueBook : TemporaryBook {
    people::Dice dice{20261203};

    QDate some_day(int from = -1200, int to = -1) { return today.addDays(dice.whole(from, to)); }

    void add_photo(const Visit& of, bool with_line) {
        static int number = 0;
        const QByteArray bytes = "due photo " + QByteArray::number(++number);
        PhotoRecord photo;
        photo.visit = of.id;
        photo.view = View::lengths;
        photo.shot = required(store::next_shot(*book, of.id, photo.view));
        photo.file_name = QStringLiteral("x.jpg");
        photo.format = QStringLiteral("jpeg");
        photo.size = QSize(100, 100);
        ReadingRecord reading;
        reading.photo = required(store::add_photo(*book, photo, bytes));
        if (!with_line) return;
        Marks marks;
        marks.photo = reading.photo;
        marks.view = photo.view;
        marks.strand_line = {QPointF(1, 1), QPointF(90, 1)};
        reading.marks = required(store::add_marks(*book, marks));
        reading.name = QStringLiteral("tone_spread");
        reading.unit = QStringLiteral("dE00");
        reading.value = 9;
        reading.low = 8;
        reading.high = 10;
        reading.analysis_version = analysis_version;
        reading.options = reading.card = QStringLiteral("{}");
        const double at = dice.uniform(10, 80);
        reading.details = QStringLiteral(R"({"tone": {"lines": [{"step": 8, "step_low": 7, "step_high": 9,
                                            "at_mm": %1, "at_low": %2, "at_high": %3, "width_mm": 2}]}})")
                              .arg(at)
                              .arg(at - 2)
                              .arg(at + 2);
        reading.photo_sha256 = QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
        reading.measured_at = QDateTime(of.date, QTime(12, 0), Qt::UTC);
        required(store::add_readings(*book, {reading}));
    }

    void add_person(int number) {
        Client person;
        person.name = QStringLiteral("Invented %1").arg(number);
        person.since = QDate(2020, 1, 1);
        client = required(work::add_client(*book, person));
        if (dice.chance(0.7)) {
            ClientProfile profile;
            profile.client = client.id;
            profile.hair_group = dice.chance(0.5) ? QStringLiteral("african") : QString();
            profile.whole_history = dice.chance(0.3);
            if (profile.whole_history && dice.chance(0.8)) profile.history_told_on = some_day(-14);
            if (dice.chance(0.5)) {
                profile.length_mm = dice.uniform(50, 500);
                profile.length_on = some_day(-300);
            }
            required(work::set_profile(*book, profile, today));
        }
        for (int n = dice.whole(0, 2); n > 0; --n) {
            DailyLife life;
            life.client = client.id;
            life.date = some_day(-400, 5);
            if (dice.chance(0.7))
                life.heat = QVector<HeatTool>(dice.whole(0, 2), HeatTool{QStringLiteral("iron"), {}, 2, {}});
            required(work::set_daily_life(*book, life, today.addDays(5)));
        }
        for (int n = dice.whole(0, 4); n > 0; --n) {
            const Visit of = add_visit(some_day(-400, 5));
            for (int k = dice.whole(0, 2); k > 0; --k)
                (void)work::add_grade(
                    *book,
                    {0, of.id, QStringLiteral("ends"),
                     dice.chance(0.5) ? QStringLiteral("breakage") : QStringLiteral("porosity"), dice.whole(0, 4), k});
            for (int k = dice.whole(0, 2); k > 0; --k) add_photo(of, dice.chance(0.5));
        }
        for (int n = dice.whole(0, 6); n > 0; --n) {
            Service service;
            service.client = client.id;
            const bool planned = dice.chance(0.15);
            service.date = planned ? some_day(1, 40) : some_day(-600);
            const care::Kind kind = planned && dice.chance(0.7) ? care::Kind::permanent : people::kind(dice);
            service.kind = QString::fromUtf8(word_of(kind).data());
            if (dice.chance(0.3)) service.from_mm = dice.uniform(1, 60);
            if (dice.chance(0.4)) service.to_mm = service.from_mm + dice.uniform(20, 300);
            if (dice.chance(0.2)) service.sections = QStringList{QStringLiteral("nape")};
            if (service.date.addDays(30) < today && dice.chance(0.2)) {  // by tape, where her hair can have grown to
                const int days = dice.whole(30, static_cast<int>(service.date.daysTo(today)));
                service.line_on = service.date.addDays(days);
                service.line_mm = service.from_mm + days * dice.uniform(0.2, 0.35);
            }
            if (service.date > today && dice.chance(0.5))
                service.patch_test_on = service.date.addDays(-dice.whole(0, 12));
            if (dice.chance(0.1)) service.done = false;
            required(work::add_service(*book, service, today));
        }
    }
};

bool same(const care::DateRange& a, const care::DateRange& b) {
    return a.sort == b.sort && a.from == b.from && a.to == b.to && a.expected == b.expected && a.reason == b.reason &&
           a.source == b.source;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(due)

BOOST_AUTO_TEST_CASE(random_clients_of_a_book_get_no_advice_without_a_source_and_no_order_under_a_stop) {
    DueBook in;
    {
        auto transaction = DueBook::required(Transaction::begin(*in.book));
        for (int i = 0; i < 150; ++i) in.add_person(i);
        DueBook::required(transaction.commit());
    }
    int stopped = 0, asked = 0;
    for (const work::ClientRow& row : DueBook::required(work::list_clients(*in.book)))
        for (int round = 0; round < 2; ++round) {
            const auto state = DueBook::required(work::care_state_for_dates(*in.book, row.client.id, today));
            work::PlanOptions options{row.client.id, today, {}};
            for (int n = in.dice.whole(1, 2); n > 0; --n) {
                work::PlannedItem item{people::random_service(in.dice, state), care::Setting{}};
                item.setting->strand_minutes = in.dice.uniform(5, 30);
                item.setting->most_minutes = in.dice.uniform(8, 45);
                item.setting->sections = {{"nape", 1, 2, 1}, {"crown", 1, 2, 1}};
                options.request.services.push_back(item);
            }
            const work::CarePlan plan = DueBook::required(work::plan_care(*in.book, options));
            stopped += plan.advice.stopped;
            asked += !plan.questions.empty();
            if (plan.advice.always.empty()) BOOST_ERROR("no standing cautions");
            for (const care::Finding& finding : plan.advice.findings)
                if (finding.source.empty()) BOOST_ERROR(finding.rule << " without a source");
            for (const care::DateRange& range : plan.dates)
                if (range.source.empty()) BOOST_ERROR(word_of(range.sort) << " without a source");
            for (const work::ServicePlan& service : plan.services)
                if (service.stopped && service.timeline) BOOST_ERROR("an order under a stop");
        }
    BOOST_TEST(stopped > 50);
    BOOST_TEST(asked > 250);
}

BOOST_AUTO_TEST_CASE(the_list_says_of_each_client_what_her_own_plan_says) {
    DueBook in;
    {
        auto transaction = DueBook::required(Transaction::begin(*in.book));
        for (int i = 0; i < 150; ++i) in.add_person(i);
        DueBook::required(transaction.commit());
    }
    work::DueOptions options;
    options.today = today;
    options.within_days = options.overdue_days = 30000;
    const work::DueList list = DueBook::required(work::due_list(*in.book, options));
    BOOST_TEST(list.clients == 151);
    BOOST_TEST(list.long_overdue == 0);
    int dates = 0, own_rates = 0, skipped = 0;
    std::size_t unanswered = 0;
    const auto rows = DueBook::required(work::list_clients(*in.book));
    for (const work::ClientRow& row : rows) {
        const Id id = row.client.id;
        const auto state = DueBook::required(work::care_state_for_dates(*in.book, id, today));
        own_rates += state.own_rate.has_value();
        const auto request = DueBook::required(work::completed(*in.book, work::PlanOptions{id, today, {}}));
        const auto plan = work::plan_care(state, request);
        BOOST_REQUIRE_MESSAGE(plan.ok(), (plan ? "" : plan.error().sentence()));
        for (const Service& open : plan->unanswered)
            BOOST_TEST(std::any_of(list.unanswered.begin(), list.unanswered.end(),
                                   [&](const work::UnansweredLine& line) { return line.service == open; }));
        unanswered += static_cast<std::size_t>(plan->unanswered.size());
        std::vector<care::DateRange> listed;
        for (const work::DueLine& line : list.lines)
            if (line.client == id) listed.push_back(line.range);
        for (const care::DateRange& range : plan->dates) {
            const auto found =
                std::find_if(listed.begin(), listed.end(), [&](const auto& one) { return same(one, range); });
            // Only a patch test that was made already is left out.
            if (found == listed.end() && range.sort == care::DateSort::patch_test)
                ++skipped;
            else if (found == listed.end())
                BOOST_ERROR(row.client.name.toStdString() << ": " << word_of(range.sort) << " differs");
            ++dates;
        }
        if (listed.size() > plan->dates.size()) BOOST_ERROR(row.client.name.toStdString() << ": more than her plan");
    }
    BOOST_TEST_MESSAGE(dates << " dates, " << own_rates << " own rates, " << skipped << " patch tests made");
    BOOST_TEST((unanswered > 10 && unanswered == list.unanswered.size()));
    BOOST_TEST(dates > 200);
    BOOST_TEST(own_rates > 5);
    BOOST_TEST(skipped > 2);
    for (std::size_t i = 1; i < list.lines.size(); ++i)
        if (list.lines[i].range.from < list.lines[i - 1].range.from) BOOST_ERROR("out of order at " << i);
}

BOOST_AUTO_TEST_CASE(only_ranges_near_today_are_listed_and_the_others_counted) {
    DueBook in;
    const auto cut = [&](QDate day) {
        Service service;
        service.client = in.client.id;
        service.date = day;
        service.kind = QStringLiteral("cut");
        DueBook::required(work::add_service(*in.book, service));
    };
    const auto list = [&](int within, int overdue) {
        return DueBook::required(work::due_list(*in.book, {today, within, overdue, {}}));
    };
    BOOST_TEST(list(14, 91).lines.empty());
    cut(today.addDays(-70));  // trim after 8 to 12 weeks
    BOOST_REQUIRE_EQUAL(list(14, 91).lines.size(), 1u);
    const work::DueLine line = list(14, 91).lines[0];
    BOOST_TEST((work::date_of(line.range.from) == today.addDays(-70 + 56)));
    BOOST_TEST((work::date_of(line.range.to) == today.addDays(-70 + 84)));
    BOOST_TEST(!line.overdue);
    cut(today.addDays(-1));
    BOOST_TEST(list(14, 91).lines.empty());
    BOOST_TEST(list(60, 91).lines.size() == 1u);
    BOOST_TEST(work::line_of(list(60, 91).lines[0]).toStdString().find("Ada Lindqvist (1)") != std::string::npos);
    const auto later = DueBook::required(work::due_list(*in.book, {today.addDays(300), 14, 91, {}}));
    BOOST_TEST(later.lines.empty());
    BOOST_TEST(later.long_overdue == 1);
    const auto wider = DueBook::required(work::due_list(*in.book, {today.addDays(300), 14, 300, {}}));
    BOOST_REQUIRE_EQUAL(wider.lines.size(), 1u);
    BOOST_TEST(wider.lines[0].overdue);
    BOOST_TEST((work::due_list(*in.book, {QDate(), 14, 91, {}}).error().kind == ErrorKind::invalid));
    const auto stopped =
        work::due_list(*in.book, {today, 14, 91, {}}, [](double, std::string_view) { return Go::stop; });
    BOOST_TEST((stopped.error().kind == ErrorKind::cancelled));
}

BOOST_AUTO_TEST_CASE(events_keep_their_uid_and_give_no_name_when_asked) {
    DueBook in;
    Service service;
    service.client = in.client.id;
    service.date = today.addDays(-70);
    service.kind = QStringLiteral("cut");
    service = DueBook::required(work::add_service(*in.book, service));
    const auto calendar = [&](bool names) {
        const auto list = DueBook::required(work::due_list(*in.book, {today, 14, 91, {}}));
        return DueBook::required(work::calendar_of(*in.book, list, {names, QDateTime(today, QTime(9, 0), Qt::UTC)}));
    };
    const auto line = [](const QByteArray& bytes, const char* start) {
        for (const QByteArray& one : bytes.split('\n'))
            if (one.startsWith(start)) return one.trimmed();
        return QByteArray();
    };
    const QByteArray first = calendar(true);
    BOOST_TEST(line(first, "SUMMARY:") == QByteArray("SUMMARY:Ada Lindqvist: trim"));
    BOOST_TEST(line(first, "DTSTAMP:") == QByteArray("DTSTAMP:20261125T090000Z"));
    BOOST_TEST(line(first, "DTSTART") == QByteArray("DTSTART;VALUE=DATE:20261111"));
    BOOST_TEST(line(first, "DTEND") == QByteArray("DTEND;VALUE=DATE:20261210"));  // the day after the last
    service.date = today.addDays(-65);
    DueBook::required(work::change_service(*in.book, service));
    const QByteArray moved = calendar(false);
    BOOST_TEST(line(moved, "UID:") == line(first, "UID:"));
    BOOST_TEST(line(moved, "DTSTART") == QByteArray("DTSTART;VALUE=DATE:20261116"));
    BOOST_TEST(!moved.contains("Ada"));
    BOOST_TEST(line(moved, "SUMMARY:") == QByteArray("SUMMARY:Client 1: trim"));
    DueBook other;
    service.client = other.client.id;
    DueBook::required(work::add_service(*other.book, service));
    const auto list = DueBook::required(work::due_list(*other.book, {today, 14, 91, {}}));
    const auto bytes = DueBook::required(work::calendar_of(*other.book, list, {true, QDateTime(today, QTime(9, 0))}));
    BOOST_TEST(line(bytes, "UID:") != line(first, "UID:"));
}

BOOST_AUTO_TEST_SUITE_END()
