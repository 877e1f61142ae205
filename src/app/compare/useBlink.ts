import { useEffect, useState } from 'react';

/** A change a second: slow enough to look, far below what could trouble a viewer (WCAG 2.2, 2.3.1). */
const PERIOD = 1000;

/** Alternates while on. */
export function useBlink(on: boolean): boolean {
  const [other, setOther] = useState(false);
  useEffect(() => {
    if (!on) return;
    const timer = setInterval(() => setOther((now) => !now), PERIOD);
    return () => {
      clearInterval(timer);
      setOther(false);
    };
  }, [on]);
  return on && other;
}
