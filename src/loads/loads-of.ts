import type { Chair } from '../chair/chair.js';
import type { DesignInSI } from '../design/design.js';
import { plainLoadOf } from '../design/load-settings.js';
import { tailPlace } from '../geometry/running-surface.js';
import { combineMasses } from '../mass.js';
import { loadIds, loads as standardLoads, type LoadId } from '../names.js';
import { riding, type Riding } from '../sitter/riding.js';
import { childOnTheTails, tailsDefaults } from './child-on-the-tails.js';
import { gettingUp, gettingUpDefaults } from './getting-up.js';
import { bodyAtStart, leaningBackHard, leaningDefaults } from './leaning-back-hard.js';
import { standardSwing, type Load } from './load.js';
import type { People, Person } from './people.js';

/**
 * The loads that a design is put through, in the order of the contract, each for every sitter, as the design changes them.
 * @param wanted no others than these
 */
export function loadsOf(
  design: DesignInSI,
  chair: Chair,
  { persons, child }: People,
  wanted: readonly LoadId[] = loadIds,
): Load[] {
  return loadIds
    .filter((id) => design.loads[id] !== null && wanted.includes(id))
    .flatMap((id): Load[] => {
      if (!standardLoads[id].sitter) return [chairAlone(id, chair, design)];
      if (withChild(id) && child === null) return [];
      const how: Riding = {
        feet: id === 'seated-feet-up' ? 'up' : 'floor',
        child: withChild(id) ? child : null,
      };
      return persons.map((person) => sitting(id, person, how, chair, design));
    });
}

const withChild = (id: LoadId): boolean => id.endsWith('with-a-child');

function chairAlone(id: LoadId, chair: Chair, { loads }: DesignInSI): Load {
  const { body } = chair;
  const mass = loads[id]?.['mass'] ?? tailsDefaults.mass;
  const script = id === 'child-on-the-tails' ? childOnTheTails(body, tailPlace(chair), mass) : null;
  return {
    id,
    sitter: null,
    person: null,
    body,
    settled: body,
    riders: 0,
    swing: swingOf(loads, id),
    script,
  };
}

function sitting(id: LoadId, person: Person, how: Riding, chair: Chair, { loads }: DesignInSI): Load {
  const riders = riding(person.pose, how);
  const settled = combineMasses([chair.body, ...riders]);
  const load = {
    id,
    sitter: person.name,
    person,
    body: settled,
    settled,
    riders: riders.reduce((sum, { mass }) => sum + mass, 0),
    swing: swingOf(loads, id),
    script: null,
  };
  switch (plainLoadOf[id] ?? id) {
    case 'leaning-back-hard': {
      const script = leaningBackHard(chair.body, riders, person, { ...leaningDefaults, ...loads[id] });
      return { ...load, body: bodyAtStart(script), script };
    }
    case 'getting-up': {
      const settings = { ...gettingUpDefaults, ...loads[id] };
      return { ...load, body: chair.body, script: gettingUp(chair, riders, person.size.mass, settings) };
    }
    default:
      return load;
  }
}

/** In a moving load, as far as the same sitter rocks. */
const swingOf = (loads: DesignInSI['loads'], id: LoadId): number =>
  loads[id]?.['swing'] ?? (standardLoads[id].moving ? loads.seated?.['swing'] : null) ?? standardSwing;

/** Why a load is not among those. */
export function whyNotRolled({ loads }: DesignInSI, { persons, child }: People): (id: LoadId) => string {
  return (id) => {
    if (loads[id] === null) return 'the design has put this load off';
    if (standardLoads[id].sitter && persons.length === 0) return 'the design has no sitters';
    if (withChild(id) && child === null) return 'the design has no child';
    throw new RangeError(`whyNotRolled: ${id} is rolled`);
  };
}
