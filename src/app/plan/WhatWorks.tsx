import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { PlanRequest, Remedy, Verdict } from '../../plan/types';
import { hangPlanned } from '../../session/actions/plan-page';
import { hungRow } from '../../session/plan-request';
import { LINES } from '../compare/lines';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { plan as said } from '../words/plan.en';
import { applies, applyRemedy } from './applyRemedy';
import type { Planned } from './plan.worker';
import { remedyWords, showIn, verdictWords } from './told';

/** So many ways out are offered, the first of them at once and the others when asked for. */
const OFFERED = 6;
const FIRST = 2;

function Row(props: {
  verdict: Verdict;
  /** Null while they are looked for. */
  remedies: readonly Remedy[] | null;
  request: PlanRequest;
}) {
  const { session, act } = useWorkbench();
  const { verdict, request } = props;
  const show = showIn(session.units);
  const { works, why } = verdictWords(verdict, request, show);
  const { lensName, bodyName } = request.cameras.find(({ id }) => id === verdict.camera) ?? {
    lensName: '',
    bodyName: '',
  };
  const bodies = new Set(request.cameras.map((camera) => camera.bodyName)).size;
  const hung = hungRow(session);
  const chosen = hung?.wanted === verdict.wanted && hung.camera === verdict.camera;
  const setting = verdict.recommended;
  const letter = session.plan.picture;
  const [open, setOpen] = useState(false);
  const offered = (props.remedies ?? []).slice(0, OFFERED);
  const shown = open ? offered : offered.slice(0, FIRST);
  const name = bodies > 1 ? said.lensOn(lensName, bodyName) : lensName;
  return (
    <li className={`works-row ${chosen ? `chosen ${LINES[letter].css}` : ''}`}>
      <Button
        className="works-pick"
        isDisabled={setting === null}
        aria-pressed={chosen}
        aria-label={`${name}: ${works}. ${why} ${setting ? said.hangIn(letter) : ''}`}
        onPress={() =>
          setting &&
          act(hangPlanned, { letter, wanted: verdict.wanted, camera: verdict.camera, setting })
        }
      >
        <b>{name}</b>
        <span className={setting ? 'works-yes' : 'works-no'}>{works}</span>
      </Button>
      <p className="works-why">
        {why}
        {props.remedies === null && setting === null && ` ${said.seekingWays}`}
        {offered.length > 0 && (
          <>
            {' '}
            <b>{said.wouldWorkLead}</b>{' '}
            {shown.map((remedy, i) => (
              <span key={JSON.stringify(remedy.change)}>
                {i > 0 && said.orElse}
                {applies(remedy.change) ? (
                  <Do onPress={() => applyRemedy(act, session, verdict, remedy)}>
                    {remedyWords(remedy, request, show)}
                  </Do>
                ) : (
                  <b>{remedyWords(remedy, request, show)}</b>
                )}
              </span>
            ))}
            {offered.length > FIRST && (
              <>
                {' '}
                <Do aria-expanded={open} onPress={() => setOpen(!open)}>
                  {open ? said.fewerWays : said.moreWays(offered.length - FIRST)}
                </Do>
              </>
            )}
          </>
        )}
      </p>
    </li>
  );
}

/** Every wanted framing with every lens: from where it works, or what would make it. */
export function WhatWorks(props: { request: PlanRequest; planned: Planned }) {
  const { session } = useWorkbench();
  const { request, planned } = props;
  const show = showIn(session.units);
  return (
    <section className="sheet-paper works" aria-label={said.whatWorks}>
      <h2>{said.whatWorks}</h2>
      {request.wanted.length === 0 && <p>{said.nothingWanted}</p>}
      {request.wanted.length > 0 && request.cameras.length === 0 && <p>{said.noLens}</p>}
      {request.wanted.map((wanted) => (
        <section key={wanted.id} aria-label={wanted.name}>
          <h3 className="works-framing">
            {wanted.name}
            <span>
              {wanted.frameHeight === null ? said.everybody : said.frame(show(wanted.frameHeight))}
            </span>
          </h3>
          <ul className="works-list">
            {planned.verdicts.map((verdict, i) =>
              verdict.wanted === wanted.id ? (
                <Row
                  key={verdict.camera}
                  verdict={verdict}
                  remedies={planned.remedies && (planned.remedies[i] ?? [])}
                  request={request}
                />
              ) : null,
            )}
          </ul>
        </section>
      ))}
    </section>
  );
}
