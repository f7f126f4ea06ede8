// The header serves C++ as it is: linkage, enumerators into uint32_t parameters, a nullptr for details.

#include "coldloop.h"

#include <cmath>
#include <cstdio>

int main()
{
    double pa = 0.0;
    const bool well = coldloop_standard_pressure(0.0, &pa, nullptr) == COLDLOOP_STATUS_OK && pa == 101325.0;
    std::printf("test result: %d passed; %d failed\n", well, !well);
    return well ? 0 : 1;
}
