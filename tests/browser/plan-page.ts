/** The plan's page for the tests. */
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import { type App, expect } from './fixture';

export { must } from './expected';
export { type App, expect, test } from './fixture';

/** A hall in which thirty people can be taken at once. */
export const GREAT_HALL = {
  length: 20,
  width: 14,
  ceiling: 5,
  backdrop: { offWall: 0.2, width: 12, top: 4 },
  obstacles: [],
} satisfies Partial<Session['room']>;

/** What thirty heads in rows can keep within. */
export const OF_THIRTY = { rowDifference: 0.3, stretch: 0.3 } as const;

/** The answer belongs to what is asked now. */
export const answered = (app: App): Promise<void> =>
  expect(app.page.locator('main.plan')).toHaveAttribute('aria-busy', 'false', { timeout: 60_000 });

/** The plan's page with a session, once its answer is there. */
export async function openPlan(app: App, session: Session = demoSession()): Promise<void> {
  await app.page.goto('?test=landmarks#plan');
  await app.page.locator('main.plan').waitFor();
  await app.page.waitForFunction(() => window.standpoint?.stage);
  await app.page.evaluate((next) => window.standpoint?.store.open(next, 'Test'), session);
  await answered(app);
}
