"""Units: plain arithmetic on whatever is given. A psi, a bar or an inch of mercury has the datum that it had before."""

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, shaped, strict


def _converted(what: str, errors: Errors, **argument: Numbers) -> Answer:
    raising = strict(errors)
    return shaped(lambda x: _core.converted(x, raising, what), argument)


def kelvin_of_celsius(celsius: Numbers, *, errors: Errors = "raise") -> Answer:
    """Kelvin of degrees Celsius; exact by definition.

    >>> kelvin_of_celsius(0.0)
    273.15
    """
    return _converted("kelvin_of_celsius", errors, celsius=celsius)


def kelvin_of_fahrenheit(fahrenheit: Numbers, *, errors: Errors = "raise") -> Answer:
    """Kelvin of degrees Fahrenheit; exact by definition.

    >>> round(kelvin_of_fahrenheit(74.0), 3)
    296.483
    """
    return _converted("kelvin_of_fahrenheit", errors, fahrenheit=fahrenheit)


def celsius_of_kelvin(temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
    """Degrees Celsius of kelvin.

    >>> round(celsius_of_kelvin(300.0), 2)
    26.85
    """
    return _converted("celsius_of_kelvin", errors, temperature_k=temperature_k)


def fahrenheit_of_kelvin(temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
    """Degrees Fahrenheit of kelvin.

    >>> round(fahrenheit_of_kelvin(300.0), 2)
    80.33
    """
    return _converted("fahrenheit_of_kelvin", errors, temperature_k=temperature_k)


def pa_of_psi(psi: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pascals of pounds-force per square inch. Source: exact definitions, NIST SP 811.

    >>> round(pa_of_psi(35.0), 1)
    241316.5
    """
    return _converted("pa_of_psi", errors, psi=psi)


def psi_of_pa(pressure_pa: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pounds-force per square inch of pascals.

    >>> round(psi_of_pa(241_316.5), 3)
    35.0
    """
    return _converted("psi_of_pa", errors, pressure_pa=pressure_pa)


def pa_of_bar(bar: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pascals of bars.

    >>> pa_of_bar(2.5)
    250000.0
    """
    return _converted("pa_of_bar", errors, bar=bar)


def bar_of_pa(pressure_pa: Numbers, *, errors: Errors = "raise") -> Answer:
    """Bars of pascals.

    >>> bar_of_pa(250e3)
    2.5
    """
    return _converted("bar_of_pa", errors, pressure_pa=pressure_pa)


def pa_of_inhg(inhg: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pascals of inches of mercury at 0 °C; a vacuum of 20 inches is a gauge pressure of minus that.

    >>> round(pa_of_inhg(20.0))
    67728
    """
    return _converted("pa_of_inhg", errors, inhg=inhg)


def inhg_of_pa(pressure_pa: Numbers, *, errors: Errors = "raise") -> Answer:
    """Inches of mercury of pascals.

    >>> round(inhg_of_pa(101_325.0), 2)
    29.92
    """
    return _converted("inhg_of_pa", errors, pressure_pa=pressure_pa)


def pa_of_microns(microns: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pascals of microns of mercury.

    >>> round(pa_of_microns(500.0), 2)
    66.66
    """
    return _converted("pa_of_microns", errors, microns=microns)


def microns_of_pa(pressure_pa: Numbers, *, errors: Errors = "raise") -> Answer:
    """Microns of mercury of pascals.

    >>> round(microns_of_pa(66.66))
    500
    """
    return _converted("microns_of_pa", errors, pressure_pa=pressure_pa)
