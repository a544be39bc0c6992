/** Measures of a seated person on one arc, by explicit rolling: the arc's centre goes level, the body turns about it. */
import { describe, expect, it } from 'vitest';
import { supportAt } from '../../src/geometry/profile.js';
import type { MeasureKey } from '../../src/names.js';
import { isMissing } from '../../src/numeric/missing.js';
import { checked, oneArc, sitters } from '../reading.js';

const radius = 1;
const text = `${oneArc}arms: { rear: [-140, 560], front: [200, 580] }\nroom: { wall: 400 mm }\n${sitters}child: { mass: 9 kg }\n`;
const result = checked(text);

const load = (id: string, sitter: string | null) =>
  result.loads.find(({ record }) => record.load.id === id && record.load.sitter === sitter)!;

function valueOf(id: string, sitter: string | null, key: MeasureKey): number {
  const value = load(id, sitter).measured.get(key)!;
  if (isMissing(value)) throw new Error(value.missing);
  return value;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** A body point q after rolling to a lean: C goes back by R θ and stays at R; q turns about C by θ, back positive. */
const rolled = ({ x, y }: Place, lean: number): Place => ({
  x: -radius * lean + x * Math.cos(lean) - (y - radius) * Math.sin(lean),
  y: radius + x * Math.sin(lean) + (y - radius) * Math.cos(lean),
});

describe.each(['short', 'tall'])('%s, seated', (name) => {
  const { record } = load('seated', name);
  const { body, person } = record.load;
  /** tan θ = e/v, e how far G is behind the centre of the arc and v below it. */
  const rest = Math.atan2(-body.centre.x, radius - body.centre.y);
  const { size, pose } = person!;

  it('rests where the arc’s centre is plumb over G', () => {
    expect(valueOf('seated', name, 'restAngleDeg')).toBeCloseTo(rest, 12);
  });

  it('slopes and leans by as much', () => {
    expect(valueOf('seated', name, 'seatSlopeDeg')).toBeCloseTo(Math.atan2(30, 450) + rest, 12);
    expect(valueOf('seated', name, 'backAngleDeg')).toBeCloseTo(Math.atan2(200, 650) + rest, 12);
  });

  it('touches R θ behind the middle, that much nearer to the tail end at sin α = 0.5', () => {
    expect(valueOf('seated', name, 'touchFromTailM')).toBeCloseTo(radius * (Math.asin(0.5) - rest), 9);
    expect(valueOf('seated', name, 'contactAtRestM')).toBeCloseTo(-radius * Math.sin(rest), 12);
  });

  it('has the front edge where rolling brings it, and the knee over it by the rest of leg and shoe', () => {
    const front = rolled({ x: 0.3, y: 0.38 }, rest);
    expect(valueOf('seated', name, 'seatFrontHeightM')).toBeCloseTo(front.y, 12);
    expect(valueOf('seated', name, 'kneeHollowGapM')).toBeCloseTo(size.kneeHollow + 0.025 - front.y, 12);
  });

  it('sits on a seat from where seat and back meet to its front', () => {
    // Both lines pass through (-0.15, 0.35).
    const depth = Math.hypot(0.45, 0.03);
    expect(valueOf('seated', name, 'seatDepthGapM')).toBeCloseTo(size.buttockToKneeHollow - depth, 12);
  });

  it('has arms over the hip as high over the seat line, square to it', () => {
    const { x } = pose.joints.hip;
    const onArms = 0.56 + ((x + 0.14) * 0.02) / 0.34;
    const onSeat = 0.35 + ((x + 0.15) * 0.03) / 0.45;
    const square = (onArms - onSeat) * Math.cos(Math.atan2(0.03, 0.45));
    expect(valueOf('seated', name, 'armHeightGapM')).toBeCloseTo(square - size.elbowAboveSeat, 12);
  });

  it('reaches with its foot from the hip at the back of the rock to the ankle where it stood', () => {
    const ankle = { x: rolled(pose.joints.knee, rest).x, y: 0.039 * size.stature };
    const hip = rolled(pose.joints.hip, rest + (6 * Math.PI) / 180);
    const reach = Math.hypot(hip.x - ankle.x, hip.y - ankle.y) / (0.491 * size.stature);
    expect(valueOf('seated', name, 'footReach')).toBeCloseTo(reach, 12);
  });

  it('goes over sideways at atan((w/2)/H)', () => {
    const height = radius - Math.hypot(body.centre.x, radius - body.centre.y);
    expect(valueOf('seated', name, 'tipSidewaysDeg')).toBeCloseTo(Math.atan2(0.25, height), 12);
  });

  it('sweeps behind the empty chair by the rearmost corner of its rocker, rolled', () => {
    const { centre } = result.chair.body;
    const empty = Math.atan2(-centre.x, radius - centre.y);
    // The rocker alone is drawn: its rearmost corners are the tail ends of the bottom and of the top edge.
    const tails = [1, 0.95].map((r) => ({ x: -r * 0.5, y: 1 - r * Math.cos(Math.asin(0.5)) }));
    const rearmost = (lean: number): number => Math.min(...tails.map((tail) => rolled(tail, lean).x));
    const back = rest + (6 * Math.PI) / 180;
    const swept = Math.max(
      0,
      rearmost(empty) - Math.min(rearmost(back), rearmost(rest), rearmost(2 * rest - back)),
    );
    expect(valueOf('seated', name, 'sweptBackM')).toBeCloseTo(swept, 9);
    expect(valueOf('seated', name, 'wallClearanceM')).toBeCloseTo(0.4 - swept, 9);
  });
});

describe('what rides', () => {
  it('is the whole sitter with feet up, less shanks and feet with feet on the floor, and the child', () => {
    const rides = (id: string): number => load(id, 'short').record.load.riders;
    expect(rides('seated-feet-up')).toBeCloseTo(50, 9);
    // de Leva 1996, female: shank 0.0481 and foot 0.0129, two of each; the column adds up to 0.9999.
    expect(rides('seated')).toBeCloseTo(50 * (1 - (2 * (0.0481 + 0.0129)) / 0.9999), 9);
    expect(rides('with-a-child') - rides('seated')).toBeCloseTo(9, 9);
  });

  it('with feet up brings G forward and down', () => {
    const centre = (id: string) => load(id, 'tall').record.load.body.centre;
    expect(centre('seated-feet-up').x).toBeGreaterThan(centre('seated').x);
    expect(centre('seated-feet-up').y).toBeLessThan(centre('seated').y);
  });
});

describe('what the file does not give', () => {
  it('is missing with its reason', () => {
    const bare = checked(oneArc.replace(/^(seat|back|spacing):.*\n/gm, ''));
    const [{ measured }] = bare.loads as [(typeof bare.loads)[0]];
    // Nothing to judge, rather than a number that should be there.
    expect(measured.get('seatSlopeDeg')).toEqual({ missing: 'the design has no seat line', beside: true });
    expect(measured.get('backAngleDeg')).toEqual({ missing: 'the design has no back line', beside: true });
    expect(measured.get('tipSidewaysDeg')).toMatchObject({
      missing: expect.stringContaining('`spacing`') as string,
    });
    expect(measured.get('tipBackPushN')).toMatchObject({
      missing: expect.stringContaining('back line') as string,
    });
  });

  it('does not move the floor: the drawn chair stands at y = 0', () => {
    expect(supportAt(result.chair.profile, 0)).toBeCloseTo(0, 12);
  });
});
