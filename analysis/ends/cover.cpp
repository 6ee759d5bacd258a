#include "ends/cover.h"

#include "ends/cells.h"
#include "ends/cover_weights.h"
#include "ends/net.h"

namespace kempt::ends {

cv::Mat cover_of(const Looks& looks, const HairLook& hair, const Circumstances& at) {
    constexpr Net fitted(net::middle, net::scale, net::first, net::first_bias, net::second, net::second_bias, net::last,
                         net::last_bias);
    const cv::Mat wanted = looks.valid & ~looks.bare;
    return placed(fitted.shares_of(inputs_of(looks, hair, at, wanted)), wanted);
}

}  // namespace kempt::ends
