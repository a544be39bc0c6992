/** What a moving load costs once the chair is built: its run through time and what the run asks of the floor. */
import { readFileSync } from 'node:fs';
import { checkDesign } from '../src/check-design.js';
import { moveLoad } from '../src/measures/motion.js';
import type { LoadRecord } from '../src/measures/record.js';
import { worstMoment } from '../src/measures/worst-moment.js';
import { rollAtRest } from '../src/rolling/roll-at-rest.js';
import type { Finding } from './finding.js';
import { microsecondsPerCall, type Quartiles } from './timing.js';

export const question = 'How long does a moving load take, alone and over all steady measures of one load?';

const design = 'fixtures/porch-rocker/design.yaml';
/** Milliseconds a run. */
const target = 3;
const targetOfSearch = 100;

const times = ({ low, median, high }: Quartiles, factor: number): Quartiles => ({
  low: low * factor,
  median: median * factor,
  high: high * factor,
});

const findingOf = (what: string, unit: string, { low, median, high }: Quartiles): Finding => ({
  what,
  value: median,
  spread: { low, high },
  unit,
});

export function run(): Promise<Finding[]> {
  const answer = checkDesign(readFileSync(design, 'utf8'), design);
  if (!answer.ok) throw new Error(`the benchmark’s design ${design} has mistakes`);
  const recordOf = (id: string): LoadRecord => {
    const found = answer.value.loads.find(({ record }) => record.load.id === id);
    if (!found) throw new Error(`the benchmark’s design has no load ${id}`);
    return found.record;
  };
  const { chair, load } = recordOf('seated');
  const settings = { swing: load.swing, pushedAt: chair.back?.top ?? null };
  const steady = microsecondsPerCall(() =>
    rollAtRest(chair.profile, chair.surface, load.body, settings),
  ).median;
  const lean = recordOf('leaning-back-hard');
  const search = times(microsecondsPerCall(searchOf(lean)), 1e-3);
  const worst = {
    ...findingOf('leaning-back-hard, the search for its worst moment', 'ms', search),
    target: targetOfSearch,
    met: search.median < targetOfSearch,
  };
  return Promise.resolve([
    worst,
    ...['leaning-back-hard', 'getting-up'].flatMap((id) => {
      const took = times(microsecondsPerCall(runOf(recordOf(id))), 1e-3);
      return [
        { ...findingOf(`${id}, a run`, 'ms', took), target, met: took.median < target },
        findingOf(`${id}, over all steady measures of one load`, '×', times(took, 1000 / steady)),
      ];
    }),
  ]);
}

function searchOf({ chair, load, roll }: LoadRecord): () => unknown {
  const settled = roll.atRest?.rest.lean ?? null;
  return () => worstMoment(chair, load, settled);
}

function runOf({ chair, load, roll, emptyRest }: LoadRecord): () => unknown {
  const { script, body } = load;
  if (script === null || roll.atRest === null) throw new Error(`the benchmark’s ${load.id} does not move`);
  const { lean } = roll.atRest.rest;
  return () => moveLoad(chair, script, body, lean, emptyRest);
}
