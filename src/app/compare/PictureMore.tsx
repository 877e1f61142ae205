import { formatFocal, formatLength } from '../../readings/format';
import {
  cutFromLens,
  endCut,
  matchLook,
  removePicture,
  setCameraHeight,
  setLens,
  setTilt,
} from '../../session/actions';
import { kitOf, lensesOf } from '../../session/kit';
import { LIMITS } from '../../session/limits';
import { AngleValue, showAngle } from '../controls/AngleValue';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { Do } from '../controls/words';
import { CompanyValue } from '../people/CompanyValue';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import type { Shown } from './shown';

const ANY = 'any';

/** What else can be said of one picture: camera height, tilt, lens, cut, match, and taking it down. */
export default function PictureMore(props: {
  shown: Shown;
  others: readonly Shown[];
  onSaveAlone: () => void;
  close: () => void;
}) {
  const { session, models, act } = useWorkbench();
  const { letter, picture } = props.shown;
  const said = words.picture;
  const distance = (metres: number) => formatLength(Math.abs(metres), session.units, 'distance');
  const { cameraHeight, tilt } = picture;
  const all = lensesOf(session, models);
  const kit = kitOf(session).lenses.flatMap((id) => all.get(id) ?? []);
  const fixedLens = picture.lens === null ? undefined : all.get(picture.lens);
  const { close } = props;
  const then = (go: () => void) => () => {
    go();
    close();
  };
  return (
    <>
      {session.people.length > 1 && (
        <p>
          {said.shows}: <CompanyValue picture={picture} />
        </p>
      )}
      <p>
        {said.camera({
          height: (
            <LengthValue
              label={said.height.label(letter)}
              metres={cameraHeight}
              shown={
                cameraHeight === 0
                  ? said.height.level
                  : (cameraHeight > 0 ? said.height.above : said.height.below)(
                      distance(cameraHeight),
                    )
              }
              range={LIMITS.cameraHeight}
              note={`${said.height.note} ${said.height.caution}`}
              offers={[-0.3, 0, 0.3]}
              onCommit={(to) => act(setCameraHeight, { letter, to })}
            />
          ),
          tilt: (
            <AngleValue
              label={said.tilt.label(letter)}
              radians={tilt}
              shown={
                tilt === 0
                  ? said.tilt.level
                  : (tilt > 0 ? said.tilt.up : said.tilt.down)(showAngle(Math.abs(tilt)))
              }
              range={LIMITS.tilt}
              note={said.tilt.note}
              onCommit={(to) => act(setTilt, { letter, to })}
            />
          ),
        })}
      </p>
      <p>
        {said.lens({
          lens: (
            <ChoiceValue
              label={said.lensLabel(letter)}
              shown={fixedLens?.name ?? said.anyLens}
              chosen={picture.lens ?? ANY}
              choices={[
                { id: ANY, name: said.anyLens },
                ...kit.map(({ id, name }) => ({ id, name })),
              ]}
              onChoose={(id) => act(setLens, { letter, lens: id === ANY ? null : id })}
            />
          ),
        })}
      </p>
      {picture.view.by === 'cut' ? (
        <>
          <p>{said.cut({ focal: formatFocal(picture.view.focal) })}</p>
          <Do onPress={then(() => act(endCut, { letter }))}>{said.wholeFrame}</Do>
        </>
      ) : (
        <p>
          <ChoiceValue
            label={said.stayBackLabel(letter)}
            shown={said.stayBack}
            chosen=""
            choices={kit.map(({ id, name, focal: [, longest] }) => ({
              id,
              name,
              note: said.stayBackAt(formatFocal(longest)),
            }))}
            onChoose={(id) => {
              const lens = all.get(id);
              if (lens) act(cutFromLens, { letter, focal: lens.focal[1], lens: id });
              close();
            }}
          />
          <span className="slip-note"> {said.stayBackNote}</span>
        </p>
      )}
      <div className="row">
        {props.others.map((other) => (
          <Do
            key={other.letter}
            onPress={then(() => act(matchLook, { letter, other: other.letter }))}
          >
            {said.match(other.letter)}
          </Do>
        ))}
        <Do onPress={then(props.onSaveAlone)}>{said.saveAlone}</Do>
        {props.others.length > 0 && (
          <Do onPress={then(() => act(removePicture, { letter }))}>{said.takeDown}</Do>
        )}
      </div>
    </>
  );
}
