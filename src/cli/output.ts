/** Pictures -> JSON objects, comma-separated values, or a table to read. */
import { gainAgainst, matchTheLook } from '../readings/compare';
import { formatLength } from '../readings/format';
import { readings } from '../readings/read';
import { ROWS, type Row } from '../readings/rows';
import { limitSentence } from '../session/limit-words';
import { columns } from './columns';
import type { CliPicture } from './pictures';

export type Json =
  | number
  | string
  | boolean
  | null
  | readonly Json[]
  | { readonly [key: string]: Json };

/** Names first in each object; the rest follows in the order of the table. */
const FIRST = [
  'standpoint_m',
  'sensor_mark_distance_m',
  'focal_length_mm',
  'image_distance_mm',
  'magnification',
  'angle_of_view_deg',
  'frame_m',
  'nose_to_ear_ratio',
  'nose_to_ear_gain_percent',
  'depth_of_field_m',
];

const FACTOR: Partial<Record<Row['unit'], number>> = {
  mm: 1000,
  percent: 100,
  deg: 180 / Math.PI,
};

/** A row's value in the unit that its name carries; what has no limit or does not exist is null. */
function cellOf(row: Row, { measures }: CliPicture): Json {
  const value = row.value(measures);
  if (typeof value !== 'number') return value;
  return Number.isFinite(value) ? value * (FACTOR[row.unit] ?? 1) : null;
}

/** Sets `frame_m.width` as { frame_m: { width } }. */
function put(into: Record<string, Json>, id: string, value: Json): void {
  const [name = id, part] = id.split('.');
  if (part === undefined) into[name] = value;
  else into[name] = { ...(into[name] as Record<string, Json> | undefined), [part]: value };
}

/** One object a picture. */
export function jsonOf(pictures: readonly CliPicture[]): Record<string, Json>[] {
  return pictures.map((picture) => {
    const all: Record<string, Json> = {};
    for (const row of ROWS) put(all, row.id, cellOf(row, picture));
    const percent = (share: number | null) => (share === null ? null : share * 100);
    return {
      ...Object.fromEntries(FIRST.map((name) => [name, all[name] ?? null])),
      ...all,
      nose_to_ear_gain_against_percent: pictures.map(({ measures }) =>
        percent(gainAgainst(picture.measures, measures)),
      ),
      match_the_look_m: pictures.map(({ measures }) => matchTheLook(picture.measures, measures)),
      landmark_ratios: Object.fromEntries(picture.ratios.map(({ name, value }) => [name, value])),
      lens_limit: picture.lensLimit && {
        reason: picture.lensLimit.reason,
        limit: picture.lensLimit.limit,
        asked: picture.lensLimit.asked,
        says: limitSentence(picture.lensLimit, 'metric'),
      },
      landmarks: Object.fromEntries(
        picture.landmarks.map(({ name, position, image }) => [
          name,
          {
            position_mm: position.map((part) => part * 1000),
            image: image === null ? null : image.map((part) => part * 1000),
          },
        ]),
      ),
    };
  });
}

/** Every number of a nested value under its own name: frame_m.width, landmarks.menton.image.0. */
function flatten(value: Json, name: string, into: Map<string, Json>): void {
  if (typeof value !== 'object' || value === null) into.set(name, value);
  else {
    for (const [key, part] of Object.entries(value)) {
      flatten(part, name === '' ? key : `${name}.${key}`, into);
    }
  }
}

const quoted = (text: string): string =>
  /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** A line of names, then a line a picture (RFC 4180, line feeds); nothing stands for null. */
export function csvOf(pictures: readonly CliPicture[]): string {
  const lines = jsonOf(pictures).map((object) => {
    const flat = new Map<string, Json>();
    flatten(object, '', flat);
    return flat;
  });
  const names = [...new Set(lines.flatMap((line) => [...line.keys()]))];
  const rows = lines.map((line) =>
    names.map((name) => quoted(String(line.get(name) ?? ''))).join(','),
  );
  return [names.map(quoted).join(','), ...rows].join('\n');
}

/** The table to read: a line a reading, a column a picture; then what limits the lens. */
export function tableOf(pictures: readonly CliPicture[]): string {
  const told = pictures.map(({ measures }) => readings(measures));
  const [first = []] = told;
  const lines = first.map(({ name }, i) => [
    name,
    ...told.map((picture) => picture[i]?.shown ?? ''),
  ]);
  const limits = pictures.flatMap(({ lensLimit, measures: { lens } }) =>
    lensLimit
      ? [
          `${formatLength(lens.standpoint, 'metric', 'distance')}: ${limitSentence(lensLimit, 'metric')}`,
        ]
      : [],
  );
  return [...columns(lines), ...limits].join('\n');
}
