/** How loose each size may be held, in words. */
import type { Loosest } from '../explore/loosest-tolerances.js';
import type { Tolerance } from '../explore/tolerance.js';
import { kindOfDimension } from '../quantity/dimension.js';
import { saySize } from './fine-words.js';
import { sayShare, type ToleranceTextSettings } from './tolerance-words.js';
import { wrap } from './wrap.js';

export function loosestLines(tolerance: Tolerance, settings: ToleranceTextSettings): string[] {
  const { loosest, design, errors, settings: asked } = tolerance;
  const { paint, columns } = settings;
  if (asked.chance === null || errors.length === 0) return [];
  const title = `Loosest, for some limit missed by no more than ${Number((100 * asked.chance).toPrecision(3))} in a hundred`;
  if (loosest === null)
    return [
      paint('heading', title),
      wrap('A limit is not met as drawn: closer work does not mend that.', columns, '  '),
    ];
  const groups = new Map<string, string[]>();
  for (const { variable, size, spread } of loosest.errors.toSorted((a, b) => a.size - b.size)) {
    const said = saySize(kindOfDimension(variable.dimension), size, design.units);
    const hold = spread === 'even' ? `±${said}` : `${said} (normal)`;
    groups.set(hold, [...(groups.get(hold) ?? []), variable.name]);
  }
  const rows = [...groups].map(([hold, names]) =>
    wrap(`${hold}: ${names.join(', ')}`, columns, '  ', '    '),
  );
  const then = loosest.met
    ? `Then some limit is missed by ${sayShare(loosest.any)} in a hundred.`
    : `No tolerance that was tried does it: with these, the closest that help, some limit is missed by ${sayShare(loosest.any)} in a hundred${mostOf(loosest)}.`;
  return [paint('heading', title), ...rows, paint(loosest.met ? 'good' : 'bad', wrap(then, columns, '  '))];
}

const mostOf = ({ missedMost }: Loosest): string =>
  missedMost === null ? '' : `, most of all ${missedMost.id} by ${sayShare(missedMost.missed)}`;
