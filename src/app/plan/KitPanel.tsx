import { useState } from 'react';
import type { Lens } from '../../optics/types';
import { formatFNumber, formatFocal, formatLength } from '../../readings/format';
import {
  addBody,
  addKit,
  addLens,
  chooseBody,
  chooseKit,
  removeBody,
  removeKit,
  removeLens,
  renameKit,
  setBody,
} from '../../session/actions/plan-page';
import { bodyOf, kitOf, lensesOf } from '../../session/kit';
import { MOST } from '../../session/limits';
import type { Body } from '../../session/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { MegapixelsValue } from '../controls/MegapixelsValue';
import { Sheet } from '../controls/Sheet';
import { TextValue } from '../controls/TextValue';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { kit as said } from '../words/kit.en';
import { MeasureLens } from './MeasureLens';
import { OwnLensForm } from './OwnLensForm';

/** Which kit is used; others are kept beside it. */
function Kits() {
  const { session, act } = useWorkbench();
  const kit = kitOf(session);
  return (
    <p>
      {said.kits({
        name: (
          <TextValue
            label={said.figures.name}
            text={kit.name}
            onCommit={(name) => act(renameKit, { name })}
          />
        ),
        choose:
          session.kits.length > 1 ? (
            <ChoiceValue
              label={said.chooseKit}
              shown={said.chooseKit}
              chosen={kit.id}
              choices={session.kits.map(({ id, name }) => ({ id, name }))}
              onChoose={(id) => act(chooseKit, { kit: id })}
            />
          ) : null,
        add: (
          <Do
            isDisabled={session.kits.length >= MOST.kits}
            onPress={() => act(addKit, { name: said.newKit })}
          >
            {said.addKit}
          </Do>
        ),
        remove:
          session.kits.length > 1 ? (
            <Do onPress={() => act(removeKit, { kit: kit.id })}>{said.removeKit}</Do>
          ) : null,
      })}
    </p>
  );
}

function BodyLine(props: { body: Body }) {
  const { session, models, act } = useWorkbench();
  const { body } = props;
  const inUse = bodyOf(session).id === body.id;
  return (
    <li>
      {said.body({
        name: (
          <TextValue
            label={said.figures.name}
            text={body.name}
            onCommit={(name) => act(setBody, { body: body.id, name })}
          />
        ),
        format: (
          <ChoiceValue
            label={words.compare.labels.format}
            shown={models.formats.get(body.format)?.name ?? ''}
            chosen={body.format}
            choices={[...models.formats.values()].map(({ id, name }) => ({ id, name }))}
            onChoose={(format) => act(setBody, { body: body.id, format })}
          />
        ),
        megapixels: (
          <MegapixelsValue
            megapixels={body.megapixels}
            onCommit={(megapixels) => act(setBody, { body: body.id, megapixels })}
          />
        ),
      })}{' '}
      {inUse ? (
        said.inUse
      ) : (
        <span className="nb">
          <Do
            aria-label={said.chooseOf(body.name)}
            onPress={() => act(chooseBody, { body: body.id })}
          >
            {said.use}
          </Do>{' '}
          <Do
            aria-label={said.removeOf(body.name)}
            onPress={() => act(removeBody, { body: body.id })}
          >
            {said.remove}
          </Do>
        </span>
      )}
    </li>
  );
}

type Opened = { readonly form: 'type' | 'edit' | 'measure'; readonly lens: string } | null;

function LensLine(props: { lens: Lens; onOpen: (opened: Opened) => void }) {
  const { session, act } = useWorkbench();
  const { lens } = props;
  const show = (metres: number) => formatLength(metres, session.units, 'distance');
  const isOwn = session.ownLenses.some(({ id }) => id === lens.id);
  return (
    <li>
      {said.lens({
        name: isOwn
          ? `${lens.name} (${said.typed(formatFocal(lens.focal[0]), formatFocal(lens.focal[1]))})`
          : lens.name,
        nearest: show(lens.nearestFocus[1]),
        widest: said.typed(formatFNumber(lens.widest[0]), formatFNumber(lens.widest[1])),
        smallest: formatFNumber(lens.smallest),
        pupil: lens.entrancePupil === undefined ? null : show(lens.entrancePupil),
      })}{' '}
      <span className="nb">
        {isOwn && (
          <>
            <Do
              aria-label={said.editOf(lens.name)}
              onPress={() => props.onOpen({ form: 'edit', lens: lens.id })}
            >
              {said.edit}
            </Do>{' '}
          </>
        )}
        <Do
          aria-label={said.measureOf(lens.name)}
          onPress={() => props.onOpen({ form: 'measure', lens: lens.id })}
        >
          {said.measure}
        </Do>{' '}
        <Do
          aria-label={said.removeOf(lens.name)}
          onPress={() => act(removeLens, { lens: lens.id })}
        >
          {said.remove}
        </Do>
      </span>
    </li>
  );
}

/** Bodies and lenses of the kit in use, the photographer's own lenses, and the measuring of one. */
export default function KitPanel() {
  const { session, models, act } = useWorkbench();
  const [opened, setOpened] = useState<Opened>(null);
  const kit = kitOf(session);
  const all = lensesOf(session, models);
  const lenses = kit.lenses.flatMap((id) => all.get(id) ?? []);
  const others = [...all.values()].filter(({ id }) => !kit.lenses.includes(id));
  const lens = opened && all.get(opened.lens);
  const close = () => setOpened(null);
  return (
    <div className="setup-more">
      <Kits />
      <h3>{said.bodies}</h3>
      <ul className="plain-list">
        {kit.bodies.map((body) => (
          <BodyLine key={body.id} body={body} />
        ))}
      </ul>
      <Do
        isDisabled={kit.bodies.length >= MOST.bodies}
        onPress={() => act(addBody, { ...bodyOf(session), name: said.newBody })}
      >
        {said.addBody}
      </Do>
      <h3>{said.lenses}</h3>
      <ul className="plain-list">
        {lenses.map((each) => (
          <LensLine key={each.id} lens={each} onOpen={setOpened} />
        ))}
      </ul>
      <p>
        {said.addLens(
          <ChoiceValue
            label={said.aClass}
            shown={said.aClass}
            chosen=""
            choices={others.map(({ id, name }) => ({ id, name }))}
            onChoose={(id) => act(addLens, { lens: id })}
          />,
          <Do onPress={() => setOpened({ form: 'type', lens: '' })}>{said.typeLens}</Do>,
        )}
      </p>
      <Sheet title={said.typeTitle} open={opened?.form === 'type'} onClose={close}>
        <OwnLensForm lens={null} onDone={close} />
      </Sheet>
      <Sheet title={lens?.name ?? ''} open={opened?.form === 'edit' && !!lens} onClose={close}>
        <OwnLensForm
          lens={session.ownLenses.find(({ id }) => id === opened?.lens) ?? null}
          onDone={close}
        />
      </Sheet>
      <Sheet
        title={said.measureTitle(lens?.name ?? '')}
        open={opened?.form === 'measure' && !!lens}
        onClose={close}
      >
        {lens && <MeasureLens lens={lens} onDone={close} />}
      </Sheet>
    </div>
  );
}
