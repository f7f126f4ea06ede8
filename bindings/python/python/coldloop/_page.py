"""A diagnosis as a page for a notebook: quiet, readable in black and white, and with every number in its unit."""

from html import escape
from typing import Any

STYLE = (
    "<style>.coldloop{font:14px/1.45 Georgia,serif;max-width:46em}"
    ".coldloop table{border-collapse:collapse;margin:.6em 0;font:inherit}"
    ".coldloop caption{text-align:left;font-style:italic;padding:.2em 0}"
    ".coldloop td,.coldloop th{padding:.12em .9em .12em 0;text-align:left;font-weight:normal}"
    ".coldloop td{border-bottom:1px solid #ccc}"
    ".coldloop .n{text-align:right;font-variant-numeric:tabular-nums}"
    ".coldloop .b{letter-spacing:-.5px;white-space:nowrap}"
    ".coldloop .v{font-size:1.2em;border-left:4px solid currentColor;padding-left:.6em}"
    ".coldloop small{opacity:.75}</style>"
)

NAMES = {
    "low_side": "low side",
    "high_side": "high side",
    "vent": "vent air",
    "discharge_superheat": "discharge superheat",
    "clutch_cycles": "clutch cycles",
}


def page(answer: dict[str, Any]) -> str:
    """The HTML of an answer."""
    return (
        f'{STYLE}<div class="coldloop"><p class="v">{verdict(answer)}</p>'
        f"{odds(answer)}{readings(answer)}{next_step(answer)}{notes(answer)}</div>"
    )


def verdict(answer: dict[str, Any]) -> str:
    """The verdict in words."""
    named = ", ".join(f"<b>{words(fault)}</b>" for fault in answer["named"])
    return f"{words(answer['verdict'])}{': ' + named if named else ''}"


def odds(answer: dict[str, Any]) -> str:
    """The likeliest explanations with a bar each."""
    rows = [(fault["fault"], fault["probability"], because(fault)) for fault in answer["faults"][:5]]
    rows.append(("none of these", answer["none_of_these"], ""))
    cells = (
        f'<tr><td>{words(name)}</td><td class="n">{percent(p)}</td><td class="b">{bar(p)}</td>'
        f"<td><small>{why}</small></td></tr>"
        for name, p, why in rows
        if p >= 0.005
    )
    return f"<table><caption>how likely</caption>{''.join(cells)}</table>"


def because(fault: dict[str, Any]) -> str:
    """The strongest argument for a fault."""
    arguments = [reason for reason in fault["because"] if reason["log_odds"] > 0.0]
    return escape(max(arguments, key=lambda reason: reason["log_odds"])["says"]) if arguments else ""


def readings(answer: dict[str, Any]) -> str:
    """What was measured beside what a sound system shows."""
    rows = ""
    for name, band in answer["expected"].items():
        unit = next(key.removeprefix("low_") for key in band if key.startswith("low_"))
        low, median, high, measured = (band[f"{end}_{unit}"] for end in ("low", "median", "high", "measured"))
        shown, of = shows(unit, name)
        seen = "-" if measured is None else shown(measured)
        mark = "" if measured is None or low <= measured <= high else " *"
        rows += (
            f'<tr><td>{NAMES.get(name, words(name))}, {of}</td><td class="n">{seen}{mark}</td>'
            f'<td class="n">{shown(low)} to {shown(high)}</td><td class="n">{shown(median)}</td></tr>'
        )
    head = "<tr><th></th><th>measured</th><th>95 % of sound systems</th><th>usually</th></tr>"
    return f"<table><caption>readings; * outside the band</caption>{head}{rows}</table>" if rows else ""


def next_step(answer: dict[str, Any]) -> str:
    """What to do next, and how long a check takes; nothing where nothing is left to do."""
    step = answer["next_step"]
    if step is None:
        return ""
    minutes = f" <small>({answer['next_checks'][0]['cost']['minutes']:.0f} min)</small>" if step["check"] else ""
    return f"<p>Next: {escape(step['says'])}{minutes}</p>"


def notes(answer: dict[str, Any]) -> str:
    """What made the answer less certain, then what can hurt."""
    lists = (("less certain because", answer["quality"]), ("take care", answer["cautions"]))
    return "".join(
        f"<p><small><i>{title}</i>: {' '.join(escape(note['says']) for note in items)}</small></p>"
        for title, items in lists
        if items
    )


def shows(unit: str, name: str) -> tuple[Any, str]:
    """How a figure in SI is shown, and in which unit."""
    if unit == "pa_gauge":
        return (lambda pa: f"{pa / 1e3:.0f}"), "kPa gauge"
    if unit == "hz":
        return (lambda hz: f"{hz * 60:.0f}"), "per minute"
    if name == "vent":
        return (lambda k: f"{k - 273.15:.1f}"), "°C"
    return (lambda k: f"{k:.1f}"), "K"


def words(identifier: str) -> str:
    """An identifier as words."""
    return escape(identifier.replace("-", " ").replace("_", " "))


def percent(probability: float) -> str:
    """A probability for people: neither certainty nor impossibility is claimed."""
    return "over 99 %" if probability > 0.99 else f"{100 * probability:.0f} %"


def bar(probability: float) -> str:
    """A bar of characters, which prints without colour."""
    full = round(20 * probability)
    return "█" * full + "░" * (20 - full)
