import { useEffect, useRef, useState } from 'react';
import type { ProfileOutline } from '../../drawings';
import type { Sitter } from '../../sitter/types';

const loadProfile = () => import('../../drawings/profile/outline');

/** Pause after which the sitter's profile is traced anew, milliseconds. */
const REST = 300;

/** The sitter in profile; the room is drawn without it until the outline is traced. */
export function useProfile(sitter: Sitter): ProfileOutline | null {
  const [figure, setFigure] = useState<ProfileOutline | null>(null);
  const traced = useRef(false);
  useEffect(() => {
    let wanted = true;
    // While somebody is shaped by a slider, the last outline stays until the hand rests.
    const timer = setTimeout(
      () => loadProfile().then(({ profileOutline }) => wanted && setFigure(profileOutline(sitter))),
      traced.current ? REST : 0,
    );
    traced.current = true;
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [sitter]);
  return figure;
}
