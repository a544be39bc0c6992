/** What is wrong with the lines of seat, back and arms, whether or not anybody sits by them. */
import type { DesignInSI } from '../design/design.js';
import { samePlace } from '../geometry/point.js';
import type { DrawingFault } from './drawing-fault.js';

export function lineFaults({ seat, back, arms }: DesignInSI): DrawingFault[] {
  return [
    ...(seat && !(seat.front.x > seat.rear.x + samePlace)
      ? [fault('seat', 'front', 'ahead of', 'rear')]
      : []),
    ...(back && !(back.top.y > back.foot.y + samePlace) ? [fault('back', 'top', 'above', 'foot')] : []),
    ...(arms && !(arms.front.x > arms.rear.x + samePlace)
      ? [fault('arms', 'front', 'ahead of', 'rear')]
      : []),
  ];
}

const fault = (line: string, end: string, where: string, other: string): DrawingFault => ({
  path: [line, end],
  flaw: {
    expected: `the ${end} of the ${line} line ${where} its ${other}`,
    found: 'it is not',
    hint: 'x runs forward, the way the sitter faces, and y up',
  },
});
