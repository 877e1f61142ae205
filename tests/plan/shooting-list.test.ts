import { describe, expect, test } from 'vitest';
import { loadModels } from '../../src/models/node';
import { solvePlan } from '../../src/plan';
import { shootingList } from '../../src/plan/shooting-list';
import { demoSession } from '../../src/session/demo';
import { planRequest } from '../../src/session/plan-request';

const models = loadModels();
const demo = planRequest(demoSession(), models);

describe('the shooting list', () => {
  test('takes what one standpoint covers from there, without a step between', () => {
    const result = solvePlan(demo);
    const { shots, left } = shootingList(demo, result);
    const [shared] = result.oneStandpoint;
    const there = shots.filter(({ setting }) => setting.standpoint === shared?.standpoint);
    expect(there.map(({ wanted }) => wanted).sort()).toEqual([...(shared?.covers ?? [])].sort());
    expect(shots.length + left.length).toBe(demo.wanted.length);
    // One walk to the standpoint at most: all shots from there follow each other.
    expect(there.slice(1).every(({ moves }) => !moves.includes('standpoint'))).toBe(true);
  });

  test('puts equal lenses side by side, whatever the order they were wanted in', () => {
    const result = solvePlan(demo);
    const orders = demo.wanted.map((_, i) => {
      const wanted = [...demo.wanted.slice(i), ...demo.wanted.slice(0, i)];
      const request = { ...demo, wanted };
      const { shots } = shootingList(request, { ...result });
      return shots.flatMap(({ moves }) => moves).length;
    });
    expect(new Set(orders).size).toBe(1);
  });

  test('is empty where nothing works, and names what is left', () => {
    const request = { ...demo, asked: { ...demo.asked, noseGain: 0.0001 } };
    const { shots, left } = shootingList(request, solvePlan(request));
    expect(shots).toEqual([]);
    expect(left).toEqual(demo.wanted.map(({ id }) => id));
  });
});
