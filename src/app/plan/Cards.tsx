import './cards.css';
import { useMemo } from 'react';
import { FromAbove, FromSide, PRINT_REM, paperScale } from '../../drawings/plan';
import type { Models } from '../../models/types';
import { cautionsFor } from '../../plan/cautions';
import { stopsToBackdrop } from '../../plan/lights';
import { type Shot, shootingList } from '../../plan/shooting-list';
import type { PlanRequest } from '../../plan/types';
import { formatFNumber, formatFocal, formatStops } from '../../readings/format';
import { type Cast, leadOf } from '../../session/cast';
import { LAMPS, lampPlace } from '../../session/light';
import type { Picture, Session } from '../../session/types';
import type { Shown } from '../compare/shown';
import { Do } from '../controls/words';
import { isChildSitter } from '../people/child';
import { useProfile } from '../state/useProfile';
import { useWorkbench } from '../state/workbench';
import { cards as said } from '../words/cards.en';
import { light } from '../words/light.en';
import { drawingContent } from './drawingContent';
import type { Planned } from './plan.worker';
import { remedyWords, showIn } from './told';

/** Ways out named beside a framing that is not possible. */
const NAMED = 2;

/** Who is a child or stands on a step, as the cautions ask. */
function peopleOf(session: Session, request: PlanRequest, id: string, models: Models) {
  const wanted = request.wanted.find((each) => each.id === id);
  const asked = session.plan.wanted.find((each) => each.id === id);
  const rows = asked?.of === 'group' ? session.plan.group?.rows : undefined;
  return (wanted?.people ?? []).map((person) => {
    const place = Number(person.id.split('.')[1]) - 1;
    const model = rows
      ? rows[person.row]?.models[place]
      : session.people.find((each) => each.id === person.id)?.model;
    const sitter = models.sitters.get(model ?? '');
    return {
      ...person,
      child: isChildSitter(sitter),
      raised: rows?.[person.row]?.place === 'step',
    };
  });
}

export function Card(props: { shot: Shot; place: number; request: PlanRequest }) {
  const { session, models } = useWorkbench();
  const { shot, request } = props;
  const { setting } = shot;
  const wanted = request.wanted.find(({ id }) => id === shot.wanted);
  const camera = request.cameras.find(({ id }) => id === shot.camera);
  if (!wanted || !camera) return null;
  const show = showIn(session.units);
  const room = wanted.room ?? request.room;
  const on = LAMPS.filter((lamp) => lamp !== 'background' && session.light[lamp].strength > 0);
  const { x, y, z } = lampPlace(session.light.key);
  const stops = stopsToBackdrop({ at: [x, y, z], size: session.light.key.size }, room);
  const people = peopleOf(session, request, shot.wanted, models);
  const cautions = cautionsFor({
    setting,
    people,
    lights: on.map((lamp) => session.light[lamp].distance),
  });
  const [near, far] = setting.sharp;
  const lines: [string, string][] = [
    [said.lines.lens, said.at(camera.lensName, formatFocal(setting.mark))],
    [said.lines.body, `${camera.bodyName}, ${camera.format.name}`],
    [said.lines.standpoint, show(setting.standpoint)],
    [said.lines.tape, show(setting.tape)],
    [said.lines.height, show(setting.lensHeight)],
    [said.lines.aperture, formatFNumber(setting.fNumber)],
    [said.lines.sharp, said.sharpFrom(show(near), Number.isFinite(far) ? show(far) : said.endless)],
    [said.lines.frame, said.size(show(setting.frameWidth), show(setting.frameHeight))],
    [said.lines.backdrop, show(room.backdrop.behind)],
    [said.lines.used, said.size(show(setting.backdropUsed.width), show(setting.backdropUsed.top))],
    ...(session.light.key.strength > 0 && stops.ok
      ? [
          [said.lines.light, said.falls(formatStops(Math.abs(stops.value)), stops.value < 0)] as [
            string,
            string,
          ],
        ]
      : []),
  ];
  return (
    <article className="card">
      <h3>
        <span className="card-step">{props.place + 1}</span>
        {wanted.name}
      </h3>
      <dl>
        {lines.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {cautions.length > 0 && (
        <ul className="card-cautions">
          {cautions.map((caution) => (
            <li key={caution}>{said.cautions[caution]}</li>
          ))}
          <li>{said.rules}</li>
        </ul>
      )}
    </article>
  );
}

/** The room at the largest usual scale at which it fits the paper. */
function PaperDrawings(props: { cast: Cast; pictures: readonly Shown[]; request: PlanRequest }) {
  const { session, models } = useWorkbench();
  const profile = useProfile(leadOf(props.cast, session.pictures[0] as Picture));
  const { pictures, request } = props;
  const content = useMemo(
    () =>
      drawingContent(session, pictures, request, models, profile, (lamp) => light.lamps[lamp].name),
    [session, pictures, request, models, profile],
  );
  const scale = paperScale(content);
  if (scale === null) return null;
  const sheet = { content, width: 0, rem: PRINT_REM, printScale: scale };
  return (
    <article
      className="card card-drawings"
      aria-label={said.drawings(scale)}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone it scrolls, by keys too
      tabIndex={0}
    >
      <h3>{said.drawings(scale)}</h3>
      <FromAbove {...sheet} />
      <FromSide {...sheet} />
    </article>
  );
}

/** A set-up card for each framing and the list in shooting order, as they print. */
export default function Cards(props: {
  cast: Cast;
  pictures: readonly Shown[];
  request: PlanRequest;
  planned: Planned;
}) {
  const { session } = useWorkbench();
  const { request, planned } = props;
  const { shots, left } = useMemo(() => shootingList(request, planned), [request, planned]);
  const show = showIn(session.units);
  const nameOf = (id: string) => request.wanted.find((each) => each.id === id)?.name ?? '';
  const waysOf = (id: string) =>
    planned.verdicts
      .flatMap(({ wanted }, i) => (wanted === id ? (planned.remedies?.[i] ?? []) : []))
      .sort((a, b) => a.effort - b.effort)
      .slice(0, NAMED)
      .map((remedy) => remedyWords(remedy, request, show));
  return (
    <section className="cards" aria-label={said.title}>
      <div className="row no-print">
        <Do main onPress={() => window.print()}>
          {said.print}
        </Do>
      </div>
      <header className="cards-head">
        <h2>{session.title}</h2>
        <p>{session.room.name}</p>
      </header>
      <article className="card card-list">
        <h3>{said.list}</h3>
        {shots.length === 0 && <p>{said.none}</p>}
        <ol>
          {shots.map(({ wanted, setting, moves }, i) => (
            <li key={wanted}>
              <b>{nameOf(wanted)}</b>: {show(setting.standpoint)}, {formatFocal(setting.mark)},{' '}
              {formatFNumber(setting.fNumber)};{' '}
              {i === 0
                ? said.first
                : moves.length === 0
                  ? said.stay
                  : moves.map((each) => said.moves[each]).join(', ')}
            </li>
          ))}
        </ol>
        {left.length > 0 && (
          <>
            <h4>{said.left}</h4>
            <ul>
              {left.map((id) => (
                <li key={id}>
                  <b>{nameOf(id)}.</b>
                  {said.leftWays(waysOf(id).join('; '))}
                </li>
              ))}
            </ul>
          </>
        )}
        <p className="card-note">{said.computed}</p>
      </article>
      <PaperDrawings {...props} />
      {shots.map((shot, i) => (
        <Card key={shot.wanted} shot={shot} place={i} request={request} />
      ))}
    </section>
  );
}
