import { useCallback, useState, useSyncExternalStore } from 'react';
import { keepPixel, keptPixel, screenKey } from './calibration';

const memory = (): Storage => localStorage;

const keyNow = (): string =>
  screenKey({
    width: window.screen.width,
    height: window.screen.height,
    ratio: window.devicePixelRatio,
  });

const onResize = (changed: () => void) => {
  window.addEventListener('resize', changed);
  return () => window.removeEventListener('resize', changed);
};

/** Size of a CSS pixel of this screen, metres; null until the screen is measured. */
export function usePixel(): [number | null, (pixel: number) => void] {
  const key = useSyncExternalStore(onResize, keyNow);
  const [measured, setMeasured] = useState<Readonly<Record<string, number>>>({});
  const keep = useCallback(
    (pixel: number) => {
      setMeasured((all) => ({ ...all, [key]: pixel }));
      keepPixel(memory, key, pixel);
    },
    [key],
  );
  return [measured[key] ?? keptPixel(memory, key), keep];
}
