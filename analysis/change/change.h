// Is the change real? Repeatability, smallest detectable change, verdicts, trend, share of the way, forecast.
// The method and its limits: docs/reliability.md.
#pragma once

#include "change/agreement.h"
#include "change/distributions.h"
#include "change/reading_traits.h"
#include "change/spread.h"
#include "change/trend.h"
#include "change/verdict.h"
