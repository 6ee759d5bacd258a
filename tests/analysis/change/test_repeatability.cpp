// Within-subject spread and smallest detectable change against published examples.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "change/change.h"
#include "reference/read_csv.h"

using namespace kempt::change;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

std::vector<std::vector<double>> pairs_of(const std::string& first, const std::string& second) {
    const auto table = kempt::reference::read_csv("peak_flow.csv");
    const auto one = table.column(first), two = table.column(second);
    std::vector<std::vector<double>> groups;
    for (size_t i = 0; i < one.size(); ++i) groups.push_back({one[i], two[i]});
    return groups;
}

}  // namespace

BOOST_AUTO_TEST_CASE(within_subject_sd_and_repeatability_of_bland_and_altman_1986) {
    // Lancet i:307-310, 'Repeatability': within-subject SD sqrt(sum d^2 / 2n) computed from the printed data to seven
    // digits; coefficient 1.96 sqrt(2) s_w = 42.4 and 55.2 l/min (43.2 and 56.4 printed there with 2 for 1.96).
    const Spread wright = pooled_within_sd(pairs_of("wright1", "wright2"));
    const Spread mini = pooled_within_sd(pairs_of("mini1", "mini2"));
    BOOST_TEST(wright.df == 17);
    BOOST_TEST(std::abs(wright.sd - 15.306669) < 1e-6);
    BOOST_TEST(std::abs(mini.sd - 19.910831) < 1e-6);
    BOOST_TEST(std::abs(smallest_detectable_change({wright.sd, infinite}, 1, 1) - 42.427922) < 2e-3);
    BOOST_TEST(std::abs(smallest_detectable_change({mini.sd, infinite}, 1, 1) - 55.190007) < 2e-3);
    // The printed 43.2 and 56.4 (2 for 1.96, rounded): within 0.3 %.
    BOOST_TEST(std::abs(2 * std::sqrt(2.0) * wright.sd / 43.2 - 1) < 0.003);
    BOOST_TEST(std::abs(2 * std::sqrt(2.0) * mini.sd / 56.4 - 1) < 0.003);
}

BOOST_AUTO_TEST_CASE(t_and_interval_of_the_mean_difference_of_bland_and_altman_1986) {
    const auto table = kempt::reference::read_csv("peak_flow.csv");
    const auto wright = table.column("wright1"), mini = table.column("mini1");
    std::vector<double> differences;
    double sum = 0;
    for (size_t i = 0; i < wright.size(); ++i) {
        differences.push_back(wright[i] - mini[i]);
        sum += differences.back();
    }
    const double n = double(differences.size()), mean = sum / n;
    const Spread spread = pooled_within_sd({differences});
    BOOST_TEST(std::abs(mean + 2.117647) < 1e-6);
    BOOST_TEST(std::abs(spread.sd - 38.765130) < 1e-6);
    const double half = student_t_quantile(0.975, n - 1) * spread.sd / std::sqrt(n);
    // Exact interval; printed with rounded inputs as -22.0 to 17.8.
    BOOST_TEST(std::abs(mean - half + 22.048838) < 1e-5);
    BOOST_TEST(std::abs(mean + half - 17.813544) < 1e-5);
    const double half_of_limit = student_t_quantile(0.975, n - 1) * std::sqrt(3 * spread.sd * spread.sd / n);
    // Limits of agreement printed as -78.10 to 73.86 (R packages' tests of the same data).
    BOOST_TEST(std::abs(mean - normal_quantile(0.975) * spread.sd + 78.10) < 0.006);
    BOOST_TEST(std::abs(mean + normal_quantile(0.975) * spread.sd - 73.86) < 0.006);
    // Exact ends of the intervals of the limits with 2 SD; printed -114.3 and 110.1 with rounded inputs.
    BOOST_TEST(std::abs(mean - 2 * spread.sd - half_of_limit + 114.169742) < 1e-4);
    BOOST_TEST(std::abs(mean + 2 * spread.sd + half_of_limit - 109.934448) < 1e-4);
}

BOOST_AUTO_TEST_CASE(smallest_detectable_change_of_the_published_examples) {
    // J Am Soc Nephrol table: ANOVA error mean square 1.64, printed 3.55.
    BOOST_TEST(std::abs(smallest_detectable_change({std::sqrt(1.64), infinite}, 1, 1) - 3.549711) < 1e-4);
    // Univ. York exercise: SEM printed as 1.1 gives 3.2; the SEM is rounded, so 1.05 to 1.15 must hold it.
    BOOST_TEST(smallest_detectable_change({1.05, infinite}, 1, 1) < 3.15);
    BOOST_TEST(smallest_detectable_change({1.15, infinite}, 1, 1) > 3.15);
    // Shrout & Fleiss 1979 data, SEM agreement and consistency (computed from the published table).
    BOOST_TEST(std::abs(smallest_detectable_change({2.502776, infinite}, 1, 1) - 6.937342) < 2e-4);
    BOOST_TEST(std::abs(smallest_detectable_change({1.009675, infinite}, 1, 1) - 2.798677) < 1e-4);
}

BOOST_AUTO_TEST_CASE(repeats_narrow_the_smallest_change_and_few_df_widen_it) {
    const Spread spread{1.2, 8};
    BOOST_TEST(std::abs(smallest_detectable_change(spread, 1, 1) - 2.306004 * 1.2 * std::sqrt(2.0)) < 1e-5);
    BOOST_TEST(std::abs(smallest_detectable_change(spread, 3, 2) - 2.306004 * 1.2 * std::sqrt(1 / 3.0 + 0.5)) < 1e-5);
    BOOST_TEST(smallest_detectable_change({1.2, 2}, 2, 2) > smallest_detectable_change({1.2, 20}, 2, 2));
    const Spread with_setup{1.2, 8, 0.7};
    BOOST_TEST(std::abs(smallest_detectable_change(with_setup, 2, 2) - 2.306004 * std::sqrt(1.44 + 0.98)) < 1e-5);
    BOOST_TEST(std::isnan(smallest_detectable_change(spread, 0, 2)));
    BOOST_TEST(std::isnan(smallest_detectable_change({}, 2, 2)));
}

BOOST_AUTO_TEST_CASE(groups_of_one_and_values_that_are_not_finite_add_nothing) {
    const Spread spread = pooled_within_sd({{5}, {}, {1, 3}, {10, 14, std::nan("")}, {7, infinite}});
    BOOST_TEST(spread.df == 2);
    BOOST_TEST(std::abs(spread.sd - std::sqrt((2 + 8) / 2.0)) < 1e-12);
    BOOST_TEST(pooled_within_sd({{5}, {6}}).df == 0);
    // A large common level does not swallow the scatter.
    BOOST_TEST(std::abs(pooled_within_sd({{1e9, 1e9 + 2}}).sd - std::sqrt(2.0)) < 1e-6);
}

BOOST_AUTO_TEST_CASE(spreads_are_weighed_client_first_then_book_then_default) {
    const Spread nothing;
    // Nothing but the default: it counts as 8.
    const Spread fallback = combine_spread(nothing, nothing, 1.2);
    BOOST_TEST(fallback.sd == 1.2);
    BOOST_TEST(fallback.df == 8);
    BOOST_TEST(combine_spread(nothing, nothing, 0).df == 0);
    // The book counts for at most 8, and the default fills up what is missing.
    BOOST_TEST(std::abs(combine_spread(nothing, {2, 200}, 1.2).sd - 2) < 1e-12);
    BOOST_TEST(combine_spread(nothing, {2, 200}, 1.2).df == 8);
    BOOST_TEST(std::abs(combine_spread(nothing, {2, 2}, 1).sd - std::sqrt((2 * 4 + 6) / 8.0)) < 1e-12);
    // Her own repeats count in full.
    const Spread mixed = combine_spread({1, 4}, {2, 200}, 1.2);
    BOOST_TEST(mixed.df == 12);
    BOOST_TEST(std::abs(mixed.sd - std::sqrt((4 * 1 + 8 * 4) / 12.0)) < 1e-12);
    // Enough of her own: alone. Clearly wider than expected: alone, with all the caution of few df.
    BOOST_TEST(combine_spread({1, 30}, {2, 200}, 1.2).sd == 1);
    BOOST_TEST(combine_spread({3.6, 4}, nothing, 1.2).sd == 3.6);
    BOOST_TEST(combine_spread({3.6, 4}, nothing, 1.2).df == 4);
    // Without book and default her own is all there is.
    BOOST_TEST(combine_spread({1, 3}, nothing, 0).df == 3);
    // What repeats cannot show is carried along.
    BOOST_TEST(combine_spread({1, 4, 0.5}, {2, 9}, 1.2).setup_sd == 0.5);
}

BOOST_AUTO_TEST_CASE(scatter_that_grows_with_the_value_is_pooled_and_judged_as_a_ratio) {
    // Groups of 10 and of 100 that scatter by the same share stand for one SD of the logarithm.
    const double share = 0.04, up = std::exp(share), down = std::exp(-share);
    const Spread spread = pooled_for("strand_length", {{10 * up, 10 * down}, {100 * up, 100 * down}, {0, 5}});
    BOOST_TEST((spread.scale.kind == Scale::Kind::logarithm));
    BOOST_TEST(spread.df == 2);
    BOOST_TEST(std::abs(spread.sd - share * std::sqrt(2.0)) < 1e-12);
    BOOST_TEST((pooled_for("edge_coverage", {{10, 12}}).scale == Scale{}));

    // The verdict asks for a ratio: just below and just above it, at a small curl and at a large one.
    const Spread judged = spread_for("strand_length", spread, {});
    const double ratio = std::exp(smallest_detectable_change(judged, 2, 2));
    for (const double mm : {6.0, 90.0}) {
        const VisitValue before{{mm, mm}, {}, "mm"};
        const auto verdict_at = [&](double of) {
            return judge("strand_length", before, {{of * mm, of * mm}, {}, "mm"}, judged);
        };
        BOOST_TEST((verdict_at(ratio * 0.999).verdict == Verdict::no_detectable_change));
        BOOST_TEST((verdict_at(ratio * 1.001).verdict == Verdict::changed));
        BOOST_TEST((verdict_at(1 / ratio * 1.001).verdict == Verdict::no_detectable_change));
        BOOST_TEST((verdict_at(1 / ratio * 0.999).verdict == Verdict::changed));
    }
    // Small shares are nearly differences.
    BOOST_TEST(std::abs(spread.scale.difference(0.01, 50, 50) - 0.5) < 1e-5);
}

BOOST_AUTO_TEST_CASE(a_nearly_straight_strands_curve_diameter_is_judged_by_its_curvature) {
    // Curvatures that scatter by the same amount about a floor stand for one SD at 20 mm and at 300.
    const double floor_mm = scale_of("curve_diameter").straight_at, share = 0.04;
    const auto beside = [&](double mm, double by) {
        return 1 / ((1 / mm + 1 / floor_mm) * std::exp(-by) - 1 / floor_mm);
    };
    const Spread spread = pooled_for(
        "curve_diameter", {{beside(20, share), beside(20, -share)}, {beside(300, share), beside(300, -share)}});
    BOOST_TEST(spread.df == 2);
    BOOST_TEST(std::abs(spread.sd - share * std::sqrt(2.0)) < 1e-12);
    // So a third more is a change at 15 mm, and none at 300.
    const Spread judged = spread_for("curve_diameter", {}, {});
    const auto verdict_of = [&](double from, double to) {
        return judge("curve_diameter", {{from, from}, {}, "mm"}, {{to, to}, {}, "mm"}, judged).verdict;
    };
    BOOST_TEST((verdict_of(15, 20) == Verdict::changed));
    BOOST_TEST((verdict_of(300, 400) == Verdict::no_detectable_change));
    // The printed smallest change is the exact limit, up and down.
    const double d = smallest_detectable_change(judged, 2, 2);
    for (const double mm : {6.0, 60.0, 150.0})
        for (const double way : {-1.0, 1.0}) {
            const double to = judged.scale.along(mm, way * d);
            BOOST_TEST(std::abs(std::abs(to - mm) - judged.scale.difference(d, mm, to)) < 1e-9 * mm);
        }
    BOOST_TEST(judged.scale.along(5000, 3) == 50000);
}

BOOST_AUTO_TEST_CASE(a_share_of_short_strands_is_judged_by_its_square_root) {
    const Scale scale = scale_of("short_share");
    // The printed smallest change is the exact limit, up and down, and never leads below nothing.
    for (const double share : {0.0, 4.0, 36.0, 81.0})
        for (const double d : {-0.5, 0.5}) {
            const double to = scale.along(share, d);
            BOOST_TEST(to >= 0);
            if (to > 0) BOOST_TEST(std::abs(std::abs(to - share) - scale.difference(0.5, share, to)) < 1e-12);
        }
    // The same five points are more at 10 % than at 60 %.
    const Spread judged = spread_for("short_share", {}, {});
    const auto verdict_of = [&](double from, double to) {
        return judge("short_share", {{from, from}, {}, "%"}, {{to, to}, {}, "%"}, judged).verdict;
    };
    BOOST_TEST((verdict_of(10, 5) == Verdict::improved));
    BOOST_TEST((verdict_of(60, 55) == Verdict::no_detectable_change));
    // Repeats are pooled on the scale; what has no root is left out.
    const Spread spread = pooled_for("short_share", {{25, 36}, {64, 81}, {-1, 49}});
    BOOST_TEST(spread.df == 2);
    BOOST_TEST(std::abs(spread.sd - std::sqrt(0.5)) < 1e-12);
}

BOOST_AUTO_TEST_CASE(alignment_is_judged_by_what_it_lacks_to_one) {
    const Scale scale = scale_of("alignment");
    BOOST_TEST((scale.kind == Scale::Kind::lack));
    for (const double from : {0.3, 0.7, 0.95, 0.998})
        for (const double d : {-0.4, 0.4}) {
            const double to = scale.along(from, d);
            BOOST_TEST(to <= 1);
            if (to > 0 && to < 1) BOOST_TEST(std::abs(std::abs(to - from) - scale.difference(0.4, from, to)) < 1e-12);
        }
    BOOST_TEST(scale.along(0.1, -3) == 0);
    BOOST_TEST(scale.along(0.998, 0.4) == 1);
    BOOST_TEST(std::isfinite(scale.of(1)));
    BOOST_TEST(std::isnan(scale.of(1.2)));
    // Groups that scatter by the same share of their lack stand for one SD.
    const double up = std::exp(0.04);
    const Spread spread =
        pooled_for("alignment", {{1.1 - 0.5 * up, 1.1 - 0.5 / up}, {1.1 - 0.15 * up, 1.1 - 0.15 / up}});
    BOOST_TEST(std::abs(spread.sd - 0.04 * std::sqrt(2.0)) < 1e-12);
    const Spread judged = spread_for("alignment", {}, {});
    const auto verdict_of = [&](double from, double to) {
        return judge("alignment", {{from, from}, {}, ""}, {{to, to}, {}, ""}, judged).verdict;
    };
    BOOST_TEST((verdict_of(0.88, 0.95) == Verdict::improved));
    BOOST_TEST((verdict_of(0.50, 0.57) == Verdict::no_detectable_change));
    BOOST_TEST((verdict_of(0.95, 0.88) == Verdict::worse));
    // Glossier hair that lies the same: its band of light alone takes this much off (the demonstration's photos).
    BOOST_TEST((verdict_of(0.94, 0.91) == Verdict::no_detectable_change));
}

BOOST_AUTO_TEST_CASE(the_same_step_of_shine_is_more_on_dull_hair_than_on_glossy) {
    const auto verdict_of = [](const char* reading, double from, double to, const char* unit) {
        return judge(reading, {{from, from}, {}, unit}, {{to, to}, {}, unit}, spread_for(reading, {}, {})).verdict;
    };
    BOOST_TEST((verdict_of("shine_contrast", 0.05, 0.11, "") == Verdict::improved));
    BOOST_TEST((verdict_of("shine_contrast", 0.70, 0.76, "") == Verdict::no_detectable_change));
    BOOST_TEST((verdict_of("luster", 0.04, 0.055, "1/mm") == Verdict::improved));
    BOOST_TEST((verdict_of("luster", 0.16, 0.175, "1/mm") == Verdict::no_detectable_change));
    BOOST_TEST((verdict_of("shine_width", 20, 15, "mm") == Verdict::improved));
    BOOST_TEST((verdict_of("shine_width", 45, 40, "mm") == Verdict::no_detectable_change));
}

BOOST_AUTO_TEST_CASE(a_wave_ratio_is_judged_by_what_it_has_above_a_straight_strand) {
    const Spread judged = spread_for("wave_ratio", {}, {});
    const auto verdict_of = [&](double from, double to) {
        return judge("wave_ratio", {{from, from}, {}, "-"}, {{to, to}, {}, "-"}, judged).verdict;
    };
    // Waves half as high over a straight strand are a change, though the ratio itself moves by 4 %; of coils that is
    // chance, and so is anything a nearly straight strand does.
    BOOST_TEST((verdict_of(1.08, 1.04) == Verdict::changed));
    BOOST_TEST((verdict_of(4.00, 3.84) == Verdict::no_detectable_change));
    BOOST_TEST((verdict_of(1.004, 1.000) == Verdict::no_detectable_change));
    // The printed smallest change is the exact limit, up and down; the noise band ends at a straight strand.
    const double d = smallest_detectable_change(judged, 2, 2);
    for (const double ratio : {1.08, 1.5, 4.0})
        for (const double way : {-1.0, 1.0}) {
            const double to = judged.scale.along(ratio, way * d);
            if (to > 1) BOOST_TEST(std::abs(std::abs(to - ratio) - judged.scale.difference(d, ratio, to)) < 1e-9);
        }
    BOOST_TEST(judged.scale.along(1.002, -2 * d) == 1);
}

BOOST_AUTO_TEST_CASE(tone_of_mixed_hair_is_judged_no_more_boldly_than_its_photos_state) {
    const double tail = normal_quantile(0.975);
    // An interval that ends where the reading does counts by its other side.
    const double narrow = stated_sd("tone_spread", {{2, 0, 2 + 1.2 * tail}, {8, 8 - 1.2 * tail, 8 + 1.2 * tail}}),
                 wide = stated_sd("tone_spread", {{8, 8 - 2.5 * tail, 8 + 2.5 * tail}});
    BOOST_CHECK_CLOSE(narrow, 1.2, 1e-6);
    BOOST_CHECK_CLOSE(wide, 2.5, 1e-6);
    BOOST_TEST(stated_sd("tone_spread", {}) == 0);
    BOOST_TEST(stated_sd("tone_spread", {{std::nan(""), 0, 1}}) == 0);
    const auto allowed = [](const char* reading, double stated) {
        return allowing_for(stated, reading, spread_for(reading, {}, {}));
    };
    BOOST_TEST(allowed("tone_spread", narrow).setup_sd == default_setup_sd("tone_spread"));
    BOOST_CHECK_CLOSE(allowed("tone_spread", wide).setup_sd, 2.0, 1e-6);  // 1.5 of it is always the same
    BOOST_TEST(allowed("edge_coverage", 50).setup_sd == default_setup_sd("edge_coverage"));
    const auto verdict_of = [&](double stated) {
        return judge("tone_spread", {{14, 14}, {}, "dE00"}, {{9, 9}, {}, "dE00"}, allowed("tone_spread", stated))
            .verdict;
    };
    BOOST_TEST((verdict_of(narrow) == Verdict::improved));
    BOOST_TEST((verdict_of(wide) == Verdict::no_detectable_change));
    // The same from the shots of the two visits themselves.
    const auto of_shots = [&](double sd) {
        const auto visit = [&](double value) {
            const Stated shot{value, value - sd * tail, value + sd * tail};
            return VisitValue{{value, value}, {}, "dE00", {shot, shot}};
        };
        return judge("tone_spread", visit(14), visit(9), spread_for("tone_spread", {}, {})).verdict;
    };
    BOOST_TEST((of_shots(1.2) == Verdict::improved));
    BOOST_TEST((of_shots(2.5) == Verdict::no_detectable_change));
}

BOOST_AUTO_TEST_CASE(every_reading_of_edges_and_strands_has_a_default_and_a_direction) {
    for (const char* reading : {"edge_coverage", "edge_strands", "fill_depth", "bare_length", "length_density"})
        BOOST_TEST(default_within_sd(reading) > 0, reading);
    for (const char* reading :
         {"strands", "strand_median", "short_share", "curve_diameter", "wave_ratio", "strand_length"})
        BOOST_TEST(default_within_sd(reading) > 0, reading);
    BOOST_TEST((better_direction("edge_coverage") == Better::higher));
    BOOST_TEST((better_direction("edge_strands") == Better::higher));
    BOOST_TEST((better_direction("length_density") == Better::higher));
    BOOST_TEST((better_direction("fill_depth") == Better::lower));
    BOOST_TEST((better_direction("bare_length") == Better::lower));
    const Spread alone = spread_for("edge_coverage", {}, {});
    BOOST_TEST(alone.sd == default_within_sd("edge_coverage"));
    BOOST_TEST(alone.setup_sd == default_setup_sd("edge_coverage"));
    BOOST_TEST(spread_for("edge_coverage", {1, 4, 2.5}, {}).setup_sd >= 2.5);
    BOOST_TEST(spread_for("no_such_reading", {}, {}).df == 0);
    BOOST_TEST(default_within_sd("no_such_reading") == 0);
    BOOST_TEST(default_setup_sd("no_such_reading") == 0);
}
