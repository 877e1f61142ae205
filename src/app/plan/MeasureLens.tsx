import { measureError, measureLens } from '../../optics/measure-lens';
import type { Lens } from '../../optics/types';
import { metres } from '../../optics/units';
import { formatAngle, formatFocal, formatLength } from '../../readings/format';
import { parseLength } from '../../readings/parse';
import { takeMeasure } from '../../session/actions/plan-page';
import { bodyOf } from '../../session/kit';
import { known } from '../../session/known';
import { LIMITS } from '../../session/limits';
import { type Figure, Figures, type FigureValues } from '../controls/Figures';
import { useWorkbench } from '../state/workbench';
import { kit as said } from '../words/kit.en';
import { parseMillimetres, showMillimetres } from './OwnLensForm';

type Name = 'near' | 'nearFrame' | 'far' | 'farFrame' | 'focusedAt' | 'mark';

/** A tape held by hand is read to about this, metres: common practice, no source. */
const TAPE_ERROR = 0.005;

/** Two frames at two distances on the tape: where the entrance pupil is, and the angle. */
export function MeasureLens(props: { lens: Lens; onDone: () => void }) {
  const { session, models, act } = useWorkbench();
  const { lens } = props;
  const show = (length: number) => formatLength(length, session.units, 'distance');
  const length = { parse: (text: string) => parseLength(text), show, initial: '' };
  const labels = said.figures;
  const figures: Figure<Name>[] = [
    { name: 'near', label: labels.near, range: LIMITS.measuredTape, ...length },
    { name: 'nearFrame', label: labels.nearFrame, range: LIMITS.measuredFrame, ...length },
    { name: 'far', label: labels.far, range: LIMITS.measuredTape, ...length },
    { name: 'farFrame', label: labels.farFrame, range: LIMITS.measuredFrame, ...length },
    {
      name: 'focusedAt',
      label: labels.focusedAt,
      note: said.notes.focusedAt(show(LIMITS.measuredTape.most)),
      range: LIMITS.measuredTape,
      optional: true,
      ...length,
    },
    {
      name: 'mark',
      label: labels.mark,
      initial: showMillimetres(lens.focal[1]),
      parse: parseMillimetres,
      range: { least: lens.focal[0], most: lens.focal[1] },
      show: showMillimetres,
    },
  ];
  const readings = (v: FigureValues<Name>) => {
    const { near, nearFrame, far, farFrame, focusedAt } = v;
    if (near === undefined || nearFrame === undefined) return null;
    if (far === undefined || farFrame === undefined) return null;
    return {
      format: known(models.formats, bodyOf(session).format),
      side: 'long' as const,
      readings: [
        { tape: metres(near), frame: metres(nearFrame) },
        { tape: metres(far), frame: metres(farFrame) },
      ] as const,
      length: lens.length,
      ...(focusedAt === undefined ? {} : { focusedAt: metres(focusedAt) }),
      ...(lens.pupilMagnification === undefined
        ? {}
        : { pupilMagnification: lens.pupilMagnification }),
    };
  };
  return (
    <Figures
      figures={figures}
      send={said.useMeasure}
      before={
        <>
          <p className="slip-note">{said.measureHow}</p>
          <p className="slip-note">{said.measureWhy}</p>
        </>
      }
      onSend={(values) => {
        const asked = readings(values);
        const { near, nearFrame, far, farFrame, focusedAt, mark } = values;
        if (!asked || mark === undefined) return said.impossible;
        const measure = measureLens(asked);
        if (!measure.ok) return said.faults[measure.reason];
        act(takeMeasure, {
          lens: lens.id,
          mark,
          near: { tape: near ?? 0, frame: nearFrame ?? 0 },
          far: { tape: far ?? 0, frame: farFrame ?? 0 },
          ...(focusedAt === undefined ? {} : { focusedAt }),
        });
        props.onDone();
        return null;
      }}
    >
      {(values) => {
        const asked = readings(values);
        const measure = asked && measureLens(asked);
        if (!asked || !measure) return null;
        if (!measure.ok) return <p className="slip-wrong">{said.faults[measure.reason]}</p>;
        const error = measureError(asked, { tape: TAPE_ERROR, frame: TAPE_ERROR });
        return (
          <p role="status">
            {said.measured({
              pupil: show(measure.value.entrancePupil),
              angle: formatAngle(measure.value.angle),
              focal: formatFocal(measure.value.focal),
              error: error.ok ? show(error.value.entrancePupil) : '',
            })}
          </p>
        );
      }}
    </Figures>
  );
}
