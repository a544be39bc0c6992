import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { profileOf } from '../../src/geometry/profile.js';
import { runningSurface } from '../../src/geometry/running-surface.js';
import { times, type Point } from '../../src/geometry/point.js';
import type { MassProperties } from '../../src/mass.js';
import { isMissing } from '../../src/numeric/missing.js';
import { decay, type Decay, type DecaySettings } from '../../src/rolling/decay.js';
import { heightAt, landscapeOf, slopeOn, stretchAt } from '../../src/rolling/landscape.js';
import { indexAt } from '../../src/geometry/profile.js';
import { freeSwing } from '../../src/rolling/swing.js';
import { between, roundRockers } from '../arbitraries/rolling.js';
import { turnAgainst } from '../oracles/dying-rock.js';
import { hangOf, standardGravity } from '../oracles/round-runner.js';
import { plumbAbove, roundRunner, runner, type Runner, type Step } from './runners.js';

const degree = Math.PI / 180;

interface Rocking {
  readonly runner: Runner;
  readonly body: MassProperties;
  readonly rest: number;
}

function rock({ runner: { outline, ends }, body, rest }: Rocking, release: number, settings: DecaySettings) {
  const profile = profileOf([[outline]]);
  const surface = runningSurface(profile, () => [ends.nose, ends.tail]);
  return decay(landscapeOf(profile, body.centre), surface, body, rest, release, settings);
}

function swing({ runner: { outline, ends }, body, rest }: Rocking, release: number) {
  const profile = profileOf([[outline]]);
  const surface = runningSurface(profile, () => [ends.nose, ends.tail]);
  const swung = freeSwing(landscapeOf(profile, body.centre), surface, body, rest, release);
  if (isMissing(swung)) throw new RangeError(swung.missing);
  return swung;
}

function history(rocking: Rocking, release: number, settings: DecaySettings): Decay {
  const died = rock(rocking, release, settings);
  if (isMissing(died)) throw new RangeError(died.missing);
  return died;
}

/** R 1.07 m, G 0.60 m up, 80 kg, 9 kg m². */
const chair: Rocking = {
  runner: roundRunner({ x: 0, y: 1.07 }, 1.07, -40 * degree, 40 * degree),
  body: { mass: 80, inertia: 9, centre: { x: 0, y: 0.6 } },
  rest: 0,
};
const bareBoards = 1.5e-3;

/** A chair on a runner of several steps; G plumb above the contact at its rest, 0.6 m up. */
function on(steps: readonly Step[], nose: number, rest: number): Rocking {
  const drawn = runner(steps, nose);
  const centre = plumbAbove(drawn.tracks, rest, 0.6);
  return { runner: drawn, body: { mass: 80, inertia: 9, centre }, rest };
}

/** A flat in the middle, G over its own middle: a dead spot of that length. */
function withDeadSpot(length: number): Rocking {
  const steps: Step[] = [{ radius: 1.07, turn: 0.5 }, { flat: length }, { radius: 1.07, turn: 0.5 }];
  const rocking = on(steps, -0.5, 0);
  const { centre } = rocking.body;
  return { ...rocking, body: { ...rocking.body, centre: { ...centre, x: centre.x - length / 2 } } };
}

describe('loss per half swing', () => {
  // Derived elsewhere by a symbolic Lagrangian and a second integrator, to four digits.
  it.each([
    [1, 0.3657],
    [6, 0.3669],
    [15, 0.3736],
    [25, 0.3876],
  ])('from %d°: %d°', (release, loss) => {
    const { losses } = history(chair, release * degree, { resistance: bareBoards });
    expect(losses[0]! / degree).toBeCloseTo(loss, 4);
  });

  it('is that of the energy equation over lean, on any arc', () => {
    fc.assert(
      fc.property(roundRockers, between(0.1, 0.95), between(1e-4, 4e-3), (rocker, share, c) => {
        const { rest, radius, nose, tail, body } = rocker;
        const amplitude = share * Math.min(tail - rest, rest - nose);
        const arc = {
          radius,
          hang: hangOf(rocker),
          gyration2: body.inertia / body.mass,
          resistance: c * radius,
        };
        fc.pre(Math.sin(amplitude) * arc.hang > 3 * arc.resistance);
        const { turns } = history(rocker, rest + amplitude, { resistance: c * radius, mostHalfSwings: 2 });
        // Both are good to 1e-11 of the amplitude, and the rest to a rounding.
        const there = turnAgainst(arc, amplitude);
        expect(turns[1]!.lean - rest).toBeCloseTo(there, 10);
        if (turns.length > 2) expect(turns[2]!.lean - rest).toBeCloseTo(turnAgainst(arc, there), 10);
      }),
      { numRuns: 50 },
    );
  });

  // A spring against dry friction loses twice the band, 2c/(ρ - H); the rest is of second order in the amplitude.
  it('tends to 2c/(ρ - H) with the square of the amplitude', () => {
    const c = 1e-6;
    const excess = (release: number): number =>
      history(chair, release * degree, { resistance: c, mostHalfSwings: 1 }).losses[0]! / ((2 * c) / 0.47) -
      1;
    // Losses of 4e-6 rad good to some 1e-13 rad; the next term is a hundredth of that of order 2.
    expect(excess(8) / excess(4)).toBeCloseTo(4, 0);
    expect(excess(4) / excess(2)).toBeCloseTo(4, 1);
    expect(Math.abs(excess(1))).toBeLessThan(2e-4);
  });
});

describe('standing still', () => {
  it("is within the band |H'| ≤ c, and never before", () => {
    fc.assert(
      fc.property(roundRockers, between(0.2, 0.9), between(1e-3, 5e-3), (rocker, share, c) => {
        const { rest, radius, nose, tail } = rocker;
        const release = rest + share * Math.min(tail - rest, rest - nose);
        const { turns, end, losses, rocks } = history(rocker, release, { resistance: c * radius });
        const ahead = turns.map(({ lean }) => Math.abs(hangOf(rocker) * Math.sin(lean - rest)));
        expect(end).toBe('stands still');
        expect(ahead.pop()).toBeLessThanOrEqual(c * radius * (1 + 1e-9));
        for (const each of ahead) expect(each).toBeGreaterThan(c * radius);
        for (const loss of losses) expect(loss).toBeGreaterThan(0);
        expect(rocks).toBe(Math.floor((turns.length - 1) / 2));
        expect(losses.reduce((sum, loss) => sum + loss, 0)).toBeCloseTo(
          Math.abs(release - rest) - Math.abs(turns.at(-1)!.lean - rest),
          12,
        );
      }),
      { numRuns: 50 },
    );
  });

  it('counts rocks: from 6° some 6/0.366 = 16 half swings', () => {
    const { rocks, turns, end } = history(chair, 6 * degree, { resistance: bareBoards });
    expect([rocks, turns.length, end]).toEqual([8, 17, 'stands still']);
    // From 1° by hand: 1 → 0.634 → 0.269 → 0.097 on the same side, inside ±0.183°.
    const little = history(chair, 1 * degree, { resistance: bareBoards });
    expect(little.turns.map(({ lean }) => Math.round((lean / degree) * 1000) / 1000)).toEqual([
      1, -0.634, 0.269, 0.097,
    ]);
  });

  it('let go inside the band, it stays', () => {
    const { turns, end } = history(chair, 0.18 * degree, { resistance: bareBoards });
    expect(turns).toEqual([{ time: 0, lean: 0.18 * degree }]);
    expect(end).toBe('stands still');
    expect(history(chair, 0, { resistance: 0 }).end).toBe('stands still');
  });

  it('is left below a stated amplitude, or after so many half swings', () => {
    const settings = { resistance: bareBoards, leastAmplitude: 3 * degree };
    const { turns, end } = history(chair, 6 * degree, settings);
    expect(end).toBe('below the least amplitude');
    expect(Math.abs(turns.at(-1)!.lean)).toBeLessThan(3 * degree);
    expect(Math.abs(turns.at(-2)!.lean)).toBeGreaterThan(3 * degree);
    const counted = history(chair, 6 * degree, { resistance: 0, mostHalfSwings: 6 });
    expect([counted.end, counted.turns.length, counted.rocks]).toEqual(['still rocks', 7, 3]);
  });
});

describe('without resistance', () => {
  const free = { resistance: 0, mostHalfSwings: 2, sampled: true };

  /** (k² + H² + H'²) θ̇²/2 and g (H - H at rest), J/kg. */
  function energies({ runner: { outline }, body, rest }: Rocking, { samples }: Decay) {
    const profile = profileOf([[outline]]);
    const landscape = landscapeOf(profile, body.centre);
    const restHeight = heightAt(landscape, rest);
    return samples.map(({ lean, rate }) => {
      const height = heightAt(landscape, lean);
      const slope = slopeOn(stretchAt(landscape, indexAt(profile, lean)), lean);
      const kinetic = ((body.inertia / body.mass + height ** 2 + slope ** 2) * rate ** 2) / 2;
      return { kinetic, potential: standardGravity * (height - restHeight) };
    });
  }

  function expectFreeSwing(rocking: Rocking, release: number): void {
    const died = history(rocking, release, free);
    const { period, turns } = swing(rocking, release);
    expect(Math.abs(died.turns[2]!.time / period - 1)).toBeLessThan(1e-9);
    expect(died.turns[1]!.lean).toBeCloseTo(turns[0], 10);
    expect(died.turns[2]!.lean).toBeCloseTo(release, 10);
    const all = energies(rocking, died);
    const whole = all[0]!.potential;
    expect(Math.max(...all.map(({ kinetic }) => kinetic))).toBeGreaterThan(0.9 * whole);
    for (const { kinetic, potential } of all)
      expect(Math.abs(kinetic + potential - whole)).toBeLessThan(1e-9 * whole + 1e-14);
  }

  it('has the period of the free swing and keeps its energy: one arc', () => {
    fc.assert(
      fc.property(roundRockers, between(0.1, 0.95), (rocker, share) => {
        const { rest, nose, tail } = rocker;
        expectFreeSwing(rocker, rest + share * Math.min(tail - rest, rest - nose));
      }),
      { numRuns: 50 },
    );
  });

  it('and three arcs, from either side', () => {
    const steps = [0.9, 1.3, 1.1].map((radius) => ({ radius, turn: 0.25 }));
    const rocking = on(steps, -0.4, -0.02);
    for (const release of [0.2, 0.1, -0.25]) expectFreeSwing(rocking, release);
  });

  it('a little resistance changes the period little', () => {
    const { period } = swing(chair, 10 * degree);
    const { turns } = history(chair, 10 * degree, { resistance: 1e-9, mostHalfSwings: 2 });
    expect(Math.abs(turns[2]!.time / period - 1)).toBeLessThan(1e-8);
  });

  it('with a flat takes the impacts of the free swing', () => {
    for (const [rocking, release] of [
      [withDeadSpot(0.02), 0.2],
      [withDeadSpot(0.02), -0.15],
      [withDeadSpot(0.06), 0.3],
      // A flat aside of the rest, passed twice.
      [on([{ radius: 1, turn: 0.5 }, { flat: 0.01 }, { radius: 1.2, turn: 0.4 }], -0.4, 0), 0.25],
    ] as const) {
      const { turns, period, impacts } = swing(rocking, release);
      const died = history(rocking, release, { resistance: 0, mostHalfSwings: 2 });
      expect(impacts.length).toBeGreaterThan(0);
      expect(died.turns[1]!.lean).toBeCloseTo(turns[0], 10);
      expect(died.turns[2]!.lean).toBeCloseTo(turns[1], 10);
      expect(Math.abs(died.turns[2]!.time / period - 1)).toBeLessThan(1e-9);
      expect(Math.abs(turns[1])).toBeLessThan(Math.abs(release));
    }
  });
});

describe('a dead spot', () => {
  it('stops it in the end, sooner with resistance', () => {
    const end = (c: number) => history(withDeadSpot(0.2), 0.15, { resistance: c });
    const [free, boards] = [end(0), end(bareBoards)];
    expect([free.end, boards.end]).toEqual(['stands still', 'stands still']);
    expect(Math.abs(free.turns.at(-1)!.lean)).toBeLessThan(1e-9);
    expect(boards.losses.length).toBeLessThan(free.losses.length);
    expect(boards.turns.at(-1)!.time).toBeLessThan(free.turns.at(-1)!.time);
  });

  // x_a = -L/2, x_b = L/2: it stops at once where I/m + H² ≤ L²/4.
  it('longer than twice the arm stops it at the first blow', () => {
    const arm = Math.sqrt(9 / 80 + 0.6 ** 2);
    const ended = (length: number) =>
      history(withDeadSpot(length), 0.1, { resistance: 0, mostHalfSwings: 9 });
    const { turns, end } = ended(2.02 * arm);
    expect([end, turns.length]).toEqual(['stands still', 2]);
    expect(turns[1]!.lean).toBeCloseTo(0, 14);
    expect(ended(1.98 * arm).turns.length).toBeGreaterThan(2);
  });
});

describe('laws', () => {
  const scaled = ({ runner: { outline, ends, tracks }, body, rest }: Rocking, k: number): Rocking => ({
    rest,
    runner: {
      outline: outline.map((piece) =>
        piece.kind === 'line'
          ? { ...piece, from: times(piece.from, k), to: times(piece.to, k) }
          : piece.kind === 'arc'
            ? { ...piece, centre: times(piece.centre, k), radius: piece.radius * k }
            : piece,
      ),
      ends: { nose: times(ends.nose, k), tail: times(ends.tail, k) },
      tracks,
    },
    body: { mass: body.mass, centre: times(body.centre, k), inertia: body.inertia * k * k },
  });

  it('all lengths × k, c among them: the same leans, times × sqrt k', () => {
    fc.assert(
      fc.property(between(0.1, 10), fc.constantFrom(0, 0.01), (k, flat) => {
        const rocking = flat > 0 ? withDeadSpot(flat) : chair;
        const settings = { resistance: bareBoards, mostHalfSwings: 6 };
        const one = history(rocking, 0.12, settings);
        const two = history(scaled(rocking, k), 0.12, { ...settings, resistance: k * bareBoards });
        expect(two.turns.length).toBe(one.turns.length);
        one.turns.forEach(({ time, lean }, i) => {
          expect(two.turns[i]!.lean).toBeCloseTo(lean, 10);
          expect(two.turns[i]!.time).toBeCloseTo(time * Math.sqrt(k), 8);
        });
      }),
      { numRuns: 20 },
    );
  });

  it('mirrored, the same on the other side; all masses × k, the same', () => {
    const steps = [{ radius: 0.9, turn: 0.4 }, { flat: 0.01 }, { radius: 1.2, turn: 0.4 }];
    const mirror = ({ x, y }: Point): Point => ({ x: -x, y });
    const one = on(steps, -0.4, -0.03);
    const drawn = runner([...steps].reverse(), -0.4, mirror(one.runner.ends.tail));
    const two: Rocking = {
      runner: drawn,
      body: { mass: 160, inertia: 18, centre: mirror(one.body.centre) },
      rest: 0.03,
    };
    const settings = { resistance: bareBoards };
    const [here, there] = [history(one, 0.2, settings), history(two, -0.2, settings)];
    expect(there.turns.length).toBe(here.turns.length);
    here.turns.forEach(({ time, lean }, i) => {
      expect(there.turns[i]!.lean).toBeCloseTo(-lean, 10);
      expect(there.turns[i]!.time).toBeCloseTo(time, 9);
    });
  });

  it('samples go from turn to turn, in order, at rest at each', () => {
    const { samples, turns } = history(chair, 0.1, { resistance: bareBoards, sampled: true });
    expect(samples[0]).toEqual({ time: 0, lean: 0.1, rate: 0 });
    for (let i = 1; i < samples.length; i++)
      expect(samples[i]!.time).toBeGreaterThanOrEqual(samples[i - 1]!.time);
    for (const { time, lean } of turns) {
      const there = samples.find((sample) => sample.time === time)!;
      expect(there.lean).toBe(lean);
      expect(Math.abs(there.rate)).toBeLessThan(1e-12);
    }
    expect(history(chair, 0.1, { resistance: bareBoards }).samples).toEqual([]);
  });
});

describe('refuses', () => {
  const reason = (rocking: Rocking, release: number, resistance = bareBoards): string => {
    const died = rock(rocking, release, { resistance });
    return isMissing(died) ? died.missing : 'rocks';
  };
  const short = (nose: number, tail: number): Rocking => ({
    ...chair,
    runner: roundRunner({ x: 0, y: 1.07 }, 1.07, nose, tail),
  });

  it('to pass a rocker end', () => {
    expect(reason(short(-0.1, 0.4), 0.2)).toBe('the swing passes the nose end of the rockers');
    expect(reason(short(-0.4, 0.1), -0.2)).toBe('the swing passes the tail end of the rockers');
    expect(reason(short(-0.4, 0.1), 0.11)).toBe('the swing passes the tail end of the rockers');
    // With enough resistance it turns before.
    expect(reason(short(-0.1, 0.4), 0.11, 5e-3)).toBe('rocks');
  });

  it('to go past the point of no return', () => {
    // Ahead the radius is less than the height of G: its crest lies on the runner, where G is plumb above the contact.
    const peaked = on(
      [
        { radius: 0.3, turn: 0.9 },
        { radius: 1.07, turn: 0.6 },
      ],
      -0.95,
      0.02,
    );
    expect(reason(peaked, 0.3)).toBe('goes over: past the point of no return');
    expect(reason(peaked, 0.06, 1e-5)).toBe('rocks');
    expect(reason(peaked, -0.9)).toBe('let go past the point of no return');
  });

  it('to leave the floor', () => {
    // Off 10 m of radius onto 0.1 m at 3 rad/s: (H - ρ) θ̇² is more than gravity takes.
    const leaps = on(
      [
        { radius: 0.1, turn: 0.5 },
        { radius: 10, turn: 0.45 },
      ],
      -0.55,
      0,
    );
    expect(reason({ ...leaps, body: { ...leaps.body, inertia: 1 } }, 0.38, 0)).toBe('leaves the floor');
  });

  it('a resistance that is none', () => {
    expect(() => reason(chair, 0.1, -1e-3)).toThrow(RangeError);
    expect(() => reason(chair, 0.1, NaN)).toThrow(RangeError);
  });
});
