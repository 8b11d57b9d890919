"""The heap model's right-hand side once more, for SciPy's integrators.

Reads problems (heap.problems.json, written by problems.ts) and the figures of reference/heap-twin.json, integrates each
with BDF and LSODA, and writes what it finds to heap.golden.json. The formulas are written anew from
docs/models/heap-twin.md, without the tables and the step limits of the program.

Needs NumPy and SciPy (Debian: python3-scipy). Run by `node scripts/second-method/run.mjs`.
"""

import json
import pathlib
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp
from scipy.linalg import solve_banded

HERE = pathlib.Path(__file__).parent
FIGURES = json.loads((HERE / "../../reference/heap-twin.json").read_text())
DAY = 86400.0
PRESSURE = FIGURES["airPressure_Pa"]["value"]
POOLS = ["fast", "hemicellulose", "cellulose", "lignin"]
O2 = np.array([FIGURES["pools"][p]["oxygen_kgPerKg"] for p in POOLS])
H2O = np.array([FIGURES["pools"][p]["water_kgPerKg"] for p in POOLS])
C = np.array([FIGURES["pools"][p]["carbon_kgPerKg"] for p in POOLS])
C_INERT = FIGURES["pools"]["inert"]["carbon_kgPerKg"]


def value(name):
    return FIGURES[name]["value"]


CW, CI, MELT, SPAN = value("waterHeat_JPerKgK"), value("iceHeat_JPerKgK"), value("meltingHeat_JPerKg"), value("freezingSpan_K")
CASH, CORG = value("ashHeat_JPerKgK"), FIGURES["organicHeat_JPerKgK"]["typical"]
CAIR, L0, CV = value("airHeat_JPerKgK"), value("vapourAtZero_JPerKg"), value("vapourHeat_JPerKgK")
RHO_W, RHO_O, RHO_A = value("waterDensity_kgPerM3"), value("organicDensity_kgPerM3"), value("ashDensity_kgPerM3")
FRESH = 0.2314
PER_MASS = 28.97 / 31.998


def saturation(t):
    return 611.21 * np.exp((18.678 - t / 234.5) * t / (257.14 + t))


def cardinal(t, curve):
    lo, best, hi = curve["coldest_degC"], curve["best_degC"], curve["hottest_degC"]
    f = (t - hi) * (t - lo) ** 2 / ((best - lo) * ((best - lo) * (t - best) - (best - hi) * (best + lo - 2 * t)))
    return np.where((t <= lo) | (t >= hi), 0.0, f)


def logistic(name, x):
    return 1 / (1 + np.exp(FIGURES[name]["offset"] - FIGURES[name]["slope"] * x))


def smooth(x, a, b):
    t = np.clip((x - a) / (b - a), 0, 1)
    return t * t * (3 - 2 * t)


def temperature(energy, capacity, water):
    freezing = capacity + MELT * water / SPAN
    frozen = -SPAN * freezing
    below = -SPAN + (energy - frozen) / (capacity - (CW - CI) * water)
    return np.where(energy >= 0, energy / capacity, np.where(energy >= frozen, energy / freezing, below))


class Heap:
    """One problem: state y = energy, water, four pools, organic, ammoniacal and nitrate N, activity, pH, each by shell; settled."""

    def __init__(self, problem):
        self.p = problem
        self.n = problem["shells"]["count"]
        for key in ["volume_share", "plan_share", "inward_perM", "outward_perM"]:
            setattr(self, key, np.array(problem["shells"][key]))
        self.outline = problem["shells"]["outline"]
        self.inert, self.ash, self.char = (np.array(problem["state"][k]) for k in ["inert_kg", "ash_kg", "char_kg"])
        self.built, self.built_dry = np.array(problem["state"]["built_m3"]), np.array(problem["state"]["builtDry_kg"])
        self.oxygen = np.full(self.n, FRESH)
        self.calls = 0

    def start(self):
        s = self.p["state"]
        keys = ["energy_J", "water_kg", "fast_kg", "hemicellulose_kg", "cellulose_kg", "lignin_kg", "organicN_kg",
                "ammoniacalN_kg", "nitrateN_kg", "activity_share", "pH"]
        return np.concatenate([np.array(s[k]) for k in keys] + [[0.0]])

    def rates(self, _t, y):
        self.calls += 1
        n, tr, st, w = self.n, self.p["traits"], self.p["standing"], self.p["weather"]
        energy, water = y[:n], y[n:2 * n]
        pools = y[2 * n:6 * n].reshape(4, n)
        organic, ammoniacal, nitrate, activity, ph = y[6 * n:11 * n].reshape(5, n)
        settled = y[-1]
        mineral = self.ash + self.char
        volatile = pools.sum(0) + self.inert
        dry = volatile + mineral
        capacity = CW * water + CORG * volatile + CASH * mineral
        t = temperature(energy, capacity, water)
        tk = t + 273.15

        # Pores
        solid = volatile / RHO_O + mineral / RHO_A
        wet = water / RHO_W
        volume = np.maximum(self.built * dry / self.built_dry * (1 - settled), (solid + wet) / (1 - 0.005))
        air = 1 - (solid + wet) / volume
        pores = volume - solid
        conductivity = FIGURES["conductivity"]["dry_WPerMK"] + FIGURES["conductivity"]["wet_WPerMK"] * wet / pores
        permeability = tr["permeability_m2"] * (air / FIGURES["permeabilityRises"]["atAir_share"]) ** 3
        left = volume.sum() / self.built.sum()

        # Microbes
        wanted = tr["wantedN_kgPerKg"]
        warmth, slow_warmth = cardinal(t, tr["curve"]), cardinal(t, tr["slowCurve"])
        thriving = np.maximum(warmth, tr["coolPace_ratio"] * cardinal(t, tr["coolCurve"]))
        k = np.array([tr["fast_perS"], tr["hemicellulose_perS"], tr["cellulose_perS"], tr["lignin_perS"]])
        rates = k[:, None] * np.array([thriving, slow_warmth, slow_warmth, slow_warmth])
        rich = np.array([value("fastNitrogen_ratio"), 1, 1, 1])
        eaten_c = C[:, None] * rates * pools
        released = (organic * (rich @ eaten_c) / (eaten_c.sum(0) + 1e-30)
                    / ((rich * C) @ pools + C_INERT * self.inert + 1e-12))
        inorganic = ammoniacal + nitrate
        found = inorganic / (inorganic + value("mineralHalf_kgPerKg") * dry + 1e-12)
        taken = np.where(released < wanted, (wanted - released) * found, 0)
        nitrogen = np.where(released < wanted, (released + taken) / wanted, 1)
        freed = np.maximum(0, released - wanted)
        moisture = logistic("moistureLogistic", water / (water + dry + 1e-12))
        brake = FIGURES["acidBrake"]
        sour = 1 - smooth(ph, brake["belowPH"] - brake["overPH"], brake["belowPH"] + brake["overPH"])
        warm = smooth(t, brake["aboveTemp_degC"] - brake["overTemp_degC"], brake["aboveTemp_degC"] + brake["overTemp_degC"])
        brakes = moisture * logistic("airSpaceLogistic", air) * (1 - (1 - brake["left_share"]) * sour * warm) * nitrogen
        lively = thriving * brakes
        hunger = activity * brakes * (O2 @ (rates * pools))
        nitrifying = (value("oxygenPerNitrified_kgPerKg") * value("nitrification_perDay") / DAY * ammoniacal * moisture
                      * cardinal(t, FIGURES["nitrifiers"]))

        # Draught
        d = self.outline["directions"]
        length = left ** (1 / d)
        overall, area = length ** (d - 2), length ** (d - 1)
        e = saturation(t) * (1 - np.exp(-water / (FIGURES["waterActivity"]["u0_kgPerKg"] * dry)))
        humid = 0.622 * e / (PRESSURE - e)
        dry_air = (PRESSURE - e) / (287.05 * tk)
        outside_k = w["temp_degC"] + 273.15
        eo = w["vapour_Pa"]
        outside = (PRESSURE - 0.378 * eo) / (287.05 * outside_k)
        wind = w["wind_mPerS"] * st["wind_share"]
        push = 0.5 * outside * wind ** 2 / (self.outline["height_m"] * length)
        lift = np.maximum(0, 9.80665 * (outside - (PRESSURE - 0.378 * e) / (287.05 * tk)))
        own = ((PRESSURE - eo) / (287.05 * outside_k) * permeability * (lift + push) * self.outline["plan_m2"] * area
               * self.plan_share * st["open_share"] / value("airViscosity_PaS"))
        drawn = np.cumsum(own)
        contact = tr["plumeContact_share"]
        risen = np.empty(n)
        last = 0.0
        for i in range(n):
            last = own[i] + contact * last
            risen[i] = last
        handed = np.concatenate([[0], contact * risen[:-1]])
        through = drawn + handed

        # Faces
        relative = (tk / 293.15) ** 2
        open_ = air ** 2 * relative
        heat_face, gas_face, vapour_face = np.empty(n), np.empty(n), np.empty(n)
        heat_face[:-1] = overall / (self.outward_perM[:-1] / conductivity[:-1] + self.inward_perM[1:] / conductivity[1:])
        through_pores = overall / (self.outward_perM[:-1] / open_[:-1] + self.inward_perM[1:] / open_[1:])
        d_o2, d_h2o = FIGURES["oxygenDiffusivity"]["at20_m2PerS"], FIGURES["vapourDiffusivity"]["at20_m2PerS"]
        gas_face[:-1], vapour_face[:-1] = d_o2 * through_pores, d_h2o * through_pores
        o = self.outline
        whole = (o["top_m2"] + o["side_m2"] + o["ground_m2"]) * area
        half = overall * conductivity[-1] / self.outward_perM[-1]
        open_half = overall * open_[-1] / self.outward_perM[-1]
        film = value("surface_WPerM2K") + value("windOnSurface_JPerM3K") * wind
        heat_face[-1] = gas_face[-1] = vapour_face[-1] = sun = 0
        for key in ["top", "side"]:
            a = o[key + "_m2"] * area
            if a == 0:
                continue
            share = a / whole
            cover = a / (st[key]["insulation_m2KPerW"] + 1 / film)
            g = share * half * cover / (share * half + cover)
            heat_face[-1] += g
            if key == "top":
                sun += g * 0.85 * st["sun_share"] * w["sun_WPerM2"] / film
            out = a / (st[key]["vapour_sPerM"] + value("surfaceVapour_sPerM"))
            gas_face[-1] += share * open_half * d_o2 * out / (share * open_half * d_o2 + out)
            vapour_face[-1] += share * open_half * d_h2o * out / (share * open_half * d_h2o + out)
        ga = o["ground_m2"] * area
        soil = 4 * value("groundConductivity_WPerMK") * np.sqrt(ga / np.pi)
        to_ground = ga / whole * half
        ground = 0 if ga == 0 else to_ground * soil / (to_ground + soil)

        # Oxygen, quasi-steady
        per_mass = PER_MASS * (1 - e / PRESSURE)
        kh = tr["oxygenHalf_share"]
        want = hunger + nitrifying
        face = gas_face * 0.5 * (dry_air + np.append(dry_air[1:], dry_air[-1]))
        inner = np.concatenate([[0], face[:-1]])
        x = self.oxygen
        for _ in range(60):
            there = per_mass * x + kh
            steep = per_mass * kh / there ** 2
            fed = per_mass * x / there
            right = -want * (fed - steep * x)
            right[-1] += (face[-1] + drawn[-1]) * FRESH
            bands = np.zeros((3, n))
            bands[0, 1:] = -(face[:-1] + drawn[:-1])
            bands[1] = through + inner + face + want * steep
            bands[2, :-1] = -(inner + handed)[1:]
            new = np.maximum(0, solve_banded((1, 1), bands, right))
            moved = np.abs(new - x).max()
            x = new
            if moved < 1e-12:
                break
        self.oxygen = x
        fed = per_mass * x / (per_mass * x + kh)

        # Rotting
        eaten_pools = activity * brakes * fed * rates * pools
        eaten, formed, breathed, lost = O2 @ eaten_pools, H2O @ eaten_pools, C @ eaten_pools, eaten_pools.sum(0)
        d_energy = tr["heat_JPerKgOxygen"] * eaten + t * (CW * formed - CORG * lost)
        d_water = formed.copy()
        carbon = breathed * tr["eatenPerBreathed"]
        per = carbon * taken / (inorganic + 1e-12)
        nitrified = nitrifying * fed / value("oxygenPerNitrified_kgPerKg")
        lack = np.maximum(0, 1 - fed / tr["freshFed_share"])
        denitrified = value("denitrification_perDay") / DAY * lack * warmth * nitrate
        d_organic = per * inorganic - carbon * freed
        d_ammoniacal = carbon * freed - per * ammoniacal - nitrified
        d_nitrate = nitrified - per * nitrate - denitrified
        kill = FIGURES["heatKill"]
        dying = value("dying_perDay") / DAY + kill["perKAndDay"] / DAY * np.maximum(0, t - kill["above_degC"])
        d_activity = tr["growth_perS"] * lively * fed * activity * (1 - activity) - dying * (activity - value("dormant_share"))
        acid = FIGURES["acidity"]
        conc = ammoniacal / (water + 1e-12)
        ripe = acid["ripePH"] + acid["ammoniaRaises"] * conc / (conc + acid["ammoniaHalf_kgPerKg"])
        d_ph = acid["rate_perDay"] / DAY * warmth * activity * (ripe + lack ** 2 * (acid["sourPH"] - ripe) - ph)

        # Carried
        out_humid = 0.622 * eo / (PRESSURE - eo)
        hv = lambda temp: L0 + CV * temp
        gas = CAIR * t + humid * hv(t)
        gas_out = CAIR * w["temp_degC"] + out_humid * hv(w["temp_degC"])
        d_energy += drawn * np.append(gas[1:], gas_out) + handed * np.concatenate([[0], gas[:-1]]) - through * gas
        d_water += drawn * np.append(humid[1:], out_humid) + handed * np.concatenate([[0], humid[:-1]]) - through * humid
        rho_v = np.append(e / (461.5 * tk), eo / (461.5 * outside_k))
        t_next = np.append(t[1:], w["temp_degC"])
        vap = vapour_face * (rho_v[:-1] - rho_v[1:])
        vap_heat = vap * hv(np.where(vap > 0, t, t_next))
        heat = heat_face * (t - t_next)
        d_energy -= heat + vap_heat
        d_energy[1:] += (heat + vap_heat)[:-1]
        d_water -= vap
        d_water[1:] += vap[:-1]
        d_energy[-1] += sun - ground * (t[-1] - w["ground_degC"])

        # Rain and draining
        rain = w["rain_kgPerM2S"] * st["rain_share"] * o["plan_m2"]
        d_energy[-1] += rain * CW * w["temp_degC"]  # above freezing, as in all problems
        d_water[-1] += rain
        held = np.minimum(tr["holds_kgPerKg"] * (dry - self.char) + value("charHolds_kgPerKg") * self.char, 0.97 * RHO_W * pores)
        dissolved = (water + 1e-12) / (water + 1e-12 + tr["charSorption_LPerKg"] * self.char)
        within = 1.0
        for i in range(n - 1, -1, -1):
            plan = within
            within -= self.plan_share[i]
            if water[i] <= held[i] or t[i] <= 0:
                continue
            off = (water[i] - held[i]) / (value("drains_h") * 3600)
            share = 0 if i == 0 else 0.5 * max(0, within) / plan
            am, ni = off * dissolved[i] * ammoniacal[i] / water[i], off * nitrate[i] / water[i]
            d_energy[i] -= off * CW * t[i]
            d_water[i] -= off
            d_ammoniacal[i] -= am
            d_nitrate[i] -= ni
            if i > 0:
                d_energy[i - 1] += share * off * CW * t[i]
                d_water[i - 1] += share * off
                d_ammoniacal[i - 1] += share * am
                d_nitrate[i - 1] += share * ni

        # Ammonia
        amm, henry = FIGURES["ammonium"], FIGURES["henry"]
        pka = amm["intercept"] + amm["slope_K"] / tk
        h = henry["at25_molPerM3Pa"] * np.exp(henry["slope_K"] * (1 / tk - 1 / 298.15)) * 8.3144626 * tk
        c_gas = tr["ammoniaGas_share"] / (1 + 10 ** (pka - ph)) * dissolved * ammoniacal / ((water / RHO_W + 1e-12) * h)
        per_air = c_gas / dry_air
        diffused = gas_face * (c_gas - np.append(c_gas[1:], 0))
        d_ammoniacal += (drawn * np.append(per_air[1:], 0) + handed * np.concatenate([[0], per_air[:-1]])
                         - through * per_air - diffused)
        d_ammoniacal[1:] += diffused[:-1]
        d_settled = (tr["settling_share"] - settled) / (value("settles_day") * DAY)
        return np.concatenate([d_energy, d_water, (-eaten_pools).ravel(), d_organic, d_ammoniacal, d_nitrate, d_activity, d_ph,
                               [d_settled]])

    def shown(self, y):
        n = self.n
        pools = y[2 * n:6 * n].reshape(4, n)
        capacity = CW * y[n:2 * n] + CORG * (pools.sum(0) + self.inert) + CASH * (self.ash + self.char)
        return {
            "temp_degC": temperature(y[:n], capacity, y[n:2 * n]).tolist(),
            "water_kg": y[n:2 * n].tolist(),
            "volatile_kg": (pools.sum(0) + self.inert).tolist(),
            "nitrogen_kg": y[6 * n:9 * n].reshape(3, n).sum(0).tolist(),
        }


def scales(y, n):
    """Absolute tolerances: a ten-millionth of what a heap holds of each."""
    blocks = [np.abs(y[i * n:(i + 1) * n]).max() for i in range(11)]
    nitrogen = max(blocks[6], blocks[7], blocks[8])
    blocks[6] = blocks[7] = blocks[8] = nitrogen
    return np.concatenate([np.full(n, max(b, 1e-3)) for b in blocks] + [[1.0]])


def integrate(problem, method, rtol):
    heap = Heap(problem)
    y0 = heap.start()
    days = problem["days"]
    begun = time.process_time()
    solution = solve_ivp(heap.rates, (0, days * DAY), y0, method=method, rtol=rtol, atol=rtol * 1e-1 * scales(y0, heap.n),
                         t_eval=np.array(problem["shown_day"]) * DAY, max_step=DAY)
    taken = time.process_time() - begun
    if not solution.success:
        raise RuntimeError(f"{problem['name']} {method}: {solution.message}")
    return {"method": method, "rtol": rtol, "calls": heap.calls, "seconds": taken,
            "shown": [heap.shown(y) for y in solution.y.T]}


def main():
    problems = json.loads((HERE / "heap.problems.json").read_text())
    rtols = {"golden": 1e-7, "bench": float(sys.argv[2]) if len(sys.argv) > 2 else 1e-3}
    mode = sys.argv[1] if len(sys.argv) > 1 else "golden"
    found = []
    for problem in problems:
        runs = [integrate(problem, method, rtols[mode]) for method in ["BDF", "LSODA"]]
        found.append({"name": problem["name"], "runs": runs})
        print(problem["name"], [(r["method"], r["calls"], round(r["seconds"], 2), r["shown"][-1]["temp_degC"][0]) for r in runs], file=sys.stderr)
    json.dump(found, sys.stdout)


if __name__ == "__main__":
    main()
