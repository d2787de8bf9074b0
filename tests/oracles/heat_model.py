"""The equations of docs/heat.md written a second time, as they stand there and for SciPy: nothing of core's code, grid or steps.

State: temperature and water of each cell, and the film of water on the surface. The skin has no heat of its own, so its
temperature is solved for each time it is asked for.
"""

import numpy as np
from scipy.integrate import solve_ivp

WATER_HEAT = 4186.0
SIGMA = 5.670374e-8
PRESSURE = 101_325.0
WATER_TO_AIR = 0.621945
HALF_COVERED, RUNS_OFF, BARK_HOLDS, VENTS = 0.1, 600.0, 0.15, 5e-4
CRITICAL_K, CRITICAL_PA = 647.096, 22.064e6
IAPWS = [(-7.85951783, 1), (1.84408259, 1.5), (-11.7866497, 3), (22.6807411, 3.5), (-15.9618719, 4), (1.80122502, 7.5)]


def saturation_pa(celsius):
    kelvin = celsius + 273.15
    below = 1 - kelvin / CRITICAL_K
    return CRITICAL_PA * np.exp(CRITICAL_K / kelvin * sum(a * below**power for a, power in IAPWS))


def most_vapor(celsius):
    """kg a kg of dry air over water; a tenth of the air is always left."""
    pa = saturation_pa(min(max(celsius, -5.0), 145.0))
    return WATER_TO_AIR * pa / max(PRESSURE - pa, 0.1 * PRESSURE)


def holds_share(celsius):
    """Van der Sman's equilibrium, as a share of what cold meat holds."""
    y = 0.745 - 0.345 / (1 + 30 * np.exp(-0.25 * (celsius - 52)))
    return y / (1 - y) / (0.745 / 0.255)


def runs(celsius):
    t = np.clip(celsius, 0, 100)
    return 0.2254 + 0.008456 * t + 3.616e-5 * t * t


class Meat:
    """One meat on a grid whose edges are shares of the half thickness."""

    def __init__(self, member, edges):
        self.m = member
        half, shape = member["half_thickness"], member["shape"]
        middle = (edges[1:] + edges[:-1]) / 2
        self.n = len(middle)
        self.volume = np.diff(edges ** (shape + 1)) / (shape + 1) * half
        distance = np.append(np.diff(middle), 1 - middle[-1]) * half
        self.through = edges[1:] ** shape / distance
        self.drips_from = HALF_COVERED * member["wetness"] / (1 - member["wetness"])
        near, far = middle[0] ** 2, middle[1] ** 2
        self.core_share = near / (far - near)

    def start(self):
        m = self.m
        return np.concatenate([np.full(self.n, m["start_c"]), np.full(self.n, m["water"]), [self.drips_from]])

    def core(self, state):
        return state[0] - (state[1] - state[0]) * self.core_share

    def rates(self, state, pit_c, vapor):
        m, n = self.m, self.n
        temp, water, film = state[:n], state[n : 2 * n], state[-1]
        most = m["water"] * (1 - m["lets_go"] * (1 - holds_share(temp)))
        excess = water - most
        onto = self.seeps(temp, water, excess, most[-1], film)
        k = m["dry_conducts"][0] + m["dry_conducts"][1] * temp
        k = k + (m["water_conducts"][0] + m["water_conducts"][1] * temp) * water / m["water"]
        inward = k[-1] * self.through[-1]
        skin, evaporates = self.skin(temp[-1], inward, film, pit_c, vapor)
        heat = np.empty(n + 1)
        heat[0] = 0
        heat[1:-1] = (k[:-1] + k[1:]) / 2 * self.through[:-1] * (temp[:-1] - temp[1:])
        heat[-1] = inward * (temp[-1] - skin)
        juice = np.append(0.0, onto)
        carried = juice * WATER_HEAT
        # The cell that juice leaves gives it its heat.
        giver = np.append(temp[0], np.where(juice[1:] > 0, temp, np.append(temp[1:], temp[-1])))
        d_water = -np.diff(juice) / self.volume
        d_heat = -np.diff(heat + carried * giver) / self.volume
        d_temp = (d_heat - WATER_HEAT * d_water * temp) / (m["dry_heat"] + WATER_HEAT * water)
        d_film = onto[-1] - evaporates - max(film - self.drips_from, 0) / RUNS_OFF
        return np.concatenate([d_temp, d_water, [d_film]])

    def seeps(self, temp, water, excess, most, film):
        """kg/(m² s) through the outer face of each cell."""
        m = self.m
        filled = np.append((water[:-1] + water[1:]) / 2, water[-1]) / m["water"]
        at = np.append((temp[:-1] + temp[1:]) / 2, temp[-1])
        open_ = runs(at) * filled**3 * m["seep"] * self.through
        draws = -most * (1 - BARK_HOLDS) * max(1 - film / self.drips_from, 0)
        beyond = np.append(excess[1:], draws)
        through = open_ * (excess - beyond)
        through[-1] = max(through[-1], 0)
        return through

    def skin(self, inner, inward, film, pit_c, vapor):
        """The temperature at which the surface's heat balances, and what evaporates there, kg/(m² s)."""
        m = self.m
        film = max(film, 0)

        def balance(skin):
            k, k_pit = skin + 273.15, pit_c + 273.15
            radiation = m["emissivity"] * SIGMA * (k * k + k_pit * k_pit) * (k + k_pit)
            most = most_vapor(skin)
            pull = m["convection"] / (1006 + 1860 * vapor) * (most - vapor)
            pull += VENTS * max(most - WATER_TO_AIR / 0.1, 0)
            evaporates = pull * film / (film + HALF_COVERED) if pull > 0 else pull
            latent = 2.501e6 - 2326 * skin
            takes = (m["convection"] + radiation) * (pit_c - skin)
            return takes - latent * evaporates - inward * (skin - inner), evaporates

        low, high = sorted([inner, pit_c])
        low -= 60
        return falling_root(balance, low, high + 5)


def falling_root(balance, low, high):
    """The zero of what falls, by halving and secants (Illinois)."""
    (f_low, _), (f_high, _) = balance(low), balance(high)
    side = 0
    for _ in range(60):
        at = (f_low * high - f_high * low) / (f_low - f_high)
        f, evaporates = balance(at)
        if abs(f) < 1e-7 or high - low < 1e-10:
            break
        if f > 0:
            low, f_low = at, f
            f_high, side = (f_high / 2, 1) if side == 1 else (f_high, 1)
        else:
            high, f_high = at, f
            f_low, side = (f_low / 2, -1) if side == -1 else (f_low, -1)
    return at, evaporates


def graded(n, power=1.5):
    return 1 - (1 - np.arange(n + 1) / n) ** power


def follow(meat, seconds, pit_c, vapor, rtol, until=None, atol=None):
    """SciPy's BDF over one constant pit; where `until` is given, the time in seconds at which the core reaches it."""
    rates = lambda t, state: meat.rates(state, pit_c, vapor)
    events = None
    if until is not None:
        events = lambda t, state: meat.core(state) - until
        events.terminal = True
    atol = rtol * 1e-2 if atol is None else atol
    return solve_ivp(rates, (0, seconds), meat.start(), method="BDF", rtol=rtol, atol=atol, events=events)
