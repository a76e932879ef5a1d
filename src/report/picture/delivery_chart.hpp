#pragma once

#include "report/picture/charts.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {

// From the carry as it is to the best at the same club head speed; each angle gains what it does after those before it.
void add_losses_chart(Sheet& sheet, const DeliveryResult& result);

}  // namespace yardworth::report
