// Two gauges and two thermometers in C++17: exceptions and owned strings, built by the user on top of the C header.
// Build it from the root of the project:
// cargo build --release -p coldloop-c
// c++ -std=c++17 -Ibindings/c examples/cpp/gauges.cpp target/release/libcoldloop_c.a -lm -lpthread -ldl -o target/gauges && target/gauges
#include "coldloop.h"

#include <iostream>
#include <stdexcept>
#include <string>

namespace garage {

// A refusal of the library, as an exception that names quantity, value and bounds.
class refused : public std::runtime_error {
public:
    explicit refused(const coldloop_error &error) : std::runtime_error(message(error)), status(error.status) {}
    const std::uint32_t status;

private:
    static std::string message(const coldloop_error &error)
    {
        std::string text(coldloop_error_message(&error, nullptr, 0), '\0');
        coldloop_error_message(&error, text.data(), text.size() + 1);
        return text;
    }
};

// Calls a function whose last two parameters are the places for the answer and for the details of a failure.
template <typename Function, typename Answer, typename... Given>
Answer ask(Function function, Answer answer, Given... given)
{
    coldloop_error error{};
    error.size = sizeof error;
    if (function(given..., &answer, &error) != COLDLOOP_STATUS_OK)
        throw refused(error);
    return answer;
}

double superheat_k(std::uint32_t refrigerant, double line_k, double gauge_pa, double air_pa)
{
    return ask(coldloop_superheat, 0.0, refrigerant, line_k, COLDLOOP_DATUM_GAUGE, gauge_pa, air_pa);
}

coldloop_state state_tp(std::uint32_t refrigerant, double kelvin, double pa_abs)
{
    coldloop_state state{};
    state.size = sizeof state;
    return ask(coldloop_state_temperature_pressure, state, refrigerant, COLDLOOP_REFERENCE_IIR, kelvin, pa_abs);
}

// The report for people; a string that owns its memory, filled in one call.
std::string report(const std::string &readings_json)
{
    std::size_t length = 0;
    std::string text(COLDLOOP_ANSWER_MAX, '\0');
    coldloop_error error{};
    error.size = sizeof error;
    if (coldloop_report(readings_json.c_str(), text.data(), text.size(), &length, &error) != COLDLOOP_STATUS_OK)
        throw refused(error);
    text.resize(length);
    return text;
}

} // namespace garage

int main()
try {
    const double air_pa = garage::ask(coldloop_standard_pressure, 0.0, 1600.0);
    const double low_side_pa = coldloop_psi_to_pa(35.0);
    std::cout << "superheat " << garage::superheat_k(COLDLOOP_REFRIGERANT_R134A, 285.15, low_side_pa, air_pa) << " K\n";
    std::cout << "suction vapour " << garage::state_tp(COLDLOOP_REFRIGERANT_R134A, 285.15, low_side_pa + air_pa).density_kg_m3
              << " kg/m3\n\n";
    std::cout << garage::report(R"({
        "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
        "conditions": {"ambient": "74 °F", "altitude": "1600 m"},
        "readings": {"low_side": "115 psig", "high_side": "125 psig", "vent": "72 °F"}})");
    try {
        garage::state_tp(COLDLOOP_REFRIGERANT_R134A, 900.0, 1e5);
    } catch (const garage::refused &error) {
        std::cout << "\nand nothing is made up: " << error.what() << '\n';
        return 0;
    }
    return 1;
} catch (const garage::refused &error) {
    std::cerr << error.what() << '\n';
    return 1;
}
