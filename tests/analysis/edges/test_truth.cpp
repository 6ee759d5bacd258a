// The truth renderer on a scene whose answers are plain arithmetic, so that truth itself is checked.
#include <boost/test/unit_test.hpp>

#include "render/raster.h"
#include "render/truth.h"

BOOST_AUTO_TEST_SUITE(truth)

// A fence of straight strands 0.08 mm wide, 0.4871 mm apart (no multiple of the truth's own grid), straight inward from
// 2 mm.
BOOST_AUTO_TEST_CASE(fence_of_known_strands_gives_known_readings) {
    render::Scene scene;
    scene.x_from = -10;
    scene.x_to = 10;
    scene.camera.width = 700;
    scene.camera.height = 700;
    scene.camera.px_per_mm = 22;
    scene.camera.focal_px = 3000;
    scene.camera.aim_mm = {0, 9};
    scene.skin.albedo = {0.5f, 0.4f, 0.3f};
    scene.hair.albedo = {0.02f, 0.02f, 0.02f};
    constexpr double apart = 0.4871, width = 0.08;
    render::Coat coat;
    for (double x = -19.75; x < 20; x += apart) {
        render::Strand strand;
        strand.first = static_cast<int>(coat.points.size());
        strand.radius = static_cast<float>(width / 2);
        strand.albedo = scene.hair.albedo;
        for (double y = 2; y < 200; y += 0.25)
            coat.points.push_back({x, y, 0.0});  // so long that the taper lies outside
        strand.count = static_cast<int>(coat.points.size()) - strand.first;
        coat.strands.push_back(strand);
    }
    const render::Rendered picture = render::rasterise(scene, coat, 8);
    const render::Truth t = render::truth_of(scene, picture);
    BOOST_CHECK_CLOSE(t.length_mm, 20.0, 1.0);
    BOOST_CHECK_SMALL(t.edge_coverage - width / apart * 8 / 10 * 100, 0.3);
    BOOST_CHECK_SMALL(t.edge_strands - 10 / apart, 0.6);
    BOOST_CHECK_SMALL(t.length_density - 8 / 10.0 / apart, 0.04);
    BOOST_CHECK_SMALL(t.fill_depth - 2.0, 0.2);
    BOOST_CHECK_CLOSE(t.bare_length, 20.0, 2.0);  // 16 % of each column
    BOOST_CHECK_CLOSE(t.px_per_mm, 22.0, 0.1);
}

BOOST_AUTO_TEST_SUITE_END()
