"""The same network in pgmpy gives the same posteriors: fault -> answers, with the chances read from the tables here."""

import tomllib
from pathlib import Path

import coldloop
import pytest
from pgmpy.factors.discrete import TabularCPD
from pgmpy.inference import VariableElimination
from pgmpy.models import DiscreteBayesianNetwork

ROOT = Path(__file__).parents[2]
OBSERVATIONS = tomllib.loads((ROOT / "tables/checks/observations.toml").read_text())
ROWS = {row["id"]: row for row in OBSERVATIONS["observation"]}
PRIORS = {
    row["id"]: row["prior"]
    for file in sorted((ROOT / "tables/faults").glob("*.toml"))
    for row in tomllib.loads(file.read_text())["fault"]
}
NONE = "none of these"
PRIOR_OF_NONE = 0.03
# How often an answer is noted wrongly (engineering judgement, src/diagnosis/looks.rs): by an instrument, and by people.
MISTAKEN = {"identifier_shows_other": 0.005, "hub_turns_freely": 0.02, "hub_locked": 0.02}
MISTAKEN_BY_PEOPLE = 0.08

CAR = {
    "system": {"refrigerant": "R-134a", "expansion": "txv", "compressor": "fixed-clutch"},
    "conditions": {"ambient": "29 °C", "altitude": "0 m"},
}
VAN = {
    "system": {"refrigerant": "R-1234yf", "expansion": "orifice-tube", "compressor": "variable-external"},
    "conditions": {"ambient": "35 °C", "altitude": "1600 m", "humidity": "40 %"},
}
READ = {"low_side": "55 psig", "high_side": "190 psig", "vent": "14 °C"}

SEEN = [
    {"hub_turns_freely": False, "sight_glass_bubbles": True},
    {"oil_traces": True, "compressor_noisy": False, "recently_filled": True},
    {"belt_slips": True, "clutch_engaged": True, "sides_equalise_quickly": False},
    # These answers share a cause besides the fault, so that they are correlated and count less.
    {"sight_glass_bubbles": True, "hissing_at_expansion": True},
    {"frost_on_suction_line": True, "evaporator_frosted": False, "airflow_fades": True, "airflow_weak": False},
    {"condenser_face_blocked": True, "water_lowers_high_side": True, "recently_filled": False, "oil_traces": False},
]


def posterior(answer):
    """The probability of every fault that the system can have, and of none of them."""
    told = {entry["fault"]: entry["probability"] for entry in answer["faults"]}
    return {**told, NONE: answer["none_of_these"]}


def chance(observation, hypothesis, weight):
    """The chance of "yes": the table's, now and then noted wrongly, its log-odds times the weight.

    An unknown cause is drawn towards even odds.
    """
    row = ROWS[observation]
    if hypothesis == NONE:
        yes = 0.8 * row["otherwise"] + 0.1
    else:
        yes = {entry["fault"]: entry["chance"] for entry in row["yes"]}.get(hypothesis, row["otherwise"])
    mistaken = MISTAKEN.get(observation, MISTAKEN_BY_PEOPLE)
    yes = (1 - 2 * mistaken) * yes + mistaken
    return yes**weight / (yes**weight + (1 - yes) ** weight)


def weight(observation, seen):
    """What n equally correlated answers count each: 1 / (1 + (n - 1) r)."""
    weights = [1.0]
    for group in OBSERVATIONS["shared"]:
        if observation in group["members"]:
            others = sum(1 for other in group["members"] if other in seen and other != observation)
            weights.append(1 / (1 + others * group["correlation"]))
    return min(weights)


def by_pgmpy(priors, seen):
    """The posterior of a network with one node for the cause and one for each answer."""
    names = list(priors)
    total = sum(priors.values())
    model = DiscreteBayesianNetwork([("cause", observation) for observation in seen])
    model.add_cpds(
        TabularCPD("cause", len(names), [[p / total] for p in priors.values()], state_names={"cause": names})
    )
    for observation in seen:
        yes = [chance(observation, name, weight(observation, seen)) for name in names]
        model.add_cpds(
            TabularCPD(
                observation,
                2,
                [yes, [1 - p for p in yes]],
                evidence=["cause"],
                evidence_card=[len(names)],
                state_names={observation: [True, False], "cause": names},
            )
        )
    assert model.check_model()
    found = VariableElimination(model).query(["cause"], evidence=seen, show_progress=False)
    return {name: found.get_value(cause=name) for name in names}


def agree(ours, theirs):
    assert ours.keys() == theirs.keys()
    for name in ours:
        assert ours[name] == pytest.approx(theirs[name], rel=1e-9, abs=1e-15), name


@pytest.mark.parametrize("vehicle", [CAR, VAN], ids=["car", "van"])
@pytest.mark.parametrize("seen", SEEN, ids=lambda seen: " ".join(seen))
def test_answers_alone_move_the_priors_as_in_a_network(vehicle, seen):
    ours = posterior(coldloop.diagnose({**vehicle, "observations": seen}).to_dict())
    priors = {name: PRIOR_OF_NONE if name == NONE else PRIORS[name] for name in ours}
    agree(ours, by_pgmpy(priors, seen))


@pytest.mark.parametrize("vehicle", [CAR, VAN], ids=["car", "van"])
@pytest.mark.parametrize("seen", SEEN, ids=lambda seen: " ".join(seen))
def test_readings_and_answers_come_together_as_in_a_network(vehicle, seen):
    """What the readings made likely is the prior of what was seen, for the two are independent under a fault."""
    read = {**vehicle, "readings": READ}
    before = posterior(coldloop.diagnose(read).to_dict())
    agree(posterior(coldloop.diagnose({**read, "observations": seen}).to_dict()), by_pgmpy(before, seen))
