import './takeaway.css';
import {
  type ComponentType,
  type LazyExoticComponent,
  lazy,
  type ReactNode,
  Suspense,
  useState,
} from 'react';
import { Do } from '../controls/words';
import type { Darkroom } from '../darkroom/useDarkroom';
import { handout } from '../words/handout.en';
import { takeAway as said } from '../words/takeaway.en';

export interface TakeAwayProps {
  readonly darkroom: Darkroom;
  readonly onClose: () => void;
  /** Opens the sheet of stills instead, with the strip of a kept comparison or of the one on the wall. */
  readonly onStills: (comparison: string | null) => void;
  /** Of which comparison that strip is, where it was asked for. */
  readonly strip?: { readonly comparison: string | null };
}

/** What can be taken away, each a sheet of its own that is fetched when it is opened. */
const SHEETS = {
  stills: lazy(() => import('../stills/HandoutStills')),
  clip: lazy(() => import('./Clip')),
  moving: lazy(() => import('./Moving')),
  table: lazy(() => import('./table/TableSheet')),
} satisfies Record<keyof typeof said.sheets, LazyExoticComponent<ComponentType<TakeAwayProps>>>;
type SheetName = keyof typeof SHEETS;
const NAMES = Object.keys(SHEETS) as SheetName[];

/** Stills, clip, moving page, table: each opens its sheet. */
export function TakeAway(props: { darkroom: Darkroom; children: ReactNode }) {
  const [open, setOpen] = useState<SheetName | null>(null);
  const [strip, setStrip] = useState<TakeAwayProps['strip']>();
  const Opened = open === null ? null : (SHEETS[open] as ComponentType<TakeAwayProps>);
  return (
    <>
      <h2 className="page-list-head">{handout.takeAway}</h2>
      {props.children}
      <div className="row take-away">
        {NAMES.map((name) => (
          <Do key={name} onPress={() => setOpen(name)}>
            {said.sheets[name]}
          </Do>
        ))}
      </div>
      <Suspense fallback={null}>
        {Opened && (
          <Opened
            darkroom={props.darkroom}
            onClose={() => {
              setOpen(null);
              setStrip(undefined);
            }}
            onStills={(comparison) => {
              setStrip({ comparison });
              setOpen('stills');
            }}
            {...(strip && { strip })}
          />
        )}
      </Suspense>
    </>
  );
}
