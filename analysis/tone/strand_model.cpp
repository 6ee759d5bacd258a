#include "tone/strand_model.h"

#include <algorithm>
#include <cmath>

#include "tone/model_limits.h"
#include "tone/row_noise.h"

namespace kempt::tone {
namespace {

double bend(double t) {
    return 4 * (t - 0.5) * (t - 0.5) - 1.0 / 3;
}

}  // namespace

StrandModel::StrandModel(const Rows& rows) : rows_(rows) {}

cv::Vec3d StrandModel::body_lab(const Parameters& p, double at_mm) const {
    const Shares shares = body_shares(p, at_mm);
    cv::Vec3d lab;
    for (int c = 0; c < 3; ++c) {
        for (size_t g = 0; g < 3; ++g) lab[c] += shares[g] * p[3 * g + static_cast<size_t>(c)];
        for (size_t k = 0; k < line_count(p); ++k)
            lab[c] += shares[3 + k] * p[fixed + each_line * k + static_cast<size_t>(c)];
    }
    lab[0] = std::clamp(lab[0], 2.0, 98.0);
    return lab;
}

double StrandModel::highlight_light(const Parameters& p, double at_mm) const {
    const double u = (at_mm - p[highlight + 1]) / std::exp(p[highlight + 2]);
    return std::exp(p[highlight] - 0.5 * u * u);
}

StrandModel::Shares StrandModel::body_shares(const Parameters& p, double at_mm) const {
    const double t = at_mm / rows_.length_mm;
    Shares shares{1, t - 0.5, bend(t)};
    for (size_t k = 0; k < line_count(p); ++k) {
        const double* line = &p[fixed + each_line * k];
        shares[3 + k] = integral((at_mm - line[3]) * width_in_sd / std::exp(line[4]));
    }
    return shares;
}

void StrandModel::row_residual(const Parameters& p, size_t row, cv::Vec3d& residual, double* jacobian) const {
    const double at = rows_.at_mm[row];
    const Shares shares = body_shares(p, at);
    cv::Vec3d base;
    const size_t lines = line_count(p);
    for (size_t c = 0; c < 3; ++c) {
        for (size_t g = 0; g < 3; ++g) base[static_cast<int>(c)] += shares[g] * p[3 * g + c];
        for (size_t k = 0; k < lines; ++k) base[static_cast<int>(c)] += shares[3 + k] * p[fixed + each_line * k + c];
    }
    base[0] = std::clamp(base[0], 2.0, 98.0);
    const LabPoint body = rgb_point(base);
    const double shine = highlight_light(p, at);
    const LabPoint seen = lab_point(body.value + cv::Vec3d::all(shine));
    residual = rows_.lab[row] - seen.value;
    if (!jacobian) return;
    const size_t n = p.size();
    const cv::Matx33d by_base = seen.slope * body.slope;
    const cv::Vec3d by_light = seen.slope * cv::Vec3d::all(1);
    const double spread = std::exp(p[highlight + 2]), u = (at - p[highlight + 1]) / spread;
    for (int c = 0; c < 3; ++c) {
        double* j = jacobian + static_cast<size_t>(c) * n;
        for (size_t k = 0; k < 3; ++k) {
            const double slope = by_base(c, static_cast<int>(k));
            for (size_t g = 0; g < 3; ++g) j[3 * g + k] = slope * shares[g];
            for (size_t q = 0; q < lines; ++q) j[fixed + each_line * q + k] = slope * shares[3 + q];
        }
        j[highlight] = by_light[c] * shine;
        j[highlight + 1] = by_light[c] * shine * u / spread;
        j[highlight + 2] = by_light[c] * shine * u * u;
        for (size_t q = 0; q < lines; ++q) {
            const double* line = &p[fixed + each_line * q];
            const double sd = std::exp(line[4]) / width_in_sd, v = (at - line[3]) / sd,
                         density = std::exp(-0.5 * v * v) / std::sqrt(2 * CV_PI);
            const double along = by_base(c, 0) * line[0] + by_base(c, 1) * line[1] + by_base(c, 2) * line[2];
            j[fixed + each_line * q + 3] = -along * density / sd;
            j[fixed + each_line * q + 4] = -along * density * v;
        }
    }
}

template <class Add>
void StrandModel::for_each_prior(const Parameters& p, Add add) const {
    for (size_t c = 0; c < 3; ++c) {
        add(3 + c, 0.0, drift_sd[c]);
        add(6 + c, 0.0, bend_sd[c]);
    }
    add(highlight, height_log_mean, height_log_sd);
    add(highlight + 1, rows_.length_mm / 2, place_sd_share * rows_.length_mm);
    add(highlight + 2, spread_log_mean, spread_log_sd);
    for (size_t k = 0; k < line_count(p); ++k) {
        for (size_t c = 0; c < 3; ++c) add(fixed + each_line * k + c, 0.0, step_sd);
        add(fixed + each_line * k + 4, width_log_mean, width_log_sd);
    }
}

void StrandModel::hold_in_bounds(Parameters& p) const {
    p[highlight] = std::clamp(p[highlight], -9.0, 0.3);
    p[highlight + 1] = std::clamp(p[highlight + 1], -60.0, rows_.length_mm + 60);
    p[highlight + 2] = std::clamp(p[highlight + 2], least_spread, most_spread);
    for (size_t k = 0; k < line_count(p); ++k) {
        double* line = &p[fixed + each_line * k];
        line[3] = std::clamp(line[3], first_line_mm, rows_.length_mm - last_line_mm);
        line[4] = std::clamp(line[4], least_width, most_width);
    }
}

double StrandModel::cost(const Parameters& p) const {
    double sum = 0;
    for_each_prior(p, [&](size_t i, double mean, double sd) { sum += std::pow((p[i] - mean) / sd, 2); });
    cv::Vec3d here, before;
    bool had = false;
    for (size_t i = 0; i < rows_.at_mm.size(); ++i) {
        if (!rows_.usable[i]) {
            had = false;
            continue;
        }
        row_residual(p, i, here, nullptr);
        const Whitener white_of{had};
        double square = 0;
        for (int c = 0; c < 3; ++c) square += std::pow(white_of(here[c], before[c]) / noise_[c], 2);
        sum += softened_square(square);
        before = here;
        had = true;
    }
    return sum;
}

StrandModel::Normal StrandModel::normal_equations(const Parameters& p) const {
    const size_t n = p.size();
    const int size = static_cast<int>(n);
    Normal out{cv::Mat1d(size, size, 0.0), cv::Mat1d(size, 1, 0.0), 0};
    for_each_prior(p, [&](size_t k, double mean, double sd) {
        const int i = static_cast<int>(k);
        const double residual = (p[k] - mean) / sd;
        out.h(i, i) += 1 / (sd * sd);
        out.g(i) -= residual / sd;
        out.cost += residual * residual;
    });
    std::vector<double> here(3 * n), before(3 * n), row(3 * n);
    cv::Vec3d r_here, r_before;
    bool had = false;
    for (size_t i = 0; i < rows_.at_mm.size(); ++i) {
        if (!rows_.usable[i]) {
            had = false;
            continue;
        }
        row_residual(p, i, r_here, here.data());
        const Whitener white_of{had};
        cv::Vec3d r;
        double square = 0;
        for (int c = 0; c < 3; ++c) {
            r[c] = white_of(r_here[c], r_before[c]) / noise_[c];
            square += r[c] * r[c];
            for (size_t k = 0; k < n; ++k) {
                const size_t at = static_cast<size_t>(c) * n + k;
                row[at] = white_of(here[at], before[at]) / noise_[c];
            }
        }
        const double weight = square < huber * huber ? 1 : huber / std::sqrt(square);
        out.cost += softened_square(square);
        for (int c = 0; c < 3; ++c) {
            const double* j = row.data() + static_cast<size_t>(c) * n;
            for (size_t a = 0; a < n; ++a) {
                const double wa = weight * j[a];
                if (wa == 0) continue;
                double* h = out.h[static_cast<int>(a)];
                for (size_t b = 0; b <= a; ++b) h[b] += wa * j[b];
                out.g(static_cast<int>(a)) += wa * r[c];
            }
        }
        before.swap(here);
        r_before = r_here;
        had = true;
    }
    for (int a = 0; a < size; ++a)
        for (int b = 0; b < a; ++b) out.h(b, a) = out.h(a, b);
    return out;
}

double StrandModel::fit(Parameters& p, int most_rounds) const {
    hold_in_bounds(p);
    double damping = 1e-2, best = cost(p);
    for (int round = 0; round < most_rounds; ++round) {
        const Normal at = normal_equations(p);
        bool better = false, done = false;
        for (int attempt = 0; attempt < 8 && !better; ++attempt) {
            cv::Mat1d damped(at.h.clone()), step;
            for (int k = 0; k < damped.rows; ++k) damped(k, k) += damping * (at.h(k, k) + 1e-6);
            Parameters next = p;
            if (cv::solve(damped, at.g, step, cv::DECOMP_CHOLESKY)) {
                for (size_t k = 0; k < p.size(); ++k) next[k] += step(static_cast<int>(k));
                hold_in_bounds(next);
                const double there = cost(next);
                if (there < best) {
                    done = best - there < 0.1;  // a line needs hundreds of times that
                    best = there;
                    p = next;
                    better = true;
                    damping = std::max(damping / 5, 1e-6);
                    continue;
                }
            }
            damping *= 4;
        }
        if (!better || done) break;
    }
    return best;
}

cv::Mat1d StrandModel::covariance(const Parameters& p) const {
    cv::Mat1d inverse;
    cv::invert(normal_equations(p).h, inverse, cv::DECOMP_SVD);
    return inverse;
}

}  // namespace kempt::tone
