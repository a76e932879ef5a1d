#include "cli/change.hpp"

#include "cli/options.hpp"

namespace yardworth::cli {

void add_change_options(CLI::App& command, SaidChange& change, const std::string& unless_given) {
  add_number(command, "--driver", change.driver, limits::carry_change,
             "Carry added to the driver, +N or -N in the course's units; " + unless_given);
  add_number(command, "--irons", change.irons, limits::carry_change,
             "Carry added to the 7-iron or the iron nearest to it; every club below the driver in proportion to its "
             "carry; " +
                 unless_given);
}

}  // namespace yardworth::cli
