import { useMemo } from 'react';
import {
  type ChartContent,
  type Moved,
  type MovePhase,
  OneStandpointChart,
  type PlanThing,
} from '../../drawings/plan';
import type { ConditionName, PlanRequest, Span, Verdict } from '../../plan/types';
import { moveStandpoint } from '../../session/actions/plan-page';
import { runOf } from '../../session/kit';
import { LIMITS } from '../../session/limits';
import type { Shown } from '../compare/shown';
import { useDragging } from '../state/useDragging';
import { useSheet } from '../state/useSheet';
import { useWorkbench } from '../state/workbench';
import { plan as said } from '../words/plan.en';
import type { Planned } from './plan.worker';
import { figuresFor, showIn } from './told';

/** Conditions that hang on the people alone are the same for every lens: shown as zones. */
const SHARED = ['nose-gain', 'wall-behind-camera'] as const satisfies readonly ConditionName[];

/** Standpoints that the condition takes from every lens of a framing, as the ends of what works tell. */
function zonesOf(
  name: (typeof SHARED)[number],
  verdicts: readonly Verdict[],
  farthest: number,
): ChartContent['zones'][number]['spans'] {
  const framings = [...new Set(verdicts.map(({ wanted }) => wanted))];
  return framings.flatMap((framing) => {
    const spans = verdicts.filter(({ wanted }) => wanted === framing).flatMap(({ spans: s }) => s);
    const near = spans.filter(({ fromBy }) => fromBy.name === name).map(({ from }) => from);
    const far = spans.filter(({ toBy }) => toBy.name === name).map(({ to }) => to);
    return [
      ...(near.length > 0 ? [{ framing, from: 0, to: Math.min(...near) }] : []),
      ...(far.length > 0 ? [{ framing, from: Math.max(...far), to: farthest }] : []),
    ];
  });
}

const ends = (spans: readonly Span[]) => spans.map(({ from, to }) => ({ from, to }));

/** Which framings one lens covers from one place, drawn along the distance, and said. */
export function Chart(props: {
  pictures: readonly Shown[];
  request: PlanRequest;
  planned: Planned;
}) {
  const { session } = useWorkbench();
  const { request, planned, pictures } = props;
  const sheet = useSheet();
  const dragging = useDragging();
  const show = showIn(session.units);
  const { cameraWall } = runOf(session.room);
  const content = useMemo((): ChartContent => {
    const { verdicts } = planned;
    const farthest = Math.ceil(2 * cameraWall) / 2;
    const [any] = verdicts;
    return {
      units: session.units,
      farthest,
      framings: request.wanted.map(({ id, name, frameHeight }) => ({
        id,
        name,
        frameHeight,
        lenses: request.cameras.flatMap(({ id: camera, lensName }) => {
          const verdict = verdicts.find((each) => each.wanted === id && each.camera === camera);
          return verdict && verdict.reach.length > 0
            ? [
                {
                  id: camera,
                  name: said.shortLens(lensName),
                  reach: ends(verdict.reach),
                  works: ends(verdict.spans),
                },
              ]
            : [];
        }),
      })),
      zones: any
        ? SHARED.map((name) => ({
            id: name,
            name: said.because({ name }, figuresFor(request, any, show)),
            spans: zonesOf(name, verdicts, farthest),
          })).filter(({ spans }) => spans.length > 0)
        : [],
      pictures: pictures.map(({ letter, resolved }) => ({
        letter,
        standpoint: resolved.standpoint,
        move: { min: LIMITS.standpoint.least, max: Math.max(cameraWall, resolved.standpoint) },
      })),
    };
  }, [planned, request, pictures, session.units, cameraWall, show]);
  const onMove = (what: PlanThing, [to]: Moved, phase: MovePhase) => {
    if (what.kind !== 'camera') return;
    if (phase === 'move') dragging.act(moveStandpoint, { letter: what.letter, to });
    else dragging[phase]();
  };
  const [best] = planned.oneStandpoint;
  const nameOf = (id: string) => request.wanted.find((each) => each.id === id)?.name ?? '';
  const lensOf = (id: string) =>
    request.cameras.find((each) => each.id === id)?.lensName ?? said.something;
  return (
    <section className="sheet-paper plan-wide one-standpoint" aria-label={said.onePlaceTitle}>
      <h2>{said.onePlaceTitle}</h2>
      <p>
        {best
          ? said.onePlaceSays({
              standpoint: show(best.standpoint),
              lens: lensOf(best.camera),
              covers: best.covers.map(nameOf),
              misses: best.misses.map(nameOf),
              lost: best.covers.map((id) => ({ name: nameOf(id), by: best.lost[id] ?? 0 })),
            })
          : said.noPlace}
      </p>
      <p className="slip-note">{said.chartLegend}</p>
      <div ref={sheet.ref}>
        {sheet.width > 0 && (
          <OneStandpointChart
            content={content}
            width={sheet.width}
            rem={sheet.rem}
            onMove={onMove}
          />
        )}
      </div>
    </section>
  );
}
