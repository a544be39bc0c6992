import type { Chair } from '../chair/chair.js';
import type { DesignInSI } from '../design/design.js';
import { combineMasses } from '../mass.js';
import type { LoadId } from '../names.js';
import { riding, type Riding } from '../sitter/riding.js';
import { standardSwing, type Load } from './load.js';
import type { People, Person } from './people.js';

/** The loads that a design is put through, in the order of the contract, each for every sitter, as the design changes them. */
export function loadsOf(design: DesignInSI, chair: Chair, { persons, child }: People): Load[] {
  const empty: Load = {
    id: 'empty',
    sitter: null,
    person: null,
    body: chair.body,
    riders: 0,
    swing: swingOf(design, 'empty'),
  };
  const seated = (id: LoadId, how: Riding): Load[] =>
    persons.map((person) => seatedLoad(id, person, how, chair, swingOf(design, id)));
  const all = [
    empty,
    ...seated('seated', { feet: 'floor', child: null }),
    ...seated('seated-feet-up', { feet: 'up', child: null }),
    ...(child ? seated('with-a-child', { feet: 'floor', child }) : []),
  ];
  return all.filter(({ id }) => design.loads[id] !== null);
}

function seatedLoad(id: LoadId, person: Person, how: Riding, chair: Chair, swing: number): Load {
  const riders = riding(person.pose, how);
  return {
    id,
    sitter: person.name,
    person,
    body: combineMasses([chair.body, ...riders]),
    riders: riders.reduce((sum, { mass }) => sum + mass, 0),
    swing,
  };
}

/** A load with a child takes the settings of its plain load. */
function swingOf({ loads }: DesignInSI, id: LoadId): number {
  const settings = loads[id] ?? (id === 'with-a-child' ? loads.seated : null);
  return settings?.['swing'] ?? standardSwing;
}
