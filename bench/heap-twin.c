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

enum { ENERGY, WATER, AMMONIACAL_N, FAST, HEMI, CELL, LIGNIN, ORGANIC_N, NITRATE_N, ACTIVITY, PH };
#define PASSING 3

typedef double Row[MOST];

typedef struct {
  Row is[QUANTITIES];
  Row inert, ash, ch, built, builtDry, oxygen;
  double settled;
} State;

enum {
  HEAT_MADE, HEAT_THROUGH_SURFACE, HEAT_TO_GROUND, HEAT_WITH_AIR, HEAT_WITH_MATTER, HEAT_WITH_RAIN, HEAT_DRAINED,
  WATER_FORMED, WATER_WITH_AIR, WATER_RAINED, WATER_DRAINED, OXYGEN_DRAWN, OXYGEN_SUPPLIED, OXYGEN_EATEN,
  OXYGEN_NITRIFIED, CARBON_BREATHED, AMMONIA_GONE, NITROGEN_DRAINED, DENITRIFIED, FLOWS
};
typedef struct { Row of[QUANTITIES]; Row volatileLost; double flow[FLOWS]; } Rates;

typedef struct {
  Row temp, slope, dry, pores, air, conductivity, permeability, vapour, vapourRise, humidity, humidityRise, dryness,
      vapourWet, humidityWet, dryAir, dryGas, place, warmth, liveliness, pace, slowPace, hunger, nitrifying, fed, fedSteep, drawn, risen, through,
      heatFace, vapourFace, gasFace, freed, taken, ammoniaOwn, ammoniaInner, ammoniaOuter, ammoniaLeaving, oxygenInner, oxygenOuter,
      oxygenOwn, upper, solved;
  double surfaceAir, surfaceGround, sun;
} Fields;

typedef struct {
  Row heatOut, heatBack, waterOut, waterBack, heatLeaving, waterLeaving, warmInner, warmPivot, warmUpper, ammoniaPivot,
      ammoniaUpper, drive, driveN, warming, passed, withWater, wetOut, wetBack, wetLeaving, wetPivot, wetUpper, wetDrive,
      wetting;
  int isDry;
} Ahead;

static struct {
  int count, directions;
  double height, plan, top, side, ground;
  Row planShare, inward, outward;
} shells;
static struct {
  double fast, hemi, cell, lignin, coldest, best, hottest, half, freshFed, growth, coolPace, heat, permeability, contact, holds,
      settling, eatenPerBreathed, wantedN, ammoniaGas, charSorption;
} traits;
static struct { double topInsulation, topVapour, sideInsulation, sideVapour, open, wind, rain, sun; } standing;
static struct { double temp, vapour, wind, rain, sun, ground; } weather;

/* ---- tables ---- */

#define COLDEST (-60)
#define PER_KELVIN 4
#define PLACES ((140 - COLDEST) * PER_KELVIN + 1)
#define STEPS 512
#define PER_PH 128
#define ACIDITIES (14 * PER_PH + 2)
static double saturation[PLACES], ammonium[PLACES], dissolved[PLACES], moistureTable[STEPS + 2], airTable[STEPS + 2],
    acidity[ACIDITIES];

static double saturationOf(double t) { return 611.21 * exp(((18.678 - t / 234.5) * t) / (257.14 + t)); }

static void fillTables(void) {
  for (int i = 0; i < PLACES; i++) {
    double t = COLDEST + (double)i / PER_KELVIN, k = t + KELVIN;
    saturation[i] = saturationOf(t);
    ammonium[i] = pow(10, AMMONIUM_INTERCEPT + AMMONIUM_SLOPE / k);
    dissolved[i] = HENRY_AT25 * exp(HENRY_SLOPE * (1 / k - 1 / 298.15)) * 8.3144626 * k;
  }
  for (int i = 0; i < ACIDITIES; i++) acidity[i] = pow(10, -(double)i / PER_PH);
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

static inline double riseAt(const double *table, double place) {
  int below = (int)place;
  return (table[below + 1] - table[below]) * PER_KELVIN;
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

static inline double smooth(double x, double from, double to, double per) {
  if (x <= from) return 0;
  if (x >= to) return 1;
  double t = (x - from) * per;
  return t * t * (3 - 2 * t);
}

static inline double sourness(double ph, double t) {
  if (ph >= BRAKE_PH + BRAKE_OVER_PH || t <= BRAKE_TEMP - BRAKE_OVER_TEMP) return 1;
  double sour = 1 - smooth(ph, BRAKE_PH - BRAKE_OVER_PH, BRAKE_PH + BRAKE_OVER_PH, 1 / (2 * BRAKE_OVER_PH));
  return 1 - (1 - BRAKE_LEFT) * sour *
                 smooth(t, BRAKE_TEMP - BRAKE_OVER_TEMP, BRAKE_TEMP + BRAKE_OVER_TEMP, 1 / (2 * BRAKE_OVER_TEMP));
}

static inline double humidityOf(double e) { return (0.622 * e) / fmax(PRESSURE - e, 0.02 * PRESSURE); }
static inline double humidAir(double t, double e) { return (PRESSURE - (1 - 0.622) * e) / (287.05 * (t + KELVIN)); }
static inline double dryAirOf(double t, double e) { return fmax(PRESSURE - e, 0.02 * PRESSURE) / (287.05 * (t + KELVIN)); }
static inline double vapourHeat(double t) { return VAPOUR_AT_ZERO + VAPOUR_HEAT * t; }
static inline double squared(double x) { return x * x; }

/* ---- the right-hand side ---- */

static double lookInside(const State *s, Fields *f) {
  double left = 1 - s->settled, volumes = 0, built = 0, perWantedN = 1 / traits.wantedN;
  double fastAsks = FAST_O2 * traits.fast, hemiAsks = HEMI_O2 * traits.hemi, cellAsks = CELL_O2 * traits.cell,
         ligninAsks = LIGNIN_O2 * traits.lignin;
  for (int i = 0; i < shells.count; i++) {
    double water = s->is[WATER][i], fast = s->is[FAST][i], hemi = s->is[HEMI][i], cell = s->is[CELL][i],
           lignin = s->is[LIGNIN][i], mineral = s->ash[i] + s->ch[i];
    double vol = fast + hemi + cell + lignin + s->inert[i], dry = vol + mineral;
    double capacity = WATER_HEAT * water + ORGANIC_HEAT * vol + ASH_HEAT * mineral;
    double t = temperatureOf(s->is[ENERGY][i], capacity, water);
    f->temp[i] = t;
    f->slope[i] = slopeOf(t, capacity, water);
    f->dry[i] = dry;
    double solid = vol * (1 / ORGANIC_DENSITY) + mineral * (1 / ASH_DENSITY), wet = water * (1 / WATER_DENSITY);
    double room = ((s->built[i] * dry) / s->builtDry[i]) * left;
    double filled = (solid + wet) * (1 / (1 - 0.005)), volume = room > filled ? room : filled, air = 1 - (solid + wet) / volume;
    built += s->built[i];
    volumes += volume;
    f->pores[i] = volume - solid;
    f->air[i] = air;
    f->conductivity[i] = DRY_CONDUCTIVITY + (WET_CONDUCTIVITY * wet) / (volume - solid);
    double over = air * (1 / HALF_AIR);
    f->permeability[i] = traits.permeability * (over * over * over);
    double warmth = cardinal(t, traits.coldest, traits.best, traits.hottest);
    double slowWarmth = cardinal(t, SLOW_COLDEST, SLOW_BEST, SLOW_HOTTEST);
    double thriving = fmax(warmth, traits.coolPace * cardinal(t, COOL_COLDEST, COOL_BEST, COOL_HOTTEST));
    double fastC = FAST_C * fast, hemiC = HEMI_C * hemi, cellC = CELL_C * cell, ligninC = LIGNIN_C * lignin;
    double slowC = hemiC + cellC + ligninC + INERT_C * s->inert[i], fastEaten = thriving * traits.fast * fastC;
    double slowEaten = slowWarmth * (traits.hemi * hemiC + traits.cell * cellC + traits.lignin * ligninC);
    double richness = (RICHER * fastEaten + slowEaten) / (fastEaten + slowEaten + 1e-30);
    double ammoniacal = s->is[AMMONIACAL_N][i];
    double released = (richness * s->is[ORGANIC_N][i]) / (RICHER * fastC + slowC + TRACE);
    double taken = 0, freed = 0, nitrogen = 1;
    if (released < traits.wantedN) {
      double mineralN = ammoniacal + s->is[NITRATE_N][i], found = mineralN / (mineralN + MINERAL_HALF * dry + TRACE);
      taken = (traits.wantedN - released) * found;
      nitrogen = (released + taken) * perWantedN;
    } else {
      freed = released - traits.wantedN;
    }
    f->taken[i] = taken;
    f->freed[i] = freed;
    double moisture = between(moistureTable, STEPS * (water / (water + dry + TRACE)));
    double ease = moisture * between(airTable, STEPS * air) * sourness(s->is[PH][i], t) * nitrogen;
    double lively = thriving * ease, pace = s->is[ACTIVITY][i] * lively;
    double slowPace = s->is[ACTIVITY][i] * slowWarmth * ease;
    f->slowPace[i] = slowPace;
    f->warmth[i] = warmth;
    f->liveliness[i] = lively;
    f->pace[i] = pace;
    f->hunger[i] = pace * fastAsks * fast + slowPace * (hemiAsks * hemi + cellAsks * cell + ligninAsks * lignin);
    f->nitrifying[i] = (OXYGEN_PER_NITRIFIED * NITRIFICATION / DAY) * ammoniacal * moisture *
                       cardinal(t, NITRIFIERS_COLDEST, NITRIFIERS_BEST, NITRIFIERS_HOTTEST);
  }
  return volumes / built;
}

static void findSurface(Fields *f, double overall, double area, double half_perM) {
  int last = shells.count - 1;
  double whole = (shells.top + shells.side + shells.ground) * area;
  double half = (overall * f->conductivity[last]) / half_perM;
  double open = (overall * squared(f->air[last]) * squared((f->temp[last] + KELVIN) * (1 / 293.15))) / half_perM;
  double film = SURFACE + WIND_ON_SURFACE * weather.wind * standing.wind;
  double airW = 0, sun = 0, gasOut = 0, vapourOut = 0;
  for (int face = 0; face < 2; face++) {
    double m2 = (face == 0 ? shells.top : shells.side) * area;
    if (m2 == 0) continue;
    double share = m2 / whole;
    double cover = m2 / ((face == 0 ? standing.topInsulation : standing.sideInsulation) + 1 / film);
    double through = (share * half * cover) / (share * half + cover);
    airW += through;
    if (face == 0) sun += (through * SUN_TAKEN * standing.sun * weather.sun) / film;
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
  double push = (WIND_PUSH * 0.5 * outside * wind * wind) / (shells.height * length);
  double draws = (outsideDry * plan * standing.open) / VISCOSITY;
  double drawn = 0, risen = 0, innerG = 0, innerPores = 1, innerConductivity = 1;
  for (int i = 0; i < shells.count; i++) {
    double t = f->temp[i], k = t + KELVIN, perK = 1 / k, place = placeOf(t), water = s->is[WATER][i];
    double drying = DRYING * f->dry[i], dryness = water > 16 * drying ? 0 : exp(-water / drying);
    double full = between(saturation, place), e = full * (1 - dryness), rise = riseAt(saturation, place) * (1 - dryness);
    double most = PRESSURE - e, air = most > 0.02 * PRESSURE ? most : 0.02 * PRESSURE, perAir = 1 / air,
           ratio = e * perAir;
    f->place[i] = place;
    f->dryness[i] = dryness;
    f->vapour[i] = e * perK * (1 / 461.5);
    f->vapourRise[i] = rise * perK * (1 / 461.5);
    f->humidity[i] = 0.622 * ratio;
    f->humidityRise[i] = 0.622 * perAir * (1 + ratio) * rise;
    double wet = dryness == 0 ? 0 : (full * dryness) / drying;
    f->vapourWet[i] = wet * perK * (1 / 461.5);
    f->humidityWet[i] = 0.622 * perAir * (1 + ratio) * wet;
    f->dryAir[i] = air * perK * (1 / 287.05);
    f->dryGas[i] = most * (1 / PRESSURE);
    double lighter = outside - (PRESSURE - (1 - 0.622) * e) * perK * (1 / 287.05);
    double lift = lighter > 0 ? 9.80665 * lighter : 0;
    double own = draws * f->permeability[i] * (lift + push) * shells.planShare[i];
    drawn += own;
    double handed = traits.contact * risen;
    risen = own + handed;
    f->drawn[i] = drawn;
    f->risen[i] = risen;
    f->through[i] = drawn + handed;
    double conductivity = f->conductivity[i], pores = squared(f->air[i]) * squared(k * (1 / 293.15));
    if (i > 0) {
      f->heatFace[i - 1] = (overall * innerConductivity * conductivity) /
                           (innerG * conductivity + shells.inward[i] * innerConductivity);
      double open = (overall * innerPores * pores) / (innerG * pores + shells.inward[i] * innerPores);
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
  double outside = humidityOf(weather.vapour), outsideVapour = weather.vapour / (461.5 * (weather.temp + KELVIN));
  double given = 0, inner = 0, innerFace = 0;
  for (int i = 0; i <= last; i++) {
    double here = f->humidity[i], vapour = f->vapour[i], face = f->vapourFace[i];
    double beyond = i == last ? outside : f->humidity[i + 1];
    double beyondVapour = i == last ? outsideVapour : f->vapour[i + 1];
    double net = f->through[i] * here - f->drawn[i] * beyond - given + face * (vapour - beyondVapour) +
                 innerFace * (vapour - inner);
    given = traits.contact * f->risen[i] * here;
    inner = vapour;
    innerFace = face;
    double water = s->is[WATER][i] + TRACE, leaving = step * net;
    if (leaving < 1e-3 * water) continue;
    double z = leaving / water, kept = 1 / (1 + z * z);
    f->vapour[i] = vapour * kept;
    f->humidity[i] = here * kept;
    f->vapourRise[i] *= kept;
    f->humidityRise[i] *= kept;
    f->vapourWet[i] *= kept;
    f->humidityWet[i] *= kept;
  }
}

static double balanceOxygen(Fields *f, State *s) {
  int last = shells.count - 1;
  double innerFace = 0, handed = 0, moved = 1;
  for (int i = 0; i <= last; i++) {
    double dry = f->dryAir[i], face = f->gasFace[i] * 0.5 * (dry + (i == last ? dry : f->dryAir[i + 1]));
    f->oxygenInner[i] = innerFace + handed;
    f->oxygenOwn[i] = f->through[i] + innerFace + face;
    f->oxygenOuter[i] = face + f->drawn[i];
    innerFace = face;
    handed = traits.contact * f->risen[i];
  }
  double fresh = f->oxygenOuter[last] * FRESH;
  for (int turn = 0; turn < 40 && moved * moved > 4e-6 * traits.half; turn++) {
    double upper = 0, solved = 0, outer = 0;
    for (int i = 0; i <= last; i++) {
      double hunger = f->hunger[i] + f->nitrifying[i], now = s->oxygen[i], perMass = PER_MASS * f->dryGas[i];
      double inGas = perMass * now, perThere = 1 / (inGas + traits.half);
      double steep = perMass * traits.half * perThere * perThere, atNone = inGas * perThere - steep * now;
      f->fed[i] = atNone;
      f->fedSteep[i] = steep;
      double right = i == last ? fresh - hunger * atNone : -hunger * atNone;
      double perPivot = 1 / (f->oxygenOwn[i] + hunger * steep - f->oxygenInner[i] * upper);
      upper = f->oxygenOuter[i] * perPivot;
      solved = (right + f->oxygenInner[i] * solved) * perPivot;
      f->upper[i] = upper;
      f->solved[i] = solved;
    }
    moved = 0;
    for (int i = last; i >= 0; i--) {
      outer = f->solved[i] + (i == last ? 0 : f->upper[i] * outer);
      double next = outer > 0 ? outer : 0, by = fabs(next - s->oxygen[i]);
      if (by > moved) moved = by;
      s->oxygen[i] = next;
    }
  }
  double supplied = f->drawn[last] * FRESH + f->gasFace[last] * f->dryAir[last] * (FRESH - s->oxygen[last]);
  for (int i = 0; i <= last; i++) {
    f->fed[i] += f->fedSteep[i] * s->oxygen[i];
    supplied -= (i == last ? 1 : 1 - traits.contact) * f->risen[i] * s->oxygen[i];
  }
  return supplied;
}

static void rot(const State *s, const Fields *f, Rates *r) {
  double perFreshFed = 1 / traits.freshFed, made = 0, matter = 0, water = 0, oxygen = 0, nitrification = 0, carbonOut = 0,
         denitrification = 0;
  for (int i = 0; i < shells.count; i++) {
    double t = f->temp[i], fed = f->fed[i], warmth = f->warmth[i], pace = f->pace[i] * fed;
    double slowPace = f->slowPace[i] * fed;
    double fast = pace * traits.fast * s->is[FAST][i], hemi = slowPace * traits.hemi * s->is[HEMI][i];
    double cell = slowPace * traits.cell * s->is[CELL][i], lignin = slowPace * traits.lignin * s->is[LIGNIN][i];
    double eaten = FAST_O2 * fast + HEMI_O2 * hemi + CELL_O2 * cell + LIGNIN_O2 * lignin;
    double formed = FAST_H2O * fast + HEMI_H2O * hemi + CELL_H2O * cell + LIGNIN_H2O * lignin;
    double breathed = FAST_C * fast + HEMI_C * hemi + CELL_C * cell + LIGNIN_C * lignin;
    double lost = fast + hemi + cell + lignin;
    double madeW = traits.heat * eaten, matterW = t * (WATER_HEAT * formed - ORGANIC_HEAT * lost);
    r->of[FAST][i] = -fast;
    r->of[HEMI][i] = -hemi;
    r->of[CELL][i] = -cell;
    r->of[LIGNIN][i] = -lignin;
    r->volatileLost[i] = lost;
    r->of[ENERGY][i] = madeW + matterW;
    r->of[WATER][i] = formed;
    double carbon = breathed * traits.eatenPerBreathed, freed = carbon * f->freed[i];
    double ammoniacal = s->is[AMMONIACAL_N][i], nitrate = s->is[NITRATE_N][i], taken = carbon * f->taken[i];
    double per = taken == 0 ? 0 : taken / (ammoniacal + nitrate + TRACE), a = per * ammoniacal, b = per * nitrate;
    double nitrifying = f->nitrifying[i] * fed, nitrified = nitrifying * (1 / OXYGEN_PER_NITRIFIED);
    double missing = 1 - fed * perFreshFed, lack = missing > 0 ? missing : 0;
    double denitrified = (DENITRIFICATION / DAY) * lack * warmth * nitrate;
    r->of[ORGANIC_N][i] = a + b - freed;
    r->of[AMMONIACAL_N][i] = freed - a - nitrified;
    r->of[NITRATE_N][i] = nitrified - b - denitrified;
    double activity = s->is[ACTIVITY][i];
    double dying = t > KILL_TEMP ? DYING / DAY + (KILLED / DAY) * (t - KILL_TEMP) : DYING / DAY;
    r->of[ACTIVITY][i] = traits.growth * f->liveliness[i] * fed * activity * (1 - activity) - dying * (activity - DORMANT);
    double half = AMMONIA_HALF * (s->is[WATER][i] + TRACE);
    double ripe = RIPE_PH + (AMMONIA_RAISES * ammoniacal) / (ammoniacal + half);
    double heading = ripe + lack * lack * (SOUR_PH - ripe);
    r->of[PH][i] = (SOURING / DAY) * warmth * activity * (heading - s->is[PH][i]);
    made += madeW;
    matter += matterW;
    water += formed;
    oxygen += eaten;
    nitrification += nitrifying;
    carbonOut += breathed;
    denitrification += denitrified;
  }
  r->flow[HEAT_MADE] = made;
  r->flow[HEAT_WITH_MATTER] = matter;
  r->flow[WATER_FORMED] = water;
  r->flow[OXYGEN_EATEN] = oxygen;
  r->flow[OXYGEN_NITRIFIED] = nitrification;
  r->flow[CARBON_BREATHED] = carbonOut;
  r->flow[DENITRIFIED] = denitrification;
}

static void carry(const Fields *f, Rates *r) {
  int last = shells.count - 1;
  double *energy = r->of[ENERGY], *water = r->of[WATER];
  double outHumid = humidityOf(weather.vapour), outVapour = weather.vapour / (461.5 * (weather.temp + KELVIN));
  double outAir = AIR_HEAT * weather.temp + outHumid * vapourHeat(weather.temp);
  double t = f->temp[0], humid = f->humidity[0], density = f->vapour[0], air = AIR_HEAT * t + humid * vapourHeat(t);
  double inWater = 0, inHeat = 0, outWater = 0, outHeat = 0;
  for (int i = 0; i < last; i++) {
    double risen = f->risen[i], drawn = f->drawn[i], tNext = f->temp[i + 1], humidNext = f->humidity[i + 1];
    double densityNext = f->vapour[i + 1], airNext = AIR_HEAT * tNext + humidNext * vapourHeat(tNext);
    double handed = traits.contact * risen, leaving = risen - handed;
    double vapour = f->vapourFace[i] * (density - densityNext);
    double faceWater = handed * humid - drawn * humidNext + vapour;
    double faceHeat = handed * air - drawn * airNext + vapour * vapourHeat(vapour > 0 ? t : tNext) +
                      f->heatFace[i] * (t - tNext);
    double leavingWater = leaving * humid, leavingHeat = leaving * air;
    energy[i] += inHeat - faceHeat - leavingHeat;
    water[i] += inWater - faceWater - leavingWater;
    outWater += leavingWater;
    outHeat += leavingHeat;
    inHeat = faceHeat;
    inWater = faceWater;
    t = tNext;
    humid = humidNext;
    density = densityNext;
    air = airNext;
  }
  double risen = f->risen[last], drawn = f->drawn[last], vapour = f->vapourFace[last] * (density - outVapour);
  double withAirHeat = risen * air - drawn * outAir + vapour * vapourHeat(vapour > 0 ? t : weather.temp);
  double withAir = risen * humid - drawn * outHumid + vapour;
  double surface = f->heatFace[last] * (t - weather.temp) - f->sun, ground = f->surfaceGround * (t - weather.ground);
  energy[last] += inHeat - withAirHeat - surface - ground;
  water[last] += inWater - withAir;
  r->flow[HEAT_THROUGH_SURFACE] = surface;
  r->flow[HEAT_TO_GROUND] = ground;
  r->flow[WATER_WITH_AIR] = outWater + withAir;
  r->flow[HEAT_WITH_AIR] = outHeat + withAirHeat;
}

static inline void give(Rates *r, int i, double share, double water, double heat, double ammonium, double nitrate) {
  r->of[ENERGY][i] += share * heat;
  r->of[WATER][i] += share * water;
  r->of[AMMONIACAL_N][i] += share * ammonium;
  r->of[NITRATE_N][i] += share * nitrate;
}

static void drain(const State *s, const Fields *f, Rates *r) {
  int last = shells.count - 1;
  double rained = weather.rain * standing.rain * shells.plan, within = 1, drained = 0, drainedHeat = 0, drainedN = 0;
  r->flow[WATER_RAINED] = rained;
  r->flow[HEAT_WITH_RAIN] = rained * WATER_HEAT * weather.temp;
  give(r, last, 1, rained, rained * WATER_HEAT * weather.temp, 0, 0);
  for (int i = last; i >= 0; i--) {
    double water = s->is[WATER][i], ch = s->ch[i];
    double over = water - fmin(traits.holds * (f->dry[i] - ch) + CHAR_HOLDS * ch, 0.97 * WATER_DENSITY * f->pores[i]);
    double plan = within;
    within -= shells.planShare[i];
    if (over <= 0 || f->temp[i] <= 0) continue;
    double off = (1 / (DRAINS_H * 3600)) * over, inwards = i == 0 ? 0 : (0.5 * fmax(0, within)) / plan;
    double heat = off * WATER_HEAT * f->temp[i];
    double ammonium = (off * s->is[AMMONIACAL_N][i]) / (water + traits.charSorption * ch);
    double nitrate = (off * s->is[NITRATE_N][i]) / water;
    give(r, i, -1, off, heat, ammonium, nitrate);
    if (i > 0) give(r, i - 1, inwards, off, heat, ammonium, nitrate);
    drained += (1 - inwards) * off;
    drainedHeat += (1 - inwards) * heat;
    drainedN += (1 - inwards) * (ammonium + nitrate);
  }
  r->flow[WATER_DRAINED] = drained;
  r->flow[HEAT_DRAINED] = drainedHeat;
  r->flow[NITROGEN_DRAINED] = drainedN;
}

static void carryAmmonia(const State *s, Fields *f, Rates *r) {
  int last = shells.count - 1;
  double innerFace = 0, fromInner = 0, innerHeld = 0, gone = 0, *rate = r->of[AMMONIACAL_N];
  for (int i = 0; i <= last; i++) {
    double water = s->is[WATER][i] + TRACE, place = f->place[i], ph = fmin(14, fmax(0, s->is[PH][i]));
    double ammoniumPer = between(ammonium, place) * between(acidity, ph * PER_PH);
    double sorbing = water + traits.charSorption * s->ch[i];
    double inGas = (traits.ammoniaGas * WATER_DENSITY) / ((1 + ammoniumPer) * sorbing * between(dissolved, place));
    double perAir = inGas / f->dryAir[i], face = f->gasFace[i], risen = f->risen[i], here = s->is[AMMONIACAL_N][i];
    double own = f->through[i] * perAir + (face + innerFace) * inGas;
    double leaving = i == last ? risen * perAir + face * inGas : (1 - traits.contact) * risen * perAir;
    if (i > 0) {
      double inwards = f->drawn[i - 1] * perAir + innerFace * inGas;
      f->ammoniaOuter[i - 1] = inwards;
      rate[i - 1] += inwards * here;
    }
    f->ammoniaOwn[i] = own;
    f->ammoniaInner[i] = fromInner;
    f->ammoniaLeaving[i] = leaving;
    rate[i] += fromInner * innerHeld - own * here;
    gone += leaving * here;
    fromInner = traits.contact * risen * perAir + face * inGas;
    innerFace = face;
    innerHeld = here;
  }
  f->ammoniaOuter[last] = 0;
  r->flow[AMMONIA_GONE] = gone;
}

static void findRates(State *s, double step, Fields *f, Rates *r) {
  double left = lookInside(s, f);
  findDraught(f, s, left);
  holdVapourBack(f, s, step);
  r->flow[OXYGEN_DRAWN] = FRESH * f->drawn[shells.count - 1];
  r->flow[OXYGEN_SUPPLIED] = balanceOxygen(f, s);
  rot(s, f, r);
  carry(f, r);
  drain(s, f, r);
  carryAmmonia(s, f, r);
}

/* ---- the step ---- */

#define PER_AHEAD (1 / AHEAD)

static void lookAtDry(const Fields *f, double step, Ahead *a) {
  int last = shells.count - 1;
  double perStep = 1 / (AHEAD * step), innerOut = 0, innerBack = 0, upper = 0;
  a->isDry = 0;
  double innerFace = 0;
  for (int i = 0; i <= last; i++) {
    double gone = f->through[i] * f->humidityWet[i] + (innerFace + f->vapourFace[i]) * f->vapourWet[i];
    a->withWater[i] = WATER_HEAT * f->temp[i];
    if (gone * step > SOON) a->isDry = 1;
    innerFace = f->vapourFace[i];
  }
  if (!a->isDry) return;
  for (int i = 0; i <= last; i++) {
    double moister = f->humidityWet[i], through = f->vapourFace[i] * f->vapourWet[i], risen = f->risen[i];
    double handed = i == last ? 0 : traits.contact * risen, out = i == last ? 0 : handed * moister + through;
    double leaving = i == last ? risen * moister + through : (risen - handed) * moister;
    double back = i == last ? 0 : f->drawn[i] * f->humidityWet[i + 1] + f->vapourFace[i] * f->vapourWet[i + 1];
    double own = out + leaving + innerBack;
    a->withWater[i] += (own / (perStep + own)) * (vapourHeat(f->temp[i]) - a->withWater[i]);
    double pivot = 1 / (perStep + own - innerOut * upper);
    upper = back * pivot;
    a->wetOut[i] = out;
    a->wetBack[i] = back;
    a->wetLeaving[i] = leaving;
    a->wetPivot[i] = pivot;
    a->wetUpper[i] = upper;
    innerOut = out;
    innerBack = back;
  }
}

static void solveDry(Ahead *a) {
  int last = shells.count - 1;
  double innerOut = 0, inWater = 0, wetting = 0;
  for (int i = 0; i <= last; i++) {
    double here = a->warming[i], next = i < last ? a->warming[i + 1] : 0;
    double face = a->waterOut[i] * here - a->waterBack[i] * next;
    wetting = (a->wetDrive[i] + inWater - face - a->waterLeaving[i] * here + innerOut * wetting) * a->wetPivot[i];
    a->wetting[i] = wetting;
    inWater = face;
    innerOut = a->wetOut[i];
  }
  for (int i = last - 1; i >= 0; i--) {
    wetting = a->wetting[i] + a->wetUpper[i] * wetting;
    a->wetting[i] = wetting;
  }
}

static void passDry(const Fields *f, const Ahead *a, State *s, Rates *r, double step) {
  int last = shells.count - 1;
  double inWater = 0, inHeat = 0;
  for (int i = 0; i <= last; i++) {
    double here = a->wetting[i], next = i < last ? a->wetting[i + 1] : 0, heat = vapourHeat(f->temp[i]);
    double face = a->wetOut[i] * here - a->wetBack[i] * next, leaving = a->wetLeaving[i] * here;
    double gainWater = inWater - face - leaving, gainHeat = inHeat - heat * face - heat * leaving;
    r->of[WATER][i] += gainWater;
    r->of[ENERGY][i] += gainHeat;
    s->is[WATER][i] += AHEAD * step * gainWater;
    s->is[ENERGY][i] += AHEAD * step * gainHeat;
    inWater = face;
    inHeat = heat * face;
  }
}

static void lookAhead(const Fields *f, double step, Ahead *a) {
  int last = shells.count - 1;
  double perStep = 1 / (AHEAD * step), innerHeatOut = 0, innerHeatBack = 0, innerWaterOut = 0, innerWaterBack = 0, warmUpper = 0,
         ammoniaUpper = 0;
  for (int i = 0; i <= last; i++) {
    double t = f->temp[i], heat = vapourHeat(t), moister = f->humidityRise[i], rise = f->vapourRise[i];
    double warmer = AIR_HEAT + f->humidity[i] * VAPOUR_HEAT + moister * heat, risen = f->risen[i];
    double face = f->heatFace[i], open = f->vapourFace[i], withWater = a->withWater[i];
    double heatOut = 0, heatBack = 0, waterOut = 0, waterBack = 0, heatLeaving, waterLeaving;
    double own = f->slope[i] * perStep;
    if (i == last) {
      heatLeaving = risen * warmer + open * rise * heat;
      waterLeaving = risen * moister + open * rise;
      own += face + f->surfaceGround + heatLeaving + innerHeatBack - withWater * (waterLeaving + innerWaterBack);
    } else {
      double nextRise = f->vapourRise[i + 1], nextMoister = f->humidityRise[i + 1], drawn = f->drawn[i];
      double nextWarmer = AIR_HEAT + f->humidity[i + 1] * VAPOUR_HEAT + nextMoister * vapourHeat(f->temp[i + 1]);
      double handed = traits.contact * risen;
      heatOut = handed * warmer + face + open * rise * heat;
      heatBack = drawn * nextWarmer + face + open * nextRise * heat;
      waterOut = handed * moister + open * rise;
      waterBack = drawn * nextMoister + open * nextRise;
      heatLeaving = (risen - handed) * warmer;
      waterLeaving = (risen - handed) * moister;
      own += heatOut + heatLeaving + innerHeatBack - withWater * (waterOut + waterLeaving + innerWaterBack);
    }
    a->heatOut[i] = heatOut;
    a->heatBack[i] = heatBack;
    a->waterOut[i] = waterOut;
    a->waterBack[i] = waterBack;
    a->heatLeaving[i] = heatLeaving;
    a->waterLeaving[i] = waterLeaving;
    double inner = innerHeatOut - withWater * innerWaterOut, pivot = 1 / (own - inner * warmUpper);
    warmUpper = (heatBack - withWater * waterBack) * pivot;
    a->warmInner[i] = inner;
    a->warmPivot[i] = pivot;
    a->warmUpper[i] = warmUpper;
    innerHeatOut = heatOut;
    innerHeatBack = heatBack;
    innerWaterOut = waterOut;
    innerWaterBack = waterBack;
    double ammoniaPivot = 1 / (perStep + f->ammoniaOwn[i] - f->ammoniaInner[i] * ammoniaUpper);
    ammoniaUpper = f->ammoniaOuter[i] * ammoniaPivot;
    a->ammoniaPivot[i] = ammoniaPivot;
    a->ammoniaUpper[i] = ammoniaUpper;
  }
}

static void solveAhead(const Fields *f, Ahead *a) {
  int n = shells.count;
  double warming = 0, passed = 0;
  for (int i = 0; i < n; i++) {
    warming = (a->drive[i] + a->warmInner[i] * warming) * a->warmPivot[i];
    passed = (a->driveN[i] + f->ammoniaInner[i] * passed) * a->ammoniaPivot[i];
    a->warming[i] = warming;
    a->passed[i] = passed;
  }
  for (int i = n - 2; i >= 0; i--) {
    warming = a->warming[i] + a->warmUpper[i] * warming;
    passed = a->passed[i] + a->ammoniaUpper[i] * passed;
    a->warming[i] = warming;
    a->passed[i] = passed;
  }
}

static void passAhead(const Fields *f, const Ahead *a, State *s, Rates *r, double step) {
  int last = shells.count - 1;
  double inHeat = 0, inWater = 0;
  for (int i = 0; i <= last; i++) {
    double here = a->warming[i], next = i < last ? a->warming[i + 1] : 0;
    double beyond = i < last ? 0 : f->surfaceAir + f->surfaceGround;
    double faceHeat = a->heatOut[i] * here - a->heatBack[i] * next;
    double faceWater = a->waterOut[i] * here - a->waterBack[i] * next;
    double gainHeat = inHeat - faceHeat - (beyond + a->heatLeaving[i]) * here;
    double gainWater = inWater - faceWater - a->waterLeaving[i] * here;
    r->of[ENERGY][i] += gainHeat;
    r->of[WATER][i] += gainWater;
    s->is[ENERGY][i] += AHEAD * step * gainHeat;
    double left = s->is[WATER][i] + AHEAD * step * gainWater;
    s->is[WATER][i] = left > 0 ? left : 0;
    inHeat = faceHeat;
    inWater = faceWater;
  }
}

static Fields fields[2];
static Rates rates[2];
static State states[2];
static Ahead ahead;
static double ledger[FLOWS];

/* A flow, and its line of the ledger, by what was solved for. */
static inline void enter(Rates *r, int line, double rate, double step) {
  r->flow[line] += rate;
  ledger[line] += AHEAD * step * rate;
}

/* One step from states[from] to the other; the rates at `from` are found already. */
static void stepOf(int from, double step) {
  int n = shells.count;
  double half = 0.5 * step, perStep = 1 / step, guess[PASSING][MOST];
  Fields *f = &fields[from];
  Rates *first = &rates[from], *second = &rates[1 - from];
  State *s = &states[from], *then = &states[1 - from];
  lookAtDry(f, step, &ahead);
  lookAhead(f, step, &ahead);
  for (int i = 0; i < n; i++) {
    double net = first->of[ENERGY][i] - ahead.withWater[i] * first->of[WATER][i] +
                 f->temp[i] * ORGANIC_HEAT * first->volatileLost[i];
    ahead.drive[i] = PER_AHEAD * net;
    ahead.wetDrive[i] = PER_AHEAD * first->of[WATER][i];
    ahead.driveN[i] = PER_AHEAD * first->of[AMMONIACAL_N][i];
  }
  solveAhead(f, &ahead);
  if (ahead.isDry) solveDry(&ahead);
  for (int q = 0; q < QUANTITIES; q++)
    for (int i = 0; i < n; i++) {
      double held = s->is[q][i] + step * first->of[q][i];
      then->is[q][i] = q < PASSING || held > 0 ? held : 0;
    }
  for (int i = 0; i < n; i++) {
    then->is[AMMONIACAL_N][i] = fmax(0, s->is[AMMONIACAL_N][i] + ahead.passed[i]);
    then->oxygen[i] = s->oxygen[i];
  }
  if (ahead.isDry) passDry(f, &ahead, then, second, step);
  passAhead(f, &ahead, then, second, step);
  for (int q = 0; q < PASSING; q++)
    for (int i = 0; i < n; i++) guess[q][i] = then->is[q][i];
  then->settled = traits.settling + (s->settled - traits.settling) * exp(-step / (SETTLES_DAY * DAY));

  findRates(then, step, &fields[1 - from], second);
  for (int i = 0; i < n; i++) {
    double missed[PASSING];
    for (int q = 0; q < PASSING; q++)
      missed[q] = 0.5 * (first->of[q][i] + second->of[q][i]) - perStep * (guess[q][i] - s->is[q][i]);
    ahead.drive[i] = PER_AHEAD * (missed[ENERGY] - ahead.withWater[i] * missed[WATER]);
    ahead.wetDrive[i] = PER_AHEAD * missed[WATER];
    ahead.driveN[i] = PER_AHEAD * missed[AMMONIACAL_N];
  }
  solveAhead(f, &ahead);
  if (ahead.isDry) solveDry(&ahead);
  for (int q = 0; q < QUANTITIES; q++)
    for (int i = 0; i < n; i++) {
      double held = s->is[q][i] + half * (first->of[q][i] + second->of[q][i]);
      then->is[q][i] = q < PASSING || held > 0 ? held : 0;
    }
  for (int i = 0; i < n; i++) then->is[AMMONIACAL_N][i] = fmax(0, guess[AMMONIACAL_N][i] + ahead.passed[i]);
  if (ahead.isDry) passDry(f, &ahead, then, second, step);
  passAhead(f, &ahead, then, second, step);
  for (int line = 0; line < FLOWS; line++) ledger[line] += half * (first->flow[line] + second->flow[line]);
  double heat = 0, water = 0, ammoniaGone = 0;
  for (int i = 0; i < n; i++) {
    heat += ahead.heatLeaving[i] * ahead.warming[i];
    water += ahead.waterLeaving[i] * ahead.warming[i];
    ammoniaGone += f->ammoniaLeaving[i] * ahead.passed[i];
    second->of[AMMONIACAL_N][i] += PER_AHEAD * perStep * ahead.passed[i] - ahead.driveN[i];
  }
  for (int i = 0; ahead.isDry && i < n; i++) {
    double leaving = ahead.wetLeaving[i] * ahead.wetting[i];
    water += leaving;
    heat += leaving * vapourHeat(f->temp[i]);
  }
  enter(second, HEAT_WITH_AIR, heat, step);
  enter(second, WATER_WITH_AIR, water, step);
  enter(second, AMMONIA_GONE, ammoniaGone, step);
  enter(second, HEAT_THROUGH_SURFACE, f->surfaceAir * ahead.warming[n - 1], step);
  enter(second, HEAT_TO_GROUND, f->surfaceGround * ahead.warming[n - 1], step);
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
  static State start;
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
    states[0] = start;
    states[1] = start;
    findRates(&states[0], step, &fields[0], &rates[0]);
    for (int k = 0; k < (int)steps; k++) stepOf(k % 2, step);
    printf("%.9f ", (double)(clock() - from) / CLOCKS_PER_SEC);
  }
  putchar('\n');
  int end = (int)steps % 2;
  lookInside(&states[end], &fields[end]);
  for (int i = 0; i < shells.count; i++) printf("%.17g ", fields[end].temp[i]);
  putchar('\n');
  return 0;
}
