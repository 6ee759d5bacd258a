// Precompiled for the analysis rooms: heavy headers that nearly every source file needs.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <opencv2/core.hpp>
#include <opencv2/imgproc.hpp>
