/** The parts of a starter: straight sticks and boards on two rockers, by the names of its sizes. */

/** Worked out of the fitted sizes and the stock; each line a dimension. */
export const workedOut = `\
seatRear: seatFront - seatRise
seatPitch: seatRise / seatDepth
backPitch: backLean / backHeight
legAt: seatDepth - legStock # the front legs stand here
legFoot: radius - sqrt((radius - depth)^2 - (legAt - touch)^2) # on top of the rockers
postAt: backPitch * (seatRear - depth) - postStock / 2 # and the back posts here
postFoot: radius - sqrt((radius - depth)^2 - (postAt - touch)^2)
armMiddle: seatRear + armHeight - armBoard / 2 # of the arms' thickness, over x = 0
armBack: backPitch * armHeight + postStock # the arms reach so far back
railMiddle: seatRear - seatBoard - rail / 2
rungHeight: seatRear / 2
postAtRung: backPitch * rungHeight - postStock / 2
crestFoot: backHeight - crest`;

interface StarterPart {
  readonly name: string;
  readonly count?: number;
  readonly across: string;
  readonly outline: string;
}

const across = 'spacing - board';

const groups: readonly (readonly [title: string, parts: readonly StarterPart[]])[] = [
  [
    'sides',
    [
      {
        ...{ name: 'rocker', count: 2, across: 'board' },
        outline: 'rocker: { radius: radius, depth: depth, nose: noseLength, tail: tail, at: touch }',
      },
      {
        ...{ name: 'front leg', count: 2, across: 'legStock' },
        outline:
          'bar: { from: [legAt, legFoot], to: [legAt, armMiddle - armBoard / 2 + seatPitch * legAt], width: legStock }',
      },
      {
        ...{ name: 'back post', count: 2, across: 'board' },
        outline:
          'bar: { from: [postAt, postFoot], to: [-backLean - postStock / 2, seatRear + backHeight], width: postStock }',
      },
      {
        ...{ name: 'arm', count: 2, across: 'armWidth' },
        outline:
          'bar: { from: [-armBack, armMiddle - seatPitch * armBack], to: [seatDepth, armMiddle + seatRise], width: armBoard }',
      },
      {
        ...{ name: 'side rail', count: 2, across: 'railBoard' },
        outline:
          'bar: { from: [-postStock / 2, railMiddle], to: [legAt, railMiddle + seatPitch * legAt], width: rail }',
      },
      {
        ...{ name: 'side rung', count: 2, across: 'rung' },
        outline: 'bar: { from: [postAtRung, rungHeight], to: [legAt, rungHeight], width: rung }',
      },
    ],
  ],
  [
    'across',
    [
      {
        ...{ name: 'front rail', across: 'spacing - legStock' },
        outline:
          'bar: { from: [legAt, railMiddle + seatPitch * legAt - rail / 2], to: [legAt, railMiddle + seatPitch * legAt + rail / 2], width: railBoard }',
      },
      {
        ...{ name: 'rear rail', across },
        outline:
          'bar: { from: [-postStock / 2, railMiddle - rail / 2], to: [-postStock / 2, railMiddle + rail / 2], width: railBoard }',
      },
      {
        ...{ name: 'front rung', across: 'spacing - legStock' },
        outline: 'circle: { centre: [legAt, rungHeight], radius: rung / 2 }',
      },
      {
        ...{ name: 'rear rung', across },
        outline: 'circle: { centre: [postAtRung, rungHeight], radius: rung / 2 }',
      },
    ],
  ],
  [
    'back',
    [
      {
        ...{ name: 'lower back rail', across },
        outline:
          'bar: { from: [-backPitch * lowerRail - railBoard / 2, seatRear + lowerRail], to: [-backPitch * 2 * lowerRail - railBoard / 2, seatRear + 2 * lowerRail], width: railBoard }',
      },
      {
        ...{ name: 'back slat', count: 6, across: 'slatWidth' },
        outline:
          'bar: { from: [-backPitch * 2 * lowerRail - slat / 2, seatRear + 2 * lowerRail], to: [-backPitch * crestFoot - slat / 2, seatRear + crestFoot], width: slat }',
      },
      {
        ...{ name: 'crest rail', across },
        outline:
          'bar: { from: [-backPitch * crestFoot - railBoard / 2, seatRear + crestFoot], to: [-backLean - railBoard / 2, seatRear + backHeight], width: railBoard }',
      },
    ],
  ],
  [
    'seat',
    [
      {
        ...{ name: 'seat', across },
        outline:
          'bar: { from: [0, seatRear - seatBoard / 2], to: [seatDepth, seatFront - seatBoard / 2], width: seatBoard }',
      },
    ],
  ],
];

/** The list under `parts:`. */
export const starterParts = (wood: string): string =>
  groups
    .map(([title, parts]) => [`  # ---- ${title}`, ...parts.map((part) => partLines(part, wood))].join('\n'))
    .join('\n\n');

const partLines = ({ name, count, across: size, outline }: StarterPart, wood: string): string =>
  [
    `  - name: ${name}`,
    ...(count === undefined ? [] : [`    count: ${count}`]),
    `    wood: ${wood}`,
    `    across: ${size}`,
    `    outline: { ${outline} }`,
  ].join('\n');

/** Where the body touches. */
export const starterLines = `\
seat: { front: [seatDepth, seatFront], rear: [0, seatRear] }
back: { foot: [0, seatRear], top: [-backLean, seatRear + backHeight] }
arms: { rear: [0, seatRear + armHeight], front: [seatDepth, seatFront + armHeight] }`;
