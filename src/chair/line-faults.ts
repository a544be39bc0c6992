/** What is wrong with the lines of seat, back and arms, whether or not anybody sits by them. */
import type { DesignInSI } from '../design/design.js';
import { millimetres } from '../geometry/flaw.js';
import { distance, samePlace } from '../geometry/point.js';
import { isMissing } from '../numeric/missing.js';
import { behindSeat, meetingAlong } from '../sitter/support-lines.js';
import type { DrawingFault } from './drawing-fault.js';

export function lineFaults(lines: DesignInSI): DrawingFault[] {
  const turned = wrongWayRound(lines);
  return turned.length > 0 ? turned : apart(lines);
}

function wrongWayRound({ seat, back, arms }: DesignInSI): DrawingFault[] {
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

/** A seat and a back that nobody could use together. */
function apart({ seat, back }: DesignInSI): DrawingFault[] {
  if (!seat || !back) return [];
  const along = meetingAlong(seat, back);
  if (isMissing(along)) return [];
  const ahead = along - distance(seat.rear, seat.front);
  if (along >= -behindSeat && ahead <= 0) return [];
  const where =
    ahead > 0
      ? `${millimetres(ahead)} ahead of the front of the seat line`
      : `${millimetres(-along)} behind the rear of the seat line`;
  return [
    {
      path: ['back'],
      flaw: {
        expected: `a back line that, drawn out, meets the seat line behind its front and no farther than ${millimetres(behindSeat)} behind its rear`,
        found: `one that meets it ${where}`,
      },
    },
  ];
}
