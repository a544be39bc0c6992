/**
 * The hard lean begun in the middle of an everyday swing: the sitter rocks with the trunk forward, without loss, and
 * throws it back at some phase ψ of that rock,
 *
 *     θ = (θ_b + θ_f)/2 + (θ_b - θ_f)/2 cos ψ,     ½ A θ̇² = m g (H_b - H),     θ̇ against sin ψ
 *
 * θ_b, θ_f its turning points. The moment that takes the chair farthest back is sought.
 */
import type { Chair } from '../chair/chair.js';
import type { Load } from '../loads/load.js';
import { indexAt } from '../geometry/profile.js';
import type { MassProperties } from '../mass.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import { g } from '../rolling/gravity.js';
import { landscapeOf, riseBetween, shapeOn, stretchAt, type Landscape } from '../rolling/landscape.js';
import { restLean } from '../rolling/rest.js';
import { rollThrough, turningLeans } from '../rolling/scripted-roll.js';
import type { Course } from '../rolling/scripted-place.js';
import { freeSwing } from '../rolling/swing.js';
import { leaningCourse } from './motion.js';
import { restsNowhere } from './no-rest.js';

export interface WorstMoment {
  /** Lean and θ̇ at which the shove begins. */
  readonly lean: number;
  readonly rate: number;
  /** Greatest lean; infinite: it goes over. */
  readonly farthest: number;
}

/** The peak is one hill over a rock, as wide as half of it. */
const phases = 12;
/** A parabola through three phases, then through three a quarter as far apart, twice: to a ten-thousandth of the hill. */
const rounds = 2;
const narrower = 1 / 4;
/** Error of a step while it is sought, some thousandths of a degree in all; and of the run that is then told. */
const roughly = 1e-5;
const closely = 1e-9;

/**
 * Of a hard lean; the everyday swing is as wide as the load says.
 * @param settled lean of the seated rest; null: there is none
 */
export function worstMoment(chair: Chair, load: Load, settled: number | null): OrMissing<WorstMoment> {
  if (load.script?.kind !== 'leaning-back-hard') return missing('nobody leans back hard');
  const rocks = everydaySwing(chair, load.body, load.swing);
  if (isMissing(rocks)) return rocks;
  if (settled === null) return missing(restsNowhere);
  const course = leaningCourse(chair, load.script, settled);
  const worst = climbed((phase) => shovedAt({ ...course, closeness: roughly }, rocks(phase)));
  return shovedAt({ ...course, closeness: closely }, worst);
}

type Rocks = (phase: number) => { readonly lean: number; readonly rate: number };

function everydaySwing(chair: Chair, body: MassProperties, amplitude: number): OrMissing<Rocks> {
  const { profile, surface } = chair;
  const rest = restLean(profile, surface, body.centre);
  if (rest === null) return missing(restsNowhere);
  const landscape = landscapeOf(profile, body.centre);
  const back = rest + amplitude;
  const swing = freeSwing(landscape, surface, body, rest, back);
  if (isMissing(swing)) return swing;
  if (swing.impacts.length > 0) return missing('a flat lies in the rock');
  const [forward] = swing.turns;
  return (phase) => {
    const lean = (back + forward) / 2 + ((back - forward) / 2) * Math.cos(phase);
    return { lean, rate: -Math.sign(Math.sin(phase)) * speedAt(landscape, body, lean, back) };
  };
}

function speedAt(
  landscape: Landscape,
  { mass, inertia }: MassProperties,
  lean: number,
  turn: number,
): number {
  const { height, slope } = shapeOn(stretchAt(landscape, indexAt(landscape.profile, lean)), lean);
  const fall = Math.max(0, riseBetween(landscape, lean, turn));
  return Math.sqrt((2 * mass * g * fall) / (inertia + mass * (height * height + slope * slope)));
}

function shovedAt(course: Course, { lean, rate }: ReturnType<Rocks>): WorstMoment {
  const run = rollThrough(course, { lean, rate });
  const farthest = run.goesOver === 'back' ? Infinity : Math.max(...turningLeans(run));
  return { lean, rate, farthest };
}

const farther = (a: WorstMoment, b: WorstMoment): WorstMoment => (b.farthest > a.farthest ? b : a);

function climbed(at: (phase: number) => WorstMoment): WorstMoment {
  const step = (2 * Math.PI) / phases;
  const tried = Array.from({ length: phases }, (_, i) => at(i * step));
  const first = tried.indexOf(tried.reduce(farther));
  const beside = (side: number): WorstMoment => tried[(first + side + phases) % phases]!;
  let [left, here, right] = [beside(-1), beside(0), beside(1)];
  let [phase, reach, worst] = [first * step, step, here];
  for (let round = 0; round < rounds && worst.farthest < Infinity; round++) {
    const bend = left.farthest - 2 * here.farthest + right.farthest;
    phase += bend < 0 ? (reach * (left.farthest - right.farthest)) / (2 * bend) : 0;
    reach *= narrower;
    [left, here, right] = [at(phase - reach), at(phase), at(phase + reach)];
    worst = [worst, left, here, right].reduce(farther);
  }
  return worst;
}
