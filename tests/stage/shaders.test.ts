import { ShaderLib } from 'three';
import { describe, expect, it } from 'vitest';
import { LANDMARKS } from '../../src/sitter/types';
import { landmarkColour } from '../../src/stage/landmarkColours';
import { replaceOnce } from '../../src/stage/shaders/patch';
import { lampLoop, lightSurface, type Surface } from '../../src/stage/shaders/surfaces';

describe('shader changes', () => {
  it.each<Surface>(['skin', 'hair', 'eye', 'cloth', 'plain', 'clay', 'clayHair', 'glass', 'room'])(
    '%s: every anchor stands in the renderer’s text',
    (surface) => {
      const { vertexShader, fragmentShader } = ShaderLib.physical;
      const shader = { vertexShader, fragmentShader };
      lightSurface(shader, surface);
      expect(shader.fragmentShader).toContain('#define RE_Direct RE_Direct_Surface');
      expect(shader.fragmentShader).not.toContain('#include <lights_fragment_begin>');
      expect(lampLoop(surface)).not.toContain('getShadow( spotShadowMap');
    },
  );

  it('fail aloud when an anchor is missing or doubled', () => {
    expect(() => replaceOnce('a b', 'c', 'd')).toThrow('0 times');
    expect(() => replaceOnce('a a', 'a', 'd')).toThrow('2 times');
  });
});

describe('landmark colours', () => {
  it('differ from each other and from black by 85 steps in a channel', () => {
    const colours = [[0, 0, 0], ...LANDMARKS.map(landmarkColour)];
    colours.forEach((a, i) => {
      for (const b of colours.slice(i + 1)) {
        const apart = Math.max(...a.map((value, k) => Math.abs(value - (b[k] as number))));
        expect(apart).toBeGreaterThanOrEqual(85);
      }
    });
  });
});
