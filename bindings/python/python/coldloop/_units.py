"""Units: plain arithmetic without a check of range; the datum of a pressure does not change."""

from coldloop import _core
from coldloop._arrays import Answer, Errors, Numbers, shaped, strict


def _converted(what: str, errors: Errors, **argument: Numbers) -> Answer:
    raising = strict(errors)
    return shaped(lambda x: _core.converted(x, raising, what), argument)


def celsius_to_kelvin(celsius: Numbers, *, errors: Errors = "raise") -> Answer:
    """Kelvin of degrees Celsius; exact by definition.

    >>> celsius_to_kelvin(0.0)
    273.15
    """
    return _converted("celsius_to_kelvin", errors, celsius=celsius)


def fahrenheit_to_kelvin(fahrenheit: Numbers, *, errors: Errors = "raise") -> Answer:
    """Kelvin of degrees Fahrenheit; exact by definition.

    >>> round(fahrenheit_to_kelvin(74.0), 3)
    296.483
    """
    return _converted("fahrenheit_to_kelvin", errors, fahrenheit=fahrenheit)


def kelvin_to_celsius(temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
    """Degrees Celsius of kelvin.

    >>> round(kelvin_to_celsius(300.0), 2)
    26.85
    """
    return _converted("kelvin_to_celsius", errors, temperature_k=temperature_k)


def kelvin_to_fahrenheit(temperature_k: Numbers, *, errors: Errors = "raise") -> Answer:
    """Degrees Fahrenheit of kelvin.

    >>> round(kelvin_to_fahrenheit(300.0), 2)
    80.33
    """
    return _converted("kelvin_to_fahrenheit", errors, temperature_k=temperature_k)


def psi_to_pa(psi: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pascals of pounds-force per square inch. Source: exact definitions, NIST SP 811.

    >>> round(psi_to_pa(35.0), 1)
    241316.5
    """
    return _converted("psi_to_pa", errors, psi=psi)


def pa_to_psi(pressure_pa: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pounds-force per square inch of pascals.

    >>> round(pa_to_psi(241_316.5), 3)
    35.0
    """
    return _converted("pa_to_psi", errors, pressure_pa=pressure_pa)


def bar_to_pa(bar: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pascals of bars.

    >>> bar_to_pa(2.5)
    250000.0
    """
    return _converted("bar_to_pa", errors, bar=bar)


def pa_to_bar(pressure_pa: Numbers, *, errors: Errors = "raise") -> Answer:
    """Bars of pascals.

    >>> pa_to_bar(250e3)
    2.5
    """
    return _converted("pa_to_bar", errors, pressure_pa=pressure_pa)


def inhg_to_pa(inhg: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pascals of inches of mercury at 0 °C; a vacuum of 20 inches is a gauge pressure of minus that.

    >>> round(inhg_to_pa(20.0))
    67728
    """
    return _converted("inhg_to_pa", errors, inhg=inhg)


def pa_to_inhg(pressure_pa: Numbers, *, errors: Errors = "raise") -> Answer:
    """Inches of mercury of pascals.

    >>> round(pa_to_inhg(101_325.0), 2)
    29.92
    """
    return _converted("pa_to_inhg", errors, pressure_pa=pressure_pa)


def microns_to_pa(microns: Numbers, *, errors: Errors = "raise") -> Answer:
    """Pascals of microns of mercury.

    >>> round(microns_to_pa(500.0), 2)
    66.66
    """
    return _converted("microns_to_pa", errors, microns=microns)


def pa_to_microns(pressure_pa: Numbers, *, errors: Errors = "raise") -> Answer:
    """Microns of mercury of pascals.

    >>> round(pa_to_microns(66.66))
    500
    """
    return _converted("pa_to_microns", errors, pressure_pa=pressure_pa)
