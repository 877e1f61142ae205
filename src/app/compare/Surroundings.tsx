import { formatPercent } from '../../readings/format';
import { parseShare } from '../../readings/parse';
import {
  setCameraWall,
  setEyesAt,
  setFormat,
  setKit,
  setPrintHeight,
  setRoom,
  setUnits,
} from '../../session/actions';
import { bodyOf, kitOf, lensesOf, runOf } from '../../session/kit';
import { LIMITS } from '../../session/limits';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { ManyChoices } from '../controls/ManyChoices';
import { MegapixelsValue } from '../controls/MegapixelsValue';
import { TypedValue } from '../controls/TypedValue';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { Lights } from './Lights';

const said = words.compare;
const { labels } = said;

/** Backdrop and walls along the camera's axis. */
function RoomSentence() {
  const { session, act } = useWorkbench();
  const { backdrop, cameraWall, behindCamera } = runOf(session.room);
  return (
    <p>
      {said.room({
        backdrop: (
          <LengthValue
            label={labels.backdrop}
            metres={backdrop}
            range={LIMITS.backdrop}
            offers={[0.6, 1.2, 2, 3]}
            onCommit={(to) => act(setRoom, { sitterBefore: to })}
          />
        ),
        wall: (
          <LengthValue
            label={labels.wall}
            metres={cameraWall}
            range={LIMITS.cameraWall}
            onCommit={(to) => act(setCameraWall, { to })}
          />
        ),
        kept: (
          <LengthValue
            label={labels.kept}
            metres={behindCamera}
            range={LIMITS.behindCamera}
            onCommit={(to) => act(setRoom, { behindCamera: to })}
          />
        ),
      })}
    </p>
  );
}

/** The lenses at hand and the body behind them. */
function KitSentence() {
  const { session, models, act } = useWorkbench();
  const { lenses: chosen } = kitOf(session);
  const all = lensesOf(session, models);
  const names = chosen.flatMap((id) => all.get(id)?.name ?? []);
  const { format, megapixels } = bodyOf(session);
  return (
    <p>
      {said.kit({
        names: said.list(names),
        lenses: (
          <ManyChoices
            label={labels.lenses}
            shown={said.lensCount(names.length)}
            chosen={chosen}
            choices={[...all.values()].map(({ id, name }) => ({ id, name }))}
            onChange={(lenses) => act(setKit, { lenses })}
          />
        ),
        megapixels: (
          <MegapixelsValue
            megapixels={megapixels}
            onCommit={(to) => act(setFormat, { format, megapixels: to })}
          />
        ),
      })}
    </p>
  );
}

/** Where the eyes sit across the frame; their height stands in the set-up's own sentence. */
function CompositionSentence() {
  const { session, act } = useWorkbench();
  const { eyesAcross } = session.crop;
  return (
    <p>
      {said.composition({
        across: (
          <TypedValue
            label={labels.across}
            shown={said.eyesAcross(formatPercent(eyesAcross))}
            initial={formatPercent(eyesAcross)}
            parse={parseShare}
            range={LIMITS.eyesAcross}
            show={(share) => formatPercent(share)}
            offers={[0.33, 0.5, 0.67].map((value) => ({ value, shown: formatPercent(value) }))}
            onCommit={(across) => act(setEyesAt, { across })}
          />
        ),
      })}
    </p>
  );
}

/** The print that is looked at, and the units of everything. */
function PrintSentence() {
  const { session, act } = useWorkbench();
  return (
    <p>
      {said.reading({
        print: (
          <LengthValue
            label={labels.print}
            metres={session.printHeight}
            purpose="frame"
            range={LIMITS.printHeight}
            offers={[0.15, 0.3, 0.6]}
            onCommit={(to) => act(setPrintHeight, { to })}
          />
        ),
        units: (
          <ChoiceValue
            label={labels.units}
            shown={said.units[session.units]}
            chosen={session.units}
            choices={(['metric', 'imperial'] as const).map((id) => ({ id, name: said.units[id] }))}
            onChoose={(to) => act(setUnits, { to })}
          />
        ),
      })}
    </p>
  );
}

/** Light, room, kit and what is read, each a sentence. */
export default function Surroundings() {
  return (
    <div className="setup-more">
      <Lights />
      <RoomSentence />
      <CompositionSentence />
      <KitSentence />
      <PrintSentence />
    </div>
  );
}
