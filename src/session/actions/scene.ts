/** Light, the move and the session's own texts. */
import { demoSession } from '../demo';
import { type LampName, type LampPlace, type LampSetting, lampPlace, USUAL_LIGHT } from '../light';
import { NOTES_LENGTH, TITLE_LENGTH } from '../limits';
import type { Session } from '../types';
import { action } from './action';

const LAMP_WORDS: Readonly<Record<LampName, string>> = {
  key: 'Key light',
  fill: 'Fill light',
  hair: 'Hair light',
  background: 'Background light',
};

/** Moves one light, or makes it stronger or softer; what is left out stays. */
export const setLight = action<{ lamp: LampName } & Partial<LampSetting>>({
  edit: (session, { lamp, ...setting }) => ({
    ...session,
    light: { ...session.light, [lamp]: { ...session.light[lamp], ...setting } },
  }),
  label: (after, { lamp, strength }) => {
    if (strength === undefined) return `${LAMP_WORDS[lamp]} moved`;
    return `${LAMP_WORDS[lamp]} ${after.light[lamp].strength === 0 ? 'off' : 'set'}`;
  },
});

/**
 * Carries a light to a place in the first person's frame, metres; what is left out stays: over the floor it
 * keeps its height, up and down its place on the floor.
 */
export const moveLamp = action<{ lamp: LampName } & Partial<LampPlace>>({
  edit: (session, { lamp, ...to }) => {
    const before = session.light[lamp];
    const { x, y, z } = { ...lampPlace(before), ...to };
    const level = Math.hypot(x, z);
    const setting: LampSetting = {
      ...before,
      azimuth: Math.atan2(-x, z),
      elevation: Math.atan2(y, level),
      distance: Math.hypot(level, y),
    };
    return { ...session, light: { ...session.light, [lamp]: setting } };
  },
  label: (_, { lamp }) => `${LAMP_WORDS[lamp]} moved`,
});

/** All four lights in their usual places. */
export const resetLight = action<Record<string, never>>({
  edit: (session) => ({ ...session, light: USUAL_LIGHT }),
  label: () => 'Lights in their usual places',
});

/** Ends and length of the move, seconds. */
export const setPlay = action<Partial<Session['play']>>({
  edit: (session, play) => ({ ...session, play: { ...session.play, ...play } }),
  label: (after) => `Move from ${after.play.from} to ${after.play.to}`,
});

/** Height of the print whose viewing distance is read, metres. */
export const setPrintHeight = action<{ to: number }>({
  edit: (session, { to }) => ({ ...session, printHeight: to }),
  label: () => 'Print height set',
});

export const setUnits = action<{ to: Session['units'] }>({
  edit: (session, { to }) => ({ ...session, units: to }),
  label: (_, { to }) => (to === 'metric' ? 'Metres' : 'Feet and inches'),
});

export const setTitle = action<{ to: string }>({
  edit: (session, { to }) => ({ ...session, title: to.slice(0, TITLE_LENGTH) }),
  label: () => 'Title changed',
});

export const setNotes = action<{ to: string }>({
  edit: (session, { to }) => ({ ...session, notes: to.slice(0, NOTES_LENGTH) }),
  label: () => 'Notes changed',
});

export const resetToDemo = action<Record<string, never>>({
  edit: () => demoSession(),
  label: () => 'Demo session',
});
