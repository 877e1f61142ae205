import { useEffect, useState } from 'react';

export const PLACES = ['compare', 'plan', 'handout'] as const;
/** The talk is no place to work in: it is opened by an act and left again. */
export type Place = (typeof PLACES)[number] | 'present';

const placeIn = (hash: string): Place =>
  ([...PLACES, 'present'] as const).find((place) => hash === `#${place}`) ?? 'compare';

/** Opens the talk, on the whole screen where the browser allows it. */
export function present(): void {
  document.documentElement.requestFullscreen?.().catch(() => undefined);
  window.location.hash = '#present';
}

/** Which place of the page is open, as the address tells: it can be linked to, and Back goes back. */
export function usePlace(): Place {
  const [place, setPlace] = useState(() => placeIn(window.location.hash));
  useEffect(() => {
    const follow = () => setPlace(placeIn(window.location.hash));
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, []);
  return place;
}
