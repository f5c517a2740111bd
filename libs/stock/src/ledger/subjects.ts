import type { Movement } from './movement.js';

/** What a movement is about: drums by number, a batch or a place. A correction is about what it corrects. */
export interface Subjects {
  readonly drums: readonly string[];
  readonly batch: string | null;
  /** The place of a count; other movements concern a place through their drum. */
  readonly place: string | null;
}

const nothing: Subjects = { drums: [], batch: null, place: null };

/**
 * Whatever has to be read again when the movement is appended; `find` gives an earlier movement by its id. Nothing
 * for a correction of what is not known (yet).
 */
export function subjectsOf(movement: Movement, find: (id: string) => Movement | undefined): Subjects {
  const root = rootOf(movement, find);
  if (!root || root.kind === 'corrected') return nothing;
  if (root.kind === 'counted') return { ...nothing, place: root.place };
  if ('of' in root)
    return 'batch' in root.of ? { ...nothing, batch: root.of.batch } : { ...nothing, drums: [root.of.drum] };
  if (root.kind === 'joined') return { ...nothing, drums: [root.provisional, root.drum] };
  if (root.kind === 'transferred') return { ...nothing, drums: [root.drum, root.into] };
  return { ...nothing, drums: [root.drum] };
}

/** The movement that a chain of corrections is about in the end. */
function rootOf(movement: Movement, find: (id: string) => Movement | undefined): Movement | undefined {
  if (movement.kind !== 'corrected') return movement;
  const seen = new Set<string>();
  let root: Movement | undefined = movement;
  while (root?.kind === 'corrected' && !seen.has(root.id)) {
    seen.add(root.id);
    root = find(root.corrects);
  }
  return root;
}
