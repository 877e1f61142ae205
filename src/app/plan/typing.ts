/** The numbers of what the drawings let be typed, and what they may be. Metres. */
import type { Move, Moved, PlanContent, PlanThing } from '../../drawings/plan';

/** What a part of the drawings is set to now, as it is moved. */
export function placeOfThing(content: PlanContent, what: PlanThing): Moved | null {
  const { room, pictures, lights, eyeHeight } = content;
  switch (what.kind) {
    case 'camera': {
      const picture = pictures.find(({ letter }) => letter === what.letter);
      return picture ? [picture.standpoint] : null;
    }
    case 'lens': {
      const picture = pictures.find(({ letter }) => letter === what.letter);
      return picture ? [picture.camera.position[1] + eyeHeight] : null;
    }
    case 'sitter':
      return [room.sitterBefore, room.aside];
    case 'backdrop':
      return [room.backdrop.offWall];
    case 'backdrop-top':
      return [room.backdrop.top];
    case 'obstacle': {
      const thing = room.obstacles.find(({ id }) => id === what.id);
      return thing ? [thing.x, thing.y] : null;
    }
    case 'light': {
      const lamp = lights.find(({ id }) => id === what.id);
      return lamp ? [lamp.x, lamp.y] : null;
    }
  }
}

function movesOf(content: PlanContent, what: PlanThing): readonly (Move | undefined)[] {
  const { pictures, lights, moves } = content;
  switch (what.kind) {
    case 'camera':
      return [pictures.find(({ letter }) => letter === what.letter)?.move];
    case 'lens':
      return [pictures.find(({ letter }) => letter === what.letter)?.lift];
    case 'sitter':
      return [moves.sitter, moves.aside];
    case 'backdrop':
      return [moves.backdrop];
    case 'backdrop-top':
      return [moves.backdropTop];
    case 'obstacle':
      return moves.obstacles?.[what.id] ?? [];
    case 'light':
      return lights.find(({ id }) => id === what.id)?.move ?? [];
  }
}

export function typedRange(
  content: PlanContent,
  what: PlanThing,
  which: 0 | 1,
): { readonly least: number; readonly most: number } | undefined {
  const found = movesOf(content, what)[which];
  return found && { least: found.min, most: found.max };
}
