/**
 * Rolling over one stretch without loss. With e = (kinetic energy)/(m g), a height, and k² = I/m,
 *
 *     e  = e₀ + H(θ₀) - H(θ)
 *     dt = sqrt((k² + H² + H'²) / (2 g e)) dθ
 *
 * On an arc H² + H'² = (R - d)² + 4 R d sin²(ψ/2) and e = 2 d (κ² - sin²(ψ/2)), κ² = sin²(ψ₀/2) + e₀/(2 d).
 * While κ < 1 the arc has a turning point, and sin(ψ/2) = κ sin u takes the square root out of it:
 *
 *     t = ∫ sqrt(((R - d)² + k² + 4 R d κ² sin² u) / (g d (1 - κ² sin² u))) du
 *
 * On a curve the square root is taken out at an end where the body stands still: θ runs with w² from there.
 */
import { withinTurn } from '../geometry/lean.js';
import { integrate } from '../numeric/integrate.js';
import { signChanges } from '../numeric/root.js';
import { g } from './gravity.js';
import {
  hangOn,
  heightOn,
  riseFrom,
  shapeOn,
  type RoundStretch,
  type Shape,
  type Stretch,
} from './landscape.js';

/** The motion over one stretch, fixed by the energy at one lean of it. */
export interface Pass {
  readonly stretch: Stretch;
  /** k² = I/m, m². */
  readonly gyration2: number;
  /** Lean where it enters, and e there, metres. */
  readonly entry: number;
  readonly energy: number;
  /** H over that at the entry, metres. */
  readonly rise: (lean: number) => number;
  /** e + H, constant over the stretch, metres. */
  readonly total: number;
}

export const passOver = (stretch: Stretch, gyration2: number, entry: number, energy: number): Pass => ({
  stretch: lowNear(stretch, entry),
  gyration2,
  entry,
  energy,
  rise: riseFrom(stretch, entry),
  total: energy + heightOn(stretch, entry),
});

/** The same stretch with its θ_low counted by whole turns to within half a turn of a lean: |ψ| ≤ π there. */
function lowNear(stretch: Stretch, lean: number): Stretch {
  if (stretch.kind === 'curve' || Math.abs(stretch.low - lean) <= Math.PI) return stretch;
  return { ...stretch, low: withinTurn(stretch.low, lean - Math.PI) };
}

/** e at a lean, metres; negative beyond a turning point. */
export const energyAt = ({ energy, rise }: Pass, lean: number): number => energy - rise(lean);

/** Of more e than this, metres, the difference of two heights loses no more than 1e-12: it need not be formed with care. */
const plenty = 1e-4;

/** How the body moves at a lean: its shape over the floor, A/m = k² + H² + H'² and θ̇² = 2 g e / (A/m). */
export function motionAt(pass: Pass, lean: number): Shape & { armSquared: number; rateSquared: number } {
  const { height, slope, radius } = shapeOn(pass.stretch, lean);
  const armSquared = pass.gyration2 + height * height + slope * slope;
  const rough = pass.total - height;
  const energy = rough > plenty ? rough : Math.max(energyAt(pass, lean), 0);
  const rateSquared = (2 * g * energy) / armSquared;
  return { height, slope, radius, armSquared, rateSquared };
}

/** κ² of an arc; not less than 1 where it has no turning point. */
function kappaSquared({ arm, low }: RoundStretch, { entry, energy }: Pass): number {
  const half = Math.sin((entry - low) / 2);
  return half * half + energy / (2 * arm);
}

/** The first lean from the entry towards `end` at which the body turns back; null when it leaves the stretch before. */
export function turnBefore(pass: Pass, end: number): number | null {
  const { stretch, entry } = pass;
  const sense = Math.sign(end - entry);
  if (stretch.kind === 'curve') return turnOnCurve(pass, end);
  const kappa2 = kappaSquared(stretch, pass);
  if (!(kappa2 < 1)) return null;
  const turn = turnOnArc(stretch, kappa2, sense);
  return sense * (end - turn) >= 0 ? turn : null;
}

const turnOnArc = ({ low }: RoundStretch, kappa2: number, sense: number): number =>
  low + sense * 2 * Math.asin(Math.sqrt(kappa2));

/** A let-go from a standstill has e = 0 at its entry: the search begins this share of the stretch inside. */
const offEntry = 1e-9;
const curveSteps = 8;

function turnOnCurve(pass: Pass, end: number): number | null {
  if (energyAt(pass, end) > 0 && growsThroughout(pass.stretch, pass.entry, end)) return null;
  const from = pass.entry + offEntry * (end - pass.entry);
  return signChanges((lean) => energyAt(pass, lean), from, end, curveSteps)[0] ?? null;
}

/** H' grows from one lean to the other, so e has no low between them. */
const growsThroughout = (stretch: Stretch, from: number, to: number): boolean =>
  hangOn(stretch, from) > 0 && hangOn(stretch, to) > 0;

/**
 * Seconds from the entry to a lean of the stretch.
 * @param turns whether that lean is its turning point; it must not lie beyond it
 */
export function timeOver(pass: Pass, to: number, turns: boolean): number {
  const { stretch, entry } = pass;
  if (stretch.kind === 'round') {
    const kappa2 = kappaSquared(stretch, pass);
    if (kappa2 < 1) return timeOnArc(stretch, pass, kappa2, to);
  }
  const still = pass.energy === 0;
  if (still && turns) {
    const middle = (entry + to) / 2;
    return timeBeside(pass, entry, middle) + timeBeside(pass, to, middle);
  }
  if (still) return timeBeside(pass, entry, to);
  if (turns) return timeBeside(pass, to, entry);
  return Math.abs(integrate((lean) => 1 / Math.sqrt(motionAt(pass, lean).rateSquared), entry, to));
}

/** Nearer to a standstill than this, radians, e comes from the first terms of H: its own difference is rounding there. */
const near = 1e-7;

/** Seconds between a standstill and another lean: θ runs with w² from there, e = -(H' Δ + (ρ - H) Δ²/2 + …). */
function timeBeside(pass: Pass, standstill: number, other: number): number {
  const { slope, height, radius } = shapeOn(pass.stretch, standstill);
  const way = other - standstill;
  return integrate(
    (w) => {
      const step = way * w * w;
      const { armSquared, rateSquared } = motionAt(pass, standstill + step);
      const first = (-2 * g * step * (slope + ((radius - height) * step) / 2)) / armSquared;
      return (2 * w * Math.abs(way)) / Math.sqrt(Math.abs(step) < near ? first : rateSquared);
    },
    0,
    1,
  );
}

function timeOnArc(stretch: RoundStretch, pass: Pass, kappa2: number, to: number): number {
  const { entry, energy, gyration2 } = pass;
  const u = (lean: number, still: boolean): number => {
    const sine = Math.sin((lean - stretch.low) / 2) / Math.sqrt(kappa2);
    return Math.asin(still ? Math.sign(sine) : Math.min(Math.max(sine, -1), 1));
  };
  const turns = to === turnOnArc(stretch, kappa2, Math.sign(to - entry));
  return Math.abs(integrate(rateOfU(stretch, gyration2, kappa2), u(entry, energy === 0), u(to, turns)));
}

function rateOfU({ radius, arm }: RoundStretch, gyration2: number, kappa2: number): (u: number) => number {
  const least = gyration2 + (radius - arm) ** 2;
  const growth = 4 * radius * arm * kappa2;
  const stiffness = g * arm;
  return (u) => {
    const sin2 = Math.sin(u) ** 2;
    return Math.sqrt((least + growth * sin2) / (stiffness * (1 - kappa2 * sin2)));
  };
}

/**
 * Seconds for a whole swing on one arc, there and back, let go at a lean. The integrand is even, smooth and of period
 * π in u, and analytic within b of the real line, b the nearer of the zeros of its root and its pole: equal steps
 * converge geometrically, n to a quarter swing leave e^(-4 n b).
 */
export function wholeSwing(
  stretch: RoundStretch,
  gyration2: number,
  release: number,
  steps?: number,
): number {
  const kappa2 = Math.sin((release - stretch.low) / 2) ** 2;
  const rate = rateOfU(stretch, gyration2, kappa2);
  const count = steps ?? stepsFor(stretch, gyration2, kappa2);
  if (count > mostSteps) return 4 * integrate(rate, 0, Math.PI / 2);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += rate(((i + 0.5) * Math.PI) / (2 * count));
  return (4 * sum * Math.PI) / (2 * count);
}

/** e^(-4 n b) is a rounding, e^-37, for n = 9.2/b. */
function stepsFor({ radius, arm }: RoundStretch, gyration2: number, kappa2: number): number {
  const pole = Math.acosh(1 / Math.sqrt(kappa2));
  const zero = Math.asinh(Math.sqrt((gyration2 + (radius - arm) ** 2) / (4 * radius * arm * kappa2)));
  return Math.max(4, Math.ceil(9.2 / Math.min(pole, zero)));
}

/** More steps than these are dearer than halving where it is needed. */
const mostSteps = 200;
