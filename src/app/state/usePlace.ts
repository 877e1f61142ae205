import { useEffect, useState } from 'react';

export const PLACES = ['compare', 'plan', 'handout'] as const;
export type Place = (typeof PLACES)[number];

const placeIn = (hash: string): Place => PLACES.find((place) => hash === `#${place}`) ?? 'compare';

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
