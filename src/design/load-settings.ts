/** What a design may change of the standard loads. */
import type { Kind, LoadId } from '../names.js';
import type { Must } from './value.js';

type Settings = Readonly<Record<string, { readonly kind: Kind; readonly must: Must }>>;

const share = { kind: 'number', must: 'not negative' } as const;
const time = { kind: 'time', must: 'positive' } as const;
const mass = { kind: 'mass', must: 'positive' } as const;

const rocking: Settings = { swing: { kind: 'angle', must: 'positive' } };
const leaning: Settings = {
  trunkAhead: { kind: 'angle', must: 'not negative' },
  throwTime: time,
  shove: share,
  shoveTime: { kind: 'time', must: 'not negative' },
};
const gettingUp: Settings = { leaveTime: time, slideTime: time, armShare: share, seatPush: share };

/** Shares are of body weight. */
export const loadSettings: Readonly<Record<LoadId, Settings>> = {
  empty: rocking,
  seated: rocking,
  'seated-feet-up': rocking,
  'leaning-back-hard': leaning,
  'getting-up': gettingUp,
  'with-a-child': rocking,
  'leaning-back-hard-with-a-child': leaning,
  'getting-up-with-a-child': gettingUp,
  'child-on-the-tails': { mass, weight: mass },
};

/** A load with a child takes the settings of the load without, unless it has its own. */
export const plainLoadOf: Readonly<Partial<Record<LoadId, LoadId>>> = {
  'with-a-child': 'seated',
  'leaning-back-hard-with-a-child': 'leaning-back-hard',
  'getting-up-with-a-child': 'getting-up',
};
