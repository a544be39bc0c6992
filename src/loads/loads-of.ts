import type { Chair } from '../chair/chair.js';
import type { DesignInSI } from '../design/design.js';
import { combineMasses } from '../mass.js';
import { loads as standardLoads, type LoadId } from '../names.js';
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

const swingOf = ({ loads }: DesignInSI, id: LoadId): number => loads[id]?.['swing'] ?? standardSwing;

/** Why a load is not among those. */
export function whyNotRolled({ loads }: DesignInSI, { persons, child }: People): (id: LoadId) => string {
  return (id) => {
    if (loads[id] === null) return 'the design has put this load off';
    if (standardLoads[id].sitter && persons.length === 0) return 'the design has no sitters';
    if (id.endsWith('with-a-child') && child === null) return 'the design has no child';
    return 'this load is not calculated in this version';
  };
}
