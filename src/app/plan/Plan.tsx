import './plan.css';
import { Suspense, useMemo, useState } from 'react';
import type { Cast } from '../../session/cast';
import { planRequest } from '../../session/plan-request';
import type { Unavailable } from '../../stage';
import { showPictures } from '../compare/shown';
import { Openings } from '../controls/Openings';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { cards } from '../words/cards.en';
import { plan as said } from '../words/plan.en';
import { AskedSentence } from './AskedSentence';
import { Chart } from './Chart';
import { Chosen } from './Chosen';
import { Drawings } from './Drawings';
import {
  Cards,
  GroupPanel,
  KitPanel,
  LightStands,
  People,
  Things,
  WantedPictures,
} from './onDemand';
import { RoomSentence } from './RoomSentence';
import { usePlanned } from './usePlanned';
import { WhatWorks } from './WhatWorks';

/** Kit, room, sitters and wanted pictures in; standpoints, settings and reasons out. */
export default function Plan(props: {
  cast: Cast;
  onUnavailable: (reason: Unavailable | null) => void;
}) {
  const { session, models } = useWorkbench();
  const { cast } = props;
  const request = useMemo(() => planRequest(session, models), [session, models]);
  const { request: answered, planned, isWorking } = usePlanned(request);
  const [showsCards, setShowsCards] = useState(false);
  const pictures = useMemo(
    () => showPictures(session, models, cast, null),
    [session, models, cast],
  );
  return (
    <main className="plan" aria-busy={isWorking}>
      <h1 className="unseen">{said.heading}</h1>
      <section className="plan-setup" aria-label={said.setUp}>
        <RoomSentence />
        <AskedSentence />
        <Openings
          parts={[
            { name: said.parts.wanted, content: <WantedPictures request={request} /> },
            { name: said.parts.kit, content: <KitPanel /> },
            { name: said.parts.things, content: <Things /> },
            {
              name: said.parts.lights,
              content: <LightStands pictures={pictures} request={request} />,
            },
            { name: said.parts.group, content: <GroupPanel request={request} /> },
            { name: said.parts.people, content: <People /> },
          ]}
        />
      </section>
      <div className="plan-drawings">
        <Drawings cast={cast} pictures={pictures} request={request} />
      </div>
      <div className="plan-found">
        <Chosen
          cast={cast}
          pictures={pictures}
          request={answered}
          planned={planned}
          onUnavailable={props.onUnavailable}
        />
        <Suspense fallback={null}>
          {answered && planned ? (
            <WhatWorks request={answered} planned={planned} />
          ) : (
            <p role="status">{said.working}</p>
          )}
        </Suspense>
      </div>
      {answered && planned && <Chart pictures={pictures} request={answered} planned={planned} />}
      {answered && planned && (
        <section className="plan-cards plan-wide" aria-label={cards.title}>
          <Do aria-expanded={showsCards} onPress={() => setShowsCards(!showsCards)}>
            {cards.open}
          </Do>
          <Suspense fallback={null}>
            {showsCards && (
              <Cards cast={cast} pictures={pictures} request={answered} planned={planned} />
            )}
          </Suspense>
        </section>
      )}
    </main>
  );
}
