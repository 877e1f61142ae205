/** What a plan found -> a table to read. */
import type { Change, Condition, Span, Wanted } from '../plan/types';
import {
  formatFNumber,
  formatFocal,
  formatLength,
  formatPercent,
  type Units,
} from '../readings/format';
import { columns } from './columns';
import { CHANGE_UNITS, type Planned } from './plan-output';

/** How figures and ids are told. */
interface Say {
  readonly distance: (metres: number) => string;
  readonly nameOf: (id: string) => string;
}

/** "nose-gain" and "noseGain" as "nose gain". */
const plain = (name: string): string =>
  name.replaceAll('-', ' ').replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

function sayFor({ request }: Planned, units: Units): Say {
  const names = new Map([
    ...request.cameras.map(
      ({ id, lensName, bodyName }) => [id, `${lensName} on ${bodyName}`] as const,
    ),
    ...request.room.obstacles.map(({ id, name }) => [id, name] as const),
    ...request.wanted.map(({ id, name }) => [id, name] as const),
  ]);
  return {
    distance: (metres) => formatLength(metres, units, 'distance'),
    nameOf: (id) => names.get(id) ?? plain(id),
  };
}

/** A condition by its name; whose face or which thing it is, where there are several. */
function by({ name, of }: Condition, { people }: Wanted, { nameOf }: Say): string {
  const person = people.find(({ id }) => id === of);
  if (of === undefined || (person && people.length === 1)) return plain(name);
  return `${plain(name)}: ${person ? `${person.name} (${person.id})` : nameOf(of)}`;
}

/** "backdrop width 2.16 m", "focal 100.0 mm or more": a change in a few words. */
function changeText({ change, ...values }: Change, { distance, nameOf }: Say): string {
  const [suffix] = CHANGE_UNITS[change] ?? [''];
  const show = (value: number): string => {
    if (change === 'f-number') return formatFNumber(value);
    if (suffix === '_mm') return formatFocal(value);
    return suffix === '_percent' ? formatPercent(value) : distance(value);
  };
  const ends = 'atLeast' in values ? (values.atLeast ? ' or more' : ' or less') : '';
  if ('by' in values) return `${plain(change)} + ${show(values.by)}`;
  if ('to' in values) return `${plain(change)} ${show(values.to)}${ends}`;
  const [of = ''] = Object.values(values) as string[];
  return `${plain(change)}: ${nameOf(of)}`;
}

/** A line for each lens that works, then what stands in the way of the others and what would do. */
function framingLines({ verdicts, remedies }: Planned, wanted: Wanted, say: Say): string[] {
  const { distance, nameOf } = say;
  const spanText = ({ from, to, fromBy, toBy }: Span): string =>
    `${distance(from)} (${by(fromBy, wanted, say)}) to ${distance(to)} (${by(toBy, wanted, say)})`;
  const works: string[][] = [];
  const fails: string[] = [];
  verdicts.forEach(({ wanted: id, camera, spans, recommended: set, conflict }, i) => {
    if (id !== wanted.id) return;
    if (set) {
      works.push([
        `  ${nameOf(camera)}`,
        distance(set.standpoint),
        formatFocal(set.mark),
        formatFNumber(set.fNumber),
        `tape ${distance(set.tape)}`,
        `nose +${formatPercent(set.noseGain)}`,
        spans.map(spanText).join('; '),
      ]);
      return;
    }
    const why = conflict.map((each) => by(each, wanted, say)).join(', ');
    const ways = (remedies[i] ?? []).map(({ change }) => changeText(change, say)).join('; ');
    fails.push(`  ${nameOf(camera)}: not here (${why})${ways ? `. Would do: ${ways}` : ''}`);
  });
  return [wanted.name, ...columns(works), ...fails, ''];
}

/** Each framing with each lens, and the one place from which most of them are taken. */
export function planTable(planned: Planned, units: Units): string {
  const say = sayFor(planned, units);
  const { request, oneStandpoint, backdropForward } = planned;
  const lines: string[] = [];
  if (backdropForward > 0) {
    lines.push(
      `The backdrop hangs ${say.distance(backdropForward)} farther forward than asked: nearer to the corner its ends meet the walls.`,
      '',
    );
  }
  for (const wanted of request.wanted) lines.push(...framingLines(planned, wanted, say));
  const [best] = oneStandpoint;
  if (best) {
    const named = (ids: readonly string[]) => ids.map(say.nameOf).join(', ');
    lines.push(
      `From one place: ${say.distance(best.standpoint)}, ${say.nameOf(best.camera)}: ${named(best.covers)}.`,
    );
    if (best.misses.length > 0) lines.push(`Not from there: ${named(best.misses)}.`);
  }
  return lines.join('\n').trimEnd();
}
