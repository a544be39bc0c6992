import { describe, expect, it } from 'vitest';
import { turnAgainst } from './dying-rock.js';

const degree = Math.PI / 180;
const chair = { radius: 1.07, hang: 0.47, gyration2: 9 / 80 };

describe('a half swing against rolling resistance', () => {
  // Figures derived elsewhere by a symbolic Lagrangian and another integrator, to four digits.
  it.each([
    [1, 0.3657],
    [6, 0.3669],
    [15, 0.3736],
    [25, 0.3876],
  ])('from %d° loses %d°', (release, loss) => {
    const turn = turnAgainst({ ...chair, resistance: 0.0015 }, release * degree) / degree;
    expect(release + turn).toBeCloseTo(loss, 4);
  });

  it('loses as much from the other side', () => {
    const rock = { ...chair, resistance: 0.0015 };
    expect(turnAgainst(rock, -0.2)).toBeCloseTo(-turnAgainst(rock, 0.2), 14);
  });

  // Order 4: a step half as long, a sixteenth of the error.
  it('is of order 4', () => {
    const rock = { ...chair, resistance: 0.0015 };
    const exact = turnAgainst(rock, 0.4, 8000);
    const off = (steps: number): number => Math.abs(turnAgainst(rock, 0.4, steps) - exact);
    expect(Math.log2(off(20) / off(40))).toBeGreaterThan(3.7);
  });

  // A spring against dry friction (textbooks of vibration): each half swing loses twice the band.
  it('of small swings loses 2c/(ρ - H)', () => {
    const rock = { ...chair, resistance: 1e-8 };
    expect((1e-4 + turnAgainst(rock, 1e-4)) / (2e-8 / chair.hang)).toBeCloseTo(1, 6);
  });
});
