/*
 * The step of the heap model once more in C, for the benchmark only: how far a compiled language is from what the
 * program does. The same formulas in the same order, the same tables, steps of one length, weather that stands still.
 *
 *   heap-twin PROBLEM REPEATS   reads numbers in the order of heap-twin-c.ts, prints CPU seconds of each run
 *                               on the first line and the temperatures of the shells at its end on the second.
 *
 * heap-twin.figures.h holds the figures of reference/heap-twin.json and is written by the benchmark.
 */
#include <float.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "heap-twin.figures.h"

#define MOST 64
#define TRACE 1e-12
#define FRESH 0.2314
#define PER_MASS (28.97 / 31.998)
#define KELVIN 273.15
#define DAY 86400.0
#define QUANTITIES 11

enum { ENERGY, WATER, FAST, HEMI, CELL, LIGNIN, ORGANIC_N, AMMONIACAL_N, NITRATE_N, ACTIVITY, PH };

typedef double Row[MOST];
typedef struct { Row inner, own, outer, right; } Rows;

typedef struct {
  Row is[QUANTITIES];
  Row inert, ash, ch, built, builtDry, oxygen;
  double settled;
} State;

typedef struct { Row of[QUANTITIES]; Row volatileLost; } Rates;

typedef struct {
  Row temp, slope, dry, pores, air, conductivity, permeability, vapour, vapourSlope, humidity, humiditySlope, dryAir,
      place, warmth, liveliness, pace, hunger, nitrifying, fed, fedSteep, drawn, risen, through, heatFace, vapourFace,
      gasFace, ammoniaInGas, freed, taken;
  Rows ammonia, rows;
  double surfaceAir, surfaceGround, sun;
} Fields;

static struct {
  int count, directions;
  double height, plan, top, side, ground;
  Row planShare, inward, outward;
} shells;
static struct {
  double fast, hemi, cell, lignin, coldest, best, hottest, half, freshFed, growth, heat, permeability, contact, holds,
      settling, eatenPerBreathed, wantedN, ammoniaGas, charSorption;
} traits;
static struct { double topInsulation, topVapour, sideInsulation, sideVapour, open, wind, rain, sun; } standing;
static struct { double temp, vapour, wind, rain, sun, ground; } weather;

/* ---- tables ---- */

#define COLDEST (-60)
#define PER_KELVIN 4
#define PLACES ((140 - COLDEST) * PER_KELVIN + 1)
#define STEPS 512
static double saturation[PLACES], ammonium[PLACES], dissolved[PLACES], moistureTable[STEPS + 2], airTable[STEPS + 2];

static double saturationOf(double t) { return 611.21 * exp(((18.678 - t / 234.5) * t) / (257.14 + t)); }

static void fillTables(void) {
  for (int i = 0; i < PLACES; i++) {
    double t = COLDEST + (double)i / PER_KELVIN, k = t + KELVIN;
    saturation[i] = saturationOf(t);
    ammonium[i] = pow(10, AMMONIUM_INTERCEPT + AMMONIUM_SLOPE / k);
    dissolved[i] = HENRY_AT25 * exp(HENRY_SLOPE * (1 / k - 1 / 298.15)) * 8.3144626 * k;
  }
  for (int i = 0; i < STEPS + 2; i++) {
    moistureTable[i] = 1 / (1 + exp(MOISTURE_OFFSET - (MOISTURE_SLOPE * i) / STEPS));
    airTable[i] = 1 / (1 + exp(AIR_OFFSET - (AIR_SLOPE * i) / STEPS));
  }
}

static inline double between(const double *table, double place) {
  int below = (int)place;
  double low = table[below];
  return low + (place - below) * (table[below + 1] - low);
}

static inline double placeOf(double t) { return fmin(PLACES - 1.001, fmax(0, (t - COLDEST) * PER_KELVIN)); }

/* ---- small laws ---- */

static inline double temperatureOf(double energy, double capacity, double water) {
  if (energy >= 0) return energy / capacity;
  double freezing = capacity + (MELTING * water) / SPAN, frozen = -SPAN * freezing;
  if (energy >= frozen) return energy / freezing;
  return -SPAN + (energy - frozen) / (capacity - (WATER_HEAT - ICE_HEAT) * water);
}

static inline double slopeOf(double t, double capacity, double water) {
  if (t >= 0) return capacity;
  if (t >= -SPAN) return capacity + (MELTING * water) / SPAN;
  return capacity - (WATER_HEAT - ICE_HEAT) * water;
}

static inline double cardinal(double t, double coldest, double best, double hottest) {
  if (t <= coldest || t >= hottest) return 0;
  double rise = best - coldest, above = t - coldest;
  double bend = rise * (t - best) - (best - hottest) * (best + coldest - 2 * t);
  return ((t - hottest) * above * above) / (rise * bend);
}

static inline double smooth(double x, double from, double to) {
  double t = fmin(1, fmax(0, (x - from) / (to - from)));
  return t * t * (3 - 2 * t);
}

static inline double humidityOf(double e) { return (0.622 * e) / fmax(PRESSURE - e, 0.02 * PRESSURE); }
static inline double humidAir(double t, double e) { return (PRESSURE - (1 - 0.622) * e) / (287.05 * (t + KELVIN)); }
static inline double dryAirOf(double t, double e) { return fmax(PRESSURE - e, 0.02 * PRESSURE) / (287.05 * (t + KELVIN)); }
static inline double evaporation(double t) { return VAPOUR_AT_ZERO + (VAPOUR_HEAT - WATER_HEAT) * t; }
static inline double vapourHeat(double t) { return VAPOUR_AT_ZERO + VAPOUR_HEAT * t; }
static inline double squared(double x) { return x * x; }

static void solve(const Rows *r, double *into) {
  Row scratch;
  int n = shells.count;
  double up = 0, last = 0;
  for (int i = 0; i < n; i++) {
    double low = r->inner[i], pivot = r->own[i] - low * up;
    up = r->outer[i] / pivot;
    last = (r->right[i] + low * last) / pivot;
    scratch[i] = up;
    into[i] = last;
  }
  for (int i = n - 2; i >= 0; i--) {
    last = into[i] + scratch[i] * last;
    into[i] = last;
  }
}

/* ---- the right-hand side ---- */

static double lookInside(const State *s, Fields *f) {
  double left = 1 - s->settled, volumes = 0, built = 0;
  for (int i = 0; i < shells.count; i++) {
    double water = s->is[WATER][i], fast = s->is[FAST][i], hemi = s->is[HEMI][i], cell = s->is[CELL][i],
           lignin = s->is[LIGNIN][i], mineral = s->ash[i] + s->ch[i];
    double vol = fast + hemi + cell + lignin + s->inert[i], dry = vol + mineral;
    double capacity = WATER_HEAT * water + ORGANIC_HEAT * vol + ASH_HEAT * mineral;
    double t = temperatureOf(s->is[ENERGY][i], capacity, water);
    f->temp[i] = t;
    f->slope[i] = slopeOf(t, capacity, water);
    f->dry[i] = dry;
    double solid = vol / ORGANIC_DENSITY + mineral / ASH_DENSITY, wet = water / WATER_DENSITY;
    double room = ((s->built[i] * dry) / s->builtDry[i]) * left;
    double volume = fmax(room, (solid + wet) / (1 - 0.005)), air = 1 - (solid + wet) / volume;
    built += s->built[i];
    volumes += volume;
    f->pores[i] = volume - solid;
    f->air[i] = air;
    f->conductivity[i] = DRY_CONDUCTIVITY + (WET_CONDUCTIVITY * wet) / (volume - solid);
    double over = air / HALF_AIR;
    f->permeability[i] = traits.permeability * (over * over * over);
    double carbon = FAST_C * fast + HEMI_C * hemi + CELL_C * cell + LIGNIN_C * lignin;
    double ammoniacal = s->is[AMMONIACAL_N][i], released = s->is[ORGANIC_N][i] / (carbon + TRACE);
    double taken = 0, nitrogen = 1;
    if (released < traits.wantedN) {
      double mineralN = ammoniacal + s->is[NITRATE_N][i], found = mineralN / (mineralN + MINERAL_HALF * dry + TRACE);
      taken = (traits.wantedN - released) * found;
      nitrogen = (released + taken) / traits.wantedN;
    }
    f->taken[i] = taken;
    f->freed[i] = fmax(0, released - traits.wantedN);
    double moisture = between(moistureTable, STEPS * (water / (water + dry + TRACE)));
    double warmth = cardinal(t, traits.coldest, traits.best, traits.hottest);
    double sour = 1 - smooth(s->is[PH][i], BRAKE_PH - BRAKE_OVER_PH, BRAKE_PH + BRAKE_OVER_PH);
    double warm = smooth(t, BRAKE_TEMP - BRAKE_OVER_TEMP, BRAKE_TEMP + BRAKE_OVER_TEMP);
    double lively = warmth * moisture * between(airTable, STEPS * air) * (1 - (1 - BRAKE_LEFT) * sour * warm) * nitrogen;
    double pace = s->is[ACTIVITY][i] * lively;
    f->warmth[i] = warmth;
    f->liveliness[i] = lively;
    f->pace[i] = pace;
    f->hunger[i] = pace * (FAST_O2 * traits.fast * fast + HEMI_O2 * traits.hemi * hemi + CELL_O2 * traits.cell * cell +
                           LIGNIN_O2 * traits.lignin * lignin);
    f->nitrifying[i] = (OXYGEN_PER_NITRIFIED * NITRIFICATION / DAY) * ammoniacal * moisture *
                       cardinal(t, NITRIFIERS_COLDEST, NITRIFIERS_BEST, NITRIFIERS_HOTTEST);
  }
  return volumes / built;
}

static void findSurface(Fields *f, double overall, double area, double half_perM) {
  int last = shells.count - 1;
  double whole = (shells.top + shells.side + shells.ground) * area;
  double half = (overall * f->conductivity[last]) / half_perM;
  double open = (overall * squared(f->air[last]) * squared((f->temp[last] + KELVIN) / 293.15)) / half_perM;
  double film = SURFACE + WIND_ON_SURFACE * weather.wind * standing.wind;
  double airW = 0, sun = 0, gasOut = 0, vapourOut = 0;
  for (int face = 0; face < 2; face++) {
    double m2 = (face == 0 ? shells.top : shells.side) * area;
    if (m2 == 0) continue;
    double share = m2 / whole;
    double cover = m2 / ((face == 0 ? standing.topInsulation : standing.sideInsulation) + 1 / film);
    double through = (share * half * cover) / (share * half + cover);
    airW += through;
    if (face == 0) sun += (through * 0.85 * standing.sun * weather.sun) / film;
    double out = m2 / ((face == 0 ? standing.topVapour : standing.sideVapour) + SURFACE_VAPOUR);
    double gas = share * open * OXYGEN_DIFFUSES, vapour = share * open * VAPOUR_DIFFUSES;
    gasOut += (gas * out) / (gas + out);
    vapourOut += (vapour * out) / (vapour + out);
  }
  double ground = shells.ground * area, soil = 4 * GROUND_CONDUCTIVITY * sqrt(ground / M_PI);
  double toGround = (ground / whole) * half;
  f->surfaceAir = airW;
  f->surfaceGround = ground == 0 ? 0 : (toGround * soil) / (toGround + soil);
  f->sun = sun;
  f->heatFace[last] = airW;
  f->gasFace[last] = gasOut;
  f->vapourFace[last] = vapourOut;
}

static void findDraught(Fields *f, const State *s, double left) {
  int n = shells.directions;
  double length = n == 3 ? cbrt(left) : n == 2 ? sqrt(left) : left;
  double overall = n == 3 ? length : n == 2 ? 1 : 1 / length;
  double area = n == 3 ? length * length : n == 2 ? length : 1;
  double outside = humidAir(weather.temp, weather.vapour), outsideDry = dryAirOf(weather.temp, weather.vapour);
  double wind = weather.wind * standing.wind, plan = shells.plan * area;
  double push = (0.5 * outside * wind * wind) / (shells.height * length);
  double drawn = 0, risen = 0, innerG = 0, innerPores = 0, innerConductivity = 0;
  for (int i = 0; i < shells.count; i++) {
    double t = f->temp[i], k = t + KELVIN, place = placeOf(t), wet = s->is[WATER][i] / (DRYING * f->dry[i]);
    double e = between(saturation, place) * (wet > 40 ? 1 : 1 - exp(-wet));
    f->place[i] = place;
    double below = 257.14 + t;
    double steep = ((18.678 - t / 117.25) * below - (18.678 - t / 234.5) * t) / (below * below);
    double humid = humidityOf(e);
    f->vapour[i] = e;
    f->vapourSlope[i] = e * steep;
    f->humidity[i] = humid;
    f->humiditySlope[i] = humid * steep * (1 + humid / 0.622);
    f->dryAir[i] = dryAirOf(t, e);
    double lift = fmax(0, 9.80665 * (outside - humidAir(t, e)));
    double own = (outsideDry * f->permeability[i] * (lift + push) * plan * shells.planShare[i] * standing.open) /
                 VISCOSITY;
    drawn += own;
    double handed = traits.contact * risen;
    risen = own + handed;
    f->drawn[i] = drawn;
    f->risen[i] = risen;
    f->through[i] = drawn + handed;
    double conductivity = f->conductivity[i], pores = squared(f->air[i]) * squared(k / 293.15);
    if (i > 0) {
      f->heatFace[i - 1] = overall / (innerG / innerConductivity + shells.inward[i] / conductivity);
      double open = overall / (innerG / innerPores + shells.inward[i] / pores);
      f->gasFace[i - 1] = OXYGEN_DIFFUSES * open;
      f->vapourFace[i - 1] = VAPOUR_DIFFUSES * open;
    }
    innerG = shells.outward[i];
    innerPores = pores;
    innerConductivity = conductivity;
  }
  findSurface(f, overall, area, innerG);
}

static void holdVapourBack(Fields *f, const State *s, double step) {
  int last = shells.count - 1;
  double inner = 0, innerE = 0;
  for (int i = 0; i <= last; i++) {
    double here = f->humidity[i], hereE = f->vapour[i];
    double beyond = i == last ? 0 : f->humidity[i + 1], beyondE = i == last ? 0 : f->vapour[i + 1];
    double innerRisen = i == 0 ? 0 : f->risen[i - 1], innerFace = i == 0 ? 0 : f->vapourFace[i - 1];
    double perPa = 1 / (461.5 * (f->temp[i] + KELVIN));
    double net = f->through[i] * here - f->drawn[i] * beyond - traits.contact * innerRisen * inner +
                 perPa * (f->vapourFace[i] * (hereE - beyondE) + innerFace * (hereE - innerE));
    inner = here;
    innerE = hereE;
    double z = (step * fmax(0, net)) / (s->is[WATER][i] + TRACE);
    if (z < 1e-3) continue;
    double kept = 1 / (1 + z * z);
    f->vapour[i] = hereE * kept;
    f->humidity[i] = here * kept;
    f->vapourSlope[i] *= kept;
    f->humiditySlope[i] *= kept;
  }
}

static void balanceOxygen(Fields *f, State *s) {
  int last = shells.count - 1;
  Row solved;
  double moved = DBL_MAX;
  for (int turn = 0; turn < 40 && moved > 1e-5; turn++) {
    double innerFace = 0, handed = 0;
    for (int i = 0; i <= last; i++) {
      double dry = f->dryAir[i], face = f->gasFace[i] * 0.5 * (dry + (i == last ? dry : f->dryAir[i + 1]));
      double hunger = f->hunger[i] + f->nitrifying[i], now = s->oxygen[i];
      double perMass = PER_MASS * (1 - f->vapour[i] / PRESSURE), there = perMass * now + traits.half;
      double fed = (perMass * now) / there, steep = (perMass * traits.half) / (there * there);
      f->fed[i] = fed - steep * now;
      f->fedSteep[i] = steep;
      f->rows.inner[i] = innerFace + handed;
      f->rows.own[i] = f->through[i] + innerFace + face + hunger * steep;
      f->rows.outer[i] = face + f->drawn[i];
      f->rows.right[i] = -hunger * (fed - steep * now);
      innerFace = face;
      handed = traits.contact * f->risen[i];
    }
    f->rows.right[last] += f->rows.outer[last] * FRESH;
    f->rows.outer[last] = 0;
    solve(&f->rows, solved);
    moved = 0;
    for (int i = 0; i <= last; i++) {
      double next = fmax(0, solved[i]);
      moved = fmax(moved, fabs(next - s->oxygen[i]));
      s->oxygen[i] = next;
    }
  }
  for (int i = 0; i <= last; i++) f->fed[i] += f->fedSteep[i] * s->oxygen[i];
}

static void rot(const State *s, const Fields *f, Rates *r) {
  for (int i = 0; i < shells.count; i++) {
    double t = f->temp[i], fed = f->fed[i], warmth = f->warmth[i], pace = f->pace[i] * fed;
    double fast = pace * traits.fast * s->is[FAST][i], hemi = pace * traits.hemi * s->is[HEMI][i];
    double cell = pace * traits.cell * s->is[CELL][i], lignin = pace * traits.lignin * s->is[LIGNIN][i];
    double eaten = FAST_O2 * fast + HEMI_O2 * hemi + CELL_O2 * cell + LIGNIN_O2 * lignin;
    double formed = FAST_H2O * fast + HEMI_H2O * hemi + CELL_H2O * cell + LIGNIN_H2O * lignin;
    double breathed = FAST_C * fast + HEMI_C * hemi + CELL_C * cell + LIGNIN_C * lignin;
    double lost = fast + hemi + cell + lignin;
    r->of[FAST][i] = -fast;
    r->of[HEMI][i] = -hemi;
    r->of[CELL][i] = -cell;
    r->of[LIGNIN][i] = -lignin;
    r->volatileLost[i] = lost;
    r->of[ENERGY][i] = traits.heat * eaten + t * (WATER_HEAT * formed - ORGANIC_HEAT * lost);
    r->of[WATER][i] = formed;
    double carbon = breathed * traits.eatenPerBreathed, freed = carbon * f->freed[i];
    double ammoniacal = s->is[AMMONIACAL_N][i], nitrate = s->is[NITRATE_N][i];
    double per = (carbon * f->taken[i]) / (ammoniacal + nitrate + TRACE), a = per * ammoniacal, b = per * nitrate;
    double nitrified = f->nitrifying[i] * fed / OXYGEN_PER_NITRIFIED, lack = fmax(0, 1 - fed / traits.freshFed);
    double denitrified = (DENITRIFICATION / DAY) * lack * warmth * nitrate;
    r->of[ORGANIC_N][i] = a + b - freed;
    r->of[AMMONIACAL_N][i] = freed - a - nitrified;
    r->of[NITRATE_N][i] = nitrified - b - denitrified;
    double activity = s->is[ACTIVITY][i];
    double dying = DYING / DAY + (KILLED / DAY) * fmax(0, t - KILL_TEMP);
    r->of[ACTIVITY][i] = traits.growth * f->liveliness[i] * fed * activity * (1 - activity) - dying * (activity - DORMANT);
    double ammonia = ammoniacal / (s->is[WATER][i] + TRACE);
    double ripe = RIPE_PH + (AMMONIA_RAISES * ammonia) / (ammonia + AMMONIA_HALF);
    double heading = ripe + lack * lack * (SOUR_PH - ripe);
    r->of[PH][i] = (SOURING / DAY) * warmth * activity * (heading - s->is[PH][i]);
  }
}

static void carry(const Fields *f, Rates *r) {
  int last = shells.count - 1;
  double *energy = r->of[ENERGY], *water = r->of[WATER];
  double outHumid = (0.622 * weather.vapour) / (PRESSURE - weather.vapour);
  double outVapour = weather.vapour / (461.5 * (weather.temp + KELVIN));
  double outAir = AIR_HEAT * weather.temp + outHumid * vapourHeat(weather.temp);
  double innerRisen = 0, innerHumid = 0, innerAir = 0;
  for (int i = 0; i <= last; i++) {
    double t = f->temp[i], humid = f->humidity[i], air = AIR_HEAT * t + humid * vapourHeat(t);
    double tNext = i == last ? weather.temp : f->temp[i + 1], humidNext = i == last ? outHumid : f->humidity[i + 1];
    double airNext = i == last ? outAir : AIR_HEAT * tNext + humidNext * vapourHeat(tNext);
    double handed = traits.contact * innerRisen;
    energy[i] += f->drawn[i] * airNext + handed * innerAir - f->through[i] * air;
    water[i] += f->drawn[i] * humidNext + handed * innerHumid - f->through[i] * humid;
    innerRisen = f->risen[i];
    innerHumid = humid;
    innerAir = air;
    double density = f->vapour[i] / (461.5 * (t + KELVIN));
    double densityNext = i == last ? outVapour : f->vapour[i + 1] / (461.5 * (tNext + KELVIN));
    double vapour = f->vapourFace[i] * (density - densityNext), vapourW = vapour * vapourHeat(vapour > 0 ? t : tNext);
    double heat = f->heatFace[i] * (t - tNext);
    energy[i] -= heat + vapourW;
    water[i] -= vapour;
    if (i == last) {
      energy[i] += f->sun - f->surfaceGround * (t - weather.ground);
    } else {
      energy[i + 1] += heat + vapourW;
      water[i + 1] += vapour;
    }
  }
}

static inline double dissolvedShare(const State *s, int i) {
  double water = s->is[WATER][i] + TRACE;
  return water / (water + traits.charSorption * s->ch[i]);
}

static void drain(const State *s, const Fields *f, Rates *r) {
  int last = shells.count - 1;
  double rained = weather.rain * standing.rain * shells.plan, within = 1;
  r->of[ENERGY][last] += rained * WATER_HEAT * weather.temp;
  r->of[WATER][last] += rained;
  for (int i = last; i >= 0; i--) {
    double water = s->is[WATER][i], ch = s->ch[i];
    double over = water - fmin(traits.holds * (f->dry[i] - ch) + CHAR_HOLDS * ch, 0.97 * WATER_DENSITY * f->pores[i]);
    double plan = within;
    within -= shells.planShare[i];
    if (over <= 0 || f->temp[i] <= 0) continue;
    double off = (1 / (DRAINS_H * 3600)) * over, inwards = i == 0 ? 0 : (0.5 * fmax(0, within)) / plan;
    double offW = off * WATER_HEAT * f->temp[i];
    double a = (off * dissolvedShare(s, i) * s->is[AMMONIACAL_N][i]) / water, b = (off * s->is[NITRATE_N][i]) / water;
    r->of[ENERGY][i] -= offW;
    r->of[WATER][i] -= off;
    r->of[AMMONIACAL_N][i] -= a;
    r->of[NITRATE_N][i] -= b;
    if (i > 0) {
      r->of[ENERGY][i - 1] += inwards * offW;
      r->of[WATER][i - 1] += inwards * off;
      r->of[AMMONIACAL_N][i - 1] += inwards * a;
      r->of[NITRATE_N][i - 1] += inwards * b;
    }
  }
}

static void carryAmmonia(const State *s, Fields *f, Rates *r) {
  int last = shells.count - 1;
  Rows *m = &f->ammonia;
  for (int i = 0; i <= last; i++) {
    double water = s->is[WATER][i] / WATER_DENSITY + TRACE;
    double unionised = 1 / (1 + between(ammonium, f->place[i]) * exp(-M_LN10 * s->is[PH][i]));
    f->ammoniaInGas[i] =
        (traits.ammoniaGas * unionised * dissolvedShare(s, i)) / (water * between(dissolved, f->place[i]));
  }
  double innerFace = 0, fromInner = 0;
  for (int i = 0; i <= last; i++) {
    double inGas = f->ammoniaInGas[i], perAir = inGas / f->dryAir[i], face = f->gasFace[i];
    m->own[i] = f->through[i] * perAir + (face + innerFace) * inGas;
    m->inner[i] = fromInner;
    double beyond = i == last ? 0 : f->ammoniaInGas[i + 1];
    m->outer[i] = i == last ? 0 : (f->drawn[i] * beyond) / f->dryAir[i + 1] + face * beyond;
    innerFace = face;
    fromInner = traits.contact * f->risen[i] * perAir + face * inGas;
  }
  const double *held = s->is[AMMONIACAL_N];
  for (int i = 0; i <= last; i++) {
    double inner = i == 0 ? 0 : held[i - 1], outer = i == last ? 0 : held[i + 1];
    r->of[AMMONIACAL_N][i] += m->inner[i] * inner + m->outer[i] * outer - m->own[i] * held[i];
  }
}

static void findRates(State *s, double step, Fields *f, Rates *r) {
  double left = lookInside(s, f);
  findDraught(f, s, left);
  holdVapourBack(f, s, step);
  balanceOxygen(f, s);
  rot(s, f, r);
  carry(f, r);
  drain(s, f, r);
  carryAmmonia(s, f, r);
}

/* ---- the step ---- */

static double vapourRise(const Fields *f, int i) { return f->vapourSlope[i] / (461.5 * (f->temp[i] + KELVIN)); }

static void warmingRows(const Fields *f, double step, Rows *r) {
  int last = shells.count - 1;
  for (int i = 0; i <= last; i++) {
    double latent = evaporation(f->temp[i]), rise = vapourRise(f, i);
    double own = f->slope[i] / step +
                 f->through[i] * (AIR_HEAT + f->humidity[i] * VAPOUR_HEAT + f->humiditySlope[i] * latent) +
                 f->heatFace[i] + f->vapourFace[i] * rise * latent;
    if (i == last) own += f->surfaceGround;
    r->outer[i] = i == last ? 0
                            : f->drawn[i] * (AIR_HEAT + f->humidity[i + 1] * VAPOUR_HEAT + f->humiditySlope[i + 1] * latent) +
                                  f->heatFace[i] + f->vapourFace[i] * vapourRise(f, i + 1) * latent;
    if (i > 0) own += f->heatFace[i - 1] + f->vapourFace[i - 1] * rise * latent;
    r->inner[i] = i == 0 ? 0
                         : traits.contact * f->risen[i - 1] *
                                   (AIR_HEAT + f->humidity[i - 1] * VAPOUR_HEAT + f->humiditySlope[i - 1] * latent) +
                               f->heatFace[i - 1] + f->vapourFace[i - 1] * vapourRise(f, i - 1) * latent;
    r->own[i] = own;
  }
}

static void correct(const Fields *f, const double *warming, double *energy, double *water) {
  int last = shells.count - 1;
  for (int i = 0; i <= last; i++) energy[i] = water[i] = 0;
  for (int i = 0; i <= last; i++) {
    double warmer = warming[i], heatIn = vapourHeat(f->temp[i]), moister = f->humiditySlope[i] * warmer;
    double hotter = (AIR_HEAT + f->humidity[i] * VAPOUR_HEAT) * warmer + moister * heatIn;
    energy[i] -= f->through[i] * hotter;
    water[i] -= f->through[i] * moister;
    if (i > 0) {
      energy[i - 1] += f->drawn[i - 1] * hotter;
      water[i - 1] += f->drawn[i - 1] * moister;
    }
    if (i < last) {
      energy[i + 1] += traits.contact * f->risen[i] * hotter;
      water[i + 1] += traits.contact * f->risen[i] * moister;
    }
    double beyond = i == last ? 0 : warming[i + 1];
    double vapour = f->vapourFace[i] * (vapourRise(f, i) * warmer - (i == last ? 0 : vapourRise(f, i + 1) * beyond));
    double heat = f->heatFace[i] * (warmer - beyond);
    energy[i] -= heat + vapour * heatIn;
    water[i] -= vapour;
    if (i == last) {
      energy[i] -= f->surfaceGround * warmer;
    } else {
      energy[i + 1] += heat + vapour * heatIn;
      water[i + 1] += vapour;
    }
  }
}

static void neverLess(State *s) {
  for (int q = 1; q < QUANTITIES; q++)
    for (int i = 0; i < shells.count; i++)
      if (s->is[q][i] < 0) s->is[q][i] = 0;
}

static Fields first, second;
static Rates firstRates, secondRates;
static Rows rows;
static State trial;

static void stepOf(State *s, double step) {
  int n = shells.count;
  Row warming, passing, energy, water, guessEnergy, guessWater, guessN;
  double half = 0.5 * step;
  findRates(s, step, &first, &firstRates);
  warmingRows(&first, step, &rows);
  for (int i = 0; i < n; i++) {
    rows.right[i] = firstRates.of[ENERGY][i] -
                    first.temp[i] * (WATER_HEAT * firstRates.of[WATER][i] - ORGANIC_HEAT * firstRates.volatileLost[i]);
    first.ammonia.own[i] += 1 / step;
    first.ammonia.right[i] = firstRates.of[AMMONIACAL_N][i];
  }
  solve(&rows, warming);
  correct(&first, warming, energy, water);
  solve(&first.ammonia, passing);
  for (int q = 0; q < QUANTITIES; q++)
    for (int i = 0; i < n; i++) trial.is[q][i] = s->is[q][i] + step * firstRates.of[q][i];
  for (int i = 0; i < n; i++) {
    guessEnergy[i] = trial.is[ENERGY][i] += step * energy[i];
    guessWater[i] = trial.is[WATER][i] += step * water[i];
    guessN[i] = trial.is[AMMONIACAL_N][i] = s->is[AMMONIACAL_N][i] + passing[i];
    trial.oxygen[i] = s->oxygen[i];
  }
  trial.settled = traits.settling + (s->settled - traits.settling) * exp(-step / (SETTLES_DAY * DAY));
  neverLess(&trial);

  findRates(&trial, step, &second, &secondRates);
  for (int i = 0; i < n; i++) {
    double missedJ = half * (firstRates.of[ENERGY][i] + secondRates.of[ENERGY][i]) - (guessEnergy[i] - s->is[ENERGY][i]);
    double missedKg = half * (firstRates.of[WATER][i] + secondRates.of[WATER][i]) - (guessWater[i] - s->is[WATER][i]);
    double missedN = half * (firstRates.of[AMMONIACAL_N][i] + secondRates.of[AMMONIACAL_N][i]) -
                     (guessN[i] - s->is[AMMONIACAL_N][i]);
    first.ammonia.right[i] = missedN / step;
    rows.right[i] = (missedJ - first.temp[i] * WATER_HEAT * missedKg) / step;
  }
  solve(&rows, warming);
  correct(&first, warming, energy, water);
  solve(&first.ammonia, passing);
  for (int q = 0; q < QUANTITIES; q++)
    for (int i = 0; i < n; i++) trial.is[q][i] = s->is[q][i] + half * (firstRates.of[q][i] + secondRates.of[q][i]);
  for (int i = 0; i < n; i++) {
    trial.is[ENERGY][i] += step * energy[i];
    trial.is[WATER][i] += step * water[i];
    trial.is[AMMONIACAL_N][i] = guessN[i] + passing[i];
  }
  neverLess(&trial);
  memcpy(s->is, trial.is, sizeof s->is);
  memcpy(s->oxygen, trial.oxygen, sizeof s->oxygen);
  s->settled = trial.settled;
}

/* ---- reading and timing ---- */

static FILE *file;

static double number(void) {
  double value;
  if (fscanf(file, "%lf", &value) != 1) {
    fputs("the problem ends too soon\n", stderr);
    exit(2);
  }
  return value;
}

static void row(double *into) {
  for (int i = 0; i < shells.count; i++) into[i] = number();
}

static void numbers(void *into, size_t bytes) {
  double *values = into;
  for (size_t k = 0; k < bytes / sizeof *values; k++) values[k] = number();
}

int main(int argc, char **argv) {
  if (argc != 3 || !(file = fopen(argv[1], "r"))) {
    fputs("usage: heap-twin PROBLEM REPEATS\n", stderr);
    return 2;
  }
  static State start, state;
  double step = number(), steps = number();
  shells.count = (int)number();
  shells.directions = (int)number();
  if (shells.count < 2 || shells.count > MOST) return 2;
  shells.height = number();
  shells.plan = number();
  shells.top = number();
  shells.side = number();
  shells.ground = number();
  row(shells.planShare);
  row(shells.inward);
  row(shells.outward);
  numbers(&traits, sizeof traits);
  numbers(&standing, sizeof standing);
  numbers(&weather, sizeof weather);
  for (int q = 0; q < QUANTITIES; q++) row(start.is[q]);
  row(start.inert);
  row(start.ash);
  row(start.ch);
  row(start.built);
  row(start.builtDry);
  for (int i = 0; i < shells.count; i++) start.oxygen[i] = FRESH;
  fillTables();
  for (int repeat = 0; repeat < atoi(argv[2]); repeat++) {
    clock_t from = clock();
    state = start;
    trial = start;
    for (int k = 0; k < (int)steps; k++) stepOf(&state, step);
    printf("%.9f ", (double)(clock() - from) / CLOCKS_PER_SEC);
  }
  putchar('\n');
  lookInside(&state, &first);
  for (int i = 0; i < shells.count; i++) printf("%.17g ", first.temp[i]);
  putchar('\n');
  return 0;
}
