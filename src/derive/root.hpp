#pragma once

#include <functional>

namespace yardworth {

// A root of a rising function between two guesses, low < high, or the end that is nearer to one where there is none
// between them: to 8 bits, or to the very place where the function is 0. It keeps the root between two guesses (G.
// Alefeld, F. Potra and Y. Shi, ACM Transactions on Mathematical Software 21, 1995, algorithm 748, as in Boost.Math),
// so that a bend of the function cannot send it astray.
double root_of(const std::function<double(double)>& rising, double low, double high);

}  // namespace yardworth
