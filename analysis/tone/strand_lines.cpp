// The search for another line of demarcation, and the noise that is left over.
#include <algorithm>
#include <cmath>

#include "core/rank.h"
#include "tone/model_limits.h"
#include "tone/row_noise.h"
#include "tone/strand_model.h"

namespace kempt::tone {

namespace {

// What a step's three columns (L, a, b) have in common with the model's, with each other and with what is left over.
struct Products {
    std::vector<double> with_model;  // n x 3
    cv::Matx33d own;
    cv::Vec3d with_rest;
    explicit Products(size_t n) : with_model(3 * n, 0.0) {}

    void add(const double* model, const cv::Vec3d& step, double rest) {
        for (int k = 0; k < 3; ++k) {
            with_rest[k] += step[k] * rest;
            for (int l = 0; l < 3; ++l) own(k, l) += step[k] * step[l];
        }
        for (size_t a = 0; a < with_model.size() / 3; ++a)
            for (int k = 0; k < 3; ++k) with_model[3 * a + static_cast<size_t>(k)] += model[a] * step[k];
    }
};

}  // namespace

std::vector<double> StrandModel::gain_of_line(const Parameters& p) const {
    const size_t n = p.size(), count = rows_.at_mm.size();
    const int size = static_cast<int>(n);
    // Whitened Jacobian and residuals, the weights in them, once for all places.
    const Normal at = normal_equations(p);
    cv::Mat1d inverse;
    cv::invert(at.h, inverse, cv::DECOMP_SVD);
    std::vector<double> jacobian(count * 3 * n), raw(count * 3 * n);
    std::vector<cv::Vec3d> r(count), r_raw(count);
    std::vector<double> root_weight(count);
    std::vector<char> chained(count);
    for (size_t i = 0; i < count; ++i) {
        if (!rows_.usable[i]) continue;
        row_residual(p, i, r_raw[i], &raw[i * 3 * n]);
        const Whitener white_of{i > 0 && rows_.usable[i - 1] != 0};
        chained[i] = white_of.chained;
        double square = 0;
        for (int c = 0; c < 3; ++c) {
            r[i][c] = white_of(r_raw[i][c], i ? r_raw[i - 1][c] : 0) / noise_[c];
            square += r[i][c] * r[i][c];
        }
        root_weight[i] = std::sqrt(square < huber * huber ? 1 : huber / std::sqrt(square));
        for (size_t c = 0; c < 3; ++c)
            for (size_t k = 0; k < n; ++k) {
                const size_t q = (i * 3 + c) * n + k;
                jacobian[q] = root_weight[i] * white_of(raw[q], i ? raw[q - 3 * n] : 0) / noise_[static_cast<int>(c)];
            }
        r[i] *= root_weight[i];
    }
    // Beyond its few millimetres a step is the body's whole colour (the first three columns): its products there are
    // sums from the row to the end, made once.
    std::vector<Products> from(count + 1, Products(n));
    for (size_t i = count; i-- > 0;) {
        from[i] = from[i + 1];
        if (!rows_.usable[i]) continue;
        for (size_t c = 0; c < 3; ++c) {
            const double* j = &jacobian[(i * 3 + c) * n];
            from[i].add(j, {j[0], j[1], j[2]}, r[i][static_cast<int>(c)]);
        }
    }
    std::vector<double> gains(count, 0);
    for (size_t place = 0; place < count; ++place) {
        const double mm = rows_.at_mm[place];
        if (mm < first_line_mm || mm > rows_.length_mm - last_line_mm) continue;
        const auto share_at = [&](size_t i) {
            return integral((rows_.at_mm[i] - mm) * width_in_sd / std::exp(width_log_mean));
        };
        size_t first = place, last = place;  // rows where the step is under way
        while (first > 0 && share_at(first - 1) > 1e-4) --first;
        while (last < count && share_at(last) < 1 - 1e-4) ++last;
        last = std::min(count, last + 1);  // a row hangs on the one before it
        Products sum = from[last];
        for (size_t i = first; i < last; ++i) {
            if (!rows_.usable[i]) continue;
            const double share = share_at(i), before = i ? share_at(i - 1) : 0;
            const Whitener white_of{chained[i] != 0};
            for (size_t c = 0; c < 3; ++c) {
                cv::Vec3d step;
                for (size_t k = 0; k < 3; ++k) {
                    const size_t q = (i * 3 + c) * n + k;
                    step[static_cast<int>(k)] = root_weight[i] *
                                                white_of(share * raw[q], i ? before * raw[q - 3 * n] : 0) /
                                                noise_[static_cast<int>(c)];
                }
                sum.add(&jacobian[(i * 3 + c) * n], step, r[i][static_cast<int>(c)]);
            }
        }
        const cv::Mat1d cross(size, 3, sum.with_model.data());
        const cv::Mat1d half(inverse * cross), taken(cross.t() * half);
        cv::Matx33d left = sum.own + cv::Matx33d::eye() * (1 / (step_sd * step_sd));
        for (int k = 0; k < 3; ++k)
            for (int l = 0; l < 3; ++l) left(k, l) -= taken(k, l);
        cv::Vec3d solved;
        if (cv::solve(left, sum.with_rest, solved, cv::DECOMP_CHOLESKY)) gains[place] = sum.with_rest.dot(solved);
    }
    return gains;
}

void StrandModel::learn_noise(const Parameters& p) {
    std::vector<double> sizes[3];
    cv::Vec3d here, before;
    bool had = false;
    for (size_t i = 0; i < rows_.at_mm.size(); ++i) {
        if (!rows_.usable[i]) {
            had = false;
            continue;
        }
        row_residual(p, i, here, nullptr);
        if (had)
            for (int c = 0; c < 3; ++c) sizes[c].push_back(std::abs(Whitener{true}(here[c], before[c])));
        before = here;
        had = true;
    }
    if (sizes[0].empty()) return;
    for (int c = 0; c < 3; ++c) {
        // SD of a normal with that median of sizes
        noise_[c] = std::max(least_noise[c], 1.4826 * at_rank(sizes[c], 0.5));
    }
}

}  // namespace kempt::tone
