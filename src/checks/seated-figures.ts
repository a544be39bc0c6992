/**
 * What a limit on one load of a sitter is held against: figures of the same sitter's seated rest, with nothing in the arms,
 * whichever loads are rolled.
 */
import { combineMasses } from '../mass.js';
import type { LoadRecord } from '../measures/record.js';
import type { LoadId } from '../names.js';
import { restLean } from '../rolling/rest.js';
import { riding } from '../sitter/riding.js';
import type { SeatedFigures } from './default-limits.js';

type Rolled = readonly { readonly record: LoadRecord }[];

/** Of each sitter, worked out once. */
export function seatedFigures(loads: Rolled): (sitter: string | null) => SeatedFigures {
  const known = new Map<string | null, SeatedFigures>();
  return (sitter) => {
    const figures = known.get(sitter) ?? { rockerEndBack: rockerEndBack(loads, sitter) };
    known.set(sitter, figures);
    return figures;
  };
}

/** Loads that are counted from the seated rest itself. */
const sameRest: readonly LoadId[] = ['seated', 'getting-up'];

function rockerEndBack(loads: Rolled, sitter: string | null): number | null {
  const own = loads.filter(({ record }) => record.load.sitter === sitter);
  const seated = own.find(({ record }) => sameRest.includes(record.load.id));
  if (seated) return seated.record.roll.atRest?.back.rockerEnd ?? null;
  const [other] = own;
  return other ? settledAnew(other.record) : null;
}

/** Where neither of those loads is rolled; null: nobody sits, or rests nowhere. */
function settledAnew({ chair: { body, profile, surface }, load: { person } }: LoadRecord): number | null {
  if (person === null) return null;
  const riders = riding(person.pose, { feet: 'floor', child: null });
  const lean = restLean(profile, surface, combineMasses([body, ...riders]).centre);
  return lean === null ? null : surface.tail.lean - lean;
}
